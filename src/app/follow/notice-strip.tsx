import { words } from "../../words/index.ts";

/** Something that the reader of this device must be told, shown until it is dismissed. */
export interface Notice {
  readonly key: string;
  readonly words: string;
}

interface NoticeStripProps {
  readonly notices: readonly Notice[];
  readonly onPutAway: (key: string) => void;
}

/**
 * Notices of events on other devices that the list does not show. Only one is shown at a time, to leave room for the
 * list.
 */
export function NoticeStrip({ notices, onPutAway }: NoticeStripProps) {
  const [first] = notices;
  return (
    <div role="status">
      {first && (
        <div className="notice-strip">
          <p>{first.words}</p>
          {notices.length > 1 && (
            <span className="watch-next">{words("follow/more-notices", { count: notices.length - 1 })}</span>
          )}
          <button type="button" className="plain-button" onClick={() => onPutAway(first.key)}>
            {words("follow/understood")}
          </button>
        </div>
      )}
    </div>
  );
}
