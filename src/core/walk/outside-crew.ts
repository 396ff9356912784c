import { isPlaced } from "../place/index.ts";
import type { CrewId, PlaceId } from "../units/index.ts";
import type { Ledger } from "./ledger.ts";
import { progressOf } from "./ledger.ts";

/** A crew member who is not known to be at a refuge. */
export interface OutsideCrew {
  readonly crew: CrewId;
  /** Where the steps that were done leave the crew member; `null` when they do not say. */
  readonly place: PlaceId | null;
}

/**
 * Returns the crew members with a station outside who are not known to be at a refuge by the steps that were done; a
 * step that was skipped moves nobody. In a procedure that does not say where they are, a crew member counts as outside
 * until every step of the lane is complete. Nobody is outside before the clock is started.
 */
export function outsideOf(ledger: Ledger): readonly OutsideCrew[] {
  if (ledger.petZero === null) return [];
  const { outline } = ledger.inForce;
  return outline.crew.flatMap((member, lane): readonly OutsideCrew[] => {
    if (member.station !== "outside") return [];
    const steps = (ledger.network.lanes[lane] ?? []).flatMap((index) => outline.steps[index]?.step ?? []);
    let place: PlaceId | null = isPlaced(member) ? (member.start ?? null) : null;
    for (const step of steps) {
      if (progressOf(ledger, step.id).status === "done") place = step.to ?? step.at ?? place;
    }
    if (place !== null) return outline.place(place)?.refuge ? [] : [{ crew: member.id, place }];
    const isOpen = steps.some(({ id }) => progressOf(ledger, id).status !== "done");
    return isOpen ? [{ crew: member.id, place: null }] : [];
  });
}
