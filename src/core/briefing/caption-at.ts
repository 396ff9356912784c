import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { CourseStep, Wait } from "../course/index.ts";
import { callsOf, waitsOf, windowLabel } from "../course/index.ts";
import type { CrewId, Duration, StepId, TaskId } from "../units/index.ts";
import type { Briefing } from "./briefing.ts";
import { stepsShownAt } from "./briefing.ts";

/** One sentence of a caption, and what it speaks of. */
export interface CaptionLine {
  readonly crew: readonly CrewId[];
  /** The step that is done, or waited for; `null` in a line about a task. */
  readonly step: StepId | null;
  readonly task: TaskId | null;
  readonly kind: "does" | "skipped" | "waits" | "task" | "end";
  readonly said: Message;
}

/**
 * Who does what at a PET, in sentences made from the steps: a line for each step in work, in reading order, and one for
 * each wait. By task, a line for each task of which a step is in work. Empty when nothing is done and nobody waits.
 */
export function captionAt(briefing: Briefing, pet: Duration, grain: "step" | "task"): readonly CaptionLine[] {
  const shown = stepsShownAt(briefing, pet);
  if (grain === "task") return taskLines(briefing, shown);
  const waits = waitsOf(briefing.course).filter(({ from, to }) => from <= pet && pet < to);
  return [...shown.flatMap((step) => stepLine(briefing, step)), ...waitLines(briefing, waits)];
}

/** What stands below the map while a briefing is played: the caption of a PET, and that it is over from its finish on. */
export function captionPlayedAt(
  briefing: Briefing,
  pet: Duration,
  grain: "step" | "task",
): readonly CaptionLine[] {
  return pet >= briefing.finish ? [THE_END] : captionAt(briefing, pet, grain);
}

const THE_END: CaptionLine = { crew: [], step: null, task: null, kind: "end", said: message("brief/end") };

/** Call signs of crew members, as they follow one another in a sentence. */
function callsIn({ course: { outline } }: Briefing, crew: readonly CrewId[]): readonly string[] {
  return callsOf(outline, crew);
}

function stepLine(briefing: Briefing, { step: id, stage }: CourseStep): CaptionLine[] {
  const entry = briefing.course.outline.step(id);
  if (!entry) return [];
  const { by, do: action } = entry.step;
  const told = { crew: callsIn(briefing, by), action };
  const common = { crew: by, step: id, task: entry.task.id };
  return stage === "skipped"
    ? [{ ...common, kind: "skipped", said: message("brief/skipped", told) }]
    : [
        {
          ...common,
          kind: "does",
          said: by.length > 1 ? message("brief/do-together", told) : message("brief/do", told),
        },
      ];
}

/** Crew members who wait for the same thing before the same step share a line. */
function waitLines(briefing: Briefing, waits: readonly Wait[]): CaptionLine[] {
  const shared: { readonly wait: Wait; readonly crew: CrewId[] }[] = [];
  for (const wait of waits) {
    const same = shared.find(
      (one) => one.wait.step === wait.step && JSON.stringify(one.wait.on) === JSON.stringify(wait.on),
    );
    if (same) same.crew.push(wait.crew);
    else shared.push({ wait, crew: [wait.crew] });
  }
  return shared.map(({ wait, crew }) => ({
    crew,
    step: wait.step,
    task: briefing.course.outline.step(wait.step)?.task.id ?? null,
    kind: "waits",
    said: waitSaid(briefing, crew, wait.on),
  }));
}

/** What crew members wait for, in a sentence. */
export function waitSaid(briefing: Briefing, crew: readonly CrewId[], on: Wait["on"]): Message {
  const { outline } = briefing.course;
  const who = { crew: callsIn(briefing, crew), count: crew.length };
  const number = (step: StepId) => outline.step(step)?.number ?? step;
  if (on === null) return message("brief/waits", who);
  if ("hold" in on) return message("brief/waits-hold", who);
  if ("lag" in on) return message("brief/waits-lag", { ...who, step: number(on.lag) });
  if ("notBefore" in on) return message("brief/waits-not-before", { ...who, pet: on.notBefore });
  if ("window" in on)
    return message("brief/waits-window", { ...who, window: windowLabel(outline, on.window) });
  return message("brief/waits-crew", { ...who, other: callsIn(briefing, on.crew), step: number(on.step) });
}

function taskLines(briefing: Briefing, shown: readonly CourseStep[]): CaptionLine[] {
  const { outline } = briefing.course;
  return briefing.chapters.flatMap(({ task, number, title }) => {
    const own = shown.flatMap(({ step }) => {
      const entry = outline.step(step);
      return entry?.task.id === task ? [entry.step] : [];
    });
    if (own.length === 0) return [];
    const crew = outline.crew.map(({ id }) => id).filter((id) => own.some(({ by }) => by.includes(id)));
    const said = message("brief/task", { crew: callsIn(briefing, crew), number, title });
    return [{ crew, step: null, task, kind: "task" as const, said }];
  });
}
