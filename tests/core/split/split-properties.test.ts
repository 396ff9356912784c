import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import { checkOutline } from "../../../src/core/check/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { Finding } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { SplitCase } from "../../../src/core/split/index.ts";
import { splitOf } from "../../../src/core/split/index.ts";
import { Layout, splitAsWritten } from "../../../src/core/split/layout.ts";
import { proveSplit } from "../../../src/core/split/prove.ts";
import { rearrangedFile } from "../../../src/core/split/rearranged-file.ts";
import { splitBound } from "../../../src/core/split/split-bound.ts";
import { splitModelOf } from "../../../src/core/split/split-model-of.ts";
import { procedureOf } from "../procedure-builder.ts";
import { caseOf, randomFile, seedsArb } from "./random-procedure.ts";
import { splitByChance } from "./split-by-chance.ts";

const NO_LIGHT = { start: null, light: null };

/** The model of a case, and `null` where the file has no plan at all. */
function modelOf(splitCase: SplitCase) {
  return (
    splitCase.laid && {
      model: splitModelOf(splitCase, splitCase.laid.course),
      network: splitCase.laid.course.network,
    }
  );
}

/** A get-ahead stands behind a step in whose place it is done, and that step may be given to somebody else. */
const BESIDE_A_GET_AHEAD = {
  tasks: [false, true].map((isGetAhead) => ({
    isFree: false,
    isGetAhead,
    steps: [
      {
        who: ["ev1"] as const,
        place: "mast" as const,
        says: false,
        time: 0,
        or: isGetAhead ? undefined : { who: ["ev2"] as const, time: undefined },
        lag: undefined,
        after: 0,
        window: true,
        notBefore: undefined,
        tool: "none" as const,
      },
    ],
  })),
  times: [1, 1, 1, 1, 1],
  isTethered: false,
};

describe("the best split of any procedure", () => {
  test.prop([seedsArb, fc.integer()], { numRuns: 100, examples: [[BESIDE_A_GET_AHEAD, 0]] })(
    "[FIT3] the search lays a split out as the plan of its procedure does",
    (seeds, seed) => {
      const splitCase = caseOf(randomFile(seeds));
      const found = modelOf(splitCase);
      if (!found) return;
      const { model } = found;
      const layout = new Layout(model);
      for (const split of [
        splitAsWritten(model),
        splitByChance(model, seed),
        splitByChance(model, seed + 1),
      ]) {
        const cost = layout.costOf(split);
        if (!Number.isFinite(cost)) continue;
        const file = rearrangedFile(splitCase, model, split, layout);
        const plan = planOf(outlineOf(procedureOf(file)));
        expect(plan.timeline?.course.finish).toBe(layout.end);
        for (const { id, index } of model.steps) {
          const at = model.steps.findIndex((one) => one.index === index);
          expect([id, plan.timeline?.course.steps.get(id)?.start]).toEqual([id, layout.start[at]]);
        }
      }
    },
  );

  test.prop([seedsArb, fc.integer()], { numRuns: 150 })(
    "[FIT3] no split is complete before the bound, and the proof finds the best of all",
    (seeds, seed) => {
      const splitCase = caseOf(randomFile(seeds));
      const found = modelOf(splitCase);
      if (!found) return;
      const { model, network } = found;
      const layout = new Layout(model);
      const bound = splitBound(model, network);
      const cost = layout.costOf(splitAsWritten(model));
      const proof = proveSplit({
        model,
        network,
        cost,
        bound,
        parts: 20_000,
        isSound: () => true,
      });
      const splits = Array.from({ length: 30 }, (_, one) => splitByChance(model, seed + one));
      for (const split of splits) {
        const costs = layout.costOf(split);
        expect(costs).toBeGreaterThanOrEqual(bound);
        if (proof.isProven) expect(costs).toBeGreaterThanOrEqual(proof.cost);
      }
    },
  );

  test.prop([seedsArb], { numRuns: 50 })(
    "[FIT3] [FIT4] an answer gives the plan it promises, breaks nothing, and leaves alone what may not move",
    (seeds) => {
      const file = randomFile(seeds);
      const splitCase = caseOf(file);
      const answer = splitOf(splitCase, { tries: 600, seed: 1, parts: 2_000 });
      expect(splitOf(splitCase, { tries: 600, seed: 1, parts: 2_000 })).toEqual(answer);
      if (answer.finish === null || answer.before === null || answer.bound === null) return;
      expect(answer.finish).toBeLessThanOrEqual(answer.before);
      expect(answer.bound).toBeLessThanOrEqual(answer.finish);
      const applied = applyChanges(file, answer.changes);
      if (!applied.file) throw new Error("not applied");
      const outline = outlineOf(procedureOf(applied.file));
      expect(planOf(outline).timeline?.course.finish).toBe(answer.finish);
      const errorsOf = (of: readonly Finding[]) =>
        new Set(of.filter(({ level }) => level === "error").map(({ code, things }) => `${code} ${things}`));
      const old = errorsOf(checkOutline(splitCase.outline, NO_LIGHT));
      expect([...errorsOf(checkOutline(outline, NO_LIGHT))].filter((one) => !old.has(one))).toEqual([]);
      const still = file.tasks.filter(({ order }) => order !== "free").map(({ id }) => id);
      expect(applied.file.tasks.filter(({ order }) => order !== "free").map(({ id }) => id)).toEqual(still);
      expect(applied.file.tasks.at(-1)).toEqual(file.tasks.at(-1));
      if (answer.status !== "unchanged" && answer.status !== "no-plan")
        expect(answer.suggestions.length).toBeGreaterThan(0);
      else expect(answer.changes).toEqual([]);
    },
  );

  test.prop([seedsArb, fc.integer({ min: 0, max: 900 }), fc.integer({ min: 1, max: 900 })], { numRuns: 30 })(
    "[FIT3] more tries never give a worse answer",
    (seeds, tries, more) => {
      const splitCase = caseOf(randomFile(seeds));
      const few = splitOf(splitCase, { tries, seed: 3, parts: 0 });
      const many = splitOf(splitCase, { tries: tries + more, seed: 3, parts: 0 });
      if (few.finish !== null) expect(many.finish).toBeLessThanOrEqual(few.finish);
    },
  );
});
