import { bisectRight } from "d3-array";
import type { Duration } from "../units/index.ts";
import type { Course } from "./course.ts";
import { waitsOf } from "./course-waits.ts";

const known = new WeakMap<Course, readonly Duration[]>();

/**
 * Every PET at which something of a course begins or ends: a step, a wait, a window, or a correction is entered. In order, each
 * once. Cached for each course.
 */
export function eventsOf(course: Course): readonly Duration[] {
  const kept = known.get(course);
  if (kept) return kept;
  const all = [
    ...[...course.steps.values()].flatMap(({ start, finish }) => [start, finish]),
    ...waitsOf(course).flatMap(({ from, to }) => [from, to]),
    ...course.corrections.map(({ at }) => at),
    ...[...course.windows.values()].flatMap((spans) => spans ?? []).flatMap(({ from, to }) => [from, to]),
  ];
  const events = [...new Set(all)].sort((a, b) => a - b);
  known.set(course, events);
  return events;
}

/**
 * The number of the spell in which a PET lies: the time from one event to the next, its own beginning included. Within a spell
 * nothing begins or ends, so that only those who are under way get on. The numbers grow with time.
 */
export function spellAt(course: Course, pet: Duration): number {
  // What is only expected to be complete by now is complete once now is over.
  const isAfterNow = course.now !== null && pet > course.now;
  return 2 * bisectRight(eventsOf(course), pet) + (isAfterNow ? 1 : 0);
}

/**
 * Makes a question about a course at a PET, whose answer holds for a whole spell, one that is worked out once for the spell that
 * was asked about last. The answer must hang on nothing but the course and the spell.
 */
export function onceASpell<Answer>(
  workOut: (course: Course, pet: Duration) => Answer,
): (course: Course, pet: Duration) => Answer {
  const last = new WeakMap<Course, { readonly spell: number; readonly answer: Answer }>();
  return (course, pet) => {
    const spell = spellAt(course, pet);
    const kept = last.get(course);
    if (kept?.spell === spell) return kept.answer;
    const answer = workOut(course, pet);
    last.set(course, { spell, answer });
    return answer;
  };
}
