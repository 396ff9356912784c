import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Custody } from "../custody/index.ts";
import { crewHolding, custodyAtStart, holderOf, isSameLocation, isWithin } from "../custody/index.ts";
import { isPlaced } from "../place/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Change, Finding, Location, Outline, OutlineStep } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { CrewId, ItemId, PlaceId, StepId } from "../units/index.ts";

/**
 * Returns the findings on items for the plan of one scenario: moves that cannot be made, and items that are not where
 * they must be at the end ([CHK2]).
 */
export function custodyFindings(plan: Plan): Finding[] {
  const { outline, network, timeline } = plan;
  const found: Finding[] = [];
  // One map is changed in place for the whole plan, because a copy for each move would cost steps × items.
  const custody = new Map(custodyAtStart(outline.procedure));
  const startOf = (index: number) =>
    timeline?.course.steps.get(outline.steps[index]?.step.id as StepId)?.start ?? 0;
  // The sort is stable, so steps that start at the same time stay in the order of the network.
  const inTime = [...network.order].sort((a, b) => startOf(a) - startOf(b));
  for (const index of inTime) {
    const entry = outline.steps[index];
    if (!entry) continue;
    for (const [position, { item, to }] of entry.step.moves.entries()) {
      const pointer = `${entry.pointer}/moves/${position}`;
      const concerned = { steps: [entry.step.id], things: [item] };
      const refusal = refusalOf(plan, custody, entry, item, to);
      if (refusal) {
        found.push(
          finding("error", refusal.code, pointer, refusal.message, {
            ...concerned,
            mend: refusal.mend ?? null,
          }),
        );
      }
      if ("item" in to && isWithin(custody, to.item, item)) {
        const inside = message("custody/would-be-inside-itself", {
          item: labelOf(outline, item),
          step: entry.step.id,
        });
        found.push(finding("error", "custody/inside-itself", pointer, inside, concerned));
      } else custody.set(item, to);
    }
  }
  return [...found, ...leftFindings(plan, custody)];
}

interface Refusal {
  readonly code: string;
  readonly message: Message;
  readonly mend?: readonly Change[] | null;
}

/** Returns why the performers of a step cannot move an item, or `null` when they can. */
function refusalOf(
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
 * Returns the change that adds a receiver to the performers of a step. Returns `null` when the receiver is not where
 * the step is done, or when the change could cause a deadlock.
 */
function withReceiver({ outline, network }: Plan, entry: OutlineStep, crew: CrewId): Change[] | null {
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
  return [{ change: entry.step.id, set: { by: [...entry.step.by, crew] } }];
}

/** Returns the places of the performers of a step at its start and at its end. */
function placesOf({ whereabouts }: Plan, { index, step }: OutlineStep): string[] {
  const starts = (whereabouts.from[index] ?? []).flatMap((place) => place ?? []);
  return step.to === undefined ? starts : [...starts, step.to];
}

/**
 * Returns findings for items that are not at their `end`. An item without an `end` must be at a refuge, or with
 * somebody who is at one.
 */
function leftFindings(plan: Plan, custody: Custody): Finding[] {
  const { outline } = plan;
  return outline.procedure.items.flatMap(({ id, end }, index): Finding[] => {
    const pointer = `/items/${index}`;
    const at = custody.get(id);
    const things = [id];
    if (end) {
      if (at && isSameLocation(at, end)) return [];
      const astray = message("custody/not-at-its-end", {
        item: labelOf(outline, id),
        is: whereMessage(outline, at),
        end: whereMessage(outline, end),
      });
      return [
        finding("error", "custody/not-at-its-end", `${pointer}/end`, astray, {
          steps: lastMoves(plan, id),
          things,
        }),
      ];
    }
    const holder = holderOf(custody, id);
    if (holder && isSafe(plan, holder)) return [];
    const left = message("custody/left-outside", {
      item: labelOf(outline, id),
      is: whereMessage(outline, at),
    });
    return [finding("error", "custody/left-outside", pointer, left, { steps: lastMoves(plan, id), things })];
  });
}

/** True for a refuge, for a crew member who is not outside, and for those who end the walk at a refuge. */
function isSafe(plan: Plan, holder: Location): boolean {
  const { outline } = plan;
  const isRefuge = (place: PlaceId | null) => place !== null && outline.place(place)?.refuge === true;
  if ("place" in holder) return isRefuge(holder.place);
  return crewHolding(holder).every(
    (crew) => outline.crewMember(crew)?.station !== "outside" || isRefuge(finalPlace(plan, crew)),
  );
}

function finalPlace({ outline, network }: Plan, crew: string) {
  const lane = outline.lane(crew);
  let place = outline.crew[lane]?.start ?? null;
  for (const index of network.lanes[lane] ?? []) {
    const step = outline.steps[index]?.step;
    place = step?.to ?? step?.at ?? place;
  }
  return place;
}

function lastMoves({ outline, network }: Plan, item: ItemId): StepId[] {
  const last = outline.steps.findLast(
    ({ index, step }) => network.activity.active[index] && step.moves.some((move) => move.item === item),
  );
  return last ? [last.step.id] : [];
}

const callsOf = (outline: Outline, crew: readonly CrewId[]) =>
  crew.map((one) => outline.crewMember(one)?.call ?? one);
const labelOf = (outline: Outline, item: ItemId) => outline.item(item)?.label ?? item;
const placeLabel = (outline: Outline, place: string) =>
  outline.procedure.places.find(({ id }) => id === place)?.label ?? place;

function whereMessage(outline: Outline, location: Location | undefined): Message {
  if (!location) return message("custody/where-nowhere");
  if ("place" in location)
    return message("custody/where-place", { place: placeLabel(outline, location.place) });
  if ("item" in location) return message("custody/where-item", { item: labelOf(outline, location.item) });
  return message("custody/where-crew", { crew: callsOf(outline, crewHolding(location)) });
}
