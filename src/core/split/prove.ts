import type { Network } from "../order/index.ts";
import type { Split } from "./layout.ts";
import { Layout } from "./layout.ts";
import type { Load } from "./split-bound.ts";
import { laneSets, loadBound, loadsOf, oneLane } from "./split-bound.ts";
import type { ModelStep, SplitModel } from "./split-model.ts";
import { sureTimes } from "./sure-order.ts";

/** The rules of a proof. */
export interface ProofRules {
  readonly model: SplitModel;
  readonly network: Network;
  /** The cost of the best split that is known, in ms. */
  readonly cost: number;
  /** No split costs less. */
  readonly bound: number;
  /** How many parts of splits may be looked at; of many steps it is fewer. */
  readonly parts: number;
  /** Whether a split that costs less may be offered. */
  isSound(split: Split, cost: number): boolean;
}

/** What a proof came to. */
export interface Proof {
  /** True when no split costs less than the best that is known or was found. */
  readonly isProven: boolean;
  /** The least cost of a split that is known. */
  readonly cost: number;
  /** How many parts were looked at. */
  readonly looked: number;
}

/** With up to so many steps all the parts that were asked for are looked at. */
const QUICK = 40;
/** With more steps than this nothing is proven. */
const MOST_STEPS = 400;

/** How late everything is when some of the steps are laid out: of two ways to lay them out the one that is nowhere later will do. */
type Lateness = Float64Array;

/**
 * Shows that no split is complete earlier, by branch and bound (Land and Doig 1960): steps are laid out one after
 * another, and no further where a bound shows that nothing better is to come, or where the same steps were laid out with
 * nothing later. Where a step must start soon after another one, or may wait for one behind it, later may be better, and
 * nothing is proven.
 */
export function proveSplit(rules: ProofRules): Proof {
  const { model, network, bound, parts, isSound } = rules;
  const { steps, tasks, groups, groupOf, stays, hasForward } = model;
  const isMonotone =
    !hasForward && steps.every(({ within }) => within.every((time) => time === Number.POSITIVE_INFINITY));
  const left = steps.filter(({ past }) => !past).length;
  let { cost } = rules;
  if (cost <= bound) return { isProven: true, cost, looked: 0 };
  if (!isMonotone || parts === 0 || left > MOST_STEPS) return { isProven: false, cost, looked: 0 };
  const count = tasks.length;
  // A bound on many steps takes longer: it is looked at fewer parts of them.
  const most = Math.ceil(parts * Math.min(1, (QUICK / left) ** 2));
  const layouts = Array.from({ length: steps.length + 1 }, () => new Layout(model));
  const choice = new Int32Array(groups.length).fill(-1);
  const placed = new Uint8Array(count);
  const sequence: number[] = [];
  const reached = new Float64Array(steps.length + 1);
  const bounds = boundsOver(model, network);
  const isByStart = canGoByStart(model);
  const seen = new Map<string, Lateness[]>();
  let [looked, isCut, isRefused] = [0, false, false];

  const isDominated = (layout: Layout, task: number, position: number): boolean => {
    const key = `${placed.join("")} ${task} ${position} ${openChoices(model, layout, choice)} ${layout.lanePlace.join(" ")} ${layout.laneAnchor.join(" ")} ${layout.held.join(" ")}`;
    const now = latenessOf(model, layout);
    const others = seen.get(key);
    if (!others) {
      seen.set(key, [now]);
      return false;
    }
    if (others.some((one) => one.every((time, index) => time <= (now[index] as number)))) return true;
    others.push(now);
    return false;
  };

  /** Whether to go on from a part at which there is something to choose. */
  const isOpenYet = (layout: Layout, task: number, position: number): boolean => {
    if (looked >= most) {
      isCut = true;
      return false;
    }
    looked += 1;
    return bounds(layout) < cost && !isDominated(layout, task, position);
  };

  const enter = (depth: number, task: number, position: number): void => {
    const layout = layouts[depth] as Layout;
    if (cost <= bound || isCut || layout.cost >= cost) return;
    const next = task < 0 ? undefined : tasks[task]?.steps[position];
    if (next !== undefined) {
      const group = groupOf[next] as number;
      const isForced = choice[group] !== -1 || groups[group]?.options.length === 1;
      if (isForced || isOpenYet(layout, task, position)) lay(depth, task, position, next);
      return;
    }
    const open = tasks.flatMap((_, one) => {
      if (placed[one] === 1) return [];
      for (let other = 0; other < count; other += 1)
        if (placed[other] === 0 && stays[other * count + one] === 1) return [];
      return [one];
    });
    if (open.length === 0) {
      finish(layout);
      return;
    }
    // A task without steps of the plan stands where it may first.
    const empty = open.find((one) => tasks[one]?.steps.length === 0);
    const tried = empty === undefined ? open : [empty];
    if (tried.length > 1 && !isOpenYet(layout, task, position)) return;
    for (const one of tried) {
      placed[one] = 1;
      sequence.push(one);
      const first = tasks[one]?.steps[0];
      if (first === undefined) enter(depth, -1, 0);
      else lay(depth, one, 0, first);
      sequence.pop();
      placed[one] = 0;
    }
  };

  const lay = (depth: number, task: number, position: number, step: number): void => {
    const group = groupOf[step] as number;
    const isOpen = choice[group] === -1;
    const options = isOpen ? [...(groups[group]?.options.keys() ?? [])] : [choice[group] as number];
    for (const option of options) {
      choice[group] = option;
      const next = layouts[depth + 1] as Layout;
      next.become(layouts[depth] as Layout);
      if (!next.append(step, choice)) continue;
      const start = next.start[step] as number;
      if (isByStart && start < (reached[depth] as number)) continue;
      reached[depth + 1] = start;
      enter(depth + 1, task, position + 1);
    }
    if (isOpen) choice[group] = -1;
  };

  const finish = (layout: Layout): void => {
    const split = { order: Int32Array.from(sequence), choice: choice.slice() };
    if (layout.cost >= cost) return;
    if (isSound(split, layout.cost)) cost = layout.cost;
    else isRefused = true;
  };

  enter(0, -1, 0);
  return { isProven: cost <= bound || (!isCut && !isRefused), cost, looked };
}

