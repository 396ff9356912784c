import { marginOf } from "../course/index.ts";
import type { Draft } from "../log/index.ts";
import { pertSampler, stepSource } from "../plan/index.ts";
import type { Decision, OutlineStep, StepRecord, Task, Watch } from "../procedure/index.ts";
import type { CrewId, Duration, Instant, StepId } from "../units/index.ts";
import { between, inSeconds, later, NO_TIME } from "../units/index.ts";
import { forecastOf } from "./forecast.ts";
import { blockersOf, earliestStart, readyAt, stepOfLane } from "./gate.ts";
import type { Ledger } from "./ledger.ts";
import { isComplete, progressOf } from "./ledger.ts";
import { inWork } from "./walk-course.ts";
import { watchStates } from "./watch-state.ts";

/** How long a played crew takes for a step of the procedure in force. */
export type PlayedTimes = (ledger: Ledger, step: OutlineStep) => Duration;

/**
 * Returns the times of a played crew. Each step has draws of its own, so that an amendment which adds or drops others changes
 * nothing of those that stay. The same seed gives the same rehearsal.
 */
export function playedTimesOf(seed: number): PlayedTimes {
  return ({ whereabouts }, { index, step }) => {
    const time = step.time ?? whereabouts.times[index];
    return time ? pertSampler(stepSource(step.id, seed))(time) : NO_TIME;
  };
}

/** What somebody of a played crew is about to do. */
export interface PlayedAct {
  readonly crew: readonly CrewId[];
  /** The step that is about to be done; `null` when a watch is kept. */
  readonly entry: OutlineStep | null;
  /** When it falls due. */
  readonly due: Instant;
}

/** What makes a played crew do otherwise than its procedure has it ([TRN1]). */
export interface PlayedTurns {
  /** When an act is done that falls due: later than that while something holds it up. */
  heldUntil(act: PlayedAct): Instant;
  /** The value of a record; `null` for one as expected. */
  valueOf(entry: OutlineStep, record: StepRecord, at: Instant): number | null;
  /** The outcome of a decision; `null` for the expected one. */
  outcomeOf(decision: Decision, at: Instant): string | null;
  /** What the crew enters beside its steps by an instant, the earliest; `null` for nothing. */
  aside(until: Instant): PlayedMove | null;
}

/** A crew that does everything as it is written. */
const AS_WRITTEN: PlayedTurns = {
  heldUntil: ({ due }) => due,
  valueOf: () => null,
  outcomeOf: () => null,
  aside: () => null,
};

/** The next thing the played crew does, and when. */
export interface PlayedMove {
  readonly at: Instant;
  readonly drafts: readonly Draft[];
}

/**
 * A played crew starts a get-ahead only when the forecast leaves at least this much of the elapsed limit after it.
 */
const MARGIN_KEPT = (15 * 60_000) as Duration;

/**
 * Returns the next thing a played crew does. It completes the step in work that is over first; its records get values
 * in the middle of the allowed range, and its confirmation and decision are given as expected, unless `turns` say
 * otherwise. Or it keeps a watch
 * that falls due before that. Or it skips a
 * get-ahead task that a lane has reached, when the task would leave less than 15 min of margin. Returns `null` when
 * every lane is finished or nothing can go on. `now` is when the crew looks; no move is earlier than that.
 */
export function nextPlayedMove(
  ledger: Ledger,
  times: PlayedTimes,
  now: Instant,
  turns: PlayedTurns = AS_WRITTEN,
): PlayedMove | null {
  if (ledger.phase !== "running") return null;
  const leftOut = leaveOutMove(ledger, now);
  if (leftOut) return leftOut;
  let best: { entry: OutlineStep; at: Instant } | null = null;
  for (const [step, start] of startsFrom(ledger)) {
    const entry = ledger.inForce.outline.step(step);
    if (!entry) continue;
    const due = later(start, times(ledger, entry));
    const done = turns.heldUntil({ crew: entry.step.by, entry, due });
    const at = done > now ? done : now;
    if (best === null || at < best.at || (at === best.at && entry.index < best.entry.index))
      best = { entry, at };
  }
  if (best === null) return null;
  const aside = turns.aside(best.at);
  if (aside) {
    const at = aside.at > now ? aside.at : now;
    return { at, drafts: aside.drafts.map((draft) => ({ ...draft, at })) };
  }
  return (
    keepWatchMove(ledger, now, best.at, turns) ?? {
      at: best.at,
      drafts: draftsOf(ledger, best.entry, best.at, turns),
    }
  );
}

