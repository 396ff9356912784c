import type { HoldUp } from "../../core/course/index.ts";
import type { OutlineStep, Task } from "../../core/procedure/index.ts";
import type { Duration, StateId, StepId } from "../../core/units/index.ts";
import { between } from "../../core/units/index.ts";
import type {
  AlertLevel,
  AmendedHow,
  Amendment,
  Outstanding,
  StepProgress,
  WalkAlert,
  WalkState,
} from "../../core/walk/index.ts";
import { askedAgainFor, isAskedAgain, isShown, outstandingOf, stateValuesOf } from "../../core/walk/index.ts";
import type { BeadStage, BraidMarker, BraidRow } from "../braid/index.ts";

/** A heading above the steps of a task. */
export interface TaskRow extends BraidRow {
  readonly kind: "task";
  readonly task: Task;
  /** The number of the task, counted from 1. */
  readonly number: number;
  readonly plannedStart: Duration | null;
  readonly plannedFinish: Duration | null;
}

/** A crew member who has reached a step and waits there, with the reason. */
export interface WaitingHere {
  readonly lane: number;
  readonly waitingOn: readonly HoldUp[];
}

/**
 * A step of the list. Times are in PET. Forecast times are cut to the minute, so that a row changes only when its text
 * does.
 */
export interface StepRow extends BraidRow {
  readonly kind: "step";
  readonly stage: Exclude<BeadStage, "gone">;
  readonly entry: OutlineStep;
  readonly progress: StepProgress;
  readonly start: Duration | null;
  readonly finish: Duration | null;
  /** True while the times are those of the plan, since the clock has not been started. */
  readonly isPlanned: boolean;
  readonly plannedStart: Duration | null;
  readonly plannedFinish: Duration | null;
  /** The crew members who have reached this step and cannot start it. */
  readonly waitingHere: readonly WaitingHere[];
  /** How its decision came out; `null` without a decision, or while it is open. */
  readonly outcome: string | null;
  /** The states that it needs and that have another value now; empty for a step that is complete. */
  readonly unmet: readonly UnmetState[];
  /** The level of the most urgent alert that leads to it; `null` without one. */
  readonly alert: AlertLevel | null;
  /** What it owes ([OFF2]). */
  readonly owed: readonly Outstanding[];
  /** What an amendment that was not seen here does to it; `null` for none. */
  readonly amended: AmendedHow | null;
  /** How many notes were made at it. */
  readonly notes: number;
  /** What a decision that is asked again makes of it; `null` when none does, and for a complete step. */
  readonly askedAgain: AskedAgain | null;
  /** The decision on which it depends whether the step is performed; `null` when that is known. */
  readonly hangsOn: string | null;
}

/** A decision that is asked again, for its own step or for a step of the branch in force. */
export interface AskedAgain {
  /** True for the step that decides. */
  readonly isAsking: boolean;
  /** The number of the step that decides. */
  readonly number: string;
  /** The outcome in force. */
  readonly outcome: string;
}

/** A state that a step needs with a value, and the value that it has. */
export interface UnmetState {
  readonly state: StateId;
  readonly value: string;
  readonly is: string;
}

/** A step that an amendment which was not seen here took out, where it stood. */
export interface GoneRow extends BraidRow {
  readonly kind: "gone";
  readonly entry: OutlineStep;
}

/** A row of the follow list. */
export type FollowRow = TaskRow | StepRow | GoneRow;

const toMinute = (time: Duration | undefined): Duration | null =>
  time === undefined ? null : ((Math.floor(time / 60_000) * 60_000) as Duration);

const NOTHING_OWED: readonly Outstanding[] = [];

const NOTHING_UNMET: readonly UnmetState[] = [];

function unmetOf({ step }: OutlineStep, values: ReadonlyMap<StateId, string>): readonly UnmetState[] {
  if (!step.needs) return NOTHING_UNMET;
  return (Object.entries(step.needs) as [StateId, string][]).flatMap(([state, value]) => {
    const is = values.get(state);
    return is === undefined || is === value ? [] : [{ state, value, is }];
  });
}