/**
 * True when every split is as good as one whose tasks stand in the order of their starts: each has one step, and only
 * links bind its place.
 */
function canGoByStart({ tasks, steps, stays }: SplitModel): boolean {
  const count = tasks.length;
  return tasks.every(
    (task, other) =>
      task.steps.length === 1 &&
      !task.steps.some((step) => steps[step]?.past) &&
      tasks.every((before, one) => {
        if (stays[one * count + other] === 0) return true;
        const [earlier = -1] = before.steps;
        return steps[task.steps[0] ?? -1]?.after.includes(earlier) === true;
      }),
  );
}

/** The choices of groups of which only a part is laid out. */
function openChoices({ groups }: SplitModel, { finish }: Layout, choice: Int32Array): string {
  return groups
    .flatMap(({ steps }, group) =>
      steps.length > 1 &&
      steps.some((step) => (finish[step] as number) >= 0) &&
      steps.some((step) => (finish[step] as number) < 0)
        ? [`${group}:${choice[group]}`]
        : [],
    )
    .join(",");
}

function latenessOf({ steps }: SplitModel, layout: Layout): Lateness {
  const waitedFor = steps.map((step, index) =>
    (layout.finish[index] as number) < 0
      ? [...step.after].map((from) => Math.max(0, layout.finish[from] as number))
      : [],
  );
  // What somebody still waits for, in the order of who waits, which hangs only on what is laid out.
  return Float64Array.from([
    layout.end,
    layout.late,
    ...layout.laneReady,
    ...layout.changedAt,
    ...layout.neededTo,
    ...waitedFor.flat(),
  ]);
}

/** A bound on what is left of a layout. */
function boundsOver(model: SplitModel, network: Network): (layout: Layout) => number {
  const times = sureTimes(model, network);
  const { least, tail } = times;
  const local = new Map(model.steps.map(({ index }, at) => [index, at]));
  const order = network.order.flatMap((index) => local.get(index) ?? []);
  const head = new Float64Array(model.steps.length);
  const sets = laneSets(model.laneCount).map((lanes) => ({ lanes, loads: loadsOf(model, lanes) }));
  return (layout) => {
    let bound = layout.end;
    for (const at of order) {
      const step = model.steps[at] as ModelStep;
      if ((layout.finish[at] as number) >= 0) continue;
      let begins = times.head[at] as number;
      if (!step.past) begins = Math.max(begins, soonest(step, layout));
      for (let link = 0; link < step.after.length && !step.past; link += 1) {
        const from = step.after[link] as number;
        const done = layout.finish[from] as number;
        const over = done >= 0 ? done : (head[from] as number) + (least[from] as number);
        begins = Math.max(begins, over + (step.lags[link] as number));
      }
      head[at] = begins;
      bound = Math.max(bound, begins + (least[at] as number) + (tail[at] as number));
    }
    for (const { lanes, loads } of sets) {
      const left = loads.filter(({ step }: Load) => (layout.finish[step] as number) < 0);
      if (left.length === 0) continue;
      bound = Math.max(
        bound,
        lanes.length === 1
          ? oneLane({ head, tail }, left)
          : Math.max(loadBound({ head, tail }, left, lanes.length), sharedBound(tail, left, lanes, layout)),
      );
    }
    return bound;
  };
}

/** What several lanes have to do together, from the time at which each or the first of them is free. */
function sharedBound(
  tail: Float64Array,
  left: readonly Load[],
  lanes: readonly number[],
  layout: Layout,
): number {
  const free = lanes.map((lane) => layout.laneReady[lane] as number);
  const work = left.reduce((sum, { time }) => sum + time, 0);
  const tails = Math.min(...left.map(({ step }) => tail[step] as number));
  return Math.max(
    (free.reduce((sum, time) => sum + time, 0) + work) / lanes.length,
    Math.min(...free) + work / lanes.length + tails,
  );
}

/** When the performers of a step are free first, in the stand in which that is soonest. */
function soonest({ stands }: ModelStep, { laneReady }: Layout): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { lanes } of stands) {
    let ready = 0;
    for (const lane of lanes) ready = Math.max(ready, laneReady[lane] as number);
    least = Math.min(least, ready);
  }
  return least;
}
