import type { ReactNode } from "react";
import { lazy, Suspense, useState } from "react";
import type { Instant } from "../../core/units/index.ts";
import { between } from "../../core/units/index.ts";
import type { WalkCard } from "../../io/store/index.ts";
import { words } from "../../words/index.ts";
import { HelpButton } from "../help/index.ts";
import { MissingPart } from "../parts/index.ts";
import { PRACTICE_KEY } from "./bundled-procedures.ts";
import type { ProcedureSummary } from "./procedure-summary.ts";
import type { TakenOff } from "./shelf-news.ts";
import type { Shelf, ShelfWalk } from "./use-shelf.ts";
import "./shelf.css";

/** The actions of the shelf. */
export interface ShelfActions {
  follow(procedure: ProcedureSummary, mode: "live" | "rehearsal"): void;
  read(procedure: ProcedureSummary): void;
  compare(procedure: ProcedureSummary): void;
  /** Writes a procedure: a new one with `null`. */
  write(procedure: ProcedureSummary | null): void;
  removeProcedure(procedure: ProcedureSummary): void;
  putBack(procedure: TakenOff): void;
  goOn(walk: ShelfWalk): void;
  review(walk: ShelfWalk): void;
  exportWalk(walk: ShelfWalk): void;
  removeWalk(walk: ShelfWalk): void;
  join(): void;
  pick(): void;
  drop(transfer: DataTransfer): void;
  backUp(): void;
}

interface ShelfViewProps {
  readonly shelf: Shelf;
  /** `null` while the clock is not there; ages are left unsaid then. */
  readonly now: Instant | null;
  readonly actions: ShelfActions;
  /** The result of the last action, in sentences. */
  readonly message: readonly string[];
  /** The procedure that was taken off last; `null` when none was since the page was opened. */
  readonly takenOff?: TakenOff | null;
  /** How this device keeps what is entered. */
  readonly storage?: ReactNode;
  /** What is being written, above the procedures. */
  readonly drafts?: ReactNode;
}

/** The id of the choices, for the button that shows them. */
const CHOICES = "reader-choices";

/** What is chosen seldom is loaded when it is asked for. */
const ReaderChoices = lazy(async () => ({ default: (await import("./reader-choices.tsx")).ReaderChoices }));

