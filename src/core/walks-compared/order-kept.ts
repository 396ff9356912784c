import type { Course } from "../course/index.ts";
import { lanesInTime } from "../course/index.ts";
import { commonLength } from "../statistics/index.ts";
import type { CrewId, StepId } from "../units/index.ts";
import type { Ledger } from "../walk/index.ts";
import { basePlanOf, progressOf } from "../walk/index.ts";

/** How a walk kept the order of its procedure ([CMP1]). */
export interface OrderKept {
  readonly lookedAt: number;
  readonly broken: number;
  /** 1 − broken/looked at; `null` when nothing was looked at. */
  readonly share: number | null;
}

/** How far a lane was done as planned ([CMP1]). */
export interface LaneFitness {
  readonly crew: CrewId;
  readonly planned: number;
  readonly flown: number;
  /** The length of what both have in common, in order. */
  readonly common: number;
  /** From 0 to 1; `null` for a lane with nothing planned and nothing done. */
  readonly fitness: number | null;
}

/** Returns how many precedences of the walk as flown were looked at, and how many of them were broken. */
export function orderKept(ledger: Ledger, { network, outline, steps }: Course): OrderKept {
  const doneAt = (index: number) => {
    const one = steps.get(outline.steps[index]?.step.id as StepId);
    return one?.stage === "done" ? one : null;
  };
  let [lookedAt, broken] = [0, 0];
  for (const links of network.before) {
    for (const { from, to } of links) {
      const [before, behind] = [doneAt(from), doneAt(to)];
      if (!before || !behind || progressOf(ledger, before.step).reopened.length > 0) continue;
      lookedAt += 1;
      if (behind.start < before.finish) broken += 1;
    }
  }
  return { lookedAt, broken, share: lookedAt === 0 ? null : 1 - broken / lookedAt };
}

/** Returns for each crew member of the procedure in force how far the lane was done as planned. */
export function laneFitnesses(ledger: Ledger, flown: Course): readonly LaneFitness[] {
  const { outline } = ledger.opened.procedure;
  const planned = basePlanOf(ledger).timeline?.course.steps ?? null;
  const isDone = (step: StepId) => flown.steps.get(step)?.stage === "done";
  return flown.outline.crew.map(({ id }, lane): LaneFitness => {
    const plan = outline.steps.flatMap(({ step, getAhead }) =>
      step.by.includes(id) && (planned?.has(step.id) || (getAhead && isDone(step.id))) ? [step.id] : [],
    );
    const done = (lanesInTime(flown)[lane] ?? []).flatMap(({ step, stage }) =>
      stage === "done" ? [step] : [],
    );
    const both = plan.length + done.length;
    const common = commonLength(plan, done);
    return {
      crew: id,
      planned: plan.length,
      flown: done.length,
      common,
      fitness: both === 0 ? null : 1 - (both - 2 * common) / both,
    };
  });
}