function notesByStep({ ledger }: WalkState): ReadonlyMap<StepId, number> {
  const counts = new Map<StepId, number>();
  for (const { step } of ledger.notes) if (step !== null) counts.set(step, (counts.get(step) ?? 0) + 1);
  return counts;
}

function askedAgainOf({ ledger }: WalkState, entry: OutlineStep): AskedAgain | null {
  const own = entry.step.decide?.id;
  const isAsking = own !== undefined && isAskedAgain(ledger, own);
  const decision = isAsking ? own : askedAgainFor(ledger, entry);
  if (decision === null) return null;
  const number = ledger.inForce.outline.decision(decision)?.madeBy.number ?? "";
  return { isAsking, number, outcome: ledger.outcomes.get(decision) ?? "" };
}

/** What a step owes; the same empty list for every step that owes nothing. */
function owedOf(outstanding: readonly Outstanding[], step: StepId): readonly Outstanding[] {
  const owed = outstanding.length === 0 ? NOTHING_OWED : outstanding.filter((one) => one.step === step);
  return owed.length === 0 ? NOTHING_OWED : owed;
}

/**
 * The rows of a walk at an instant, in reading order, without the steps that the outcomes of decisions exclude. `unseen` are
 * the amendments to be marked at their steps, of which a later one counts.
 */
export function followRows(
  state: WalkState,
  alerts: readonly WalkAlert[] = [],
  unseen: readonly Amendment[] = [],
): FollowRow[] {
  const { ledger, plan, forecast, lanes } = state;
  const { outline } = ledger.inForce;
  const rows: FollowRow[] = [];
  const outstanding = outstandingOf(state);
  const notes = notesByStep(state);
  const amended = new Map(unseen.flatMap(({ steps }) => steps.map(({ step, how }) => [step, how] as const)));
  const values = outline.procedure.states.length > 0 ? stateValuesOf(ledger) : null;
  let task: Task | null = null;
  let number = 0;
  for (const entry of outline.steps) {
    const { index, step } = entry;
    const progress = ledger.steps.get(step.id);
    const hangsOn =
      Object.keys(step.when ?? {}).find((decision) => !ledger.outcomes.has(decision as never)) ?? null;
    if (!progress || (!ledger.network.activity.active[index] && hangsOn === null)) continue;
    if (entry.task !== task) {
      task = entry.task;
      number = Number(entry.number.split(".")[0]);
      rows.push(taskRow(state, task, number));
    }
    const here = lanes.flatMap((lane, at) => (lane.step === step.id ? [{ at, ...lane }] : []));
    const expected = forecast?.steps.get(step.id);
    const planned = plan.timeline?.course.steps.get(step.id);
    const petZero = ledger.petZero;
    const isComplete = progress.finish !== null && petZero !== null;
    rows.push({
      kind: "step",
      key: step.id,
      lanes: entry.performers,
      stage: stageOf(progress, here, hangsOn),
      entry,
      progress,
      start:
        isComplete && progress.start !== null ? between(petZero, progress.start) : toMinute(expected?.start),
      finish:
        isComplete && progress.finish !== null
          ? between(petZero, progress.finish)
          : toMinute(expected?.finish),
      isPlanned: petZero === null,
      plannedStart: planned?.start ?? null,
      plannedFinish: planned?.finish ?? null,
      waitingHere: here.flatMap(({ at, status, waitingOn }) =>
        status === "waiting" ? [{ lane: at, waitingOn }] : [],
      ),
      outcome: (step.decide && ledger.outcomes.get(step.decide.id)) ?? null,
      unmet: isComplete || !values ? NOTHING_UNMET : unmetOf(entry, values),
      alert: alerts.find((one) => one.step === step.id && isShown(one))?.level ?? null,
      owed: owedOf(outstanding, step.id),
      amended: amended.get(step.id) ?? null,
      notes: notes.get(step.id) ?? 0,
      askedAgain: isComplete ? null : askedAgainOf(state, entry),
      hangsOn,
    });
  }
  return unseen.reduce(withGone, rows);
}

