import type { Fields, Location, Outline, Step, StepTime } from "../procedure/index.ts";
import type { CrewId, StateId } from "../units/index.ts";
import { formatDuration } from "../units/index.ts";

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
