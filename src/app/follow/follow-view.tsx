import type { ReactNode } from "react";
import { useCallback, useMemo, useRef, useState } from "react";
import { isPracticeWalk } from "../../core/practice/index.ts";
import type { CrewId, Duration, Instant } from "../../core/units/index.ts";
import type { Folded, Ledger, WalkPhase } from "../../core/walk/index.ts";
import { lastUndoable, outstandingOf, walkMay } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { AmendmentStrip, amendmentKey, NO_DRAFT, wishesOf } from "../amend/index.ts";
import { BraidedList, strandsOf } from "../braid/index.ts";
import { PracticeGuide } from "../practice/index.ts";
import { useWalkRisk } from "../risk/index.ts";
import type { WalkSession } from "../session/index.ts";
import { AlertStrip } from "./alert-strip.tsx";
import { CrewCards } from "./crew-cards.tsx";
import { enteredMessage } from "./entered-message.ts";
import "./follow.css";
import type { KeptWords } from "./follow-bar.tsx";
import { FollowBar } from "./follow-bar.tsx";
import type { Panel } from "./follow-panels.tsx";
import { FollowPanels } from "./follow-panels.tsx";
import { FollowTools } from "./follow-tools.tsx";
import { HeldVeil } from "./held-veil.tsx";
import { MapBeside } from "./map-beside.tsx";
import { nextChange } from "./next-change.ts";
import type { Notice } from "./notice-strip.tsx";
import { NoticeStrip } from "./notice-strip.tsx";
import { RehearsalStrip } from "./rehearsal-strip.tsx";
import { StartCard } from "./start-card.tsx";
import { useAlerts } from "./use-alerts.ts";
import { useAmendments } from "./use-amendments.ts";
import { useDoneFocus } from "./use-done-focus.ts";
import type { Entering } from "./use-entering.ts";
import { useEntering } from "./use-entering.ts";
import { useFollowList } from "./use-follow-list.ts";
import { useFollowScroll } from "./use-follow-scroll.ts";
import { useRenderRow } from "./use-render-row.tsx";
import { TapGuardContext, useTapGuard } from "./use-tap-guard.ts";
import { useWalkNow } from "./use-walk-now.ts";
import { WalkStateContext } from "./use-walk-state.ts";
import { WatchStrip } from "./watch-strip.tsx";

interface FollowViewProps {
  readonly session: WalkSession;
  readonly folded: Folded;
  readonly ledger: Ledger;
  /** The clock that everybody on the walk uses: the device's own, corrected by what is known of its error. */
  readonly clock: () => Instant;
  /** How far that clock is ahead of the device's own clock, whose times entries carry. */
  readonly clockOffset: Duration;
  /** The part of a source that names this device, such as `/devices/iv-tablet`. */
  readonly device: string;
  /** How the log is kept at this moment. */
  readonly kept: () => KeptWords;
  /** What this device may do in the walk. */
  readonly may: { readonly mark: boolean; readonly close: boolean; readonly surprise: boolean };
  /** False on a device that watches while another plays the rehearsal. */
  readonly playsHere: boolean;
  readonly notices: readonly Notice[];
  readonly onPutAway: (key: string) => void;
  /** What followers beyond a gap can have seen. It is always visible. */
  readonly beyond: (now: Instant) => ReactNode;
  /** The panel about link and followers. */
  readonly linkPanel: (now: Instant, onClose: () => void) => ReactNode;
  /** Goes to one of the walk's other screens. */
  readonly onGo: (to: "shelf" | "timeline" | "review" | "handover" | "train") => void;
  /** Exports the log as a file. */
  readonly onExport: () => void;
}

