import { message } from "../../words/index.ts";
import type { CourseStep } from "../course/index.ts";
import { waysOf } from "../place/index.ts";
import type { BoundBrokenHome, Plan } from "../plan/index.ts";
import { brokenHomeMessage, latestTurnBack, returnBarAt } from "../plan/index.ts";
import type { Finding } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import { supplyForecast } from "../supply/index.ts";
import type { Duration, PlaceId, StepId } from "../units/index.ts";
import { minus, NO_TIME } from "../units/index.ts";

/**
 * Returns a finding for each crew member whom the plan keeps outside beyond the latest turn-back PET ([PLN6]). It
 * covers the steps outside closeout tasks that finish after that PET, and is reported at the step that exceeds it
 * most. Steps that finish after the elapsed limit are left out, because the limit has a finding of its own.
 */
export function turnBackFindings({ outline, network, timeline, returns }: Plan): Finding[] {
  const limit = outline.procedure.limits.elapsed;
  if (!timeline || limit === undefined) return [];
  const { course } = timeline;
  return outline.crew.flatMap((member, lane) => {
    if (member.station !== "outside") return [];
    const beyond = (network.lanes[lane] ?? []).flatMap((index) => {
      const entry = outline.steps[index];
      const finish = (entry && course.steps.get(entry.step.id)?.finish) ?? NO_TIME;
      if (!entry || entry.task.closeout || finish > limit) return [];
      const plan = returns.at(course, finish);
      // Whoever is home within the limit may turn back then, or later.
      if (!plan || plan.finish <= limit) return [];
      const latest = latestTurnBack(course, plan, limit);
      return [{ entry, plan, latest, finish, over: finish - latest }];
    });
    const worst = beyond.reduce<(typeof beyond)[number] | null>(
      (most, one) => (most && most.over >= one.over ? most : one),
      null,
    );
    if (!worst) return [];
    const { entry, plan, latest, finish, over } = worst;
    const from = plan.crew.find(({ crew }) => crew === member.id)?.from;
    const beyondLatest = message("time/beyond-turn-back", {
      step: entry.step.id,
      crew: member.call,
      place: (from && outline.place(from)?.label) ?? from ?? member.call,
      until: finish,
      back: plan.total,
      latest,
      limit,
      over: over as Duration,
    });
    return [
      finding("caution", "time/beyond-turn-back", entry.pointer, beyondLatest, {
        steps: beyond.map((one) => one.entry.step.id),
        things: [member.id],
      }),
    ];
  });
}

/**
 * Returns a finding when the return cannot be told at the end of some steps because a step of closeout fits no window
 * from there on, or because states bar it ([PLN6]). Unknown ways home have a finding of their own.
 */
export function noReturnFindings(plan: Plan): Finding[] {
  const { outline, network, timeline, windows, returns } = plan;
  const isAsked = outline.procedure.limits.elapsed !== undefined || outline.procedure.supplies.length > 0;
  const hasGate =
    outline.procedure.states.length > 0 ||
    outline.steps.some(
      ({ index, step, task }) =>
        network.activity.active[index] && task.closeout && step.within.some((id) => windows.get(id)),
    );
  if (!timeline || !isAsked || !hasGate || refugeFindings(plan).length > 0) return [];
  const { course } = timeline;
  const stuck = workOutside(plan).filter(({ finish }) => returns.at(course, finish) === null);
  const [first] = stuck;
  if (!first) return [];
  const bar = returnBarAt(course, first.finish);
  const end = { step: first.step, at: first.finish };
  const none = bar ? message("time/return-barred", { ...end, why: bar.why }) : message("time/no-return", end);
  const pointer = outline.step(first.step)?.pointer ?? "";
  return [
    finding("caution", "time/no-return", pointer, none, {
      steps: stuck.map(({ step }) => step),
      things: bar ? [bar.state] : [],
    }),
  ];
}

/** The steps of a plan that somebody outside does before closeout; at the end of each the work may be broken off. */
function workOutside({ outline, timeline }: Plan): readonly CourseStep[] {
  return [...(timeline?.course.steps.values() ?? [])].filter(({ step }) => {
    const entry = outline.step(step);
    const isOutside = entry?.performers.some((lane) => outline.crew[lane]?.station === "outside");
    return isOutside && !entry?.task.closeout;
  });
}

