import type { Instant } from "../../core/units/index.ts";
import { formatInstant, lengthText } from "../../core/units/index.ts";
import type { WalkCard } from "../../io/store/index.ts";
import { ThemeField } from "../parts/index.ts";
import type { ProcedureSummary } from "./procedure-summary.ts";
import type { Shelf } from "./use-shelf.ts";
import "./shelf.css";

/** What the shelf can be told to do. */
export interface ShelfActions {
  follow(procedure: ProcedureSummary, mode: "live" | "rehearsal"): void;
  read(procedure: ProcedureSummary): void;
  removeProcedure(procedure: ProcedureSummary): void;
  goOn(walk: WalkCard): void;
  review(walk: WalkCard): void;
  exportWalk(walk: WalkCard): void;
  removeWalk(walk: WalkCard): void;
  join(): void;
  pick(): void;
  drop(transfer: DataTransfer): void;
  backUp(): void;
}

interface ShelfViewProps {
  readonly shelf: Shelf;
  readonly now: Instant;
  readonly actions: ShelfActions;
  /** What the last action came to, in sentences. */
  readonly message: readonly string[];
  /** How this device keeps what is entered, in sentences. */
  readonly storage: readonly string[];
}

/** The first screen: walks with the running one first, then procedures, each one tap from being followed. */
export function ShelfView({ shelf, now, actions, message, storage }: ShelfViewProps) {
  const { walks, procedures, problem } = shelf;
  return (
    <section
      className="shelf"
      aria-label="Shelf"
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        actions.drop(event.dataTransfer);
      }}
    >
      <header className="shelf-head">
        <Mark />
        <div>
          <h1>Tetherline</h1>
          <p>Prepare, follow and review a walk of two outside.</p>
        </div>
        <ThemeField />
      </header>
      <div role="status">
        {message.length > 0 && (
          <div className="shelf-message">
            {message.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </div>
        )}
        {problem !== null && (
          <p className="shelf-message">The shelf could not be read: {problem}. Load the page again.</p>
        )}
      </div>

      {walks && (
        <section aria-labelledby="walks">
          <h2 id="walks">Walks</h2>
          {walks.length > 0 && (
            <ul className="shelf-list">
              {walks.map((walk) => (
                <WalkItem key={walk.walk} walk={walk} now={now} actions={actions} />
              ))}
            </ul>
          )}
          <div className="shelf-join">
            <button type="button" className="plain-button" onClick={actions.join}>
              Join a walk
            </button>
            <p className="hint">Somebody else leads it, and shows you a code.</p>
          </div>
        </section>
      )}

      <section aria-labelledby="procedures">
        <h2 id="procedures">Procedures</h2>
        {procedures === null ? (
          <p className="hint">Checking the procedures…</p>
        ) : (
          <ul className="shelf-list">
            {procedures.map((procedure) => (
              <ProcedureItem key={procedure.key} procedure={procedure} actions={actions} />
            ))}
          </ul>
        )}
      </section>

      <section aria-labelledby="bring" className="shelf-bring">
        <h2 id="bring">Bring in and take out</h2>
        <p className="hint">
          Procedures (.procedure.json), logs of walks (.walk.jsonl) and backups: choose them, drop them
          anywhere here, or paste their text.
        </p>
        <div className="panel-acts">
          <button type="button" className="plain-button" onClick={actions.pick}>
            Choose files
          </button>
          <button type="button" className="plain-button" onClick={actions.backUp}>
            Back up everything
          </button>
        </div>
      </section>

      <footer className="shelf-foot">
        {storage.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <p>
          Tetherline advises, it never commands. Flight rules, local codes and licensed practice decide; keep
          the printed procedure at hand.
        </p>
      </footer>
    </section>
  );
}

const PHASES = { prepared: "prepared", running: "running", held: "held", closed: "closed" } as const;

