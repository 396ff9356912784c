import { useMemo, useState } from "react";
import { marginOf } from "../../core/course/index.ts";
import { planOf } from "../../core/plan/index.ts";
import type { Contingency } from "../../core/procedure/index.ts";
import { outlineOf } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { minus } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import type { Strand } from "../braid/index.ts";
import { SidePanel } from "../panel/index.ts";
import { AlertBox, Performers } from "../parts/index.ts";

interface ContingenciesPanelProps {
  readonly state: WalkState;
  readonly strands: readonly Strand[];
  readonly onClose: () => void;
}

/**
 * The contingencies of the procedure, to be read beside the walk: each with the time it takes from where everybody is
 * now, what that leaves of the margin, and its steps ([OFF4]).
 */
export function ContingenciesPanel({ state, strands, onClose }: ContingenciesPanelProps) {
  const { contingencies } = state.ledger.inForce.outline.procedure;
  const [open, setOpen] = useState<string | null>(null);
  const chosen = contingencies.find(({ id }) => id === open);
  if (chosen)
    return (
      <SidePanel title={chosen.title} onClose={() => setOpen(null)}>
        <Takes state={state} contingency={chosen} />
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
              {contingency.title}
            </button>
            <Takes state={state} contingency={contingency} />
          </li>
        ))}
      </ul>
      <p className="hint">{words("panel/contingencies-how")}</p>
    </SidePanel>
  );
}

/** The likely time that a contingency takes from where everybody is now; `null` when no plan can be made of it. */
function timeOf({ ledger, lanes }: WalkState, { tasks }: Contingency): Duration | null {
  const { procedure } = ledger.inForce.outline;
  const crew = procedure.crew.map((member, lane) => {
    const place = lanes[lane]?.place ?? null;
    return place === null ? member : { ...member, start: place };
  });
  const outline = outlineOf({ ...procedure, crew, tasks });
  return planOf(outline, { getAheads: true }).timeline?.course.finish ?? null;
}

function Takes({ state, contingency }: { readonly state: WalkState; readonly contingency: Contingency }) {
  const { ledger, lanes, forecast } = state;
  const placesKey = lanes.map(({ place }) => place).join(" ");
  // biome-ignore lint/correctness/useExhaustiveDependencies: the state changes every second, the places seldom.
  const time = useMemo(() => timeOf(state, contingency), [ledger.inForce, contingency, placesKey]);
  const margin = forecast && marginOf(forecast);
  if (time === null) return <p className="hint">{words("panel/contingency-unknown")}</p>;
  if (margin === null) return <p className="hint">{words("panel/contingency-takes", { time })}</p>;
  const left = minus(margin, time);
  return (
    <p className="hint">
      {left < 0
        ? words("panel/contingency-over", { time, over: left })
        : words("panel/contingency-leaves", { time, left })}
    </p>
  );
}

function ContingencySteps({
  contingency,
  state,
  strands,
}: Omit<ContingenciesPanelProps, "onClose"> & { readonly contingency: Contingency }) {
  const { outline } = state.ledger.inForce;
  return (
    <>
      {contingency.tasks.map((task) => (
        <section key={task.id}>
          <h3>{task.title}</h3>
          <ol className="contingency-steps">
            {task.steps.map((step) => (
              <li key={step.id}>
                <Performers lanes={step.by.map((crew) => outline.lane(crew))} strands={strands} />
                {step.alerts.map((alert) => (
                  <AlertBox key={alert.text} alert={alert} />
                ))}
                <p className="contingency-do">{step.do}</p>
              </li>
            ))}
          </ol>
        </section>
      ))}
    </>
  );
}
