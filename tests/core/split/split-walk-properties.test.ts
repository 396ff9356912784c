import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { splitOf, walkSplitCase } from "../../../src/core/split/index.ts";
import { Layout, splitAsWritten } from "../../../src/core/split/layout.ts";
import { proveSplit } from "../../../src/core/split/prove.ts";
import { rearrangedFile } from "../../../src/core/split/rearranged-file.ts";
import { splitBound } from "../../../src/core/split/split-bound.ts";
import { splitModelOf } from "../../../src/core/split/split-model-of.ts";
import type { StepId } from "../../../src/core/units/index.ts";
import { begunSteps, forecastOf, progressOf } from "../../../src/core/walk/index.ts";
import { begunWalk, walkArb } from "./random-walk.ts";
import { splitByChance } from "./split-by-chance.ts";

const LOOKED = { tries: 600, seed: 1, parts: 2_000 };

describe("the best split of the rest of any walk", () => {
  test.prop([walkArb, fc.integer()], { numRuns: 100 })(
    "[FIT3] [FOR1] the search lays what is left out as the forecast does, also with other hands and orders",
    (walk, seed) => {
      const { ledger, at } = begunWalk(walk);
      const asked = walkSplitCase(ledger, at);
      if (!asked.laid) return;
      const model = splitModelOf(asked, asked.laid.course);
      const layout = new Layout(model);
      for (const split of [
        splitAsWritten(model),
        splitByChance(model, seed),
        splitByChance(model, seed + 1),
      ]) {
        const cost = layout.costOf(split);
        if (!Number.isFinite(cost)) continue;
        const file = rearrangedFile(asked, model, split, layout);
        const laid = file && asked.judge(file);
        if (!laid) continue;
        expect([layout.end, cost]).toEqual([laid.course.finish, layout.cost]);
        for (const [index, { id }] of model.steps.entries())
          expect([id, layout.start[index]]).toEqual([id, laid.course.steps.get(id)?.start]);
      }
    },
  );

  test.prop([walkArb, fc.integer()], { numRuns: 100 })(
    "[FIT3] no split of the rest is complete before the bound, and the proof finds the best of all",
    (walk, seed) => {
      const { ledger, at } = begunWalk(walk);
      const asked = walkSplitCase(ledger, at);
      if (!asked.laid) return;
      const { course } = asked.laid;
      const model = splitModelOf(asked, course);
      const layout = new Layout(model);
      const bound = splitBound(model, course.network);
      const proof = proveSplit({
        model,
        network: course.network,
        cost: layout.costOf(splitAsWritten(model)),
        bound,
        parts: 20_000,
        isSound: () => true,
      });
      for (const one of Array.from({ length: 30 }, (_, turn) => splitByChance(model, seed + turn))) {
        const cost = layout.costOf(one);
        expect(cost).toBeGreaterThanOrEqual(bound);
        if (proof.isProven) expect(cost).toBeGreaterThanOrEqual(proof.cost);
      }
    },
  );

  test.prop([walkArb], { numRuns: 60 })(
    "[FIT3] [FIT4] [WLK6] what is offered keeps what has begun, is accepted, and gives the forecast that it promises",
    (walk) => {
      const { log, ledger, at } = begunWalk(walk);
      const asked = walkSplitCase(ledger, at);
      const answer = splitOf(asked, LOOKED);
      expect(splitOf(walkSplitCase(ledger, at), LOOKED)).toEqual(answer);
      expect(answer.before).toBe(forecastOf(ledger, at)?.finish ?? null);
      if (answer.finish === null || answer.before === null || answer.bound === null) return;
      expect(answer.bound).toBeLessThanOrEqual(answer.finish);
      expect(answer.finish).toBeLessThanOrEqual(answer.before);
      if (answer.changes.length === 0) return;
      const minute = (at - Number(ledger.opened.at)) / 60_000;
      const needs = { changes: answer.changes, reason: "best split", needs: 2 };
      const { folded } = log.enter("plan.amended", needs as never, minute);
      expect(folded.ignored.filter(({ id }) => id === log.entries.at(-1)?.wire.id)).toEqual([]);
      if (!folded.ledger) throw new Error("no walk");
      expect(forecastOf(folded.ledger, at)?.finish).toBe(answer.finish);
      const { complete, working } = begunSteps(ledger, at);
      const begun = new Set<StepId>([...complete, ...working.keys()]);
      const before = ledger.inForce.outline;
      for (const id of begun) {
        const [was, is] = [before.step(id), folded.ledger.inForce.outline.step(id)];
        expect([id, is?.step.by, is?.step.at, is?.step.to, is?.task.id]).toEqual([
          id,
          was?.step.by,
          was?.step.at,
          was?.step.to,
          was?.task.id,
        ]);
        expect(progressOf(folded.ledger, id)).toMatchObject({ finish: progressOf(ledger, id).finish });
      }
      for (const { step } of answer.moved) expect(begun.has(step)).toBe(false);
    },
  );
});
