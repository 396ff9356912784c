import { useState } from "react";
import type { Contingency } from "../../core/procedure/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import type { Strand } from "../braid/index.ts";
import { SidePanel } from "../panel/index.ts";
import { Performers } from "../parts/index.ts";
import { StepAlerts, StepDo, TextInLanguage } from "../texts/index.ts";
import { ContingencyFigures } from "./contingency-figures.tsx";

interface ContingenciesPanelProps {
  readonly state: WalkState;
  readonly strands: readonly Strand[];
  /** The contingency that is open at first; `null` for the list of all. */
  readonly first?: string | null;
  /** Opens an amendment that brings one in; `null` where the plan may not be amended. */
  readonly onBring: ((contingency: Contingency) => void) | null;
  readonly onClose: () => void;
}

/**
 * The contingencies of the procedure, to be read beside the walk: each with what it is for, what it would come to if it
 * were brought in now, and its steps ([OFF4]).
 */
export function ContingenciesPanel({
  state,
  strands,
  first = null,
  onBring,
  onClose,
}: ContingenciesPanelProps) {
  const { contingencies } = state.ledger.inForce.outline.procedure;
  const [open, setOpen] = useState(first);
  const chosen = contingencies.find(({ id }) => id === open);
  if (chosen)
    return (
      <SidePanel title={chosen.title} onClose={() => setOpen(null)}>
        <ContingencyFigures state={state} contingency={chosen} />
        {onBring && (
          <div className="panel-acts">
            <button type="button" className="main-button" onClick={() => onBring(chosen)}>
              {words("panel/bring-in")}
            </button>
          </div>
        )}
        <ContingencySteps contingency={chosen} state={state} strands={strands} />
      </SidePanel>
    );
  return (
    <SidePanel title={words("panel/contingencies")} onClose={onClose}>
      {contingencies.length === 0 && <p className="hint">{words("panel/no-contingencies")}</p>}
      <ul className="plain-list">
        {contingencies.map((contingency) => (
          <li key={contingency.id} className="contingency">
            <button type="button" className="plain-button" onClick={() => setOpen(contingency.id)}>
              <TextInLanguage list="contingencies" id={contingency.id} field="title">
                {contingency.title}
              </TextInLanguage>{" "}
            </button>
            <ContingencyFigures state={state} contingency={contingency} />
          </li>
        ))}
      </ul>
      <p className="hint">{words("panel/contingencies-how")}</p>
    </SidePanel>
  );
}

function ContingencySteps({
  contingency,
  state,
  strands,
}: Pick<ContingenciesPanelProps, "state" | "strands"> & { readonly contingency: Contingency }) {
  const { outline } = state.ledger.inForce;
  return (
    <>
      {contingency.tasks.map((task) => (
        <section key={task.id}>
          <h3>
            <TextInLanguage list="tasks" id={task.id} field="title">
              {task.title}
            </TextInLanguage>
          </h3>
          <ol className="contingency-steps">
            {task.steps.map((step) => (
              <li key={step.id}>
                <Performers lanes={step.by.map((crew) => outline.lane(crew))} strands={strands} />
                <StepAlerts step={step} />
                <p className="contingency-do">
                  <StepDo step={step} />
                </p>
              </li>
            ))}
          </ol>
        </section>
      ))}
    </>
  );
}