/** The follow screen: the clock, the crew, the braid with the list, and one tap to mark a step done. */
export function FollowView({
  session,
  folded,
  ledger,
  clock,
  clockOffset,
  device,
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
  const isPractice = isPracticeWalk(ledger);
  const { now, at, state, rehearsal } = useWalkNow({ session, folded, ledger, clock, playsHere });
  const entering = useEntering({ session, ledger, now, clockOffset });
  const actions = may.mark ? entering.actions : null;
  const last = useMemo(() => {
    const entries = lastUndoable(folded, device);
    const said = entries && enteredMessage(entries, outline);
    return entries && said ? { entries, words: inWords(said) } : null;
  }, [folded, device, outline]);
  const risk = useWalkRisk(state);
  const change = nextChange(outline, ledger.windows, state.pet);
  const outstanding = useMemo(() => outstandingOf(state), [state]);
  const strands = useMemo(() => strandsOf(outline.crew), [outline]);
  const [panel, setPanel] = useState<Panel>(null);
  const [isMapOpen, setMapOpen] = useState(false);
  const alerts = useAlerts(state, actions, may.close);
  const isInside = outline.crewMember(entering.actor as CrewId)?.station === "inside";
  const amendments = useAmendments({
    folded,
    ledger,
    device,
    actions,
    isAnswered: may.close || isInside,
  });
  const { rows, markers, nowRow } = useFollowList(state, alerts, amendments.unseen);
  const { scroller, following, toNow, show } = useFollowScroll(nowRow);
  const doneFocus = useDoneFocus(scroller, rows);
  const pick = useCallback((step: string) => setPanel({ step }), []);
  const live = walkMay(state.phase, "mark");
  const screen = useRef<HTMLDivElement>(null);
  const judge = useTapGuard(screen, entering.refused);
  const renderRow = useRenderRow({ outline, strands, actions, live, onPick: pick });
  return (
    <TapGuardContext value={judge}>
      <div className="follow" data-phase={state.phase} ref={screen}>
        <h1 className="heard-only">{outline.procedure.title}</h1>
        <div className="follow-head">
          <FollowBar
            odds={risk?.withinLimit ?? null}
            state={state}
            now={at}
            change={change}
            kept={kept()}
            onKept={() => setPanel("link")}
            onFigures={() => setPanel("figures")}
            onFit={() => setPanel("fit")}
            outstanding={outstanding.length}
            onOutstanding={() => setPanel("outstanding")}
            mode={mode}
          />
          <AlertStrip
            alerts={alerts}
            state={state}
            actions={actions}
            onPick={pick}
            onList={() => setPanel("alerts")}
          />
        </div>
        <CrewCards state={state} strands={strands} alerts={alerts} onShow={show} />
        <AmendmentStrip
          outline={outline}
          {...amendments}
          onDetails={(amendment) => setPanel({ amendment: amendmentKey(amendment) })}
          onTry={
            actions && may.close
              ? ({ changes, reason }) =>
                  setPanel({ amend: { ...NO_DRAFT, wishes: wishesOf(changes), reason } })
              : null
          }
        />
        <NoticeStrip notices={notices} onPutAway={onPutAway} />
        {beyond(clock())}
        {mode === "rehearsal" && playsHere && !isPractice && (
          <RehearsalStrip rehearsal={rehearsal} phase={state.phase} />
        )}
        {live && alerts.length === 0 && <WatchStrip state={state} />}
        <div className="follow-main" data-map={isMapOpen || undefined}>
          <main className="follow-scroll" ref={scroller} {...doneFocus}>
            {walkMay(state.phase, "start") && (
              <StartCard
                title={outline.procedure.title}
                rehearsal={mode === "rehearsal"}
                onStart={actions && (() => void actions.startClock())}
                onSurprises={mode === "rehearsal" && may.close ? () => onGo("train") : null}
              />
            )}
            <WalkStateContext value={state}>
              <BraidedList label={words("follow/steps")} strands={strands} rows={rows} markers={markers}>
                {renderRow}
              </BraidedList>
            </WalkStateContext>
            <FollowEnd
              phase={state.phase}
              isOver={live && nowRow === null}
              mayClose={may.close}
              onClose={() => setPanel("close")}
              onReview={() => onGo("review")}
              onReopen={actions && may.close ? () => setPanel("reopen") : null}
            />
          </main>
          {state.phase === "held" && <HeldVeil state={state} actions={actions} />}
          <FailureBox entering={entering} onExport={onExport} />
          {isMapOpen && (
            <MapBeside state={state} onHelp={() => setPanel("map-help")} onClose={() => setMapOpen(false)} />
          )}
          <FollowPanels
            panel={panel}
            onPanel={setPanel}
            onMap={() => setMapOpen(true)}
            state={state}
            now={at}
            strands={strands}
            alerts={alerts}
            risk={risk}
            change={change}
            may={may}
            folded={folded}
            actions={actions}
            actor={entering.actor}
            onActor={entering.setActor}
            onGo={onGo}
            onExport={onExport}
            linkPanel={(onClose) => linkPanel(clock(), onClose)}
          />
        </div>
        <div className="follow-foot">
          {isPractice && playsHere && <PracticeGuide state={state} walk={session.walk} />}
          <FollowTools
            phase={state.phase}
            entering={entering}
            last={last}
            may={may}
            onPanel={setPanel}
            onMap={() => {
              setPanel(null);
              setMapOpen(!isMapOpen);
            }}
            toNow={following || nowRow === null ? null : toNow}
          />
        </div>
      </div>
    </TapGuardContext>
  );
}

interface FollowEndProps {
  readonly phase: WalkPhase;
  /** True when the walk is running and every step is complete. */
  readonly isOver: boolean;
  readonly mayClose: boolean;
  readonly onClose: () => void;
  readonly onReview: () => void;
  /** Opens the panel that reopens a closed walk; `null` where that may not be done. */
  readonly onReopen: (() => void) | null;
}

/** Shown below the list when nothing is left to do or the walk is closed. */
function FollowEnd({ phase, isOver, mayClose, onClose, onReview, onReopen }: FollowEndProps) {
  if (phase === "closed") {
    return (
      <p className="follow-end">
        {words("follow/is-closed")}{" "}
        <button type="button" className="plain-button" onClick={onReview}>
          {words("follow/read-review")}
        </button>{" "}
        {onReopen && (
          <button type="button" className="plain-button" onClick={onReopen}>
            {words("panel/reopen-walk")}
          </button>
        )}
      </p>
    );
  }
  if (!isOver) return null;
  return (
    <p className="follow-end">
      {words("follow/all-complete")}{" "}
      {mayClose ? (
        <button type="button" className="plain-button" onClick={onClose}>
          {words("follow/close-the-walk")}
        </button>
      ) : (
        words("follow/lead-closes")
      )}
    </p>
  );
}

/** Says that the last entry could not be kept, and what to do. */
function FailureBox({ entering, onExport }: { readonly entering: Entering; readonly onExport: () => void }) {
  if (entering.failure === null) return null;
  return (
    <div className="follow-failure" role="alert">
      <p>{entering.failure}</p>
      <button type="button" className="plain-button" onClick={onExport}>
        {words("follow/export-log")}
      </button>
      <button type="button" className="plain-button" onClick={entering.hideFailure}>
        {words("follow/hide")}
      </button>
    </div>
  );
}
