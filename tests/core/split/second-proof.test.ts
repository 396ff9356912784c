import { test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { loadSolver } from "../../../src/cli/load-solver.ts";
import type { SplitCase } from "../../../src/core/split/index.ts";
import { walkSplitCase } from "../../../src/core/split/index.ts";
import { Layout, splitAsWritten } from "../../../src/core/split/layout.ts";
import { proveSplit } from "../../../src/core/split/prove.ts";
import { proveByProgram } from "../../../src/core/split/prove-by-program.ts";
import { splitBound } from "../../../src/core/split/split-bound.ts";
import { splitModelOf } from "../../../src/core/split/split-model-of.ts";
import { caseOf, randomFile, seedsArb } from "./random-procedure.ts";
import { begunWalk, walkArb } from "./random-walk.ts";

const solver = await loadSolver();

/** Both proofs of a case, the second one from the file's own split on; `null` where there is nothing to compare. */
function bothProofs(asked: SplitCase) {
  if (!asked.laid) return null;
  const { course } = asked.laid;
  const model = splitModelOf(asked, course);
  const layout = new Layout(model);
  const cost = layout.costOf(splitAsWritten(model));
  if (!Number.isFinite(cost) || layout.late > 0) return null;
  const rules = {
    model,
    network: course.network,
    cost,
    bound: splitBound(model, course.network),
    isSound: () => true,
  };
  return {
    own: proveSplit({ ...rules, parts: 50_000 }),
    second: proveByProgram({ ...rules, solver, nodes: 2_000 }),
  };
}

function agree(asked: SplitCase): void {
  const proofs = bothProofs(asked);
  if (!proofs) return;
  const { own, second } = proofs;
  if (own.isProven) {
    expect(second.bound).toBeLessThanOrEqual(own.cost);
    expect(second.cost).toBeGreaterThanOrEqual(own.cost);
  }
  if (second.status === "proven") expect(own.cost).toBeGreaterThanOrEqual(second.cost);
  if (own.isProven && second.status === "proven") expect(second.cost).toBe(own.cost);
}

describe("the second proof of a best split", () => {
  test.prop([seedsArb], { numRuns: 60 })(
    "[FIT3] has the same optimum as the first, for any small procedure",
    (seeds) => agree(caseOf(randomFile(seeds))),
  );

  test.prop([walkArb], { numRuns: 60 })(
    "[FIT3] has the same optimum as the first, for the rest of any small walk",
    (walk) => {
      const { ledger, at } = begunWalk(walk);
      agree(walkSplitCase(ledger, at));
    },
  );
});