/** The first screen: walks, with the running one first, then procedures. Each can be followed after one tap. */
export function ShelfView({
  shelf,
  now,
  actions,
  message,
  takenOff = null,
  storage,
  drafts,
}: ShelfViewProps) {
  const { walks, procedures, problem } = shelf;
  const [isChoosing, setIsChoosing] = useIsChoosing();
  return (
    <section
      className="shelf"
      aria-label={words("shelf/name")}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        actions.drop(event.dataTransfer);
      }}
    >
      <header className="shelf-head">
        <Mark />
        <div>
          <h1>{words("shelf/tetherline")}</h1>
          <p>{words("shelf/what-it-is-for")}</p>
        </div>
        <div className="shelf-tools">
          <button
            type="button"
            className="plain-button"
            aria-expanded={isChoosing}
            aria-controls={isChoosing ? CHOICES : undefined}
            onClick={() => setIsChoosing(!isChoosing)}
          >
            <Globe /> {words("shelf/choices")}
          </button>
          <HelpButton screen="shelf" />
        </div>
        {isChoosing && (
          <MissingPart said={words("parts/choice-failed", { choice: words("shelf/choices") })}>
            <Suspense fallback={null}>
              <ReaderChoices id={CHOICES} />
            </Suspense>
          </MissingPart>
        )}
      </header>
      <div role="status">
        {takenOff && (
          <div className="shelf-message">
            <p>{words("shelf/taken-off", { title: takenOff.title })}</p>
            <button type="button" className="plain-button" onClick={() => actions.putBack(takenOff)}>
              {words("shelf/put-back-again")}
            </button>
          </div>
        )}
        {message.length > 0 && (
          <div className="shelf-message">
            {message.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </div>
        )}
        {problem !== null && <p className="shelf-message">{words("shelf/not-read", { why: problem })}</p>}
      </div>

      {walks?.length === 0 && (
        <FirstWalk practice={procedures?.find(({ key }) => key === PRACTICE_KEY)} onOpen={actions.follow} />
      )}

      {walks && (
        <section aria-labelledby="walks">
          <h2 id="walks">{words("shelf/walks")}</h2>
          {walks.length > 0 && (
            <ul className="shelf-list">
              {walks.map((walk) => (
                <WalkItem key={walk.walk} walk={walk} now={now} actions={actions} />
              ))}
            </ul>
          )}
          <div className="shelf-join">
            <button type="button" className="plain-button" onClick={actions.join}>
              {words("shelf/join")}
            </button>
            <p className="hint">{words("shelf/join-how")}</p>
          </div>
        </section>
      )}

      <section aria-labelledby="procedures">
        <h2 id="procedures">{words("shelf/procedures")}</h2>
        <button type="button" className="plain-button shelf-write" onClick={() => actions.write(null)}>
          {words("shelf/write-new")}
        </button>
        {drafts}
        {procedures === null ? (
          <p className="hint">{words("parts/opening")}</p>
        ) : (
          <ul className="shelf-list">
            {procedures.map((procedure) => (
              <ProcedureItem key={procedure.key} procedure={procedure} actions={actions} />
            ))}
          </ul>
        )}
      </section>

      <section aria-labelledby="bring" className="shelf-bring">
        <h2 id="bring">{words("shelf/bring")}</h2>
        <p className="hint">{words("shelf/bring-how")} </p>
        <div className="panel-acts">
          <button type="button" className="plain-button" onClick={actions.pick}>
            {words("shelf/choose-files")}
          </button>
          <button type="button" className="plain-button" onClick={actions.backUp}>
            {words("shelf/back-up")}
          </button>
        </div>
      </section>

      <footer className="shelf-foot">
        {storage}
        <p>{words("shelf/advises")} </p>
      </footer>
    </section>
  );
}

/** What the shelf offers first to whoever has no walk yet: the one to learn by ([PRA4]). */
function FirstWalk({
  practice,
  onOpen,
}: {
  readonly practice: ProcedureSummary | undefined;
  readonly onOpen: ShelfActions["follow"];
}) {
  if (!practice) return null;
  return (
    <section aria-labelledby="first" className="shelf-first">
      <h2 id="first">{words("shelf/first")}</h2>
      <p>{practice.summary}</p>
      <button type="button" className="main-button" onClick={() => onOpen(practice, "rehearsal")}>
        {words("shelf/first-open")}
      </button>
    </section>
  );
}

const isRead = (walk: ShelfWalk): walk is WalkCard => "lastAt" in walk;

function WalkFacts({ walk, now }: { readonly walk: WalkCard; readonly now: Instant | null }) {
  const ago = walk.lastAt === null || now === null ? null : between(walk.lastAt, now);
  return (
    <>
      <b>{words(`shelf/phase-${walk.phase}`)}</b>
      {walk.mode === "rehearsal" && ` · ${words("shelf/rehearsal")}`}
      {walk.openedAt !== null && ` · ${words("shelf/opened", { at: walk.openedAt })}`}
      {ago !== null && ago >= 0 && ` · ${words("shelf/last-entry", { ago })}`}
    </>
  );
}

