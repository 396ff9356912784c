import type { ReactNode } from "react";
import type { Risk } from "../../core/plan/index.ts";
import type { Contingency } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { Folded, WalkAlert, WalkState } from "../../core/walk/index.ts";
import { outstandingOf, walkMay } from "../../core/walk/index.ts";
import type { AmendmentDraft } from "../amend/index.ts";
import {
  AmendmentPanel,
  AmendPanel,
  amendmentKey,
  bringing,
  fitted,
  mayBeAmended,
  NO_DRAFT,
  wishesOf,
} from "../amend/index.ts";
import type { Strand } from "../braid/index.ts";
import { HelpPanel } from "../help/index.ts";
import { AlertsPanel } from "./alerts-panel.tsx";
import { ClosePanel } from "./close-panel.tsx";
import { ContingenciesPanel } from "./contingencies-panel.tsx";
import { FiguresPanel } from "./figures-panel.tsx";
import { FitsPanel } from "./fits-panel.tsx";
import type { FollowActions } from "./follow-actions.ts";
import { HoldPanel } from "./hold-panel.tsx";
import { ItemsPanel } from "./items-panel.tsx";
import { MorePanel } from "./more-panel.tsx";
import type { NextChange } from "./next-change.ts";
import { NotesPanel } from "./notes-panel.tsx";
import { OutstandingPanel } from "./outstanding-panel.tsx";
import { PaperPanel } from "./paper-panel.tsx";
import { ReadingsPanel } from "./readings-panel.tsx";
import { ReopenPanel } from "./reopen-panel.tsx";
import { SplitRestPanel } from "./split-rest-panel.tsx";
import { StepPanel } from "./step-panel.tsx";

/** The panel that is open beside the list; `null` for none. */
export type Panel =
  | "notes"
  | "items"
  | "readings"
  | "hold"
  | "close"
  | "more"
  | "link"
  | "figures"
  | "fit"
  | "split"
  | "contingencies"
  | "outstanding"
  | "alerts"
  | "reopen"
  | "help"
  | "map-help"
  | "paper"
  | { readonly step: string }
  | { readonly contingency: string }
  | { readonly amend: AmendmentDraft }
  | { readonly amendment: string }
  | null;

interface FollowPanelsProps {
  readonly panel: Panel;
  readonly onPanel: (panel: Panel) => void;
  /** Opens the map beside the list. */
  readonly onMap: () => void;
  readonly state: WalkState;
  readonly now: Instant;
  readonly strands: readonly Strand[];
  readonly alerts: readonly WalkAlert[];
  readonly risk: Risk | null;
  readonly change: NextChange | null;
  readonly folded: Folded;
  /** What this device may do in the walk. */
  readonly may: { readonly mark: boolean; readonly close: boolean; readonly surprise: boolean };
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
  readonly actor: string;
  readonly onActor: (actor: string) => void;
  readonly onGo: (to: "shelf" | "timeline" | "review" | "handover" | "train") => void;
  readonly onExport: () => void;
  /** The panel about link and followers. */
  readonly linkPanel: (onClose: () => void) => ReactNode;
}

/** Opens an amendment that brings a contingency in behind the step in hand, with its title as the reason. */
function bringsIn({ ledger }: WalkState, now: Instant, onAmend: (draft: Partial<AmendmentDraft>) => void) {
  return ({ id }: Contingency) => {
    const contingency = ledger.inForce.outline.procedure.contingencies.find((one) => one.id === id);
    if (!contingency) return;
    const wish = bringing(ledger, contingency, now);
    onAmend({ wishes: wish ? [wish] : [], reason: contingency.title });
  };
}

