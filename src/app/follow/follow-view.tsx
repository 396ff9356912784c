import type { ReactNode } from "react";
import { startTransition, useCallback, useDeferredValue, useEffect, useMemo, useRef, useState } from "react";
import type { Duration, Instant } from "../../core/units/index.ts";
import type { Folded, Ledger } from "../../core/walk/index.ts";
import { walkStateAt } from "../../core/walk/index.ts";
import { secondsOf } from "../../io/clock/index.ts";
import { message, words } from "../../words/index.ts";
import { BraidedList, strandsOf } from "../braid/index.ts";
import { errorWords, Worded } from "../parts/index.ts";
import { useWalkRisk } from "../risk/index.ts";
import type { WalkSession } from "../session/index.ts";
import { beatsOf, storedFollower, storeFollower, useSeconds } from "../session/index.ts";
import { CrewCards } from "./crew-cards.tsx";
import "./follow.css";
import { ClosePanel } from "./close-panel.tsx";
import type { JustEntered } from "./follow-actions.ts";
import { followActions } from "./follow-actions.ts";
import type { KeptWords } from "./follow-bar.tsx";
import { FollowBar } from "./follow-bar.tsx";
import type { FollowRow } from "./follow-rows.ts";
import { followMarkers, followRows, keepUnchanged } from "./follow-rows.ts";
import { HoldPanel } from "./hold-panel.tsx";
import { ItemsPanel } from "./items-panel.tsx";
import { MorePanel } from "./more-panel.tsx";
import { nextChange } from "./next-change.ts";
import { NotesPanel } from "./notes-panel.tsx";
import type { Notice } from "./notice-strip.tsx";
import { NoticeStrip } from "./notice-strip.tsx";
import { ReadingsPanel } from "./readings-panel.tsx";
import { RehearsalStrip } from "./rehearsal-strip.tsx";
import { StepPanel } from "./step-panel.tsx";
import { FollowListRow } from "./step-row.tsx";
import { useDoneFocus } from "./use-done-focus.ts";
import { useFollowScroll } from "./use-follow-scroll.ts";
import { useRehearsal } from "./use-rehearsal.ts";
import { WatchStrip } from "./watch-strip.tsx";

interface FollowViewProps {
  readonly session: WalkSession;
  readonly folded: Folded;
  readonly ledger: Ledger;
  /** The clock that everybody on the walk goes by: the device's, put right by what is known of it. */
  readonly clock: () => Instant;
  /** That clock less the device's own, whose times are what is entered. */
  readonly clockOffset: Duration;
  /** How the log is kept, at this moment. */
  readonly kept: () => KeptWords;
  /** What this device may do in the walk. */
  readonly may: { readonly mark: boolean; readonly close: boolean };
  /** False on a device that looks on while another plays the rehearsal. */
  readonly playsHere: boolean;
  readonly notices: readonly Notice[];
  readonly onPutAway: (key: string) => void;
  /** What is known of whoever follows beyond a gap; always in sight. */
  readonly beyond: (now: Instant) => ReactNode;
  /** The panel about link and followers. */
  readonly linkPanel: (now: Instant, onClose: () => void) => ReactNode;
  /** Where the walk is told to go: its other screens. */
  readonly onGo: (to: "shelf" | "timeline" | "review") => void;
  /** Gives the log as a file. */
  readonly onExport: () => void;
}

type Panel =
  | "notes"
  | "items"
  | "readings"
  | "hold"
  | "close"
  | "more"
  | "link"
  | { readonly step: string }
  | null;

/** For how long the undo of the last entry is offered, in ms. */
const UNDO_FOR = 10_000;

