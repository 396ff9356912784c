import { readLines } from "../../core/log/index.ts";
import { outlineOf, parseProcedure } from "../../core/procedure/index.ts";
import type { ProgramSolver, SplitCase } from "../../core/split/index.ts";
import { splitCase, splitOf, walkSplitCase } from "../../core/split/index.ts";
import { NO_TIME } from "../../core/units/index.ts";
import { foldLog } from "../../core/walk/index.ts";
import type { SplitFound, SplitRequest } from "./split-request.ts";

/** How long it looks, by the count of tries: the first answer is there in a second, and none is worse than the one before. */
const ROUNDS = [
  { tries: 2_000, parts: 5_000 },
  { tries: 20_000, parts: 50_000 },
  { tries: 60_000, parts: 300_000 },
];

/** What is looked at before a second proof, no less than in the last round, and the nodes after which that one stops. */
const PROOF = { tries: 60_000, parts: 5_000, nodes: 20_000 };

const SEED = 1;

function caseOf({ subject }: SplitRequest): SplitCase | null {
  if (subject.kind === "walk") {
    const { ledger } = foldLog(readLines(subject.lines).entries);
    return ledger && walkSplitCase(ledger, subject.at);
  }
  const { file, start, light } = subject;
  const { procedure } = parseProcedure(file);
  return procedure && splitCase({ file, outline: outlineOf(procedure) }, { start, light });
}

/** Answers a question with a second proof of what the first one leaves open. */
export function provenAnswerTo(request: SplitRequest, solver: ProgramSolver): SplitFound {
  const asked = caseOf(request);
  const { tries, parts, nodes } = PROOF;
  return {
    answer: asked && splitOf(asked, { tries, parts, seed: SEED, second: { solver, nodes } }),
    now: asked?.now ?? NO_TIME,
    isLast: true,
  };
}

/** Answers a question again and again, each time better or better proven. */
export function* splitAnswersTo(request: SplitRequest): Generator<SplitFound> {
  const asked = caseOf(request);
  if (!asked) {
    yield { answer: null, now: NO_TIME, isLast: true };
    return;
  }
  const { now } = asked;
  for (const [round, { tries, parts }] of ROUNDS.entries()) {
    const answer = splitOf(asked, { tries, parts, seed: SEED });
    const isLast =
      round === ROUNDS.length - 1 || answer.isProven || answer.hasNoChoice || answer.status === "no-plan";
    yield { answer, now, isLast };
    if (isLast) return;
  }
}