function WalkItem({
  walk,
  now,
  actions,
}: {
  readonly walk: ShelfWalk;
  readonly now: Instant | null;
  readonly actions: ShelfActions;
}) {
  const isOver = walk.phase === "closed";
  return (
    <li className="shelf-item" data-running={walk.phase === "running" || walk.phase === "held" || undefined}>
      <div className="shelf-words">
        <h3>{walk.title ?? walk.walk}</h3>
        <p>{isRead(walk) ? <WalkFacts walk={walk} now={now} /> : words("shelf/not-read-yet")}</p>
      </div>
      <div className="shelf-acts">
        {isOver ? (
          <button type="button" className="main-button" onClick={() => actions.review(walk)}>
            {words("parts/review")}
          </button>
        ) : (
          <button type="button" className="main-button" onClick={() => actions.goOn(walk)}>
            {words("shelf/go-on")}
          </button>
        )}
        <details className="shelf-more">
          <summary
            className="plain-button"
            aria-label={words("shelf/more-for", { walk: walk.title ?? walk.walk })}
          >
            {words("shelf/more")}
          </summary>
          <div className="panel-acts">
            <button type="button" className="plain-button" onClick={() => actions.exportWalk(walk)}>
              {words("shelf/export-log")}
            </button>
            {isOver ? (
              <button type="button" className="plain-button" onClick={() => actions.goOn(walk)}>
                {words("shelf/look")}
              </button>
            ) : (
              <button type="button" className="plain-button" onClick={() => actions.review(walk)}>
                {words("shelf/review-so-far")}
              </button>
            )}
            <button type="button" className="plain-button" onClick={() => actions.removeWalk(walk)}>
              {words("shelf/remove-walk")}
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
  const { title, revision, summary, size, verdict, hasErrors, isReadable, isImported } = procedure;
  return (
    <li className="shelf-item">
      <div className="shelf-words">
        <h3>
          {title}
          {revision !== null && (
            <span className="shelf-revision"> {words("parts/revision", { revision })}</span>
          )}
        </h3>
        {summary !== null && <p>{summary}</p>}
        <p className="hint">
          {size}
          {verdict !== null && <> · {hasErrors ? <b>{verdict}</b> : verdict}</>}
        </p>
      </div>
      <div className="shelf-acts">
        <button
          type="button"
          className="main-button"
          disabled={!isReadable}
          onClick={() => actions.follow(procedure, "live")}
          aria-label={words("shelf/follow-procedure", { procedure: title })}
        >
          {words("parts/follow")}
        </button>
        <button
          type="button"
          className="plain-button"
          disabled={!isReadable}
          onClick={() => actions.follow(procedure, "rehearsal")}
          aria-label={words("shelf/rehearse-procedure", { procedure: title })}
        >
          {words("shelf/rehearse")}
        </button>
        <button
          type="button"
          className="plain-button"
          onClick={() => actions.read(procedure)}
          aria-label={words("shelf/read-procedure", { procedure: title })}
        >
          {words("parts/read")}
        </button>
        <button
          type="button"
          className="plain-button"
          onClick={() => actions.compare(procedure)}
          aria-label={words("shelf/compare-procedure", { procedure: title })}
        >
          {words("parts/compare")}
        </button>
        <button
          type="button"
          className="plain-button"
          disabled={!isReadable}
          onClick={() => actions.write(procedure)}
          aria-label={words("shelf/edit-procedure", { procedure: title })}
        >
          {words("shelf/edit")}
        </button>
        {isImported && (
          <button
            type="button"
            className="plain-button"
            onClick={() => actions.removeProcedure(procedure)}
            aria-label={words("shelf/take-procedure-off", { procedure: title })}
          >
            {words("shelf/take-off")}
          </button>
        )}
      </div>
    </li>
  );
}

/** Whether the choices are shown: still so when all is drawn anew after one of them was made. */
function useIsChoosing(): readonly [boolean, (isChoosing: boolean) => void] {
  const [isChoosing, setIsChoosing] = useState(wasChoosing);
  const set = (now: boolean) => {
    wasChoosing = now;
    setIsChoosing(now);
  };
  return [isChoosing, set];
}

let wasChoosing = false;

/** Tells where the language is chosen to somebody who cannot read the one in use. */
function Globe() {
  return (
    <svg className="shelf-globe" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
      <path d="M10 1.5 A8.5 8.5 0 1 0 10 18.5 A8.5 8.5 0 1 0 10 1.5 Z M1.5 10 H18.5 M10 1.5 C4.5 6.5 4.5 13.5 10 18.5 C15.5 13.5 15.5 6.5 10 1.5" />
    </svg>
  );
}

/** The mark of the app: two strands that meet in a knot. */
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
