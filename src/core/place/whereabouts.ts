import { message } from "../../words/index.ts";
import type { Network, StatesNow } from "../order/index.ts";
import type { CrewMember, Finding, Outline, OutlineStep, StepTime } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { Duration, PlaceId } from "../units/index.ts";
import { longest, NO_TIME } from "../units/index.ts";
import { openRoutes } from "./open-routes.ts";
import type { NextPlace } from "./passage-findings.ts";
import { notThere, noWay, wayClosed } from "./passage-findings.ts";
import type { Ways } from "./ways.ts";
import { waysOf } from "./ways.ts";

/** Where the crew members are and how long each step takes, in one scenario. */
export interface Whereabouts {
  /**
   * For each step (by reading order index) and each of its performers (in the order of `performers`): the performer's
   * place when the step starts; `null` when unknown.
   */
  readonly from: readonly (readonly (PlaceId | null)[])[];
  /**
   * For each active step its duration; translations without `time` take theirs from the routes ([PRO6]). Zero for
   * inactive steps.
   */
  readonly times: readonly StepTime[];
  /**
   * Findings for steps done at another place than where the performer is, and for translations between places that no
   * routes join.
   */
  readonly findings: readonly Finding[];
}

const NONE: StepTime = { low: NO_TIME, likely: NO_TIME, high: NO_TIME };

/**
 * True when a crew member's place is followed: always for those outside; for those inside or on the ground only when
 * the procedure says where they start.
 */
export function isPlaced({ station, start }: CrewMember): boolean {
  return station === "outside" || start !== undefined;
}

/**
 * Follows every lane of a network from its `start` through the steps that name a place ([PRO7]), and works out the
 * durations of translations. A route with `needs` is a way only for a step before which its states are as it needs in
 * every order that the network allows ([PRO13]). In a walk `now` says how the states stand, from which it goes on.
 */
export function whereaboutsOf(network: Network, now: StatesNow | null = null): Whereabouts {
  const { outline, activity, lanes } = network;
  const open = openRoutes(network, now);
  const from = outline.steps.map(({ performers }): (PlaceId | null)[] => performers.map(() => null));
  const findings: Finding[] = [];
  for (const [lane, indices] of lanes.entries()) {
    const member = outline.crew[lane];
    if (!member || !isPlaced(member)) continue;
    let place: PlaceId | null = member.start ?? null;
    for (const index of indices) {
      const entry = outline.steps[index];
      if (!entry) continue;
      const { step } = entry;
      if (step.at !== undefined && place !== null && step.at !== place) {
        findings.push(
          notThere({ outline, entry, member, from: place, to: step.at }, nextPlace(outline, indices, index)),
        );
      }
      if (step.at !== undefined) place = step.at;
      const seat = from[index];
      if (seat) seat[entry.performers.indexOf(lane)] = place;
      if (step.to === undefined) continue;
      if (place !== null && open !== null) {
        const closed = wayClosed({ outline, entry, member, from: place, to: step.to }, open);
        if (closed) findings.push(closed);
      }
      place = step.to;
    }
  }
  const times = outline.steps.map((entry): StepTime => {
    if (!activity.active[entry.index]) return NONE;
    if (entry.step.time) return entry.step.time;
    const ways = open === null ? waysOf(outline.procedure) : open.before(entry.index);
    const taken = translationTime({ outline, entry, from: from[entry.index] ?? [], ways });
    findings.push(...taken.findings);
    return { low: taken.time, likely: taken.time, high: taken.time };
  });
  return { from, times, findings };
}

/** The same whereabouts for a network whose steps differ from their own in words and in the times that are written alone. */
export function withTimesOf(whereabouts: Whereabouts, { outline, activity }: Network): Whereabouts {
  const times = outline.steps.map(
    ({ index, step }): StepTime =>
      (activity.active[index] ? step.time : null) ?? whereabouts.times[index] ?? NONE,
  );
  return { ...whereabouts, times };
}

/** The first place that a lane names behind a step, whether something is done there or it goes there. */
function nextPlace(outline: Outline, lane: readonly number[], index: number): NextPlace {
  for (const next of lane.slice(lane.indexOf(index) + 1)) {
    const step = outline.steps[next]?.step;
    if (step?.at !== undefined || step?.to !== undefined)
      return { at: step.at ?? null, to: step.at === undefined ? (step.to ?? null) : null };
  }
  return { at: null, to: null };
}

interface Translation {
  readonly outline: Outline;
  readonly entry: OutlineStep;
  readonly from: readonly (PlaceId | null)[];
  readonly ways: Ways;
}

/** The time that a translation takes for the slowest of its performers, and the findings for those with no way. */
function translationTime({ outline, entry, from, ways }: Translation): {
  readonly time: Duration;
  readonly findings: readonly Finding[];
} {
  const { step } = entry;
  const to = step.to;
  if (to === undefined) return { time: NO_TIME, findings: [] };
  const findings: Finding[] = [];
  const times = from.flatMap((place, seat): Duration[] => {
    const member = outline.crew[entry.performers[seat] ?? -1];
    if (place === null) {
      if (member && isPlaced(member)) findings.push(noWay({ outline, entry, member, from: null, to }));
      return [];
    }
    // Where a state closes the only way, that has a finding of its own, and the rest is looked at as if it were open.
    const way = ways.quickest(place, to) ?? waysOf(outline.procedure).quickest(place, to);
    if (!way && member) findings.push(noWay({ outline, entry, member, from: place, to }));
    return way ? [way.cost] : [];
  });
  if (from.every((place) => place === null) && findings.every(({ steps }) => !steps.includes(step.id))) {
    findings.push(
      finding("error", "place/no-way", entry.pointer, message("place/no-start", { step: step.id }), {
        steps: [step.id],
      }),
    );
  }
  return { time: longest(...times), findings };
}
