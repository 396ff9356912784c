import { isPlaced } from "../place/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import { activityOf, scenariosOf } from "../procedure/index.ts";
import type { PlaceId } from "../units/index.ts";
import type { SplitCase } from "./split-case.ts";

/** Where somebody has to be when a step begins, by the seat of a performer; `null` where it does not matter. */
export type NeedOf = (entry: OutlineStep, seat: number) => PlaceId | null;

/** The most scenarios for which translations are laid; the checker looks at all. */
const MOST_LAID = 16;

/**
 * Which steps are done, by reading order index: without get-aheads and with all of them, as expected and in other
 * scenarios. In a walk the first is its own, in which a get-ahead may be done in part.
 */
export function activitiesOf({ outline, laid, begun }: SplitCase): readonly (readonly boolean[])[] {
  const own = laid && begun.size > 0 ? [laid.course.network.activity.active] : [];
  const others = [false, true].flatMap((getAheads) =>
    scenariosOf(outline)
      .outcomes.slice(0, MOST_LAID)
      .map((outcomes) => activityOf(outline, outcomes, getAheads).active),
  );
  return [...own, ...others];
}

/**
 * The translations that are laid anew wherever their performer goes another way: those that say nothing but who goes
 * where, and behind which their performer does something at the place that they lead to, whatever else is done. Any other translation, such as
 * one with a time or an alert of its own, is a step like others.
 */
export function relaidSteps(splitCase: SplitCase, needOf: NeedOf): ReadonlySet<number> {
  const { outline, pinned } = splitCase;
  const named = new Set<string>([
    ...outline.steps.flatMap(({ step }) => step.after.map(({ step: id }) => id)),
    ...outline.procedure.watches.flatMap(({ from, until }) => [from ?? "", until ?? ""]),
  ]);
  const isPlain = ({ step, task, performers }: OutlineStep) => {
    const member = outline.crew[performers[0] ?? -1];
    return (
      step.to !== undefined &&
      performers.length === 1 &&
      member !== undefined &&
      isPlaced(member) &&
      !task.closeout &&
      !pinned.has(step.id) &&
      !named.has(step.id) &&
      // Whatever else the schema comes to know of a step makes it a step like others.
      Object.entries(step).every(
        ([key, value]) =>
          ["id", "by", "do", "to"].includes(key) ||
          value === undefined ||
          value === false ||
          (Array.isArray(value) && value.length === 0),
      )
    );
  };
  const plain = new Set(outline.steps.filter(isPlain).map(({ index }) => index));
  const relaid = new Set(plain);
  for (const active of activitiesOf(splitCase)) {
    const next = new Map<number, PlaceId | null>();
    for (const entry of outline.steps.toReversed()) {
      if (!active[entry.index]) continue;
      const [lane = -1] = entry.performers;
      if (plain.has(entry.index)) {
        if ((next.get(lane) ?? null) !== entry.step.to) relaid.delete(entry.index);
        continue;
      }
      for (const [seat, performer] of entry.performers.entries()) next.set(performer, needOf(entry, seat));
    }
  }
  return relaid;
}
