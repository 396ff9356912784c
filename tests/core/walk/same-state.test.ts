import { test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { compareEntries, readLines, writeLines } from "../../../src/core/log/index.ts";
import { reviewDocument, reviewOf } from "../../../src/core/review/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import type { Folded } from "../../../src/core/walk/index.ts";
import { foldLog, stateDocument, WalkFold } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { ZERO } from "../log-writer.ts";
import { referenceOf } from "./reference-fold.ts";
import { arrivalsOf, chanceOf, entriesOf, seed, tappedLog } from "./tapped-log.ts";

/** More runs when hunting: `PROPERTY_RUNS=5000 npx vitest run tests/core/walk/same-state.test.ts`. */
const RUNS = Number(process.env["PROPERTY_RUNS"] ?? 200);

/** Everything that is shown of a log, as text: the state in the middle and at the end, and the review. */
function shown(folded: Folded): string {
  const middle = (ZERO + 7 * 60_000) as Instant;
  const end = folded.lastAt ?? middle;
  const review = reviewOf(folded, end);
  return JSON.stringify([
    stateDocument(folded, middle, inWords),
    stateDocument(folded, end, inWords),
    review && reviewDocument(review, inWords),
  ]);
}

describe("the state of a walk", { timeout: 600_000 }, () => {
  test.prop([tappedLog, seed], { numRuns: RUNS })(
    "[LOG3] is the same for any order of arrival, duplication and division into batches",
    (tapped, number) => {
      const chance = chanceOf(number);
      const entries = entriesOf(tapped);
      const whole = foldLog([...entries].sort(compareEntries));
      const fold = new WalkFold();
      for (const batch of arrivalsOf(entries, chance, 1)) {
        fold.add(batch);
        // Reading in between must leave no trace.
        if (chance() < 0.03) shown(fold.folded);
      }
      expect(fold.folded.ignored).toEqual(whole.ignored);
      expect(shown(fold.folded)).toBe(shown(whole));
    },
  );

  test.prop([tappedLog], { numRuns: RUNS })(
    "[LOG3] [REV2] is the same after export and import of the log",
    (tapped) => {
      const { entries, ...folded } = foldLog(entriesOf(tapped));
      const { entries: imported, problems } = readLines(writeLines(entries));
      expect(problems).toEqual([]);
      // Of entries that clash only the one that counts is exported, so the other is no longer listed.
      const kept = folded.ignored.filter(({ reason: why }) => why.key !== "walk/same-key");
      expect(shown({ ...foldLog(imported) })).toBe(shown({ ...folded, entries, ignored: kept }));
    },
  );

  test.prop([tappedLog], { numRuns: RUNS })(
    "[LOG4] lists every entry that has no effect once, and never one that is not in the log",
    (tapped) => {
      const entries = entriesOf(tapped);
      const { ignored, entries: ordered } = foldLog(entries);
      const names = ignored.map(({ source, id }) => `${source} ${id}`);
      const keys = new Set(ordered.map(({ wire }) => `${wire.source} ${wire.id}`));
      expect(ignored.every(({ reason: why }) => inWords(why).length > 0)).toBe(true);
      expect(names.every((name) => keys.has(name))).toBe(true);
      // Every one, by an account of its own, and as often as it says: once for each statement that has no effect.
      expect(names).toEqual(referenceOf(entries).ignored);
      const inOrder = ignored
        .filter(({ reason: why }) => why.key !== "walk/same-key")
        .map(({ source, id }) => `${source} ${id}`);
      expect(new Set(inOrder).size).toBe(inOrder.length);
    },
  );
});
