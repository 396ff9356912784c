import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Alert } from "../procedure/index.ts";
import type { CrewId, Duration, PictureId, StepId } from "../units/index.ts";
import { later } from "../units/index.ts";
import type { WorksiteMoment } from "../worksite/index.ts";
import { momentOf } from "../worksite/index.ts";
import type { Briefing, Chapter } from "./briefing.ts";
import type { CaptionLine } from "./caption-at.ts";
import { captionAt } from "./caption-at.ts";

/** An alert and the step whose alert it is. */
export interface StepAlert {
  readonly step: StepId;
  readonly number: string;
  readonly crew: readonly CrewId[];
  readonly alert: Alert;
}

/** One picture of a storyboard: a task, or a part of one, at one moment ([BRF3]). */
export interface Frame {
  /** Counted from 1. */
  readonly number: number;
  readonly chapter: Chapter;
  /** Which part of its task it is, counted from 1, and of how many. */
  readonly part: number;
  readonly of: number;
  /** The step that is shown, and the PET of the picture. */
  readonly step: StepId;
  readonly pet: Duration;
  readonly caption: readonly CaptionLine[];
  /** Where everybody is, what each does and has, and the lines. */
  readonly moment: WorksiteMoment;
  /** The alerts of the steps that the frame stands for. Each alert of the course is in exactly one frame. */
  readonly alerts: readonly StepAlert[];
  /** The steps that the frame stands for: from this scene up to the next of its task. */
  readonly steps: readonly StepId[];
  /** The pictures of those steps, each once. */
  readonly pictures: readonly PictureId[];
}

/**
 * The frames of a course in order: for each task one for each step that its author marked `scene: true`, and where none is
 * marked one of its longest step that is not a way, the first of equals. A way is shown half walked, every other step at
 * its start. A task of which every step was skipped has no frame.
 */
export function storyboardOf(briefing: Briefing): readonly Frame[] {
  const { course } = briefing;
  const { outline } = course;
  const frames = briefing.chapters.flatMap((chapter) => {
    const own = chapter.steps.filter((step) => course.steps.get(step)?.stage !== "skipped");
    const marked = own.filter((step) => outline.step(step)?.step.scene);
    const longest = longestOf(briefing, own);
    const scenes = marked.length > 0 ? marked : longest === null ? [] : [longest];
    return scenes.map((step, index) => {
      const from = index === 0 ? 0 : own.indexOf(step);
      const next = scenes[index + 1];
      const steps = own.slice(from, next === undefined ? own.length : own.indexOf(next));
      return frameOf(briefing, chapter, { step, part: index + 1, of: scenes.length, steps });
    });
  });
  return frames.toSorted((a, b) => a.pet - b.pet).map((frame, index) => ({ ...frame, number: index + 1 }));
}

function longestOf({ course }: Briefing, steps: readonly StepId[]): StepId | null {
  const timeOf = (id: StepId) => {
    const step = course.steps.get(id);
    return step ? step.finish - step.start : 0;
  };
  const still = steps.filter((id) => course.outline.step(id)?.step.to === undefined);
  return (still.length > 0 ? still : steps).reduce<StepId | null>(
    (most, id) => (most === null || timeOf(id) > timeOf(most) ? id : most),
    null,
  );
}

function frameOf(
  briefing: Briefing,
  chapter: Chapter,
  scene: Pick<Frame, "step" | "part" | "of" | "steps">,
): Omit<Frame, "number"> {
  const { course } = briefing;
  const { outline } = course;
  const { start, finish } = course.steps.get(scene.step) ?? chapter;
  const isWay = outline.step(scene.step)?.step.to !== undefined;
  const pet = (isWay ? Math.floor((start + finish) / 2) : start) as Duration;
  return {
    chapter,
    ...scene,
    pet,
    caption: captionAt(briefing, pet, "step"),
    moment: momentOf(course, pet),
    alerts: scene.steps.flatMap((step) => alertsOfStep(briefing, step)),
    pictures: [...new Set(scene.steps.flatMap((step) => outline.step(step)?.step.pictures ?? []))],
  };
}

/** The alerts of one step, in their order; empty for a step that is not in the procedure. */
export function alertsOfStep({ course: { outline } }: Briefing, id: StepId): readonly StepAlert[] {
  const entry = outline.step(id);
  if (!entry) return [];
  const { number, step } = entry;
  return step.alerts.map((alert) => ({ step: id, number, crew: step.by, alert }));
}

/** The title of a frame: its task, and which part of it where it has several. */
export function frameTitle({ chapter: { number, title }, part, of }: Frame): Message {
  return of > 1
    ? message("brief/part", { number, title, part, of })
    : message("brief/whole", { number, title });
}

/** The time of a frame, in UTC as well where PET 0 is known. */
export function frameTime({ start }: Briefing, { pet }: Frame): Message {
  return start === null
    ? message("brief/pet", { pet })
    : message("brief/pet-utc", { pet, at: later(start, pet) });
}