function WalkItem({
  walk,
  now,
  actions,
}: {
  readonly walk: WalkCard;
  readonly now: Instant;
  readonly actions: ShelfActions;
}) {
  const isOver = walk.phase === "closed";
  const ago = walk.lastAt === null ? null : now - walk.lastAt;
  return (
    <li className="shelf-item" data-running={walk.phase === "running" || walk.phase === "held" || undefined}>
      <div className="shelf-words">
        <h3>{walk.title ?? walk.walk}</h3>
        <p>
          <b>{PHASES[walk.phase]}</b>
          {walk.mode === "rehearsal" && " · rehearsal"}
          {walk.openedAt !== null &&
            ` · opened ${formatInstant(walk.openedAt).slice(0, 16).replace("T", " ")} UTC`}
          {ago !== null && ago >= 0 && ` · last entry ${lengthText(ago as never)} ago`}
        </p>
      </div>
      <div className="shelf-acts">
        {isOver ? (
          <button type="button" className="main-button" onClick={() => actions.review(walk)}>
            Review
          </button>
        ) : (
          <button type="button" className="main-button" onClick={() => actions.goOn(walk)}>
            Go on
          </button>
        )}
        <details className="shelf-more">
          <summary className="plain-button" aria-label={`More for ${walk.title ?? walk.walk}`}>
            More
          </summary>
          <div className="panel-acts">
            <button type="button" className="plain-button" onClick={() => actions.exportWalk(walk)}>
              Export the log
            </button>
            {isOver ? (
              <button type="button" className="plain-button" onClick={() => actions.goOn(walk)}>
                Look at the walk
              </button>
            ) : (
              <button type="button" className="plain-button" onClick={() => actions.review(walk)}>
                Review so far
              </button>
            )}
            <button type="button" className="plain-button" onClick={() => actions.removeWalk(walk)}>
              Export and remove from this device
            </button>
          </div>
        </details>
      </div>
    </li>
  );
}

function ProcedureItem({
  procedure,
  actions,
}: {
  readonly procedure: ProcedureSummary;
  readonly actions: ShelfActions;
}) {
  const { title, revision, summary, size, verdict, hasErrors, file, isImported } = procedure;
  return (
    <li className="shelf-item">
      <div className="shelf-words">
        <h3>
          {title}
          {revision !== null && <span className="shelf-revision"> rev. {revision}</span>}
        </h3>
        {summary !== null && <p>{summary}</p>}
        <p className="hint">
          {size} · {hasErrors ? <b>{verdict}</b> : verdict}
        </p>
      </div>
      <div className="shelf-acts">
        <button
          type="button"
          className="main-button"
          disabled={file === null}
          onClick={() => actions.follow(procedure, "live")}
          aria-label={`Follow ${title}`}
        >
          Follow
        </button>
        <button
          type="button"
          className="plain-button"
          disabled={file === null}
          onClick={() => actions.follow(procedure, "rehearsal")}
          aria-label={`Rehearse ${title}`}
        >
          Rehearse
        </button>
        <button
          type="button"
          className="plain-button"
          onClick={() => actions.read(procedure)}
          aria-label={`Read ${title}`}
        >
          Read
        </button>
        {isImported && (
          <button
            type="button"
            className="plain-button"
            onClick={() => actions.removeProcedure(procedure)}
            aria-label={`Take ${title} off the shelf`}
          >
            Take off
          </button>
        )}
      </div>
    </li>
  );
}

/** Two strands that meet in a knot. */
function Mark() {
  return (
    <svg className="shelf-mark" viewBox="0 0 48 72" width="40" height="60" aria-hidden="true">
      <path d="M12 0 V18 C12 30 24 26 24 36 C24 46 12 42 12 54 V72" style={{ stroke: "var(--lane-1)" }} />
      <path
        d="M36 0 V18 C36 30 24 26 24 36 C24 46 36 42 36 54 V72"
        style={{ stroke: "var(--lane-2)", strokeDasharray: "8 5" }}
      />
      <rect x="13" y="28" width="22" height="16" rx="8" />
    </svg>
  );
}
