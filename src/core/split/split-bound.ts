import type { Network } from "../order/index.ts";
import { givenWays } from "./lane-ways.ts";
import { leastTree, shortestTour } from "./shortest-tour.ts";
import type { ModelStep, SplitModel } from "./split-model.ts";
import type { SureTimes } from "./sure-order.ts";
import { sureTimes } from "./sure-order.ts";

/** With more lanes than this only one lane at a time and all together are looked at. */
const MOST_LANES = 5;
/** With more steps than this a load is looked at as a whole only. */
const MOST_PARTS = 200;

/**
 * A time in ms before which no split is complete ([FIT3]): the longest chain of steps whose order cannot change, and
 * what each set of lanes has to do at least, with the ways between.
 */
export function splitBound(model: SplitModel, network: Network): number {
  const times = sureTimes(model, network);
  const { head, least, tail } = times;
  let bound = 0;
  for (const at of model.steps.keys())
    bound = Math.max(bound, (head[at] as number) + (least[at] as number) + (tail[at] as number));
  for (const lanes of laneSets(model.laneCount)) {
    const loads = loadsOf(model, lanes);
    if (lanes.length === 1) bound = Math.max(bound, oneLane(times, loads));
    bound = Math.max(bound, loadBound(times, loads, lanes.length), tourBound(model, times, lanes, loads));
  }
  return Math.ceil(bound);
}

/** A step and the time that it takes of a set of lanes at least, in ms of one crew member. */
export interface Load {
  readonly step: number;
  readonly time: number;
}

export function laneSets(count: number): readonly (readonly number[])[] {
  const all = Array.from({ length: count }, (_, lane) => lane);
  if (count > MOST_LANES) return [...all.map((lane) => [lane]), all];
  return Array.from({ length: 2 ** count - 1 }, (_, bits) => all.filter((lane) => ((bits + 1) >> lane) & 1));
}

export function loadsOf({ steps, now }: SplitModel, lanes: readonly number[]): readonly Load[] {
  return steps.flatMap(({ stands, past }, step) => {
    const seats = stands.map((stand) => stand.lanes.filter((lane) => lanes.includes(lane)).length);
    if (seats.includes(0) || past?.isOver) return [];
    if (past) return [{ step, time: Math.max(0, past.finish - now) * (seats[0] ?? 0) }];
    const time = Math.min(...stands.map((stand, index) => Math.max(0, stand.time) * (seats[index] ?? 0)));
    return [{ step, time }];
  });
}

/** Work with late heads and long tails, and what the lanes need for it together. */
export function loadBound(
  { head, tail }: Pick<SureTimes, "head" | "tail">,
  loads: readonly Load[],
  lanes: number,
): number {
  const work = loads.filter(({ time }) => time > 0);
  if (work.length === 0) return 0;
  const least = (of: Float64Array) => Math.min(...work.map(({ step }) => of[step] as number));
  const heads =
    work.length > MOST_PARTS ? [least(head)] : [...new Set(work.map(({ step }) => head[step] as number))];
  let bound = 0;
  // In order of their tails, longest first, so that each sum goes on from the one before.
  const byTail = work.toSorted((a, b) => (tail[b.step] as number) - (tail[a.step] as number));
  for (const from of heads) {
    let sum = 0;
    for (const { step, time } of byTail) {
      if ((head[step] as number) < from) continue;
      sum += time;
      bound = Math.max(bound, from + sum / lanes + (tail[step] as number));
    }
  }
  return bound;
}

