import type { CourseStep, Wait, WaitOn } from "../core/course/index.ts";
import { waitsBefore } from "../core/course/index.ts";
import type { Plan, Timeline } from "../core/plan/index.ts";
import { returnPlanAt, windowMargins } from "../core/plan/index.ts";
import type { Finding } from "../core/procedure/index.ts";
import type { StepId } from "../core/units/index.ts";
import { formatInstant, inSeconds, NO_TIME } from "../core/units/index.ts";
import { inWords } from "../words/index.ts";

/**
 * A plan as one JSON document. All times are in seconds of PET. Spans include both ends: a step lasts from `start` to
 * `finish`.
 */
export interface PlanDocument {
  readonly procedure: string;
  /** The instant of PET 0; `null` when it is not given. */
  readonly start: string | null;
  /** `null` when the procedure cannot be planned. */
  readonly finish: number | null;
  readonly steps: readonly {
    readonly id: string;
    readonly by: readonly string[];
    readonly start: number;
    readonly finish: number;
    readonly latestStart: number;
    readonly latestFinish: number;
    readonly slack: number;
    readonly freeSlack: number;
    readonly critical: boolean;
    /** The return time when the work is broken off at the finish of the step; `null` when it cannot be told. */
    readonly return: number | null;
    readonly waits: readonly { readonly crew: string; readonly seconds: number; readonly on: object }[];
  }[];
  readonly criticalPath: readonly string[];
  /** For each window that a step lies in, how much later its tightest step could start and still lie in its span. */
  readonly windows: readonly { readonly id: string; readonly step: string; readonly margin: number }[];
  /** Why there is no plan; only where there is none. */
  readonly findings?: readonly {
    readonly level: string;
    readonly code: string;
    readonly message: string;
    readonly pointer: string;
    readonly steps: readonly string[];
    readonly line: number | null;
    readonly column: number | null;
  }[];
}

/**
 * A wait of a plan: who waits, for how many seconds, and for what. The step whose completion ends a wait for others is
 * left out.
 */
export function waitDocument({ crew, from, to, on }: Wait) {
  return { crew, seconds: inSeconds(to - from), on: on === null ? {} : causeDocument(on) };
}

function causeDocument(on: WaitOn): object {
  if ("crew" in on) return { crew: on.crew };
  return "notBefore" in on ? { notBefore: inSeconds(on.notBefore) } : on;
}

/**
 * The document of a plan, with its steps in reading order. Without a timeline it has no steps and no finish, and tells
 * the findings instead.
 */
export function planDocument(
  { outline, start, timeline, windows }: Plan,
  findings: readonly Finding[],
): PlanDocument {
  const { steps } = timeline?.course ?? { steps: new Map<StepId, CourseStep>() };
  const margins = windowMargins(outline, windows, ({ step: { id } }) => steps.get(id) ?? null);
  return {
    procedure: outline.procedure.id,
    start: start === null ? null : formatInstant(start),
    finish: timeline && inSeconds(timeline.course.finish),
    steps: timeline ? [...timeline.course.steps.values()].map((step) => stepDocument(timeline, step)) : [],
    criticalPath: timeline?.criticalPath ?? [],
    windows: margins.map(({ window, step, margin }) => ({ id: window, step, margin: inSeconds(margin) })),
    ...(timeline ? {} : { findings: findings.map(findingDocument) }),
  };
}

function findingDocument({ level, code, message, pointer, steps, position }: Finding) {
  return {
    level,
    code,
    message: inWords(message),
    pointer,
    steps,
    line: position?.line ?? null,
    column: position?.column ?? null,
  };
}

function stepDocument({ course, slack }: Timeline, { step, start, finish }: CourseStep) {
  const late = slack.get(step);
  const back = returnPlanAt(course, finish);
  return {
    id: step,
    by: course.outline.step(step)?.step.by ?? [],
    start: inSeconds(start),
    finish: inSeconds(finish),
    latestStart: inSeconds(late?.latestStart ?? start),
    latestFinish: inSeconds(late?.latestFinish ?? finish),
    slack: inSeconds(late?.slack ?? NO_TIME),
    freeSlack: inSeconds(late?.freeSlack ?? NO_TIME),
    critical: late?.critical ?? true,
    return: back && inSeconds(back.total),
    waits: waitsBefore(course, step).map(waitDocument),
  };
}
