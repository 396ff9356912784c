import type { Network } from "../order/index.ts";
import type { LaneWays } from "./lane-ways.ts";
import { laneWaysOf } from "./lane-ways.ts";
import { IMPOSSIBLE } from "./layout.ts";
import type { ModelStand, ModelStep, Past, SplitModel } from "./split-model.ts";

/** What holds of the steps in every split: times in ms, by index. */
export interface SureTimes {
  /** No split completes a step earlier than its head and its least time after PET 0. */
  readonly head: Float64Array;
  readonly least: Float64Array;
  /** No split is over earlier than so long after a step is complete. */
  readonly tail: Float64Array;
}

/** With more steps than this not every pair in a lane is linked. */
const MOST_LINKED = 600;
const FEW_LINKS = 8;

/** The least time of a step to come; zero for a translation that takes as long as the way, which its head has. */
const leastTime = ({ stands }: ModelStep) => Math.min(...stands.map(({ time }) => Math.max(0, time)));

/** From when on a step that has begun takes time that is left: a complete one takes none. */
const leftFrom = ({ finish, isOver }: Past, now: number) => (isOver ? finish : Math.min(now, finish));

/** Which tasks stand before which in every split: the pairs that must, and what follows from them. Row by row. */
export function sureTasks({ tasks, stays }: Pick<SplitModel, "tasks" | "stays">): Uint8Array {
  const count = tasks.length;
  const sure = stays.slice();
  for (let middle = 0; middle < count; middle += 1)
    for (let one = 0; one < count; one += 1)
      if (sure[one * count + middle] === 1)
        for (let other = 0; other < count; other += 1)
          if (sure[middle * count + other] === 1) sure[one * count + other] = 1;
  return sure;
}

/** The pairs of stands that two steps can have together. */
export function* standsTogether(
  model: SplitModel,
  one: number,
  other: number,
): Generator<[ModelStand, ModelStand]> {
  const { steps, groups, groupOf, seatOf } = model;
  const stand = (step: number, option: readonly number[] | undefined) =>
    steps[step]?.stands[option?.[seatOf[step] ?? 0] ?? 0] as ModelStand;
  const [a, b] = [groups[groupOf[one] ?? 0], groups[groupOf[other] ?? 0]];
  for (const option of a?.options ?? [])
    if (a === b) yield [stand(one, option), stand(other, option)];
    else for (const another of b?.options ?? []) yield [stand(one, option), stand(other, another)];
}

/** The least gap between two steps in every pair of stands; `null` when they may be in lanes of their own. */
function leastGap(model: SplitModel, ways: LaneWays, one: number, other: number): number | null {
  const [a, b] = [model.steps[one] as ModelStep, model.steps[other] as ModelStep];
  let least = IMPOSSIBLE;
  for (const [first, second] of standsTogether(model, one, other)) {
    const gap = ways.gapBetween({ step: a, stand: first }, { step: b, stand: second });
    if (gap === null) return null;
    least = Math.min(least, gap);
  }
  return least === IMPOSSIBLE ? 0 : least;
}

/**
 * The heads, least times and tails of the steps, by the longest chains of what comes before what in every split: links,
 * and steps of one lane whose order cannot change. A translation by the way counts as complete with its head.
 */
export function sureTimes(model: SplitModel, network: Network): SureTimes {
  const { steps, tasks, now } = model;
  const ways = laneWaysOf(model);
  const count = steps.length;
  const local = new Map(steps.map(({ index }, at) => [index, at]));
  const order = network.order.flatMap((index) => local.get(index) ?? []);
  const sure = sureTasks(model);
  const isBefore = (one: number, other: number) => {
    const [a, b] = [steps[one], steps[other]];
    if (!a || !b) return false;
    return a.task === b.task ? a.index < b.index : sure[a.task * tasks.length + b.task] === 1;
  };
  const links: { from: number; to: number; gap: number }[] = [];
  for (const [at, step] of steps.entries())
    for (const [link, from] of step.past ? [] : step.after.entries())
      links.push({ from, to: at, gap: step.lags[link] ?? 0 });
  // Of many steps each has links to the next ones only: fewer links make a bound no wrong one.
  const most = count > MOST_LINKED ? FEW_LINKS : count;
  for (const one of steps.keys()) {
    let own = 0;
    for (let other = 0; other < count && own < most; other += 1) {
      if (steps[other]?.past || !isBefore(one, other)) continue;
      const gap = leastGap(model, ways, one, other);
      if (gap === null) continue;
      links.push({ from: one, to: other, gap });
      own += 1;
    }
  }
  const before: (typeof links)[] = steps.map(() => []);
  const behind: (typeof links)[] = steps.map(() => []);
  for (const link of links) {
    before[link.to]?.push(link);
    behind[link.from]?.push(link);
  }
  const least = Float64Array.from(steps, (step) =>
    step.past ? step.past.finish - leftFrom(step.past, now) : leastTime(step),
  );
  const head = Float64Array.from(steps, ({ past }) => (past ? leftFrom(past, now) : 0));
  const tail = new Float64Array(count);
  for (const at of order) {
    const step = steps[at] as ModelStep;
    if (step.past) continue;
    let begins = Math.max(step.notBefore, Math.min(...step.stands.map((stand) => ways.readyIn(step, stand))));
    for (const { from, gap } of before[at] ?? [])
      begins = Math.max(begins, (head[from] as number) + (least[from] as number) + gap);
    head[at] = begins;
  }
  for (const at of order.toReversed())
    for (const { to, gap } of behind[at] ?? [])
      tail[at] = Math.max(tail[at] as number, gap + (least[to] as number) + (tail[to] as number));
  return { head, least, tail };
}