/** The follow screen: the clock, the crew, the braid with the list, and one tap to mark a step done. */
export function FollowView({
  session,
  folded,
  ledger,
  clock,
  clockOffset,
  kept,
  may,
  playsHere,
  notices,
  onPutAway,
  beyond,
  linkPanel,
  onGo,
  onExport,
}: FollowViewProps) {
  const { outline } = ledger.inForce;
  const { mode } = ledger.opened;
  const rehearsal = useRehearsal(session, clock, ledger, folded.lastAt);
  const lookedOn = useCallback(() => session.folded().lastAt ?? clock(), [session, clock]);
  const now = mode === "live" ? clock : playsHere ? rehearsal.now : lookedOn;
  const seconds = useMemo(
    () =>
      mode === "rehearsal"
        ? beatsOf(now)
        : secondsOf({ clock: now, ...(ledger.petZero === null ? {} : { from: ledger.petZero }) }),
    [mode, now, ledger.petZero],
  );
  const second = useSeconds(seconds);
  // An entry just made may lie a little after the last tick; the state must not be asked for a time before it.
  const at =
    folded.lastAt !== null && mode === "live" && folded.lastAt > second && folded.lastAt - second < 1500
      ? folded.lastAt
      : second;
  const state = useMemo(() => walkStateAt(ledger, at), [ledger, at]);
  const odds = useWalkRisk(state)?.withinLimit ?? null;
  const strands = useMemo(() => strandsOf(outline.crew), [outline]);
  const [panel, setPanel] = useState<Panel>(null);
  const [just, setJust] = useState<JustEntered | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const inside = outline.crew.find(({ station }) => station === "inside")?.id;
  const [actor, setActor] = useState<string>(() => storedFollower() ?? inside ?? "follower");

  const entering = useMemo(
    () =>
      // The step itself is shown first, the way to undo it right after.
      followActions(
        session,
        () => ownTime(now(), clockOffset),
        actor,
        (entered) => startTransition(() => setJust(entered)),
        (error) => setFailure(words("follow/not-kept", { why: errorWords(error) })),
      ),
    [session, now, clockOffset, actor],
  );
  const actions = may.mark ? entering : null;

  useEffect(() => {
    if (!just) return;
    const timer = setTimeout(() => setJust(null), UNDO_FOR);
    return () => clearTimeout(timer);
  }, [just]);

  const before = useRef<readonly FollowRow[]>([]);
  // One step done moves the forecast of most steps to come: what was tapped is shown first, the moved times right after.
  const isSettled = useDeferredValue(state) === state;
  const rows = useMemo(() => {
    before.current = keepUnchanged(before.current, followRows(state), !isSettled);
    return before.current;
  }, [state, isSettled]);
  const markersKey = JSON.stringify(followMarkers(state));
  const markers = useMemo(() => JSON.parse(markersKey) as ReturnType<typeof followMarkers>, [markersKey]);

  const nowRow = rows.find(({ stage }) => stage === "working" || stage === "waiting")?.key ?? null;
  const { scroller, following, toNow, show } = useFollowScroll(nowRow);
  const doneFocus = useDoneFocus(scroller, rows);
  const pick = useCallback((step: string) => setPanel({ step }), []);
  const close = useCallback(() => setPanel(null), []);
  const live = state.phase === "running" || state.phase === "held";

  const renderRow = useCallback(
    (row: FollowRow) => (
      <FollowListRow
        key={row.key}
        row={row}
        outline={outline}
        strands={strands}
        actions={actions}
        live={live}
        onPick={pick}
      />
    ),
    [outline, strands, actions, live, pick],
  );

  const panelProps = actions && { state, now: at, actions, onClose: close };
  const picked = panel !== null && typeof panel === "object" ? outline.step(panel.step) : null;
  return (
    <div className="follow" data-phase={state.phase}>
      <h1 className="heard-only">{outline.procedure.title}</h1>
      <FollowBar
        odds={odds}
        state={state}
        now={at}
        change={nextChange(outline, ledger.windows, state.pet)}
        kept={kept()}
        onKept={() => setPanel("link")}
        mode={mode}
      />
      <CrewCards state={state} strands={strands} onShow={show} />
      <NoticeStrip notices={notices} onPutAway={onPutAway} />
      {beyond(clock())}
      {mode === "rehearsal" && playsHere && <RehearsalStrip rehearsal={rehearsal} phase={state.phase} />}
      {live && <WatchStrip state={state} actions={actions} />}
      <div className="follow-main">
        <main className="follow-scroll" ref={scroller} {...doneFocus}>
          {state.phase === "prepared" && (
            <StartCard
              title={outline.procedure.title}
              rehearsal={mode === "rehearsal"}
              onStart={actions && (() => void actions.startClock())}
            />
          )}
          <BraidedList label={words("follow/steps")} strands={strands} rows={rows} markers={markers}>
            {renderRow}
          </BraidedList>
          {live && nowRow === null && (
            <p className="follow-end">
              {words("follow/all-complete")}{" "}
              {may.close ? (
                <button type="button" className="plain-button" onClick={() => setPanel("close")}>
                  {words("follow/close-the-walk")}
                </button>
              ) : (
                words("follow/lead-closes")
              )}
            </p>
          )}
          {state.phase === "closed" && (
            <p className="follow-end">
              {words("follow/is-closed")}{" "}
              <button type="button" className="plain-button" onClick={() => onGo("review")}>
                {words("follow/read-review")}
              </button>
            </p>
          )}
        </main>
        {failure !== null && (
          <div className="follow-failure" role="alert">
            <p>{failure}</p>
            <button type="button" className="plain-button" onClick={onExport}>
              {words("follow/export-log")}
            </button>
            <button type="button" className="plain-button" onClick={() => setFailure(null)}>
              {words("follow/hide")}
            </button>
          </div>
        )}
        {panelProps && panel === "notes" && <NotesPanel {...panelProps} />}
        {panelProps && panel === "items" && <ItemsPanel {...panelProps} />}
        {panelProps && panel === "readings" && <ReadingsPanel {...panelProps} />}
        {panelProps && panel === "hold" && <HoldPanel {...panelProps} />}
        {panelProps && panel === "close" && <ClosePanel {...panelProps} onClosed={() => onGo("review")} />}
        {panel === "link" && linkPanel(clock(), close)}
        {panel === "more" && (
          <MorePanel
            ledger={ledger}
            ignored={folded.ignored}
            actor={actor}
            onActor={(next) => {
              setActor(next);
              storeFollower(next);
            }}
            onGo={onGo}
            onExport={onExport}
            onLink={() => setPanel("link")}
            onClose={close}
          />
        )}
        {picked && (
          <StepPanel key={picked.step.id} entry={picked} state={state} actions={actions} onClose={close} />
        )}
      </div>
      <footer className="follow-tools">
        <div className="follow-just">
          <p role="status">{just?.words}</p>
          {just && actions && (
            <button
              type="button"
              className="plain-button"
              onClick={() => {
                setJust(null);
                void actions.strike(just);
              }}
            >
              {words("follow/undo")}
            </button>
          )}
          {!following && nowRow !== null && (
            <button type="button" className="plain-button back-to-now" onClick={toNow}>
              {words("follow/back-to-now")}
            </button>
          )}
        </div>
        <nav className="tool-buttons" aria-label={words("follow/walk")}>
          {actions && (
            <>
              <Tool onPress={() => setPanel("notes")}>{words("follow/notes")}</Tool>
              <Tool onPress={() => setPanel("items")}>{words("follow/items")}</Tool>
              <Tool onPress={() => setPanel("readings")}>{words("follow/readings")}</Tool>
              {state.phase === "held" ? (
                <Tool onPress={() => void actions.lift()}>{words("follow/lift-hold")}</Tool>
              ) : (
                state.phase === "running" && (
                  <Tool onPress={() => setPanel("hold")}>{words("follow/hold")}</Tool>
                )
              )}
            </>
          )}
          {may.close && state.phase !== "closed" && (
            <Tool onPress={() => setPanel("close")}>{words("follow/close-walk")}</Tool>
          )}
          <Tool onPress={() => setPanel("more")}>{words("follow/more")}</Tool>
        </nav>
      </footer>
    </div>
  );
}

/** The time by the device's own clock of a moment by the clock of the walk. */
const ownTime = (at: Instant, clockOffset: Duration): Instant => (at - clockOffset) as Instant;

function Tool({ onPress, children }: { readonly onPress: () => void; readonly children: string }) {
  return (
    <button type="button" className="plain-button" onClick={onPress}>
      {children}
    </button>
  );
}

function StartCard({
  title,
  rehearsal,
  onStart,
}: {
  readonly title: string;
  readonly rehearsal: boolean;
  /** `null` for whoever only reads. */
  readonly onStart: (() => void) | null;
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
      <p className="hint">{words("follow/advises")}</p>
    </section>
  );
}
