import type { Outline } from "../../core/procedure/index.ts";
import type { Amendment, IdleAmendment } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import "./amend.css";
import { noticeWords } from "./amendment-words.ts";

interface AmendmentStripProps {
  readonly outline: Outline;
  /** The amendments that were not seen on this device, in the order of the log. */
  readonly unseen: readonly Amendment[];
  /** This device's own amendments without effect that were not put away, in the order of the log. */
  readonly idle: readonly IdleAmendment[];
  /** How many entries of the log need a newer version of the program. */
  readonly newer: number;
  readonly onSeen: (amendment: Amendment) => void;
  readonly onDetails: (amendment: Amendment) => void;
  /** Opens an amendment without effect anew; `null` where the plan may not be amended. */
  readonly onTry: ((idle: IdleAmendment) => void) | null;
  readonly onPutAway: (idle: IdleAmendment) => void;
}

/** What every device is told of amendments ([AMD4], [AMD5]): those that are new to it, its own that have no effect, and what it is too old for. */
export function AmendmentStrip(props: AmendmentStripProps) {
  const { outline, unseen, idle, newer, onSeen, onDetails, onTry, onPutAway } = props;
  const [first] = unseen;
  const [failed] = idle;
  return (
    <div role="status">
      {newer > 0 && (
        <div className="amendment-strip">
          <p>{words("amending/newer", { count: newer })}</p>
        </div>
      )}
      {failed && (
        <div className="amendment-strip">
          <p>{words("amending/idle", { reason: failed.reason, why: failed.why })}</p>
          <div>
            {onTry && (
              <button type="button" className="plain-button" onClick={() => onTry(failed)}>
                {words("amending/try-again")}
              </button>
            )}
            <button type="button" className="plain-button" onClick={() => onPutAway(failed)}>
              {words("amending/put-away")}
            </button>
          </div>
        </div>
      )}
      {first && (
        <div className="amendment-strip">
          <p>
            {noticeWords(first, outline)}
            {unseen.length > 1 && ` ${words("amending/more", { count: unseen.length - 1 })}`}
          </p>
          <div>
            <button type="button" className="plain-button" onClick={() => onDetails(first)}>
              {words("amending/what")}
            </button>
            <button type="button" className="plain-button" onClick={() => onSeen(first)}>
              {words("amending/seen")}
            </button>
          </div>
        </div>
      )}
    </div>
  );
}
