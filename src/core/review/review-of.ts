import type { DecisionId, Duration, Instant } from "../units/index.ts";
import { between, later } from "../units/index.ts";
import type { Folded, Ledger } from "../walk/index.ts";
import { basePlanOf, forecastOf } from "../walk/index.ts";
import { difference } from "./differences.ts";
import { laneReview } from "./lane-review.ts";
import type { Review } from "./review.ts";
import { stepReview } from "./step-review.ts";
import type { Doing } from "./step-waits.ts";
import { doingsOf, gapsOf, waitsIn } from "./step-waits.ts";
import { struckOf } from "./struck-entries.ts";
import { taskReview } from "./task-review.ts";

/** Looks a walk back over, as it was at `at` or when it was closed before that; `null` when no walk was opened. */
export function reviewOf(folded: Folded, at: Instant): Review | null {
  const { ledger } = folded;
  if (!ledger) return null;
  const { opened, petZero, closed } = ledger;
  const { outline } = opened;
  const until = closed && closed.at < at ? closed.at : at;
  const inPet = (instant: Instant) => between(petZero ?? opened.at, instant);
  const plan = basePlanOf(ledger);
  const working = petZero === null ? [] : workingAt(ledger, until, petZero);
  const byLane = doingsOf(ledger, working);
  const waitsOfLane = byLane.map((doings, lane) =>
    petZero === null
      ? []
      : gapsOf(doings, lane, petZero).map((gap) => ({
          index: gap.index,
          waits: waitsIn(ledger, gap, byLane, petZero),
        })),
  );
  const struck = struckOf(folded);
  const steps = outline.steps.map((entry) =>
    stepReview({
      folded,
      ledger,
      entry,
      planned: plan.timeline?.steps[entry.index] ?? null,
      waits: waitsOfLane.flatMap((gaps) =>
        gaps.flatMap(({ index, waits }) => (index === entry.index ? waits : [])),
      ),
      struck: struck.filter(({ step }) => step === entry.step.id),
      inWork: working.some(({ index }) => index === entry.index),
      inPet,
    }),
  );
  const finishes = steps.flatMap(({ actual }) => actual?.finish ?? []);
  const actualFinish = finishes.length === 0 ? null : (Math.max(...finishes) as Duration);
  const plannedFinish = plan.timeline?.finish ?? null;
  const limit = outline.procedure.limits.elapsed ?? null;
  const end = closed && { end: closed.end, reason: closed.reason, at: inPet(closed.at) };
  const ended = end?.at ?? actualFinish;
  return {
    opened,
    outline,
    petZero,
    until,
    end,
    plannedFinish,
    actualFinish,
    finishDifference: difference(actualFinish, plannedFinish),
    limit,
    margin: difference(limit, ended),
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
    steps,
    lanes: outline.crew.map((member, lane) =>
      laneReview({
        crew: member.id,
        outline,
        doings: byLane[lane] ?? [],
        waits: (waitsOfLane[lane] ?? []).flatMap(({ waits }) => waits),
        steps: steps.filter((step) => outline.steps[step.index]?.performers.includes(lane)),
        petZero: petZero ?? opened.at,
      }),
    ),
    tasks: outline.procedure.tasks.map((task) => taskReview(outline, task, steps)),
    notes: ledger.notes
      .filter(({ step }) => step === null)
      .map(({ at: noted, actor, text }) => ({ at: noted, actor, text })),
    struck,
    deviations: folded.deviations,
    ignored: folded.ignored,
    items: ledger.custody,
    entries: folded.entries,
  };
}

/** The steps in work at an instant, as far as they have come. */
function workingAt(ledger: Ledger, at: Instant, petZero: Instant): Doing[] {
  const forecast = forecastOf(ledger, at);
  return (forecast?.steps ?? []).flatMap((step, index): Doing[] =>
    step?.stage === "in-work" ? [{ index, start: later(petZero, step.start), finish: at }] : [],
  );
}
