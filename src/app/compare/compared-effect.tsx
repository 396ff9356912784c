import { useMemo } from "react";
import type { CheckOptions } from "../../core/check/index.ts";
import type { Wait } from "../../core/course/index.ts";
import type { Effect, Sides } from "../../core/effect/index.ts";
import type { Plan, Risk } from "../../core/plan/index.ts";
import { riskModelOf } from "../../core/plan/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration, StepId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { bothInWords, FindingChanges, FinishShift, SidesTable, spareWords } from "../effect/index.ts";
import { useRisk } from "../risk/index.ts";

interface ComparedEffectProps {
  readonly names: Sides<string>;
  readonly effect: Effect;
  /** Both procedures as they are shown. */
  readonly shown: Sides<Outline>;
}

/** What the effect of one procedure in the place of another is asked with here: chances are sampled apart, in a worker. */
export const effectOptions = ({ start, light }: CheckOptions) => ({
  start: start ?? null,
  light: light ?? null,
  samples: 0,
  seed: 1,
});

function usePlanRisk(plan: Plan): Risk | null {
  const model = useMemo(() => (plan.timeline ? riskModelOf(plan.timeline.course) : null), [plan]);
  return useRisk(model, { subject: model, after: 0 });
}

const waited = (waits: readonly Wait[]) =>
  waits.reduce((sum, { from, to }) => sum + to - from, 0) as Duration;

const clock = (at: Duration | null) => (at === null ? "–" : words("compare/clock", { at }));

/** What it comes to when one procedure takes the place of another ([CHG7]). */
export function ComparedEffect({ names, effect, shown }: ComparedEffectProps) {
  const { plans, finish, margin, waits, findings } = effect;
  const risk: Sides<Risk | null> = { before: usePlanRisk(plans.before), after: usePlanRisk(plans.after) };
  const chance = (plan: Plan, sampled: Risk | null) => {
    if (!plan.timeline) return words("compare/no-plan");
    if (sampled === null) return words("compare/sampling");
    return sampled.withinLimit === null
      ? words("effect/none")
      : words("figures/chance", { share: sampled.withinLimit });
  };
  const hasLimit = [plans.before, plans.after].some(
    ({ outline }) => outline.procedure.limits.elapsed !== undefined,
  );
  const rows = [
    {
      what: words("compare/finish"),
      sides: bothInWords(finish, (at) =>
        at === null ? words("compare/no-plan") : words("compare/pet", { at }),
      ),
    },
    ...(hasLimit
      ? [
          { what: words("compare/margin"), sides: bothInWords(margin, spareWords) },
          {
            what: words("compare/within"),
            sides: {
              before: chance(plans.before, risk.before),
              after: chance(plans.after, risk.after),
            },
          },
        ]
      : []),
    {
      what: words("compare/waits"),
      sides: bothInWords(waits, (all) => words("figures/length", { time: waited(all) })),
    },
    {
      what: words("compare/steps"),
      sides: bothInWords(plans, ({ outline }) => String(outline.steps.length)),
    },
  ];
  return (
    <>
      <FinishShift finish={finish} />
      <SidesTable heads={names} rows={rows} />
      <CriticalPaths effect={effect} />
      <ShiftedSteps effect={effect} shown={shown} />
      <FindingChanges findings={findings} />
    </>
  );
}

const numberOf = ({ outline }: Plan, id: StepId) => outline.step(id)?.number ?? id;

function CriticalPaths({ effect: { criticalPath, plans } }: { readonly effect: Effect }) {
  const before = criticalPath.before.map((id) => numberOf(plans.before, id));
  const after = criticalPath.after.map((id) => numberOf(plans.after, id));
  if (criticalPath.before.join() === criticalPath.after.join()) return null;
  return (
    <details className="compare-shifted">
      <summary>{words("compare/critical-changes")}</summary>
      {before.length > 0 && <p className="hint">{words("compare/critical", { steps: before })}</p>}
      {after.length > 0 && <p>{words("compare/critical-then", { steps: after })}</p>}
    </details>
  );
}

function ShiftedSteps({ effect: { steps }, shown }: Pick<ComparedEffectProps, "effect" | "shown">) {
  const shifted = steps.filter(
    ({ start, slack }) => start.before !== start.after || slack.before !== slack.after,
  );
  if (shifted.length === 0) return null;
  return (
    <details className="compare-shifted">
      <summary>{words("compare/shifted", { count: shifted.length })}</summary>
      <table className="effect-table">
        <thead>
          <tr>
            <th scope="col">{words("compare/step-column")}</th>
            <th scope="col">{words("compare/start-column")}</th>
            <th scope="col">{words("compare/then-column")}</th>
            <th scope="col">{words("compare/slack-column")}</th>
            <th scope="col">{words("compare/then-column")}</th>
          </tr>
        </thead>
        <tbody>
          {shifted.map(({ id, start, slack }) => {
            const entry = shown.after.step(id) ?? shown.before.step(id);
            return (
              <tr key={id}>
                <th scope="row">
                  {entry?.number ?? id} {entry?.step.do}
                </th>
                <td>{clock(start.before)}</td>
                <td>{clock(start.after)}</td>
                <td>{spareOrDash(slack.before)}</td>
                <td>{spareOrDash(slack.after)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </details>
  );
}

const spareOrDash = (slack: Duration | null) => (slack === null ? "–" : spareWords(slack));
