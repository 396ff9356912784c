import type { Course, CourseStep } from "../course/index.ts";
import type { Duration, Instant, StepId, TaskId } from "../units/index.ts";

/** A task as a chapter of a briefing. Chapters may overlap where the crew is at two tasks at once. */
export interface Chapter {
  readonly task: TaskId;
  /** The number of the task as printed, counted from 1. */
  readonly number: number;
  readonly title: string;
  /** What the presenter says of it; `null` when the author wrote nothing. */
  readonly brief: string | null;
  /** PET of its first start and of its last finish. */
  readonly start: Duration;
  readonly finish: Duration;
  /** Its steps in order of start. A joint step stands here once. */
  readonly steps: readonly StepId[];
}

/** A PET at which one or more steps begin. */
export interface Cue {
  readonly pet: Duration;
  /** The steps that begin, or were skipped, in reading order. */
  readonly steps: readonly StepId[];
}

/** A course made ready to be shown from beginning to end. */
export interface Briefing {
  readonly course: Course;
  /** The instant of PET 0; `null` when unknown. */
  readonly start: Instant | null;
  /** In order of start. */
  readonly chapters: readonly Chapter[];
  /** In order of PET, with every step of the course in exactly one. */
  readonly cues: readonly Cue[];
  readonly finish: Duration;
}

/** Makes a plan, a rehearsal or a walk as flown ready to be shown ([BRF1]). `start` is the instant of PET 0. */
export function briefingOf(course: Course, start: Instant | null = null): Briefing {
  // The steps come in reading order and the sort is stable, which settles ties.
  const inTime = [...course.steps.values()].toSorted((a, b) => a.start - b.start);
  return {
    course,
    start,
    chapters: chaptersOf(course, inTime),
    cues: cuesOf(inTime),
    finish: course.finish,
  };
}

function cuesOf(inTime: readonly CourseStep[]): readonly Cue[] {
  const cues: { readonly pet: Duration; readonly steps: StepId[] }[] = [];
  for (const { step, start } of inTime) {
    const last = cues.at(-1);
    if (last?.pet === start) last.steps.push(step);
    else cues.push({ pet: start, steps: [step] });
  }
  return cues;
}

function chaptersOf({ outline }: Course, inTime: readonly CourseStep[]): readonly Chapter[] {
  return outline.procedure.tasks
    .flatMap(({ id, title, brief }, index) => {
      const own = inTime.filter(({ step }) => outline.step(step)?.task.id === id);
      const [first] = own;
      if (!first) return [];
      const finish = own.reduce((most, step) => (step.finish > most ? step.finish : most), first.finish);
      const steps = own.map(({ step }) => step);
      return [
        { task: id, number: index + 1, title, brief: brief ?? null, start: first.start, finish, steps },
      ];
    })
    .toSorted((a, b) => a.start - b.start);
}

/** The cue that a PET belongs to: the last one that has come. `null` before the first. */
export function cueAt({ cues }: Briefing, pet: Duration): Cue | null {
  return cues.findLast((cue) => cue.pet <= pet) ?? null;
}

/** The next cue after a PET; `null` after the last. */
export function cueAfter({ cues }: Briefing, pet: Duration): Cue | null {
  return cues.find((cue) => cue.pet > pet) ?? null;
}

/**
 * The last cue before a PET: the beginning of the present one while it lasts, the one before it at its beginning.
 * `null` before the first.
 */
export function cueBefore({ cues }: Briefing, pet: Duration): Cue | null {
  return cues.findLast((cue) => cue.pet < pet) ?? null;
}

/** The next chapter that begins after a PET; `null` after the last. */
export function chapterAfter({ chapters }: Briefing, pet: Duration): Chapter | null {
  return chapters.find(({ start }) => start > pet) ?? null;
}

/** The last chapter that began before a PET; `null` before the first. */
export function chapterBefore({ chapters }: Briefing, pet: Duration): Chapter | null {
  return chapters.findLast(({ start }) => start < pet) ?? null;
}

/** The cues that come after one PET and up to another: what was passed between two pictures, however far apart. */
export function cuesPassed({ cues }: Briefing, from: Duration, to: Duration): readonly Cue[] {
  return cues.filter(({ pet }) => pet > from && pet <= to);
}

/** The steps that are spoken of at a PET: those in work, and those of its cue that take no time or were skipped. */
export function stepsShownAt(briefing: Briefing, pet: Duration): readonly CourseStep[] {
  const { course } = briefing;
  const begun = new Set(cueAt(briefing, pet)?.steps);
  return [...course.steps.values()].filter(({ step, start, finish }) =>
    finish === start ? begun.has(step) : start <= pet && pet < finish,
  );
}
