import type { Duration, StepId } from "../units/index.ts";
import { minus, NO_TIME } from "../units/index.ts";
import type { Briefing, Chapter } from "./briefing.ts";
import { cueAfter, stepsShownAt } from "./briefing.ts";
import type { CaptionLine } from "./caption-at.ts";
import { captionAt } from "./caption-at.ts";
import type { StepAlert } from "./storyboard-of.ts";
import { alertsOfStep } from "./storyboard-of.ts";

/** What the author wrote for the presenter, about a task or a step of it. */
export interface PresenterNote {
  readonly chapter: Chapter;
  /** `null` for a note about the whole task. */
  readonly step: StepId | null;
  readonly text: string;
}

/** An alert that comes, and when its step begins. */
export interface AlertToCome extends StepAlert {
  readonly pet: Duration;
}

/** What a presenter sees and the audience does not ([BRF2]). */
export interface PresenterView {
  readonly notes: readonly PresenterNote[];
  /** PET of the next cue; `null` after the last. */
  readonly nextAt: Duration | null;
  readonly nextCaption: readonly CaptionLine[];
  /** Time of the walk that is left up to its finish. */
  readonly left: Duration;
  /** The alerts of the steps that begin later, the nearest first. */
  readonly alerts: readonly AlertToCome[];
}

/** How many alerts are told ahead. */
const ALERTS_AHEAD = 3;

/** What the presenter is told at a PET. */
export function presenterAt(briefing: Briefing, pet: Duration, grain: "step" | "task"): PresenterView {
  const next = cueAfter(briefing, pet);
  const { finish, cues } = briefing;
  const coming = cues.flatMap((cue) =>
    cue.pet > pet
      ? cue.steps.flatMap((step) => alertsOfStep(briefing, step).map((one) => ({ ...one, pet: cue.pet })))
      : [],
  );
  return {
    notes: notesAt(briefing, pet),
    nextAt: next?.pet ?? null,
    nextCaption: next ? captionAt(briefing, next.pet, grain) : [],
    left: finish > pet ? minus(finish, pet) : NO_TIME,
    alerts: coming.slice(0, ALERTS_AHEAD),
  };
}

/** The notes about the tasks and steps in work at a PET, each task's before those of its steps. */
function notesAt(briefing: Briefing, pet: Duration): readonly PresenterNote[] {
  const { outline } = briefing.course;
  const shown = stepsShownAt(briefing, pet).flatMap(({ step }) => outline.step(step) ?? []);
  return briefing.chapters.flatMap((chapter) => {
    const own = shown.filter(({ task }) => task.id === chapter.task);
    if (own.length === 0) return [];
    const ofTask = chapter.brief === null ? [] : [{ chapter, step: null, text: chapter.brief }];
    const ofSteps = own.flatMap(({ step }) =>
      step.brief === undefined ? [] : [{ chapter, step: step.id, text: step.brief }],
    );
    return [...ofTask, ...ofSteps];
  });
}
