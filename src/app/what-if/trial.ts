import { applyChanges, swappedFields, timeByLikely } from "../../core/changes/index.ts";
import { checkOutline } from "../../core/check/index.ts";
import type { FindingsEffect } from "../../core/effect/index.ts";
import { findingsEffect } from "../../core/effect/index.ts";
import type { Plan, PlanOptions } from "../../core/plan/index.ts";
import { planOf } from "../../core/plan/index.ts";
import type { Change, Finding, Outline, ProcedureFile } from "../../core/procedure/index.ts";
import { outlineOf, parseProcedure } from "../../core/procedure/index.ts";
import type { CrewId, DecisionId, Duration, StepId, TaskId } from "../../core/units/index.ts";
import { formatDuration } from "../../core/units/index.ts";
import type { Rearranged } from "./rearranged.ts";
import { movesOf, NOT_REARRANGED, shiftsOf } from "./rearranged.ts";

/** What the reader tries out on a plan, without changing its file. */
export interface Trial extends Rearranged {
  /** The likely durations to try. */
  readonly times: ReadonlyMap<StepId, Duration>;
  /** The performers to try. */
  readonly performers: ReadonlyMap<StepId, readonly CrewId[]>;
  /** The tasks to leave out. */
  readonly dropped: ReadonlySet<TaskId>;
  /** The get-aheads to bring in. */
  readonly broughtIn: ReadonlySet<TaskId>;
  /** How the decisions are to come out where that is not as expected. */
  readonly outcomes: ReadonlyMap<DecisionId, string>;
  /** How long everything takes, in per cent of the file: 120 is a fifth slower. */
  readonly pace: number;
}

/** The pace of the file, in per cent. */
export const AS_WRITTEN = 100;

/** The trial that changes nothing. */
export const NO_TRIAL: Trial = {
  ...NOT_REARRANGED,
  times: new Map(),
  performers: new Map(),
  dropped: new Set(),
  broughtIn: new Set(),
  outcomes: new Map(),
  pace: AS_WRITTEN,
};

/** True when the trial changes nothing. */
export function isEmpty({ pace, ...tried }: Trial): boolean {
  return Object.values(tried).every(({ size }) => size === 0) && pace === AS_WRITTEN;
}

/** The changes that a trial makes. Low and high durations keep their ratio to the likely duration. */
export function changesOf(trial: Trial, outline: Outline): Change[] {
  const ofSteps = outline.steps.flatMap(({ step, task }): Change[] => {
    if (trial.dropped.has(task.id)) return [];
    const { decide } = step;
    const expect = decide && trial.outcomes.get(decide.id);
    const by = trial.performers.get(step.id);
    const pair = trial.swapped.get(task.id);
    // A duration that is tried for a step itself is the one that it takes, whatever the pace.
    const likely =
      trial.times.get(step.id) ??
      (step.time && trial.pace !== AS_WRITTEN ? atPace(step.time.likely, trial.pace) : undefined);
    const set = {
      ...(likely === undefined ? {} : { time: timeByLikely(step, likely) }),
      ...(by ? { by: [...by] } : {}),
      ...(pair ? swappedFields(by ? { ...step, by: [...by] } : step, pair, outline) : {}),
      ...(expect === undefined ? {} : { decide: { ...decide, expect } }),
    };
    return Object.keys(set).length === 0 ? [] : [{ change: step.id, set }];
  });
  const ofTasks = outline.procedure.tasks.flatMap(({ id }): Change[] =>
    trial.dropped.has(id) ? [{ drop: id, list: "tasks" }] : [],
  );
  const ofGetAheads = outline.procedure.tasks.flatMap(({ id }): Change[] =>
    trial.broughtIn.has(id) ? [{ change: id, list: "tasks", set: { priority: "essential" } }] : [],
  );
  // Tasks are moved before any is left out, since one may stand behind one that is.
  return [
    ...movesOf(trial),
    ...ofTasks,
    ...ofGetAheads,
    ...ofRoutes(trial.pace, outline),
    ...shiftsOf(trial, outline),
    ...ofSteps,
  ];
}

const atPace = (time: Duration, pace: number) => (Math.ceil((time * pace) / 100_000) * 1000) as Duration;

/** The ways take as long as the pace says, which is where translations without a time of their own have it from. */
function ofRoutes(pace: number, { procedure: { routes } }: Outline): Change[] {
  if (pace === AS_WRITTEN) return [];
  return routes.flatMap(({ between, time }): Change[] =>
    time === undefined
      ? []
      : [{ change: between.join(" "), list: "routes", set: { time: formatDuration(atPace(time, pace)) } }],
  );
}

/** The result of a trial. */
export interface TrialResult {
  readonly file: ProcedureFile | null;
  /** `null` when the changed procedure cannot be read. */
  readonly outline: Outline | null;
  readonly plan: Plan | null;
  /**
   * Why the changed procedure cannot be read, or the findings of its plan. The checker's findings come from {@link
   * findingsOf}.
   */
  readonly problems: readonly Finding[];
}

/** Plans a procedure file with a trial applied. */
export function tried(
  file: ProcedureFile,
  outline: Outline,
  trial: Trial,
  options: PlanOptions,
): TrialResult {
  const changed = applyChanges(file, changesOf(trial, outline));
  if (!changed.file) return { file: null, outline: null, plan: null, problems: [] };
  const { procedure, findings } = parseProcedure(changed.file);
  if (!procedure) return { file: null, outline: null, plan: null, problems: findings };
  const next = outlineOf(procedure);
  return { file: changed.file, outline: next, plan: planOf(next, options), problems: findings };
}

/** The findings that a change adds to a procedure, and those that it removes. */
export function findingsOf(before: readonly Finding[], outline: Outline): FindingsEffect {
  return findingsEffect(before, checkOutline(outline));
}

/** The most letters a revision may have. */
const LONGEST_REVISION = 40;

/**
 * The first revision after another that is not taken. Two changes that were saved from one revision get letters of their
 * own.
 */
export function freeRevision(revision: string | undefined, taken: ReadonlySet<string>): string {
  let next = nextRevision(revision);
  // Long ones are cut, so that they may come round again: then a number that nobody has is put behind.
  for (let tries = 0; taken.has(next) && tries <= taken.size; tries += 1) next = nextRevision(next);
  for (let number = 2; taken.has(next); number += 1) {
    next = `${(revision ?? "").slice(0, LONGEST_REVISION - 8)}-${number}`;
  }
  return next;
}

/** The revision that follows another: `A` → `B`, `Z` → `Z-2`, `3` → `4`, none → `B`. */
export function nextRevision(revision: string | undefined): string {
  if (revision === undefined) return "B";
  if (/^[A-Y]$/.test(revision)) return String.fromCharCode(revision.charCodeAt(0) + 1);
  const number = /^(.*?)(\d{1,9})$/.exec(revision);
  const next = number ? `${number[1]}${Number(number[2]) + 1}` : `${revision}-2`;
  return next.length <= LONGEST_REVISION ? next : `${revision.slice(0, LONGEST_REVISION - 2)}-2`;
}
