import type { Network } from "../order/index.ts";
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

/** Where somebody is, and when they are free, by what they have begun. */
interface Present {
  /** −1 where that is not sure. */
  readonly place: number;
  readonly ready: number;
}

/**
 * Where everybody is once what has begun is complete. Nobody's place is sure who has something to do yet in front of what they have begun, nor
 * are the ways between.
 */
function presentIn({ steps, starts, isPlaced, laneCount, now }: SplitModel): readonly Present[] {
  return Array.from({ length: laneCount }, (_, lane): Present => {
    let [place, ready, isSure, isOpen] = [starts[lane] ?? -1, now, true, false];
    for (const { past, stands, to } of steps) {
      const [stand] = stands;
      if (!past || !stand) {
        isOpen ||= stands.some(({ lanes }) => lanes.includes(lane));
        continue;
      }
      const seat = stand.lanes.indexOf(lane);
      if (seat === -1) continue;
      isSure &&= !isOpen;
      const need = stand.needs[seat] ?? -1;
      place = to >= 0 && isPlaced[lane] === 1 ? to : need >= 0 ? need : place;
      ready = Math.max(ready, past.finish);
    }
    return { place: isSure ? place : -1, ready };
  });
}

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

/**
 * The least time from the completion of one step to the start of another behind it in the same lane, in every pair of
 * stands; `null` when they may be in lanes of their own. No way with a stop between is quicker than those of `travel`.
 */
function laneGap(
  model: SplitModel,
  travel: Float64Array,
  [one, other]: readonly [number, number],
  isSure: (lane: number) => boolean,
): number | null {
  const { placeCount, steps } = model;
  const [a, b] = [steps[one], steps[other]];
  const isPast = a?.past != null;
  let least = IMPOSSIBLE;
  for (const [first, second] of standsTogether(model, one, other)) {
    let gap = -1;
    for (const [seat, lane] of first.lanes.entries()) {
      const next = second.lanes.indexOf(lane);
      if (next === -1) continue;
      const from =
        model.isPlaced[lane] === 1 && (a?.to ?? -1) >= 0 ? (a?.to ?? -1) : (first.needs[seat] ?? -1);
      const need = second.needs[next] ?? -1;
      // Of what has begun only the last place counts, which the heads have.
      const to = isPast || !isSure(lane) ? -1 : need >= 0 ? need : second.time < 0 ? (b?.to ?? -1) : -1;
      gap = Math.max(gap, from >= 0 && to >= 0 ? (travel[from * placeCount + to] as number) : 0);
    }
    if (gap < 0) return null;
    least = Math.min(least, gap);
  }
  return least === IMPOSSIBLE ? 0 : least;
}

/**
 * The heads, least times and tails of the steps, by the longest chains of what comes before what in every split: links,
 * and steps of one lane whose order cannot change. A translation by the way counts as complete with its head.
 */
export function sureTimes(model: SplitModel, network: Network): SureTimes {
  const { steps, tasks, placeCount, now, starts } = model;
  const present = presentIn(model);
  const isSure = (lane: number) => (starts[lane] ?? -1) < 0 || (present[lane]?.place ?? -1) >= 0;
  const travel = givenWays(model, (time) => time);
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
      const gap = laneGap(model, travel, [one, other], isSure);
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
    let begins = Math.max(step.notBefore, Math.min(...step.stands.map(fromPresent(step))));
    for (const { from, gap } of before[at] ?? [])
      begins = Math.max(begins, (head[from] as number) + (least[from] as number) + gap);
    head[at] = begins;
  }
  for (const at of order.toReversed())
    for (const { to, gap } of behind[at] ?? [])
      tail[at] = Math.max(tail[at] as number, gap + (least[to] as number) + (tail[to] as number));
  return { head, least, tail };

  /** When those of a stand can be there at the earliest from where they are. */
  function fromPresent(step: ModelStep) {
    return ({ lanes, needs, time }: ModelStand) =>
      Math.max(
        0,
        ...[...lanes].map((lane, seat) => {
          const need = needs[seat] ?? -1;
          const to = need >= 0 ? need : time < 0 ? step.to : -1;
          const { place: from, ready } = present[lane] as Present;
          return ready + (from >= 0 && to >= 0 ? (travel[from * placeCount + to] as number) : 0);
        }),
      );
  }
}

/**
 * The times of the quickest ways, also with the ways that steps of their own go, which take what `costOf` says of the
 * time of such a step: no way with a stop between is quicker.
 */
export function givenWays(
  { travel, placeCount, steps }: SplitModel,
  costOf: (time: number) => number,
): Float64Array {
  const times = travel.slice();
  for (const { to, stands } of steps)
    for (const { needs, time } of stands) {
      if (to < 0 || time < 0) continue;
      const cost = costOf(time);
      // From an unknown place the step may come from anywhere.
      for (const need of needs)
        for (let from = 0; from < placeCount; from += 1)
          if (need === -1 || need === from) {
            times[from * placeCount + to] = Math.min(times[from * placeCount + to] as number, cost);
            times[to * placeCount + from] = Math.min(times[to * placeCount + from] as number, cost);
          }
    }
  for (let middle = 0; middle < placeCount; middle += 1)
    for (let a = 0; a < placeCount; a += 1)
      for (let b = 0; b < placeCount; b += 1)
        times[a * placeCount + b] = Math.min(
          times[a * placeCount + b] as number,
          (times[a * placeCount + middle] as number) + (times[middle * placeCount + b] as number),
        );
  return times;
}
