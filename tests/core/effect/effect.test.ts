import { test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import { checkOutline } from "../../../src/core/check/index.ts";
import { effectOf, findingsEffect } from "../../../src/core/effect/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { Change, Outline, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { finding, outlineOf } from "../../../src/core/procedure/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { message } from "../../../src/words/index.ts";
import { fileWith, procedureOf, step, task } from "../procedure-builder.ts";
import { procedureFiles } from "../procedure-files.ts";

const SAMPLING = { samples: 500, seed: 1 };
const laidOut = (file: unknown): Outline => outlineOf(procedureOf(file));
const FILE = fileWith(
  [
    task("one", [
      step("a", "ev1", null, { time: { low: "PT1M", likely: "PT3M", high: "PT20M" } }),
      step("b", "ev2", 4),
      step("c", "ev1", 2, { after: ["a", "b"] }),
    ]),
  ],
  { limits: { elapsed: "PT8M" } },
);
const effect = (...changes: readonly Change[]) => {
  const changed = applyChanges(FILE, changes).file;
  return effectOf(laidOut(FILE), laidOut(changed), SAMPLING);
};
const minutes = ({ before, after }: { before: number | null; after: number | null }) => [
  before === null ? null : inMinutes(before as never),
  after === null ? null : inMinutes(after as never),
];

describe("the effect of changes", () => {
  it("[CHG7] is finish, margin, chance, critical path, starts, slack and waits on either side", () => {
    const found = effect(
      { change: "b", set: { time: "PT7M" } },
      { drop: "a" },
      { add: step("x", "iv", 1), behind: "c" },
    );
    expect(minutes(found.finish)).toEqual([6, 9]);
    expect(minutes(found.margin)).toEqual([2, -1]);
    expect(found.criticalPath).toEqual({ before: ["b", "c"], after: ["b", "c"] });
    expect(found.steps.map(({ id, start, slack }) => [id, minutes(start), minutes(slack)])).toEqual([
      ["b", [0, 0], [0, 0]],
      ["c", [4, 7], [0, 0]],
      ["x", [null, 0], [null, 8]],
      ["a", [0, null], [1, null]],
    ]);
    const waits = (list: typeof found.waits.before) =>
      list.map(({ step: id, crew, from, to }) => [id, crew, inMinutes(to - from)]);
    expect([waits(found.waits.before), waits(found.waits.after)]).toEqual([
      [["c", "ev1", 1]],
      [["c", "ev1", 7]],
    ]);
    expect(found.withinLimit.before).toBeGreaterThan(0);
    expect(found.withinLimit.before).toBeLessThan(1);
    expect(found.withinLimit.after).toBe(0);
    expect(found.findings.new.map(({ code }) => code)).toEqual(["time/over-limit"]);
    expect(found.findings.gone).toEqual([]);
  });

  it("[CHG7] has no figures on a side without a plan, and says why", () => {
    const found = effect({ change: "b", set: { after: ["c"] } });
    expect([minutes(found.finish), minutes(found.margin), found.withinLimit.after]).toEqual([
      [6, null],
      [2, null],
      null,
    ]);
    expect(found.criticalPath.after).toEqual([]);
    expect(found.steps.every(({ start }) => start.after === null)).toBe(true);
    expect(found.findings.new.map(({ code }) => code)).toEqual(["order/deadlock"]);
  });

  it("[CHG7] has no chance without a limit", () => {
    const { withinLimit, margin } = effect({ head: { limits: {} } });
    expect([withinLimit.after, margin.after]).toEqual([null, null]);
  });

  test.prop([procedureFiles, procedureFiles], { numRuns: 60 })(
    "[CHG7] is what each side's own plan and check say, and turns round with the sides",
    (before: ProcedureFile, after: ProcedureFile) => {
      const [one, other] = [laidOut(before), laidOut(after)];
      const found = effectOf(one, other, SAMPLING);
      const back = effectOf(other, one, SAMPLING);
      expect(found.finish).toEqual({
        before: planOf(one).timeline?.course.finish ?? null,
        after: planOf(other).timeline?.course.finish ?? null,
      });
      for (const key of ["finish", "margin", "withinLimit", "criticalPath", "waits"] as const)
        expect([back[key].after, back[key].before]).toEqual([found[key].before, found[key].after]);
      expect(back.findings.gone).toEqual(found.findings.new);
      expect(found.findings.new.length + found.findings.same.length).toBe(checkOutline(other).length);
      const same = effectOf(one, one, SAMPLING);
      expect([same.findings.new, same.findings.gone]).toEqual([[], []]);
      expect(
        same.steps.every(({ start, slack }) => start.before === start.after && slack.before === slack.after),
      ).toBe(true);
    },
  );

  it("[CHG7] finds a finding the same wherever in the file it stands", () => {
    const at = (pointer: string) =>
      finding("caution", "order/race", pointer, message("order/more-races", { most: 9 }));
    expect(findingsEffect([at("/tasks/0")], [at("/tasks/1")])).toEqual({
      new: [],
      gone: [],
      same: [at("/tasks/1")],
    });
  });
});
