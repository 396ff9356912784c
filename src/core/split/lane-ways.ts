import type { ModelStand, ModelStep, SplitModel } from "./split-model.ts";

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

/** The ways of people between the steps of their lanes. */
export interface LaneWays {
  /** When those of a stand can be there at the earliest from where they are, in ms of PET. */
  readyIn(step: ModelStep, stand: ModelStand): number;
  /**
   * The least time from the completion of one step to the start of another behind it, in ms; `null` when nobody is in
   * both stands. No way with a stop between is quicker.
   */
  gapBetween(
    one: { readonly step: ModelStep; readonly stand: ModelStand },
    other: { readonly step: ModelStep; readonly stand: ModelStand },
  ): number | null;
}

/** The ways of people in a model. */
export function laneWaysOf(model: SplitModel): LaneWays {
  const { placeCount, starts, isPlaced } = model;
  const present = presentIn(model);
  const travel = givenWays(model, (time) => time);
  const isSure = (lane: number) => (starts[lane] ?? -1) < 0 || (present[lane]?.place ?? -1) >= 0;
  const timeOf = (from: number, to: number) =>
    from >= 0 && to >= 0 ? (travel[from * placeCount + to] as number) : 0;
  // A translation by the way counts from its end on.
  const placeIn = (step: ModelStep, { needs, time }: ModelStand, seat: number) => {
    const need = needs[seat] ?? -1;
    return need >= 0 ? need : time < 0 ? step.to : -1;
  };
  return {
    readyIn: (step, stand) =>
      Math.max(
        0,
        ...[...stand.lanes].map((lane, seat) => {
          const { place, ready } = present[lane] as Present;
          return ready + timeOf(place, placeIn(step, stand, seat));
        }),
      ),
    gapBetween: (one, other) => {
      let gap = -1;
      for (const [seat, lane] of one.stand.lanes.entries()) {
        const next = other.stand.lanes.indexOf(lane);
        if (next === -1) continue;
        const from = isPlaced[lane] === 1 && one.step.to >= 0 ? one.step.to : (one.stand.needs[seat] ?? -1);
        // Of what has begun only the last place counts, from which `readyIn` goes.
        const to = one.step.past || !isSure(lane) ? -1 : placeIn(other.step, other.stand, next);
        gap = Math.max(gap, timeOf(from, to));
      }
      return gap < 0 ? null : gap;
    },
  };
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
