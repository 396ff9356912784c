import type { BrokenBound, Risk } from "../../core/plan/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { StepId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

/** The windows that samples miss and the bounds that they break, each with its share; nothing where there are none. */
export function RiskMisses({ outline, risk }: { readonly outline: Outline; readonly risk: Risk }) {
  const { unfit, missed, broken, samples } = risk;
  if (unfit === 0 && broken.length === 0) return null;
  const labelOf = (id: string) => outline.procedure.windows.find((one) => one.id === id)?.label ?? id;
  const stepName = (id: StepId) => words("timeline/step", { number: outline.step(id)?.number ?? id });
  return (
    <details className="risk-misses" open>
      <summary>{words("risk/title")}</summary>
      <ul>
        {unfit > 0 && (
          <li>
            {words("risk/unfit", {
              share: unfit,
              windows: sharesIn(missed.windows, labelOf),
              steps: sharesIn(missed.steps, stepName),
            })}
          </li>
        )}
        {broken.map((one) => (
          <li key={JSON.stringify(one.bound)}>{brokenWords(one, stepName)}</li>
        ))}
      </ul>
      <p className="hint">{words("risk/how", { samples })}</p>
    </details>
  );
}

/** The greatest first. */
function sharesIn<Id extends string>(shares: ReadonlyMap<Id, number>, nameOf: (id: Id) => string): string[] {
  return [...shares]
    .toSorted(([, a], [, b]) => b - a)
    .map(([id, share]) => words("risk/of", { name: nameOf(id), share }));
}

function brokenWords({ bound, share }: BrokenBound, nameOf: (id: StepId) => string): string {
  const step = nameOf(bound.step);
  return "doneBy" in bound
    ? words("risk/done-late", { step, by: bound.doneBy, share })
    : words("risk/started-late", { step, within: bound.within, after: nameOf(bound.after), share });
}
