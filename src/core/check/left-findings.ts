import { message } from "../../words/index.ts";
import type { Custody } from "../custody/index.ts";
import { crewHolding, holderOf, isSameLocation } from "../custody/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Finding, Location } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { ItemId, PlaceId, StepId } from "../units/index.ts";
import { labelOf, whereMessage } from "./item-words.ts";

/**
 * Returns findings for items that are not at their `end`, each at the last step that moves the item. An item without an `end` must be at a refuge, or with
 * somebody who is at one.
 */
export function leftFindings(plan: Plan, custody: Custody): Finding[] {
  const { outline } = plan;
  return outline.procedure.items.flatMap(({ id, end }, index): Finding[] => {
    const last = lastMove(plan, id);
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
        finding("error", "custody/not-at-its-end", last?.pointer ?? `/items/${index}/end`, astray, {
          steps: last ? [last.step] : [],
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
    return [
      finding("error", "custody/left-outside", last?.pointer ?? `/items/${index}`, left, {
        steps: last ? [last.step] : [],
        things,
      }),
    ];
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

/** The move after which an item stays where it is, and the step that makes it; `null` when nothing moves the item. */
function lastMove({ outline, network }: Plan, item: ItemId): { step: StepId; pointer: string } | null {
  const last = outline.steps.findLast(
    ({ index, step }) => network.activity.active[index] && step.moves.some((move) => move.item === item),
  );
  if (!last) return null;
  const position = last.step.moves.findLastIndex((move) => move.item === item);
  return { step: last.step.id, pointer: `${last.pointer}/moves/${position}` };
}
