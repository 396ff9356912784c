import type {
  Change,
  Fields,
  Location,
  Outline,
  Step,
  StepTime,
  TimeWindow,
} from "../../core/procedure/index.ts";
import type { CrewId, Duration, StateId, TaskId, WindowId } from "../../core/units/index.ts";
import { formatDuration, formatInstant, later, NO_TIME, plus } from "../../core/units/index.ts";

/** Tasks, windows and people that are tried elsewhere than in the file. */
export interface Rearranged {
  /** The task that each of these stands behind; `null` for the first place. They are moved in this order. */
  readonly moved: ReadonlyMap<TaskId, TaskId | null>;
  /** How much later these windows come; below zero for earlier. */
  readonly shifted: ReadonlyMap<WindowId, Duration>;
  /** The two people who change places in these tasks. */
  readonly swapped: ReadonlyMap<TaskId, readonly [CrewId, CrewId]>;
}

/** Everything where the file has it. */
export const NOT_REARRANGED: Rearranged = { moved: new Map(), shifted: new Map(), swapped: new Map() };

/** The changes that move tasks. A task is not moved behind itself. */
export function movesOf({ moved }: Rearranged): Change[] {
  return [...moved].flatMap(([move, behind]): Change[] => {
    if (move === behind) return [];
    return [behind === null ? { move, list: "tasks", first: true } : { move, list: "tasks", behind }];
  });
}

/** True for a window that has times of its own, which can be shifted. Others come with the start and its light. */
export const canBeShifted = ({ spans = [] }: TimeWindow): boolean => spans.length > 0;

/** The changes that shift windows. Of a span that would begin before PET 0 the rest is left, or nothing. */
export function shiftsOf({ shifted }: Rearranged, { procedure }: Outline): Change[] {
  return procedure.windows.flatMap((window): Change[] => {
    const by = shifted.get(window.id);
    if (by === undefined || by === 0 || !canBeShifted(window)) return [];
    return [
      { change: window.id, list: "windows", set: { spans: (window.spans ?? []).flatMap(shiftedSpan(by)) } },
    ];
  });
}

type WindowSpan = NonNullable<TimeWindow["spans"]>[number];

const shiftedSpan = (by: Duration) => (span: WindowSpan) => {
  if (span.clock === "utc")
    return [{ from: formatInstant(later(span.from, by)), to: formatInstant(later(span.to, by)) }];
  const [from, to] = [plus(span.from, by), plus(span.to, by)];
  return to <= NO_TIME
    ? []
    : [{ from: formatDuration(from > NO_TIME ? from : NO_TIME), to: formatDuration(to) }];
};

/**
 * The fields of a step, as a file has them, in which two people change places: who does it, who else could, who
 * confirms, who gets an item, and states whose values are people. Empty where neither is named.
 */
export function swappedFields(step: Step, [one, other]: readonly [CrewId, CrewId], outline: Outline): Fields {
  const swap = (id: CrewId): CrewId => (id === one ? other : id === other ? one : id);
  const isNamed = (ids: readonly CrewId[]) => ids.some((id) => id === one || id === other);
  const ofCrew = new Set<string>(
    outline.procedure.states.flatMap(({ id, values }) => (values === "crew" ? [id] : [])),
  );
  const swapValues = (values: Step["needs"]) =>
    Object.fromEntries(
      Object.entries(values ?? {}).map(([state, value]) => [
        state,
        ofCrew.has(state) ? swap(value as CrewId) : value,
      ]),
    );
  const hasPeople = (values: Step["needs"]) =>
    (Object.entries(values ?? {}) as [StateId, string][]).some(
      ([state, value]) => ofCrew.has(state) && isNamed([value as CrewId]),
    );
  const receivers = step.moves.flatMap(({ to }) => crewOf(to));
  return {
    ...(isNamed(step.by) ? { by: step.by.map(swap) } : {}),
    ...(step.or.some(({ by }) => isNamed(by))
      ? {
          or: step.or.map(({ by, time }) =>
            time === null ? by.map(swap) : { by: by.map(swap), time: written(time) },
          ),
        }
      : {}),
    ...(step.confirm && isNamed([step.confirm.by])
      ? { confirm: { ...step.confirm, by: swap(step.confirm.by) } }
      : {}),
    ...(isNamed(receivers)
      ? { moves: step.moves.map((move) => ({ ...move, to: swappedLocation(move.to, swap) })) }
      : {}),
    ...(hasPeople(step.needs) ? { needs: swapValues(step.needs) } : {}),
    ...(hasPeople(step.sets) ? { sets: swapValues(step.sets) } : {}),
  };
}

function crewOf(location: Location): readonly CrewId[] {
  if ("crew" in location) return [location.crew];
  return "crews" in location ? location.crews : [];
}

function swappedLocation(location: Location, swap: (id: CrewId) => CrewId): Location {
  if ("crew" in location) return { crew: swap(location.crew) };
  return "crews" in location ? { crews: location.crews.map(swap) } : location;
}

const written = ({ low, likely, high }: StepTime) => ({
  low: formatDuration(low),
  likely: formatDuration(likely),
  high: formatDuration(high),
});
