import { changesBetween } from "../changes/index.ts";
import { runFindings } from "../check/index.ts";
import type { Course } from "../course/index.ts";
import { amendmentEffect } from "../effect/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Instant, StepId } from "../units/index.ts";
import { NO_TIME } from "../units/index.ts";
import type { Ledger } from "../walk/index.ts";
import {
  begunSteps,
  forecastOf,
  isSpokenOf,
  lightInForce,
  stateValuesOf,
  walkStateAt,
} from "../walk/index.ts";
import type { Laid, SplitCase } from "./split-case.ts";
import { hasNewFinding, isAboutTether } from "./split-case.ts";

/**
 * The case of a walk at an instant: what is left of it by the forecast ([FOR1]). What is complete or in work stays, and so
 * does whatever an entry tells of. A split may be offered when an amendment to it would be accepted and makes nothing
 * grave ([AMD3]).
 */
export function walkSplitCase(ledger: Ledger, at: Instant): SplitCase {
  const { file, outline } = ledger.inForce;
  const { start, light } = lightInForce(ledger);
  const { complete, working } = begunSteps(ledger, at);
  const course = forecastOf(ledger, at);
  const up = [...(course?.steps.values() ?? [])].filter(({ stage }) => stage !== "planned");
  const begun = new Set<StepId>([...complete, ...working.keys(), ...up.map(({ step }) => step)]);
  // Where something was done out of order, the way to it is a step like others.
  const ledPast = translationsBeforeBegun(outline, begun);
  const isPinned = (step: StepId) => begun.has(step) || ledPast.has(step) || isSpokenOf(ledger, step);
  const state = walkStateAt(ledger, at);
  const { outcomes, custody } = ledger;
  return {
    file,
    outline,
    outcomes,
    now: course?.now ?? NO_TIME,
    standing: { items: custody, states: stateValuesOf(ledger) },
    begun,
    pinned: new Set(outline.steps.flatMap(({ step }) => (isPinned(step.id) ? [step.id] : []))),
    laid: course && laidIn(course),
    hasShortTether: runFindings(outline, { start, light, outcomes }, { returns: false }).some(isAboutTether),
    judge: (next) => {
      const { effect } = amendmentEffect(state, changesBetween(file, next), { thorough: true });
      if (!effect) return null;
      const { new: found, gone, same } = effect.findings;
      const isGrave = effect.grave.some((one) => found.every(({ message }) => message !== one));
      if (isGrave || hasNewFinding(found, [...gone, ...same])) return null;
      const forecast = forecastOf(effect.ledger, at);
      return forecast && laidIn(forecast);
    },
  };
}

/** The translations to come that stand in a lane in front of a step that has begun. */
function translationsBeforeBegun({ steps }: Outline, begun: ReadonlySet<StepId>): ReadonlySet<StepId> {
  const found = new Set<StepId>();
  const lanes = new Set<number>();
  for (const { step, performers } of steps.toReversed()) {
    if (begun.has(step.id)) for (const lane of performers) lanes.add(lane);
    else if (step.to !== undefined && performers.some((lane) => lanes.has(lane))) found.add(step.id);
  }
  return found;
}

const laidIn = (course: Course): Laid => ({
  outline: course.outline,
  course,
  criticalPath: chainTo(course),
});

/** The steps to come that the finish of a forecast hangs on, back to the one that nothing but time or a window holds up. */
function chainTo({ outline, network, steps, finish }: Course): readonly StepId[] {
  const path: StepId[] = [];
  let last = [...steps.values()].find((one) => one.finish === finish && one.stage === "planned");
  while (last) {
    const { step, start } = last;
    path.unshift(step);
    const links = network.before[outline.step(step)?.index ?? -1] ?? [];
    last = links
      .flatMap(({ from, lag }) => {
        const before = steps.get(outline.steps[from]?.step.id as StepId);
        return before && before.finish + lag === start ? [before] : [];
      })
      .find(({ stage }) => stage === "planned" || stage === "in-work");
    if (last?.stage === "in-work") {
      path.unshift(last.step);
      break;
    }
  }
  return path;
}
