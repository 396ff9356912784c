import { lengthText } from "../../words/index.ts";
import type { Draft } from "../log/index.ts";
import type { RandomSource } from "../plan/index.ts";
import { pertSampler } from "../plan/index.ts";
import type { OutlineStep, Task } from "../procedure/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { later } from "../units/index.ts";
import { forecastOf, inWork } from "./forecast.ts";
import { gateOf, openingOf, stepOfLane } from "./gate.ts";
import type { Ledger } from "./ledger.ts";
import { isComplete } from "./ledger.ts";

/** How long a played crew takes for each step, by reading order index. */
export type PlayedTimes = readonly Duration[];

/** Draws the time of every step once, in reading order, so that a seed gives the same rehearsal again. */
export function playedTimesOf(ledger: Ledger, random: RandomSource): PlayedTimes {
  const sample = pertSampler(random);
  return ledger.opened.outline.steps.map(({ index, step }) => {
    const time = step.time ?? ledger.whereabouts.times[index];
    return time ? sample(time) : (0 as Duration);
  });
}

/** What the played crew does next, and when. */
export interface PlayedMove {
  readonly at: Instant;
  readonly drafts: readonly Draft[];
}

/** A played crew begins a get-ahead only when so much of the elapsed limit is forecast to be left after it. */
const MARGIN_KEPT = (15 * 60_000) as Duration;

/**
 * The next thing a played crew does: completes the step in work that is over first, with its records in the middle of
 * what is allowed, its confirmation and its decision as expected; or skips a get-ahead task it has come to, when that
 * would leave less than 15 min of margin. `null` when every lane is finished, or nothing can go on.
 * `now` is when the crew looks; nothing is done before it.
 */
export function nextPlayedMove(ledger: Ledger, times: PlayedTimes, now: Instant): PlayedMove | null {
  if (ledger.phase !== "running") return null;
  const leftOut = leaveOutMove(ledger, now);
  if (leftOut) return leftOut;
  let best: { entry: OutlineStep; at: Instant } | null = null;
  for (const [index, start] of startsFrom(ledger)) {
    const entry = ledger.opened.outline.steps[index];
    const due = later(start, times[index] ?? (0 as Duration));
    const at = due > now ? due : now;
    if (entry && (best === null || at < best.at || (at === best.at && index < best.entry.index)))
      best = { entry, at };
  }
  return best && { at: best.at, drafts: draftsOf(ledger, best.entry, best.at) };
}

/** The steps that are in work or will be by nothing but time passing, with their starts. */
function startsFrom(ledger: Ledger): Map<number, Instant> {
  const starts = inWork(ledger, Number.MAX_SAFE_INTEGER as Instant);
  for (const lane of ledger.lanes.keys()) {
    const index = stepOfLane(ledger, lane);
    if (index === null || starts.has(index)) continue;
    const { ready } = gateOf(ledger, index);
    const opening = ready === null ? null : openingOf(ledger, index, ready);
    // A step whose windows are all past is done at once: the played crew does not wait for ever.
    if (ready !== null && opening === null) starts.set(index, ready);
  }
  return starts;
}

/** The skipping of a get-ahead task that a lane has come to and for which time is short; `null` when there is none. */
function leaveOutMove(ledger: Ledger, now: Instant): PlayedMove | null {
  const { steps } = ledger.opened.outline;
  const tasks = new Set(
    ledger.lanes.flatMap((_, lane): Task[] => {
      const entry = steps[stepOfLane(ledger, lane) ?? -1];
      return entry?.getAhead ? [entry.task] : [];
    }),
  );
  for (const task of tasks) {
    const inTask = steps.filter(
      ({ index, task: other }) => other === task && ledger.network.activity.active[index],
    );
    // A get-ahead once begun is seen through, so that nothing stays half done.
    if (inTask.some(({ index }) => isComplete(ledger, index))) continue;
    const margin = forecastOf(ledger, now)?.margin ?? null;
    if (margin === null) continue;
    const needed = inTask.reduce((sum, { index }) => sum + (ledger.whereabouts.times[index]?.likely ?? 0), 0);
    if (margin - needed >= MARGIN_KEPT) continue;
    const reason = `Left out: ${lengthText(needed as Duration)} of work, and the margin is ${margin < 0 ? "spent" : lengthText(margin)}`;
    const drafts = inTask.map(({ step, performers }): Draft => {
      const actor = ledger.opened.outline.crew[performers[0] ?? -1]?.id ?? "rehearsal";
      return { name: "step.skipped", data: { step: step.id, reason }, at: now, actor };
    });
    return { at: now, drafts };
  }
  return null;
}

function draftsOf(ledger: Ledger, { step, index, performers }: OutlineStep, at: Instant): Draft[] {
  const actor = ledger.opened.outline.crew[performers[0] ?? -1]?.id ?? "rehearsal";
  const drafts: Draft[] = [];
  const progress = ledger.steps[index];
  for (const record of step.records) {
    const { min, max } = record;
    const value = min !== undefined && max !== undefined ? (min + max) / 2 : (min ?? max ?? 1);
    const isTaken = progress?.records.some((taken) => taken.record === record.id);
    if (!isTaken)
      drafts.push({ name: "record.taken", data: { step: step.id, record: record.id, value }, at, actor });
  }
  if (step.confirm && !progress?.confirmed) {
    drafts.push({ name: "confirm.given", data: { step: step.id }, at, actor: step.confirm.by });
  }
  if (step.decide && !ledger.outcomes.has(step.decide.id)) {
    const data = { decision: step.decide.id, outcome: step.decide.expect };
    drafts.push({ name: "decision.taken", data, at, actor });
  }
  drafts.push({ name: "step.done", data: { step: step.id }, at, actor });
  return drafts;
}
