import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { sameJson } from "../changes/index.ts";
import { deadlockFinding, networkOf } from "../order/index.ts";
import type { Location, Outline } from "../procedure/index.ts";
import { activityOf } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";
import type { WrittenStep } from "./amended-steps.ts";
import { writtenStepsOf } from "./amended-steps.ts";
import type { BegunSteps } from "./begun-steps.ts";
import { isSpokenOf } from "./begun-steps.ts";
import type { LaidOutProcedure } from "./laid-out-procedure.ts";
import type { Ledger } from "./ledger.ts";
import { isComplete } from "./ledger.ts";

/**
 * Returns why a walk cannot go on by another procedure ([WLK6], [AMD1]); `null` when it can. `begun` are the steps that
 * have begun.
 */
export function whyNotAmended(
  ledger: Ledger,
  { file, outline }: LaidOutProcedure,
  begun: BegunSteps,
): Message | null {
  const before = writtenStepsOf(ledger.inForce.file);
  const after = writtenStepsOf(file);
  for (const [id, was] of before) {
    const why = whyNotStep(ledger, id, was, after.get(id), begun);
    if (why) return why;
  }
  return (
    whyNotOrder(ledger.inForce.outline, outline, begun) ??
    goneDecision(ledger, outline) ??
    goneThing(ledger, outline) ??
    noOrder(ledger, outline)
  );
}

/** Fields in which a step that is in work stays as it is. */
const KEPT = ["by", "at", "to", "anchor", "moves", "decide"] as const;

function whyNotStep(
  ledger: Ledger,
  step: StepId,
  was: WrittenStep,
  is: WrittenStep | undefined,
  { complete, working }: BegunSteps,
): Message | null {
  const isDone = complete.has(step);
  const hasBegun = isDone || working.has(step);
  if (!is) {
    if (hasBegun) return message("amend/begun-dropped", { step });
    return isSpokenOf(ledger, step) ? message("amend/entered-dropped", { step }) : null;
  }
  if (!hasBegun || (is.step === was.step && is.task === was.task)) return null;
  if (is.task !== was.task) return message("amend/begun-moved", { step });
  if (!isDone) {
    const keeps = KEPT.every((field) => sameJson(was.step[field], is.step[field]));
    return keeps ? null : message("amend/begun-changed", { step });
  }
  // What it came after may be dropped, and lets it go.
  const { after: _, ...rest } = was.step;
  const { after: __, ...now } = is.step;
  return sameJson(rest, now) ? null : message("amend/complete-changed", { step });
}

/** Why the steps cannot stand in another order: what has begun stays in its own, and nothing new comes before it in a lane. */
function whyNotOrder(before: Outline, after: Outline, { complete, working }: BegunSteps): Message | null {
  const hasBegun = (id: StepId) => complete.has(id) || working.has(id);
  const [order, next] = [before, after].map(({ steps }) =>
    steps.flatMap(({ step }) => (hasBegun(step.id) ? [step.id] : [])),
  );
  const moved = next?.find((id, place) => id !== order?.[place]);
  if (moved !== undefined) return message("amend/begun-moved", { step: moved });
  for (const member of after.crew) {
    const [was, is] = [behindIn(before, before.lane(member.id)), behindIn(after, after.lane(member.id))];
    for (const [step, begun] of is.later) {
      const [first] = begun.slice(0, begun.length - (was.later.get(step)?.length ?? 0));
      if (first !== undefined)
        return message("amend/before-begun", { step, begun: first, crew: member.call });
    }
  }
  return null;

  /** For each step of a lane that has not begun, those that have and come later. */
  function behindIn({ steps }: Outline, lane: number) {
    const later = new Map<StepId, readonly StepId[]>();
    let begun: readonly StepId[] = [];
    for (const { step, performers } of steps.toReversed()) {
      if (lane < 0 || !performers.includes(lane)) continue;
      if (hasBegun(step.id)) begun = [step.id, ...begun];
      else later.set(step.id, begun);
    }
    return { later };
  }
}

/** Why not, when a decision that was taken is gone, made elsewhere, or has lost its outcome. */
function goneDecision(ledger: Ledger, outline: Outline): Message | null {
  for (const [decision, outcome] of ledger.outcomes) {
    const made = outline.decision(decision);
    const was = ledger.inForce.outline.decision(decision);
    const stays = made?.decision.outcomes.includes(outcome) && made.madeBy.step.id === was?.madeBy.step.id;
    if (!stays) return message("amend/decision-gone", { decision });
  }
  return null;
}

/** Why not, when something is gone that entries of the walk name by itself: an item, a state, a supply, a watch. */
function goneThing(ledger: Ledger, outline: Outline): Message | null {
  const { states, supplies, watches } = outline.procedure;
  const named = (id: string) => message("amend/named-gone", { id });
  for (const { item, to } of ledger.moves) {
    const gone = outline.item(item) ? goneAt(outline, to) : item;
    if (gone !== null) return named(gone);
  }
  for (const { state, value } of ledger.stateSettings) {
    const values = states.find(({ id }) => id === state)?.values;
    const isValue =
      values === "crew" ? value === "free" || outline.lane(value) >= 0 : values?.includes(value);
    if (!isValue) return named(state);
  }
  for (const { crew, supply } of ledger.readings) {
    if (!supplies.some((one) => one.crew === crew && one.id === supply)) return named(`${crew} ${supply}`);
  }
  for (const { watch } of ledger.keptWatches) {
    if (!watches.some(({ id }) => id === watch)) return named(watch);
  }
  return null;
}

/** What is gone of where an item went; `null` when it is all there. */
function goneAt(outline: Outline, location: Location): string | null {
  if ("place" in location) return outline.place(location.place) ? null : location.place;
  if ("item" in location) return outline.item(location.item) ? null : location.item;
  const crew = "crew" in location ? [location.crew] : location.crews;
  return crew.find((id) => outline.lane(id) < 0) ?? null;
}

/** Why not, when what is left of the steps wait for each other. */
function noOrder(ledger: Ledger, outline: Outline): Message | null {
  const activity = activityOf(outline, ledger.outcomes, true);
  const active = activity.active.map((isActive, index) => {
    const id = outline.steps[index]?.step.id;
    return isActive && id !== undefined && !isComplete(ledger, id);
  });
  const deadlock = deadlockFinding(networkOf(outline, { ...activity, active }));
  return deadlock && message("amend/no-order", { why: deadlock.message });
}
