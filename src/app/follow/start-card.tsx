import { message, words } from "../../words/index.ts";
import { Worded } from "../parts/index.ts";

/** The card above the list until the clock is started. */
export function StartCard({
  title,
  rehearsal,
  onStart,
  onSurprises,
}: {
  readonly title: string;
  readonly rehearsal: boolean;
  /** `null` for a reader who may not enter anything. */
  readonly onStart: (() => void) | null;
  /** Goes on to the surprises of a rehearsal; `null` where that may not be done. */
  readonly onSurprises: (() => void) | null;
}) {
  return (
    <section className="start-card">
      <p>
        <Worded message={message("follow/is-prepared", { title })} />
      </p>
      {onStart ? (
        <button type="button" className="done-button" onClick={onStart}>
          <span className="done-word">
            {words(rehearsal ? "follow/start-rehearsal-clock" : "follow/start-clock")}
          </span>
        </button>
      ) : (
        <p>{words("follow/watches-only")}</p>
      )}
      {onSurprises && (
        <button type="button" className="plain-button" onClick={onSurprises}>
          {words("train/title")}
        </button>
      )}
      <p className="hint">{words("follow/advises")}</p>
    </section>
  );
}