/** One lane whose steps could be broken off and taken up again: always the one with the longest tail (Jackson 1955). */
export function oneLane({ head, tail }: Pick<SureTimes, "head" | "tail">, loads: readonly Load[]): number {
  const open = loads
    .filter(({ time }) => time > 0)
    .map(({ step, time }) => ({ head: head[step] as number, tail: tail[step] as number, left: time }))
    .sort((a, b) => a.head - b.head);
  const ready: typeof open = [];
  let [now, bound, next] = [0, 0, 0];
  while (next < open.length || ready.length > 0) {
    if (ready.length === 0) now = Math.max(now, open[next]?.head ?? now);
    for (let one = open[next]; one && one.head <= now; one = open[next]) {
      ready.push(one);
      next += 1;
    }
    const first = ready.reduce((most, one) => (one.tail > most.tail ? one : most));
    const run = Math.min(first.left, (open[next]?.head ?? Number.POSITIVE_INFINITY) - now);
    now += run;
    first.left -= run;
    if (first.left > 0) continue;
    bound = Math.max(bound, now + first.tail);
    ready.splice(ready.indexOf(first), 1);
  }
  return bound;
}

/** What a set of lanes has to do, with the shortest way round all the places where one of them has to be. */
function tourBound(
  model: SplitModel,
  { tail }: SureTimes,
  lanes: readonly number[],
  loads: readonly Load[],
): number {
  // Ways are counted from the starts.
  if (loads.length === 0 || model.steps.some(({ past }) => past)) return 0;
  const from = lanes.map((lane) => model.starts[lane] ?? -1);
  const [base = -1] = from;
  if (base < 0 || from.some((place) => place !== base)) return 0;
  const visited = new Set<number>([base]);
  for (const { step } of loads) for (const place of placesIn(model, step, lanes)) visited.add(place);
  const places = [...visited];
  // The time of a way that a step of its own goes is in the work.
  const metric = givenWays(model, () => 0);
  const table = places.map((a) => places.map((b) => metric[a * model.placeCount + b] as number));
  const ends = lanes.map((lane) => lastPlace(model, lane));
  const end = ends.every((place) => place === ends[0]) ? (ends[0] ?? -1) : -1;
  const isHome = end === base;
  // Several people who come back go round together what one could go round alone; else a tree joins what they visit.
  const way =
    lanes.length === 1
      ? shortestTour(table, end < 0 ? null : places.indexOf(end))
      : isHome
        ? shortestTour(table, 0)
        : leastTree(table);
  if (way === Number.POSITIVE_INFINITY) return 0;
  const work = loads.reduce((sum, { time }) => sum + time, 0);
  return (work + way) / lanes.length + Math.min(...loads.map(({ step }) => tail[step] as number));
}

/** The places where somebody of these lanes has to be for a step, whoever does it. */
function placesIn(
  { steps, isPlaced }: SplitModel,
  step: number,
  lanes: readonly number[],
): readonly number[] {
  const own = steps[step] as ModelStep;
  const perStand = own.stands.map(({ lanes: all, needs }) => {
    const found = new Set<number>();
    for (const [seat, lane] of all.entries()) {
      if (!lanes.includes(lane)) continue;
      if ((needs[seat] ?? -1) >= 0) found.add(needs[seat] as number);
      if (own.to >= 0 && isPlaced[lane] === 1) found.add(own.to);
    }
    return found;
  });
  return [...(perStand[0] ?? [])].filter((place) => perStand.every((found) => found.has(place)));
}

/** Where a lane ends in every split: where its last step of closeout leaves it; −1 when that is not sure. */
function lastPlace({ steps, tasks, stays, isPlaced }: SplitModel, lane: number): number {
  let place = -1;
  let isSure = false;
  for (const step of steps) {
    if (!step.stands.some((stand) => stand.lanes.includes(lane))) continue;
    const isLast = tasks.every(
      (task, number) =>
        number === step.task ||
        task.steps.length === 0 ||
        number > step.task ||
        stays[number * tasks.length + step.task] === 1,
    );
    isSure = isLast && step.stands.length === 1;
    const need = step.stands[0]?.needs[step.stands[0].lanes.indexOf(lane)] ?? -1;
    place = step.to >= 0 && isPlaced[lane] === 1 ? step.to : need >= 0 ? need : place;
    if (!isSure) place = -1;
  }
  return isSure ? place : -1;
}
