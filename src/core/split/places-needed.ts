import type { Course } from "../course/index.ts";
import { networkOf } from "../order/index.ts";
import { isPlaced, whereaboutsOf } from "../place/index.ts";
import type { Outcomes, OutlineStep } from "../procedure/index.ts";
import { activityOf } from "../procedure/index.ts";
import type { PlaceId } from "../units/index.ts";

/**
 * Where each performer of a step has to be when it begins: where the step says, or else where the plan has them, with
 * get-aheads where the plan has none of the step. A translation that takes as long as the way begins anywhere.
 */
export function placesNeeded({ outline, network, whereabouts }: Course, outcomes: Outcomes) {
  const all = networkOf(outline, activityOf(outline, outcomes, true));
  const otherwise = whereaboutsOf(all);
  const { active } = network.activity;
  return ({ index, step, performers }: OutlineStep, seat: number): PlaceId | null => {
    if (step.at !== undefined) return step.at;
    if (step.to !== undefined && step.time === undefined) return null;
    const member = outline.crew[performers[seat] ?? -1];
    if (!member || !isPlaced(member)) return null;
    return (active[index] ? whereabouts : otherwise).from[index]?.[seat] ?? null;
  };
}
