import { lanesInTime, waitsBefore } from "../course/index.ts";
import type { CrewId, Duration, StepId } from "../units/index.ts";
import type { PersonAt } from "../worksite/index.ts";
import { momentOf } from "../worksite/index.ts";
import type { Briefing } from "./briefing.ts";

/** What a crew member does up to the joint step that a quiz stops before. */
export interface QuizAnswer {
  /** The crew member as the step begins. */
  readonly person: PersonAt;
  /** How long the crew member has waited for the others when the step begins; `null` for somebody who comes last. */
  readonly waited: Duration | null;
}

/** A stop of the quiz: who waits where, and what does each carry ([BRF7])? */
export interface QuizStop {
  readonly pet: Duration;
  readonly step: StepId;
  readonly crew: readonly CrewId[];
  /** One for each performer, in the order of the step. */
  readonly answers: readonly QuizAnswer[];
}

/**
 * The stops of a quiz: before each joint step whose performers come from different steps. Those who go on together from
 * one joint step to the next are not asked again.
 */
export function quizStops(briefing: Briefing): readonly QuizStop[] {
  const { course } = briefing;
  const lanes = lanesInTime(course);
  return briefing.cues.flatMap(({ pet, steps }) =>
    steps.flatMap((step) => {
      const entry = course.outline.step(step);
      if (!entry || entry.step.by.length < 2 || course.steps.get(step)?.stage === "skipped") return [];
      const before = entry.performers.map((lane) => {
        const own = (lanes[lane] ?? []).filter(({ stage }) => stage !== "skipped");
        return own[own.findIndex((one) => one.step === step) - 1]?.step ?? null;
      });
      const [first] = before;
      if (first != null && before.every((one) => one === first)) return [];
      const { people } = momentOf(course, pet);
      const waits = waitsBefore(course, step);
      const answers = entry.step.by.flatMap((crew) => {
        const person = people.find((one) => one.crew === crew);
        if (!person) return [];
        const own = waits.filter((wait) => wait.crew === crew);
        const waited = own.reduce((sum, { from, to }) => sum + (to - from), 0);
        return [{ person, waited: waited > 0 ? (waited as Duration) : null }];
      });
      return [{ pet, step, crew: entry.step.by, answers }];
    }),
  );
}

/** The next stop after a PET; `null` after the last. */
export function stopAfter(stops: readonly QuizStop[], pet: Duration): QuizStop | null {
  return stops.find((stop) => stop.pet > pet) ?? null;
}
