import { useState } from "react";
import type { OutlineStep } from "../../core/procedure/index.ts";
import { contingenciesNamedBy } from "../../core/procedure/index.ts";
import type { StepId } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { walkMay } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { callsOf } from "../parts/index.ts";
import { StepPictures } from "../pictures/index.ts";
import { StepAlerts, StepDo } from "../texts/index.ts";
import { BranchList } from "./branch-list.tsx";
import type { FollowActions } from "./follow-actions.ts";
import { NamedContingencies } from "./named-contingencies.tsx";
import { StepActs } from "./step-acts.tsx";
import { StepFacts } from "./step-facts.tsx";
import { StepNotes } from "./step-notes.tsx";
import { StepOwed } from "./step-owed.tsx";

interface StepPanelProps {
  readonly entry: OutlineStep;
  readonly state: WalkState;
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
  /** Whether this device leads, and so may say which of two contrary decisions holds. */
  readonly maySettle: boolean;
  /** Opens a contingency beside the walk. */
  readonly onContingency: (contingency: string) => void;
  /** Opens an amendment of the plan with this step; `null` where the plan may not be amended. */
  readonly onAmend: ((step: StepId) => void) | null;
  readonly onClose: () => void;
}

/**
 * Everything about one step, with the actions that are rarely needed: skip it, do it out of order, start it now, open
 * it again, add a note.
 */
export function StepPanel({
  entry,
  state,
  actions,
  maySettle,
  onContingency,
  onAmend,
  onClose,
}: StepPanelProps) {
  const { step } = entry;
  const [reason, setReason] = useState("");
  const named = contingenciesNamedBy(state.ledger.inForce.outline.procedure, step);
  const crew = callsOf(state.ledger.inForce.outline, step.by);
  return (
    <SidePanel title={words("panel/step", { number: entry.number, crew })} onClose={onClose}>
      <StepAlerts step={step} />
      <p className="open-do">
        <StepDo step={step} />
      </p>
      <StepPictures procedure={state.ledger.inForce.outline.procedure} step={step} />
      {named.length > 0 && (
        <section aria-label={words("panel/contingency-named")}>
          <h3>{words("panel/contingency-named")}</h3>
          <NamedContingencies contingencies={named} onOpen={onContingency} />
        </section>
      )}
      <StepOwed entry={entry} state={state} actions={actions} />
      <StepNotes step={step.id} state={state} />
      <StepFacts entry={entry} state={state} />
      {step.decide && <BranchList state={state} decision={step.decide.id} />}
      {walkMay(state.phase, "mark") && actions && (
        <StepActs
          entry={entry}
          state={state}
          actions={actions}
          maySettle={maySettle}
          reason={reason}
          onReason={setReason}
          onClose={onClose}
        />
      )}
      {onAmend && state.ledger.steps.get(step.id)?.status === "open" && (
        <div className="panel-acts">
          <button type="button" className="plain-button" onClick={() => onAmend(step.id)}>
            {words("panel/amend-step")}
          </button>
        </div>
      )}
    </SidePanel>
  );
}
