import { message, words } from "../../words/index.ts";
import type { Network } from "../order/index.ts";
import type { Change, CrewMember, Finding, Outline, OutlineStep, StepTime } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { Duration, PlaceId, StepId } from "../units/index.ts";
import { longest, NO_TIME } from "../units/index.ts";
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
 * durations of translations.
 */
export function whereaboutsOf(
  { outline, activity, lanes }: Network,
  ways: Ways = waysOf(outline.procedure),
): Whereabouts {
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
        findings.push(notThere({ outline, entry, member, from: place, to: step.at }, ways));
      }
      if (step.at !== undefined) place = step.at;
      const seat = from[index];
      if (seat) seat[entry.performers.indexOf(lane)] = place;
      if (step.to !== undefined) place = step.to;
    }
  }
  const times = outline.steps.map((entry): StepTime => {
    if (!activity.active[entry.index]) return NONE;
    if (entry.step.time) return entry.step.time;
    const taken = translationTime({ outline, entry, from: from[entry.index] ?? [], ways });
    findings.push(...taken.findings);
    return { low: taken.time, likely: taken.time, high: taken.time };
  });
  return { from, times, findings };
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
    const way = ways.quickest(place, to);
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

const labelOf = (outline: Outline, place: PlaceId) => outline.place(place)?.label ?? place;

/** A crew member who would have to get from one place to another for a step; `from` is `null` when unknown. */
interface Passage<From extends PlaceId | null> {
  readonly outline: Outline;
  readonly entry: OutlineStep;
  readonly member: CrewMember;
  readonly from: From;
  readonly to: PlaceId;
}

function notThere({ outline, entry, member, from, to }: Passage<PlaceId>, ways: Ways): Finding {
  const astray = message("place/not-there", {
    crew: member.call,
    place: labelOf(outline, from),
    step: entry.step.id,
    at: labelOf(outline, to),
  });
  return finding("error", "place/not-there", `${entry.pointer}/at`, astray, {
    steps: [entry.step.id as StepId],
    things: [member.id, to],
    mend: ways.quickest(from, to) ? [translationBefore(outline, entry, member, to)] : null,
  });
}

/** The change that inserts a translation before a step, under the same conditions as the step. */
function translationBefore(
  outline: Outline,
  { step, task }: OutlineStep,
  member: CrewMember,
  to: PlaceId,
): Change {
  const { tasks, contingencies } = outline.procedure;
  const taken = new Set<string>(
    [tasks, ...contingencies.map((one) => one.tasks)]
      .flat()
      .flatMap((task) => task.steps.map(({ id }) => id)),
  );
  const base = `${member.id}-to-${to}`;
  let id = base;
  for (let count = 2; taken.has(id); count += 1) id = `${base}-${count}`;
  const add = {
    id,
    by: [member.id],
    // The text becomes the author's own once the change is made: it is written in the language in use.
    do: words("place/move-to", { place: labelOf(outline, to) }),
    to,
    ...(step.when ? { when: step.when } : {}),
  };
  const before = task.steps[task.steps.findIndex((one) => one.id === step.id) - 1];
  return before ? { add, behind: before.id } : { add, first: task.id };
}

function noWay({ outline, entry, member, from, to }: Passage<PlaceId | null>): Finding {
  const why =
    from === null
      ? message("place/no-way-unknown", { crew: member.call, step: entry.step.id })
      : message("place/no-way", {
          from: labelOf(outline, from),
          to: labelOf(outline, to),
          step: entry.step.id,
        });
  return finding("error", "place/no-way", `${entry.pointer}/to`, why, {
    steps: [entry.step.id],
    things: [member.id, to],
  });
}
