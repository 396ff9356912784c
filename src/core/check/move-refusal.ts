import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Custody } from "../custody/index.ts";
import { crewHolding, holderOf, isWithin } from "../custody/index.ts";
import { isPlaced } from "../place/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Location, Mend, OutlineStep } from "../procedure/index.ts";
import type { CrewId, ItemId } from "../units/index.ts";
import { callsOf, labelOf, placeLabel, whereMessage } from "./item-words.ts";

/** Why an item cannot be moved as a step says. */
export interface Refusal {
  readonly code: string;
  readonly message: Message;
  readonly mend?: Mend | null;
}

/** Returns why the performers of a step cannot move an item, or `null` when they can. */
export function refusalOf(
  plan: Plan,
  custody: Custody,
  entry: OutlineStep,
  item: ItemId,
  to: Location,
): Refusal | null {
  const { outline } = plan;
  const { by } = entry.step;
  const label = labelOf(outline, item);
  const holder = holderOf(custody, item);
  const calls = by.map((crew) => outline.crewMember(crew)?.call ?? crew);
  const step = entry.step.id;
  const isHeld = holder !== null && crewHolding(holder).some((crew) => by.includes(crew));
  const isHere = holder && "place" in holder && placesOf(plan, entry).includes(holder.place);
  if (!isHeld && !isHere) {
    const where = holder ? whereMessage(outline, holder) : message("custody/where-unknown");
    return {
      code: "custody/not-held",
      message: message("custody/not-held", { step, crew: calls, item: label, where }),
    };
  }
  const apart = apartAtHandOver(plan, entry, holder, to);
  if (apart) {
    return {
      code: "custody/hand-over-apart",
      message: message("custody/hand-over-apart", { step, item: label, ...apart }),
    };
  }
  const absent = crewHolding(to).find((crew) => !by.includes(crew));
  if (absent !== undefined) {
    const call = outline.crewMember(absent)?.call ?? absent;
    return {
      code: "custody/receiver-absent",
      message: message("custody/receiver-absent", { step, item: label, crew: call }),
      mend: withReceiver(plan, entry, absent),
    };
  }
  if ("place" in to && !placesOf(plan, entry).includes(to.place) && placesOf(plan, entry).length > 0) {
    return {
      code: "custody/place-not-there",
      message: message("custody/place-not-there", {
        step,
        item: label,
        place: placeLabel(outline, to.place),
      }),
    };
  }
  if ("item" in to && !isWithin(custody, to.item, item)) {
    const into = holderOf(custody, to.item);
    const reachable =
      into &&
      (crewHolding(into).some((crew) => by.includes(crew)) ||
        ("place" in into && placesOf(plan, entry).includes(into.place)));
    if (!reachable) {
      return {
        code: "custody/not-held",
        message: message("custody/bag-not-at-hand", {
          step,
          item: label,
          bag: labelOf(outline, to.item),
          crew: calls,
        }),
      };
    }
  }
  return null;
}

/**
 * Returns where the two are when an item would pass between performers who are at different places ([PRO15]), `null`
 * when they are together. Somebody inside or on the ground whose place is not followed is together with those at a
 * refuge only.
 */
function apartAtHandOver(
  { outline, whereabouts }: Plan,
  { index, step, performers }: OutlineStep,
  holder: Location | null,
  to: Location,
): { giver: string; giverAt: Message; receiver: string; receiverAt: Message } | null {
  if (!holder) return null;
  const givers = crewHolding(holder).filter((crew) => step.by.includes(crew));
  const receivers = crewHolding(to).filter((crew) => step.by.includes(crew) && !givers.includes(crew));
  const placeOf = (crew: CrewId) => whereabouts.from[index]?.[performers.indexOf(outline.lane(crew))] ?? null;
  const isInside = (crew: CrewId) => outline.crewMember(crew)?.station !== "outside";
  const at = (crew: CrewId): Message => {
    const place = placeOf(crew);
    if (place !== null) return message("custody/where-place", { place: placeLabel(outline, place) });
    const isOnGround = outline.crewMember(crew)?.station === "ground";
    return message(isOnGround ? "custody/where-ground" : "custody/where-inside");
  };
  for (const giver of givers) {
    for (const receiver of receivers) {
      const [one, other] = [placeOf(giver), placeOf(receiver)];
      const isApart =
        one !== null && other !== null
          ? one !== other
          : [giver, receiver].some(isInside) &&
            [one, other].some((place) => place !== null && outline.place(place)?.refuge !== true);
      if (!isApart) continue;
      const [giverCall = "", receiverCall = ""] = callsOf(outline, [giver, receiver]);
      return { giver: giverCall, giverAt: at(giver), receiver: receiverCall, receiverAt: at(receiver) };
    }
  }
  return null;
}

/**
 * Returns the change that adds a receiver to the performers of a step. Returns `null` when the receiver is not where
 * the step is done, or when the change could cause a deadlock.
 */
function withReceiver({ outline, network }: Plan, entry: OutlineStep, crew: CrewId): Mend | null {
  const lane = outline.lane(crew);
  const member = outline.crew[lane];
  const pointsForward = network.before.some((links) => links.some(({ from, to }) => from > to));
  if (!member || pointsForward) return null;
  if (isPlaced(member)) {
    const { at, to } = entry.step;
    if (to !== undefined || at === undefined) return null;
    let place = member.start ?? null;
    for (const index of network.lanes[lane] ?? []) {
      const step = outline.steps[index]?.step;
      if (index < entry.index) place = step?.to ?? step?.at ?? place;
    }
    if (place !== at) return null;
  }
  return {
    changes: [{ change: entry.step.id, set: { by: [...entry.step.by, crew] } }],
    says: message("custody/mend-receiver", {
      step: entry.step.id,
      crew: outline.crewMember(crew)?.call ?? crew,
    }),
  };
}

/** Returns the places of the performers of a step at its start and at its end. */
function placesOf({ whereabouts }: Plan, { index, step }: OutlineStep): string[] {
  const starts = (whereabouts.from[index] ?? []).flatMap((place) => place ?? []);
  return step.to === undefined ? starts : [...starts, step.to];
}
