import TinyQueue from "tinyqueue";
import { message } from "../../words/index.ts";
import type { Activity, Finding, Mend, Outline } from "../procedure/index.ts";
import { finding, lanesOf } from "../procedure/index.ts";
import type { Duration, StepId } from "../units/index.ts";
import { formatDuration, NO_TIME } from "../units/index.ts";

/**
 * States that one step must be complete, and a lag must have passed, before another starts. Steps are reading order
 * indices.
 */
export interface Precedence {
  readonly from: number;
  readonly to: number;
  readonly lag: Duration;
  /** The reason: both steps are neighbours in a lane, or the later one names the earlier one in its `after`. */
  readonly because: "lane" | "after";
}

/** The steps of one scenario and the precedences among them ([ORD1]). */
export interface Network {
  readonly outline: Outline;
  readonly activity: Activity;
  /** The active steps of each crew member, in order. */
  readonly lanes: readonly (readonly number[])[];
  /** For each step, by reading order index, the precedences that lead to it, in reading order of the earlier step. */
  readonly before: readonly (readonly Precedence[])[];
  /** For each step, the precedences that lead away from it, in reading order of the later step. */
  readonly behind: readonly (readonly Precedence[])[];
  /**
   * The active steps, sorted so that each comes after its predecessors, with ties in reading order. In a deadlock some
   * steps are missing.
   */
  readonly order: readonly number[];
  /** The precedences round a ring of steps that wait for each other; empty when there is no ring. */
  readonly ring: readonly Precedence[];
}

/**
 * Returns the network of the active steps, as `activityOf` gives them for a scenario. A deadlock is not an error here:
 * it is reported in `ring`.
 */
export function networkOf(outline: Outline, activity: Activity): Network {
  const lanes = lanesOf(outline, activity.active);
  const before: Precedence[][] = outline.steps.map(() => []);
  const behind: Precedence[][] = outline.steps.map(() => []);
  const connect = (link: Precedence) => {
    before[link.to]?.push(link);
    behind[link.from]?.push(link);
  };
  for (const lane of lanes) {
    for (const [position, to] of lane.entries()) {
      const from = lane[position - 1];
      if (from !== undefined && !before[to]?.some((link) => link.from === from)) {
        connect({ from, to, lag: NO_TIME, because: "lane" });
      }
    }
  }
  for (const { index, step } of outline.steps) {
    if (!activity.active[index]) continue;
    for (const { step: id, lag } of step.after) {
      const from = outline.step(id)?.index;
      if (from !== undefined && activity.active[from]) connect({ from, to: index, lag, because: "after" });
    }
  }
  for (const links of before) links.sort((a, b) => a.from - b.from);
  for (const links of behind) links.sort((a, b) => a.to - b.to);
  const order = topologicalOrder(activity.active, before, behind);
  const isWhole = order.length === activity.active.filter(Boolean).length;
  return {
    outline,
    activity,
    lanes,
    before,
    behind,
    order,
    ring: isWhole ? [] : ringOf(activity.active, before, order),
  };
}

/** Topological sort (Kahn 1962) that always takes the ready step that is first in reading order. */
function topologicalOrder(
  active: readonly boolean[],
  before: readonly (readonly Precedence[])[],
  behind: readonly (readonly Precedence[])[],
): number[] {
  const missing = before.map((links) => links.length);
  const ready = new TinyQueue<number>(
    active.flatMap((isActive, index) => (isActive && missing[index] === 0 ? [index] : [])),
    (a, b) => a - b,
  );
  const order: number[] = [];
  for (let next = ready.pop(); next !== undefined; next = ready.pop()) {
    order.push(next);
    for (const { to } of behind[next] ?? []) {
      const left = (missing[to] ?? 0) - 1;
      missing[to] = left;
      if (left === 0) ready.push(to);
    }
  }
  return order;
}

/** Walks backwards from a step that could not be sorted until it meets a step for the second time. */
function ringOf(
  active: readonly boolean[],
  before: readonly (readonly Precedence[])[],
  order: readonly number[],
): Precedence[] {
  const ordered = new Set(order);
  const stuck = active.findIndex((isActive, index) => isActive && !ordered.has(index));
  const path: Precedence[] = [];
  const seenAt = new Map<number, number>();
  let at = stuck;
  while (!seenAt.has(at)) {
    seenAt.set(at, path.length);
    const link = before[at]?.find(({ from }) => active[from] && !ordered.has(from));
    if (!link) return [];
    path.push(link);
    at = link.from;
  }
  return path.slice(seenAt.get(at));
}

/**
 * The finding for a deadlock of the network, naming the steps round the ring and whom each waits for ([ORD1]); `null`
 * when there is no deadlock.
 */
export function deadlockFinding(network: Network): Finding | null {
  const { outline, ring } = network;
  const [first] = ring;
  if (!first) return null;
  const idOf = (index: number) => outline.steps[index]?.step.id as StepId;
  const callsOf = (index: number) =>
    (outline.steps[index]?.performers ?? []).map((lane) => outline.crew[lane]?.call ?? "");
  const waits = ring.map(({ from, to, because }) => {
    const waiting = { step: idOf(to), crew: callsOf(to), other: idOf(from) };
    return because === "lane"
      ? message("order/waits-in-lane", waiting)
      : message("order/waits-on-step", { ...waiting, otherCrew: callsOf(from) });
  });
  return finding(
    "error",
    "order/deadlock",
    outline.steps[first.to]?.pointer ?? "",
    message("order/deadlock", { waits }),
    {
      steps: ring
        .map(({ to }) => idOf(to))
        .sort((a, b) => (outline.step(a)?.index ?? 0) - (outline.step(b)?.index ?? 0)),
      mend: withoutForwardLink(network),
    },
  );
}

/**
 * The change that drops the single `after` in the ring that points forwards in reading order. Returns `null` when there
 * are several, or when dropping it leaves a deadlock.
 */
function withoutForwardLink({ outline, activity, before, behind, ring }: Network): Mend | null {
  const forward = ring.filter(({ from, to, because }) => because === "after" && from > to);
  const [link] = forward;
  if (!link || forward.length > 1) return null;
  const isKept = ({ from, to, because }: Precedence) =>
    because === "lane" || from !== link.from || to !== link.to;
  const order = topologicalOrder(
    activity.active,
    before.map((links) => links.filter(isKept)),
    behind.map((links) => links.filter(isKept)),
  );
  if (order.length < activity.active.filter(Boolean).length) return null;
  const waiting = outline.steps[link.to]?.step;
  const named = outline.steps[link.from]?.step.id;
  if (!waiting) return null;
  const after = waiting.after.flatMap(({ step, lag, within }) => {
    if (step === named) return [];
    const wait = lag === NO_TIME ? {} : { lag: formatDuration(lag) };
    const most = within === null ? {} : { within: formatDuration(within) };
    return lag === NO_TIME && within === null ? step : { step, ...wait, ...most };
  });
  return {
    changes: [{ change: waiting.id, set: { after } }],
    says: message("order/mend-deadlock", { step: waiting.id, other: String(named) }),
  };
}
