import { learnFrom, walkRecords } from "../../core/learn/index.ts";
import { readLines } from "../../core/log/index.ts";
import { outlineOf, parseProcedure } from "../../core/procedure/index.ts";
import type { StepId } from "../../core/units/index.ts";
import { foldLog } from "../../core/walk/index.ts";
import { compareWalks, forecastScores, forecastsOf } from "../../core/walks-compared/index.ts";
import type { WalksRequest, WalksTold } from "./walks-request.ts";

/** Gives what walks tell, at first without how their forecasts did; `null` when the file is no procedure. */
export function* walksAnswersTo({ file, logs, renamed }: WalksRequest): Generator<WalksTold | null> {
  const { procedure } = parseProcedure(file);
  if (!procedure) {
    yield null;
    return;
  }
  const records = walkRecords(logs.map((text) => foldLog(readLines(text).entries))).filter(
    ({ ledger }) => ledger.opened.procedure.outline.procedure.id === procedure.id,
  );
  const { outline, ...learned } = learnFrom(
    records,
    outlineOf(procedure),
    new Map(Object.entries(renamed) as [StepId, StepId][]),
  );
  const { outline: _, ...compared } = compareWalks(records, { outline, ...learned });
  yield { learned, compared, scores: null };
  yield { learned, compared, scores: forecastScores(records.map(forecastsOf)) };
}
