import type { WalkRecord } from "../learn/index.ts";
import type { Risk } from "../plan/index.ts";
import { riskModelOf, sampleRisk } from "../plan/index.ts";
import type { Duration, TaskId, WalkId } from "../units/index.ts";
import { between } from "../units/index.ts";
import type { Ledger } from "../walk/index.ts";
import { basePlanOf, FORECAST_DRAWS, forecastOf, progressOf, WalkFold } from "../walk/index.ts";

/** A forecast as it was issued when a task was over ([CMP2]). Times are PET in ms. */
export interface IssuedForecast {
  readonly walk: WalkId;
  readonly task: TaskId;
  readonly at: Duration;
  readonly risk: Risk;
  /** True when a get-ahead that it had left out, as every forecast does ([PRO9]), was done all the same: it was of a shorter walk. */
  readonly isOfShorter: boolean;
}

/** The forecasts of a walk, and what its plan of record let expect. */
export interface WalkForecasts {
  readonly walk: WalkId;
  /** When it was over, where it was closed as complete; `null` otherwise, when nothing can be judged. */
  readonly finish: Duration | null;
  readonly limit: Duration | null;
  /** By the plan of record with the planner's figures; `null` when there is none. */
  readonly planned: Risk | null;
  /** In the order in which they were issued. */
  readonly issued: readonly IssuedForecast[];
}

const BARE = { influence: false };

/**
 * Returns the forecasts of a walk as they were issued at the end of each task while steps were open: its log is folded anew up
 * to each of these entries, and sampled with the samples and the seed of every forecast ([FOR2]).
 */
export function forecastsOf({ folded, ledger, began }: WalkRecord): WalkForecasts {
  const { walk } = ledger.opened;
  const { samples, seed } = FORECAST_DRAWS;
  const fold = new WalkFold();
  const issued: IssuedForecast[] = [];
  for (const entry of folded.entries) {
    fold.add([entry]);
    const { fact } = entry.read;
    if (fact?.name !== "step.done" && fact?.name !== "step.skipped") continue;
    const now = fold.folded.ledger;
    const mark = now && progressOf(now, fact.step).completedBy;
    // A mark without effect ends nothing.
    if (!now || mark?.id !== entry.wire.id || mark.source !== entry.wire.source) continue;
    const task = now.inForce.outline.step(fact.step)?.task;
    if (!task || hasOpen(now, task.id) || !hasOpen(now)) continue;
    const at = folded.timeOf(entry);
    const forecast = forecastOf(now, at);
    if (!forecast) continue;
    issued.push({
      walk,
      task: task.id,
      at: between(began, at),
      risk: sampleRisk(riskModelOf(forecast), samples, seed, BARE),
      isOfShorter: ledger.inForce.outline.steps.some(
        ({ getAhead, step }) =>
          getAhead && progressOf(ledger, step.id).status === "done" && !forecast.steps.has(step.id),
      ),
    });
  }
  const planned = basePlanOf(ledger).timeline?.course ?? null;
  return {
    walk,
    finish: ledger.closed?.end === "complete" ? lastFinish(ledger, began) : null,
    limit: ledger.inForce.outline.procedure.limits.elapsed ?? null,
    planned: planned && sampleRisk(riskModelOf(planned), samples, seed, BARE),
    issued,
  };
}

/** True when a step that is to be performed is not complete: of a task, or of any; get-aheads count for their own task alone. */
function hasOpen(ledger: Ledger, task: TaskId | null = null): boolean {
  return ledger.inForce.outline.steps.some(
    (entry) =>
      ledger.network.activity.active[entry.index] &&
      (task === null ? !entry.getAhead : entry.task.id === task) &&
      progressOf(ledger, entry.step.id).status === "open",
  );
}

function lastFinish(ledger: Ledger, began: WalkRecord["began"]): Duration | null {
  const finishes = [...ledger.steps].flatMap(([, { finish }]) => (finish === null ? [] : [finish]));
  if (finishes.length === 0) return null;
  return between(
    began,
    finishes.reduce((last, one) => (one > last ? one : last)),
  );
}