/** Draws the panel that is open beside the list, if there is one. */
export function FollowPanels(props: FollowPanelsProps) {
  const { panel, onPanel, state, now, actions } = props;
  const onClose = () => onPanel(null);
  if (panel === null) return null;
  const { ledger } = state;
  const onContingency = (contingency: string) => onPanel({ contingency });
  // A lead may amend the plan as long as the walk is not closed.
  const onAmend =
    actions && props.may.close && mayBeAmended(ledger)
      ? (draft: Partial<AmendmentDraft>) => onPanel({ amend: { ...NO_DRAFT, ...draft } })
      : null;
  // What is entered is told of the procedure as written, in whatever language it is read.
  const written = props.folded.ledger ? { ...state, ledger: props.folded.ledger } : state;
  const onBring = onAmend && bringsIn(written, now, onAmend);
  if (typeof panel === "object" && "contingency" in panel)
    return (
      <ContingenciesPanel
        key={panel.contingency}
        state={state}
        strands={props.strands}
        first={panel.contingency}
        onBring={onBring}
        onClose={onClose}
      />
    );
  if (typeof panel === "object" && "amend" in panel)
    return actions && onAmend ? (
      <AmendPanel
        state={written}
        now={now}
        risk={props.risk}
        first={panel.amend}
        onAmend={actions.amend}
        onClose={onClose}
      />
    ) : null;
  if (typeof panel === "object" && "amendment" in panel) {
    const amendment = ledger.amendments.find((one) => amendmentKey(one) === panel.amendment);
    return amendment ? <AmendmentPanel ledger={ledger} amendment={amendment} onClose={onClose} /> : null;
  }
  if (typeof panel === "object") {
    const entry = state.ledger.inForce.outline.step(panel.step);
    return entry ? (
      <StepPanel
        key={panel.step}
        entry={entry}
        state={state}
        actions={actions}
        maySettle={props.may.close}
        onContingency={onContingency}
        onAmend={onAmend && ((step) => onAmend({ step }))}
        onClose={onClose}
      />
    ) : null;
  }
  if (panel === "link") return props.linkPanel(onClose);
  if (panel === "help") return <HelpPanel screen="follow" onClose={onClose} />;
  if (panel === "map-help") return <HelpPanel screen="map" onClose={onClose} />;
  if (panel === "contingencies")
    return <ContingenciesPanel state={state} strands={props.strands} onBring={onBring} onClose={onClose} />;
  if (panel === "fit")
    return (
      <FitsPanel
        state={state}
        folded={props.folded}
        now={now}
        onAmend={onAmend && ((tasks) => onAmend({ wishes: fitted(ledger.inForce.outline, tasks) }))}
        onSplit={() => onPanel("split")}
        onClose={onClose}
      />
    );
  if (panel === "split")
    return (
      <SplitRestPanel
        state={state}
        folded={props.folded}
        now={now}
        onAmend={onAmend && ((changes) => onAmend({ wishes: wishesOf(changes) }))}
        onClose={onClose}
      />
    );
  if (panel === "alerts")
    return (
      <AlertsPanel
        alerts={props.alerts}
        state={state}
        actions={actions}
        onPick={(step) => onPanel({ step })}
        onContingency={onContingency}
        onClose={onClose}
      />
    );
  if (panel === "outstanding")
    return (
      <OutstandingPanel
        state={state}
        outstanding={outstandingOf(state)}
        actions={actions}
        onPick={(step) => onPanel({ step })}
        onClose={onClose}
      />
    );
  if (panel === "figures")
    return (
      <FiguresPanel
        state={state}
        now={now}
        risk={props.risk}
        change={props.change}
        onReadings={actions && (() => onPanel("readings"))}
        onLight={
          actions && onAmend
            ? (light) => {
                void actions.chooseLight(light).then(onClose);
              }
            : null
        }
        onClose={onClose}
      />
    );
  if (panel === "more") {
    return (
      <MorePanel
        ledger={state.ledger}
        ignored={props.folded.ignored}
        actor={props.actor}
        onActor={props.onActor}
        onGo={props.onGo}
        onExport={props.onExport}
        onCloseWalk={props.may.close && walkMay(state.phase, "close") ? () => onPanel("close") : null}
        onSurprises={props.may.surprise ? () => props.onGo("train") : null}
        onItems={actions && (() => onPanel("items"))}
        onAmend={onAmend && (() => onAmend({}))}
        onPaper={actions && walkMay(state.phase, "mark") ? () => onPanel("paper") : null}
        onMap={() => {
          onClose();
          props.onMap();
        }}
        onHelp={() => onPanel("help")}
        onLink={() => onPanel("link")}
        onClose={onClose}
      />
    );
  }
  if (!actions) return null;
  const shared = { state, now, actions, onClose };
  switch (panel) {
    case "notes":
      return <NotesPanel {...shared} />;
    case "items":
      return <ItemsPanel {...shared} />;
    case "readings":
      return <ReadingsPanel {...shared} folded={props.folded} />;
    case "hold":
      return <HoldPanel {...shared} />;
    case "reopen":
      return <ReopenPanel actions={actions} onClose={onClose} />;
    case "paper":
      return <PaperPanel {...shared} actor={props.actor} />;
    case "close":
      return <ClosePanel {...shared} onClosed={() => props.onGo("review")} />;
  }
}