/**
 * Returns a finding for each bound of [PRO17] that the way home breaks when the work is broken off at the end of some
 * step, told for the step from whose end it is broken by the most ([PLN6]).
 */
export function lateHomeFindings(plan: Plan): Finding[] {
  const { outline, timeline, returns } = plan;
  const isBound = outline.steps.some(
    ({ step, task }) =>
      task.closeout && (step.doneBy !== undefined || step.after.some(({ within }) => within !== null)),
  );
  if (!timeline || !isBound) return [];
  const worst = new Map<string, { readonly end: CourseStep; readonly one: BoundBrokenHome }>();
  for (const end of workOutside(plan)) {
    for (const one of returns.at(timeline.course, end.finish)?.broken ?? []) {
      const key = "after" in one.bound ? `${one.bound.step} ${one.bound.after}` : one.bound.step;
      if (one.over > (worst.get(key)?.one.over ?? NO_TIME)) worst.set(key, { end, one });
    }
  }
  return [...worst.values()].map(({ end, one }) => {
    const { bound } = one;
    const what = brokenHomeMessage(one);
    const said = message("time/return-breaks", { step: end.step, at: end.finish, what });
    const entry = outline.step(bound.step);
    const place =
      "after" in bound
        ? `after/${entry?.step.after.findIndex(({ step }) => step === bound.after) ?? 0}`
        : "doneBy";
    return finding("caution", "time/return-breaks", `${entry?.pointer ?? ""}/${place}`, said, {
      steps: "after" in bound ? [bound.step, bound.after] : [bound.step],
    });
  });
}

/**
 * Returns findings for supplies that reach their redline before the last step of their crew member is over, when they
 * are full at PET 0 and used at the planned rate ([FOR3]).
 */
export function supplyFindings({ outline, network, timeline }: Plan): Finding[] {
  if (!timeline) return [];
  return outline.procedure.supplies.flatMap((supply, index) => {
    if (supply.redline >= supply.full) return [];
    const { redlineAt } = supplyForecast(supply, [], NO_TIME);
    const last = network.lanes[outline.lane(supply.crew)]?.at(-1);
    const step = last === undefined ? null : outline.steps[last]?.step;
    const finish = step && timeline.course.steps.get(step.id)?.finish;
    if (redlineAt === null || finish == null || !step || redlineAt >= finish) return [];
    const call = outline.crewMember(supply.crew)?.call ?? supply.crew;
    const short = message("supply/short", {
      crew: call,
      supply: supply.label ?? supply.id,
      at: redlineAt,
      before: minus(finish, redlineAt),
      step: step.id,
    });
    return [
      finding("error", "supply/short", `/supplies/${index}`, short, {
        steps: [step.id as StepId],
        things: [supply.crew, supply.id],
      }),
    ];
  });
}

/**
 * Returns findings for what makes return times unknown: there is no refuge, or there are places outside from which no
 * route with a time leads to one ([PLN6]).
 */
export function refugeFindings({ outline, network, whereabouts }: Plan): Finding[] {
  const { crew, limits, places, supplies } = outline.procedure;
  const isAsked = limits.elapsed !== undefined || supplies.length > 0;
  if (!isAsked || crew.every(({ station }) => station !== "outside")) return [];
  if (places.every(({ refuge }) => !refuge)) {
    const none = message("place/no-refuge");
    return [finding("caution", "place/no-refuge", "/places", none)];
  }
  const ways = waysOf(outline.procedure);
  const cutOff = new Map<PlaceId, StepId[]>();
  for (const { index, step, performers } of outline.steps) {
    if (!network.activity.active[index]) continue;
    for (const [seat, lane] of performers.entries()) {
      const place = step.to ?? whereabouts.from[index]?.[seat] ?? null;
      if (place === null || outline.crew[lane]?.station !== "outside" || ways.toRefuge(place)) continue;
      const steps = cutOff.get(place) ?? [];
      if (steps.at(-1) !== step.id) steps.push(step.id);
      cutOff.set(place, steps);
    }
  }
  return [...cutOff].map(([place, steps]) => {
    const index = places.findIndex(({ id }) => id === place);
    const noWay = message("place/no-way-home", { place: places[index]?.label ?? place });
    return finding("caution", "place/no-way-home", `/places/${index}`, noWay, { steps, things: [place] });
  });
}
