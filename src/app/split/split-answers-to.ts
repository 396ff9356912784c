import { outlineOf, parseProcedure } from "../../core/procedure/index.ts";
import { splitCase, splitOf } from "../../core/split/index.ts";
import type { SplitFound, SplitRequest } from "./split-request.ts";

/** How long it looks, by the count of tries: the first answer is there in a second, and none is worse than the one before. */
const ROUNDS = [
  { tries: 2_000, parts: 5_000 },
  { tries: 20_000, parts: 50_000 },
  { tries: 60_000, parts: 300_000 },
];

const SEED = 1;

/** Answers a question again and again, each time better or better proven. */
export function* splitAnswersTo({ file, start, light }: SplitRequest): Generator<SplitFound> {
  const { procedure } = parseProcedure(file);
  if (!procedure) {
    yield { answer: null, isLast: true };
    return;
  }
  const asked = splitCase({ file, outline: outlineOf(procedure) }, { start, light });
  for (const [round, { tries, parts }] of ROUNDS.entries()) {
    const answer = splitOf(asked, { tries, parts, seed: SEED });
    const isLast =
      round === ROUNDS.length - 1 || answer.isProven || answer.hasNoChoice || answer.status === "no-plan";
    yield { answer, isLast };
    if (isLast) return;
  }
}