/** The rows with the steps that an amendment took out behind those they stood behind, unless they are back again. */
function withGone(rows: FollowRow[], { before, steps }: Amendment): FollowRow[] {
  const dropped = new Set(steps.flatMap(({ step, how }) => (how === "dropped" ? [step] : [])));
  if (dropped.size === 0) return rows;
  const all = [...rows];
  let behind: string | null = null;
  for (const entry of before.outline.steps) {
    const key: string = entry.step.id;
    if (all.some((row) => row.key === key)) behind = key;
    if (!dropped.has(entry.step.id) || behind === key) continue;
    const gone: GoneRow = { kind: "gone", key: `gone ${key}`, lanes: entry.performers, stage: "gone", entry };
    const last = behind;
    const place = all.findIndex((row) =>
      last === null ? row.kind === "task" && row.task.id === entry.task.id : row.key === last,
    );
    all.splice(place + 1, 0, gone);
    behind = gone.key;
  }
  return all;
}

function stageOf(
  progress: StepProgress,
  here: readonly { readonly status: string }[],
  hangsOn: string | null,
): StepRow["stage"] {
  if (progress.status !== "open") return progress.status;
  if (here.some(({ status }) => status === "working")) return "working";
  if (here.some(({ status }) => status === "waiting")) return "waiting";
  return hangsOn === null ? "later" : "maybe";
}

function taskRow({ plan, ledger }: WalkState, task: Task, number: number): TaskRow {
  const planned = ledger.inForce.outline.steps.flatMap((entry) =>
    entry.task === task ? (plan.timeline?.course.steps.get(entry.step.id) ?? []) : [],
  );
  return {
    kind: "task",
    key: `task ${task.id}`,
    lanes: [],
    stage: "later",
    task,
    number,
    plannedStart: planned.length ? (Math.min(...planned.map(({ start }) => start)) as Duration) : null,
    plannedFinish: planned.length ? (Math.max(...planned.map(({ finish }) => finish)) as Duration) : null,
  };
}

/** Where each crew member is on the braid. */
export function followMarkers({ lanes }: WalkState): BraidMarker[] {
  return lanes.map(({ step, status }, lane) => ({ lane, at: step, waiting: status === "waiting" }));
}

/**
 * True when two rows have the same content, so that the drawn one can stay. With `lets`, the times of later steps may
 * differ.
 */
function sameRow(a: FollowRow, b: FollowRow, lets: boolean): boolean {
  if (a.kind !== "step" || b.kind !== "step") return a.kind === b.kind && a.key === b.key;
  const isToCome = b.stage === "later" || b.stage === "maybe";
  return (
    a.key === b.key &&
    a.stage === b.stage &&
    a.progress === b.progress &&
    ((lets && isToCome) || (a.start === b.start && a.finish === b.finish)) &&
    a.hangsOn === b.hangsOn &&
    a.notes === b.notes &&
    a.amended === b.amended &&
    (a.askedAgain === b.askedAgain || JSON.stringify(a.askedAgain) === JSON.stringify(b.askedAgain)) &&
    a.isPlanned === b.isPlanned &&
    a.alert === b.alert &&
    a.outcome === b.outcome &&
    (a.unmet === b.unmet || JSON.stringify(a.unmet) === JSON.stringify(b.unmet)) &&
    (a.owed === b.owed || JSON.stringify(a.owed) === JSON.stringify(b.owed)) &&
    a.entry === b.entry &&
    JSON.stringify(a.waitingHere) === JSON.stringify(b.waitingHere)
  );
}

/**
 * Returns `next`, but with every row that has the same content as one in `before` replaced by that row; returns
 * `before` itself when nothing changed. With `letForecasts`, a later step keeps its row even if its forecast moved, and
 * the row is brought up to date later.
 */
export function keepUnchanged(
  before: readonly FollowRow[],
  next: readonly FollowRow[],
  letForecasts = false,
): readonly FollowRow[] {
  const known = new Map(before.map((row) => [row.key, row]));
  const kept = next.map((row) => {
    const old = known.get(row.key);
    return old && sameRow(old, row, letForecasts) ? old : row;
  });
  return kept.length === before.length && kept.every((row, index) => row === before[index]) ? before : kept;
}
