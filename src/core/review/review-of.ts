import { group } from "d3-array";
import { lanesInTime, waitsOf } from "../course/index.ts";
import { impossibleReading } from "../supply/index.ts";
import { surprisesReviewed } from "../training/index.ts";
import type { DecisionId, Duration, Instant, StepId } from "../units/index.ts";
import { between } from "../units/index.ts";
import type { Folded, Ledger } from "../walk/index.ts";
import {
  basePlanOf,
  closingReason,
  deviationsAt,
  flownCourseOf,
  planInForce,
  watchRounds,
} from "../walk/index.ts";
import { amendmentsReviewed, droppedSteps } from "./amendment-review.ts";
import { delayOf } from "./delay.ts";
import { difference } from "./differences.ts";
import { laneReview } from "./lane-review.ts";
import { reopeningsOf } from "./reopenings.ts";
import type { CausedWait, ReadingReview, Review, WatchReview } from "./review.ts";
import { stepReview } from "./step-review.ts";
import { struckOf } from "./struck-entries.ts";
import { taskReview } from "./task-review.ts";

/**
 * Returns the review of a walk as it was at `at`, or when it was closed if that was earlier. Returns `null` when no
 * walk was opened.
 */
export function reviewOf(folded: Folded, at: Instant): Review | null {
  const { ledger } = folded;
  if (!ledger) return null;
  const { opened, petZero, closed } = ledger;
  const { outline } = ledger.inForce;
  const until = closed && closed.at < at ? closed.at : at;
  const inPet = (instant: Instant) => between(petZero ?? opened.at, instant);
  const planned = basePlanOf(ledger).timeline?.course ?? null;
  const inForce = planInForce(ledger);
  const flown = flownCourseOf(ledger, until);
  const waits = waitsOf(flown).flatMap((wait): CausedWait[] =>
    wait.on === null ? [] : [{ ...wait, on: wait.on }],
  );
  const struck = struckOf(folded);
  const struckByStep = group(struck, ({ step }) => step);
  const notesByStep = group(ledger.notes, ({ step }) => (step && outline.step(step) ? step : null));
  const notesOf = (step: StepId | null) =>
    (notesByStep.get(step) ?? []).map(({ at: noted, actor, text }) => ({ at: noted, actor, text }));
  const waitsByStep = group(waits, ({ step }) => step);
  const steps = outline.steps.map((entry) =>
    stepReview({
      ledger,
      entry,
      planned: planned?.steps.get(entry.step.id) ?? null,
      inForce: inForce?.steps.get(entry.step.id) ?? null,
      flown: flown.steps.get(entry.step.id) ?? null,
      waits: waitsByStep.get(entry.step.id) ?? [],
      notes: notesOf(entry.step.id),
      struck: struckByStep.get(entry.step.id) ?? [],
    }),
  );
  const finishes = steps.flatMap(({ actual }) => actual?.finish ?? []);
  const actualFinish = finishes.length === 0 ? null : (Math.max(...finishes) as Duration);
  const plannedFinish = planned?.finish ?? null;
  const limit = outline.procedure.limits.elapsed ?? null;
  const end = closed && { end: closed.end, reason: closingReason(closed), at: inPet(closed.at) };
  const lanes = lanesInTime(flown);
  const pet = petZero === null ? null : inPet(until);
  return {
    opened,
    light: ledger.light,
    outline,
    petZero,
    until,
    end,
    plannedFinish,
    inForceFinish: inForce?.finish ?? null,
    actualFinish,
    finishDifference: difference(actualFinish, plannedFinish),
    limit,
    margin: difference(limit, end?.at ?? actualFinish),
    holds: ledger.holds.map(({ from, until: lifted, reason }) => ({
      start: inPet(from),
      finish: inPet(lifted ?? until),
      reason,
      lifted: lifted !== null,
    })),
    decisions: [...ledger.outcomes].map(([decision, outcome]) => ({
      decision: decision as DecisionId,
      outcome,
      expected: outline.decision(decision)?.decision.expect === outcome,
    })),
    decided: ledger.decisions,
    watches: watchesOf(ledger, pet),
    readings: readingsReviewed(ledger),
    reopenings: reopeningsOf(ledger),
    amendments: amendmentsReviewed(ledger),
    dropped: droppedSteps(ledger),
    corrections: [...ledger.moves].filter(({ step }) => step === null),
    alerts: ledger.alerts,
    surprises: surprisesReviewed(folded),
    delay: delayOf(flown, planned),
    steps,
    lanes: outline.crew.map((member, lane) =>
      laneReview({
        member,
        flown,
        lane: lanes[lane] ?? [],
        waits: waits.filter(({ crew }) => crew === member.id),
        steps: steps.filter(({ step }) => outline.step(step)?.performers.includes(lane)),
      }),
    ),
    tasks: outline.procedure.tasks.map((task) => taskReview(outline, task, steps)),
    notes: notesOf(null),
    struck,
    deviations: deviationsAt(folded, { ledger, pet }),
    ignored: folded.ignored,
    items: ledger.custody,
    entries: folded.entries,
  };
}

function watchesOf(ledger: Ledger, pet: Duration | null): readonly WatchReview[] {
  if (pet === null) return [];
  return watchRounds(ledger, pet)
    .flatMap(({ watch, rounds }) => rounds.map(({ due, isKept }) => ({ watch: watch.id, due, isKept })))
    .sort((a, b) => a.due - b.due);
}

function readingsReviewed(ledger: Ledger): readonly ReadingReview[] {
  const { supplies } = ledger.inForce.outline.procedure;
  return [...ledger.readings].map((reading) => {
    const supply = supplies.find(({ crew, id }) => crew === reading.crew && id === reading.supply);
    return { ...reading, impossible: supply ? impossibleReading(supply, reading.value) : null };
  });
}
