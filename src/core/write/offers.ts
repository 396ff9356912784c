import { message } from "../../words/index.ts";
import { placesAt } from "../course/index.ts";
import { crewHolding, holderOf } from "../custody/index.ts";
import { waysOf } from "../place/index.ts";
import type { Timeline } from "../plan/index.ts";
import type { ProcedureFile } from "../procedure/index.ts";
import type { CrewId, ItemId, PlaceId, StepId } from "../units/index.ts";
import { formatDuration, ofSeconds } from "../units/index.ts";
import { freeIdsIn } from "./free-id.ts";
import type { Proposal } from "./proposal.ts";
import { impossible, proposed } from "./proposal.ts";
import { placedStep } from "./sheet.ts";

/** What a crew member can do at a moment of the plan. */
export interface CrewOffers {
  readonly crew: CrewId;
  /** Where they are; `null` where the procedure does not tell, or on the way. */
  readonly place: PlaceId | null;
  /** What they hold, in their own hands or in something that they hold. */
  readonly holds: readonly ItemId[];
  /** What lies where they are, itself or packed in something there. */
  readonly beside: readonly ItemId[];
  /** The places to which routes lead from there, the place itself first; all places where it is not known where they are. */
  readonly reaches: readonly PlaceId[];
}

/**
 * What everybody can do when a step begins ([WRT3]), by the plan; what is handed over by steps that end then is there. `null` where the step
 * is not in the plan.
 */
export function offersAt({ course }: Timeline, step: StepId): readonly CrewOffers[] | null {
  const planned = course.steps.get(step);
  if (!planned) return null;
  const { procedure } = course.outline;
  const places = placesAt(course, planned.start);
  const ways = waysOf(procedure);
  return procedure.crew.map(({ id: crew }) => {
    const at = places.crew.get(crew);
    const place = at && "place" in at ? at.place : null;
    return {
      crew,
      place,
      holds: procedure.items.flatMap(({ id }) => {
        const holder = holderOf(places.items, id);
        return holder && crewHolding(holder).includes(crew) ? [id] : [];
      }),
      beside: procedure.items.flatMap(({ id }) => {
        const holder = holderOf(places.items, id);
        return place !== null && holder && "place" in holder && holder.place === place ? [id] : [];
      }),
      reaches:
        place === null
          ? procedure.places.map(({ id }) => id)
          : [
              place,
              ...procedure.places.flatMap(({ id }) => (id !== place && ways.shortest(place, id) ? [id] : [])),
            ],
    };
  });
}

/** Who gives what to whom. */
export interface HandOver {
  readonly item: string;
  readonly giver: string;
  readonly receiver: string;
  /** What the step says. */
  readonly action: string;
  /** The row behind which it comes. */
  readonly behind: string;
}

const HAND_OVER_TIME = formatDuration(ofSeconds(60));

/**
 * A hand-over ([WRT3]): a joint step of giver and receiver that moves the item, where the giver is. It is refused where the giver does
 * not hold the item when the step before it begins or ends; without offers, where nothing is planned, it is made as asked.
 */
export function handedOver(
  file: ProcedureFile,
  { item, giver, receiver, action, behind }: HandOver,
  offers: readonly CrewOffers[] | null,
): Proposal {
  const placed = placedStep(file, behind);
  if (!placed) return impossible(message("write/link-steps"));
  if (giver === receiver) return impossible(message("write/hand-over-itself"));
  const giving = offers?.find(({ crew }) => crew === giver);
  const isGiven = placed.step.moves?.some(
    ({ item: one, to }) => one === item && "crew" in to && to.crew === giver,
  );
  if (giving && !isGiven && !giving.holds.some((one) => one === item)) {
    const call = file.crew.find(({ id }) => id === giver)?.call ?? giver;
    const label = file.items?.find(({ id }) => id === item)?.label ?? item;
    return impossible(message("write/not-held", { crew: call, item: label }));
  }
  const id = freeIdsIn(file, "steps").next(action);
  const at = placed.step.by.includes(giver)
    ? (placed.step.to ?? placed.step.at)
    : (giving?.place ?? undefined);
  const add = {
    id,
    by: [giver, receiver],
    do: action,
    time: HAND_OVER_TIME,
    ...(at === undefined ? {} : { at }),
    moves: [{ item, to: { crew: receiver } }],
    ...(placed.step.when ? { when: placed.step.when } : {}),
  };
  return proposed([{ add, behind }], [id]);
}