/** Returns the move that keeps the watch which is due first, or `null` when none is due by `until`. */
function keepWatchMove(ledger: Ledger, now: Instant, until: Instant, turns: PlayedTurns): PlayedMove | null {
  const { petZero } = ledger;
  if (petZero === null) return null;
  let first: { readonly watch: Watch; readonly due: Duration } | null = null;
  for (const { watch, due, isOpen, next } of watchStates({ ledger, pet: between(petZero, now) })) {
    const round = isOpen && due !== null ? due : next;
    if (first === null || round < first.due) first = { watch, due: round };
  }
  if (first === null) return null;
  const due = later(petZero, first.due);
  const fell = turns.heldUntil({ crew: first.watch.by, entry: null, due });
  const at = fell > now ? fell : now;
  if (at > until) return null;
  const data = { watch: first.watch.id, due: inSeconds(first.due) };
  return { at, drafts: [{ name: "watch.kept", data, at, actor: first.watch.by[0] ?? "rehearsal" }] };
}

/** Returns the steps that are in work, or will be as time passes without any further entry, with their starts. */
function startsFrom(ledger: Ledger): Map<StepId, Instant> {
  const starts = inWork(ledger, Number.MAX_SAFE_INTEGER as Instant);
  for (const lane of ledger.lanes.keys()) {
    const entry = stepOfLane(ledger, lane);
    if (!entry || starts.has(entry.step.id) || blockersOf(ledger, entry).length > 0) continue;
    const ready = readyAt(ledger, entry);
    // When all windows of a step are past, the played crew does it at once, because it would otherwise wait forever.
    if (earliestStart(ledger, entry, ready) === null) starts.set(entry.step.id, ready);
  }
  return starts;
}

/**
 * Returns the move that skips a get-ahead task which a lane has reached and for which there is too little time, or
 * `null` when there is no such task.
 */
function leaveOutMove(ledger: Ledger, now: Instant): PlayedMove | null {
  const { outline } = ledger.inForce;
  const tasks = new Set(
    ledger.lanes.flatMap((_, lane): Task[] => {
      const entry = stepOfLane(ledger, lane);
      return entry?.getAhead ? [entry.task] : [];
    }),
  );
  for (const task of tasks) {
    const inTask = outline.steps.filter(
      ({ index, task: other }) => other === task && ledger.network.activity.active[index],
    );
    // A get-ahead that has been started is completed, so that nothing stays half done.
    if (inTask.some(({ step }) => isComplete(ledger, step.id))) continue;
    const forecast = forecastOf(ledger, now);
    const margin = forecast && marginOf(forecast);
    if (margin === null) continue;
    const needed = inTask.reduce((sum, { index }) => sum + (ledger.whereabouts.times[index]?.likely ?? 0), 0);
    if (margin - needed >= MARGIN_KEPT) continue;
    const leftOut = { needed: inSeconds(needed), margin: inSeconds(margin) };
    const drafts = inTask.map(({ step, performers }): Draft => {
      const actor = outline.crew[performers[0] ?? -1]?.id ?? "rehearsal";
      return { name: "step.skipped", data: { step: step.id, leftOut }, at: now, actor };
    });
    return { at: now, drafts };
  }
  return null;
}

function draftsOf(ledger: Ledger, entry: OutlineStep, at: Instant, turns: PlayedTurns): Draft[] {
  const { step, performers } = entry;
  const actor = ledger.inForce.outline.crew[performers[0] ?? -1]?.id ?? "rehearsal";
  const drafts: Draft[] = [];
  const progress = progressOf(ledger, step.id);
  for (const record of step.records) {
    const { min, max } = record;
    const expected = min !== undefined && max !== undefined ? (min + max) / 2 : (min ?? max ?? 1);
    const value = turns.valueOf(entry, record, at) ?? expected;
    const isTaken = progress.records.some((taken) => taken.record === record.id);
    if (!isTaken)
      drafts.push({ name: "record.taken", data: { step: step.id, record: record.id, value }, at, actor });
  }
  for (const check of step.check.keys()) {
    if (!progress.counted.includes(check))
      drafts.push({ name: "check.counted", data: { step: step.id, check }, at, actor });
  }
  if (step.confirm && !progress.confirmed) {
    drafts.push({ name: "confirm.given", data: { step: step.id }, at, actor: step.confirm.by });
  }
  if (step.decide && !ledger.outcomes.has(step.decide.id)) {
    const outcome = turns.outcomeOf(step.decide, at) ?? step.decide.expect;
    const data = { decision: step.decide.id, outcome };
    drafts.push({ name: "decision.taken", data, at, actor });
  }
  drafts.push({ name: "step.done", data: { step: step.id }, at, actor });
  return drafts;
}
