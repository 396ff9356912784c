import { words } from "../../words/index.ts";

/** Something that the reader of this device must be told, until it is put away. */
export interface Notice {
  readonly key: string;
  readonly words: string;
}

interface NoticeStripProps {
  readonly notices: readonly Notice[];
  readonly onPutAway: (key: string) => void;
}

/** What came from other devices that the list alone does not tell, one at a time so that the list keeps its room. */
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
