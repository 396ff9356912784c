import { fitOf, planCase, walkCase } from "../../core/fit/index.ts";
import { readLines } from "../../core/log/index.ts";
import { AS_EXPECTED, outlineOf, parseProcedure } from "../../core/procedure/index.ts";
import { foldLog } from "../../core/walk/index.ts";
import type { FitAnswer, FitRequest } from "./fit-request.ts";

/** How often a set that is offered is sampled, with which seed, and how many sets are looked at. */
const SEARCH = { samples: 2_000, seed: 1, tries: 5_000 };

function caseOf({ subject, leftOut }: FitRequest) {
  const without = new Set(leftOut);
  if (subject.kind === "walk") {
    const { ledger } = foldLog(readLines(subject.lines).entries);
    return ledger && walkCase(ledger, subject.at, without);
  }
  const { procedure } = parseProcedure(subject.file);
  const { start, light } = subject;
  return procedure && planCase(outlineOf(procedure), { outcomes: AS_EXPECTED, start, light }, without);
}

/** Answers a question, which takes from some milliseconds to many seconds. */
export function fitAnswerTo(request: FitRequest): FitAnswer {
  const { limit, chance } = request;
  const fitCase = caseOf(request);
  return {
    now: fitCase?.now ?? null,
    fit: fitCase && fitOf(fitCase, { limit, chance, ...SEARCH }),
  };
}
