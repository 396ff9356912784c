import { message } from "../../words/index.ts";
import type { Change, CrewMember, Finding, Mend, Outline, OutlineStep } from "../procedure/index.ts";
import { finding, stateLabel, valueLabel } from "../procedure/index.ts";
import type { PlaceId, StepId } from "../units/index.ts";
import type { OpenRoutes } from "./open-routes.ts";
import { stepIdsOf, translationStep } from "./translation-step.ts";
import { waysOf } from "./ways.ts";

const labelOf = (outline: Outline, place: PlaceId) => outline.place(place)?.label ?? place;

/** The place that a lane names next: where something is done, or where it goes; both `null` when it names none. */
export interface NextPlace {
  readonly at: PlaceId | null;
  readonly to: PlaceId | null;
}

/** A crew member who would have to get from one place to another for a step; `from` is `null` when unknown. */
export interface Passage<From extends PlaceId | null> {
  readonly outline: Outline;
  readonly entry: OutlineStep;
  readonly member: CrewMember;
  readonly from: From;
  readonly to: PlaceId;
}

/**
 * The finding for a step that is done where its performer is not. There is a mend only where `next` tells which of the
 * two is meant: another `at`, or a translation before.
 */
export function notThere({ outline, entry, member, from, to }: Passage<PlaceId>, next: NextPlace): Finding {
  const astray = message("place/not-there", {
    crew: member.call,
    place: labelOf(outline, from),
    step: entry.step.id,
    at: labelOf(outline, to),
  });
  return finding("error", "place/not-there", `${entry.pointer}/at`, astray, {
    steps: [entry.step.id as StepId],
    things: [member.id, to],
    mend: mendOfPlace({ outline, entry, member, from, to }, next),
  });
}

function mendOfPlace({ outline, entry, member, from, to }: Passage<PlaceId>, next: NextPlace): Mend | null {
  if (next.at === from) {
    return {
      changes: [{ change: entry.step.id, set: { at: from } }],
      says: message("place/mend-at", { step: entry.step.id, place: labelOf(outline, from) }),
    };
  }
  // Whoever goes back afterwards to where they are now was meant to go away first.
  return (next.at === to || next.to === from) && waysOf(outline.procedure).quickest(from, to)
    ? {
        changes: [translationBefore(outline, entry, member, to)],
        says: message("place/mend-translation", {
          step: entry.step.id,
          crew: member.call,
          place: labelOf(outline, to),
        }),
      }
    : null;
}

/** The change that inserts a translation before a step, under the same conditions as the step. */
function translationBefore(
  outline: Outline,
  { step, task }: OutlineStep,
  member: CrewMember,
  to: PlaceId,
): Change {
  const add = translationStep(outline, stepIdsOf(outline), { member, to, when: step.when });
  const before = task.steps[task.steps.findIndex((one) => one.id === step.id) - 1];
  return before ? { add, behind: before.id } : { add, first: task.id };
}

/** The finding for a translation over routes that are no way while a state is as it may be; `null` when there is a way. */
export function wayClosed(
  { outline, entry, member, from, to }: Passage<PlaceId>,
  open: OpenRoutes,
): Finding | null {
  const { step, index, pointer } = entry;
  const all = waysOf(outline.procedure);
  const way = all.quickest(from, to) ?? all.shortest(from, to);
  const ways = open.before(index);
  if (!way || ways.quickest(from, to) || ways.shortest(from, to)) return null;
  const legs = way.places.slice(1).map((place, at) => [way.places[at] as PlaceId, place] as const);
  const shut = legs.flatMap(([a, b]) => open.closedBetween(index, a, b));
  // Of several closed routes the one counts that there is no way round.
  const closed =
    shut.find(({ state }) => {
      const then = open.before(index, state);
      return then.quickest(from, to) ?? then.shortest(from, to);
    }) ?? shut[0];
  if (!closed) return null;
  const said = message("place/way-closed", {
    step: step.id,
    crew: member.call,
    from: labelOf(outline, from),
    to: labelOf(outline, to),
    state: stateLabel(outline, closed.state),
    value: valueLabel(outline, closed.needed),
    why: closed.why,
  });
  return finding("error", "place/way-closed", `${pointer}/to`, said, {
    steps: closed.other === null ? [step.id] : [step.id, closed.other],
    things: [member.id, closed.state],
  });
}

/** The finding for a translation that no routes with a time lead along. */
export function noWay({ outline, entry, member, from, to }: Passage<PlaceId | null>): Finding {
  const why =
    from === null
      ? message("place/no-way-unknown", { crew: member.call, step: entry.step.id })
      : message("place/no-way", {
          from: labelOf(outline, from),
          to: labelOf(outline, to),
          step: entry.step.id,
        });
  return finding("error", "place/no-way", `${entry.pointer}/to`, why, {
    steps: [entry.step.id],
    things: [member.id, to],
  });
}
