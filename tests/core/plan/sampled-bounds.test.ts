import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Risk } from "../../../src/core/plan/index.ts";
import { planOf, riskModelOf, sampleRisk } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { StepId } from "../../../src/core/units/index.ts";
import { forecastRisk, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute, minutes } from "../log-writer.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";

const FORMAT = { format: "tetherline.procedure/2" } as const;
const riskOf = (file: ProcedureFile, samples: number): Risk =>
  sampleRisk(riskModelOf(planOf(outlineOf(procedureOf(file)))), samples, 1);
const spread = (low: number, likely: number, high: number) => ({
  time: { low: `PT${low}M`, likely: `PT${likely}M`, high: `PT${high}M` },
});

describe("the bounds of a procedure in samples", () => {
  it("[PLN5] [PRO17] counts the samples in which a step is done too late, and the bound itself as kept", () => {
    const late = (doneBy: string, time: object) =>
      riskOf(fileWith([step("a", "ev1", null, { ...time, doneBy })], FORMAT), 4000).broken;
    expect(late("PT10M", spread(10, 10, 10))).toEqual([]);
    expect(late("PT9M", spread(10, 10, 10))).toEqual([
      { bound: { step: "a", doneBy: minutes(9) }, share: 1 },
    ]);
    // A symmetric distribution lies above its middle in half of the samples.
    const [half] = late("PT10M", spread(8, 10, 12));
    expect(Math.abs((half?.share ?? 0) - 0.5)).toBeLessThan(0.04);
  });

  it("[PLN5] [PRO17] counts the samples in which a step starts too long after another", () => {
    const file = (within: string, lag?: string) =>
      fileWith(
        [
          step("read", "iv", null, spread(1, 3, 9)),
          step("other", "ev1", null, spread(8, 10, 12)),
          step("both", "ev1", 2, { after: [{ step: "read", within, ...(lag ? { lag } : {}) }] }),
        ],
        FORMAT,
      );
    const [one, ...more] = riskOf(file("PT7M"), 4000).broken;
    expect(one?.bound).toEqual({ step: "both", after: "read", within: minutes(7) });
    expect(one?.share).toBeGreaterThan(0.2);
    expect(one?.share).toBeLessThan(0.7);
    expect(more).toEqual([]);
    expect(riskOf(file("PT12M"), 500).broken).toEqual([]);
    // A lag that is as long as the bound is just kept, whatever the rounding of the durations.
    expect(riskOf(file("PT30M", "PT30M"), 500).broken).toEqual([]);
  });

  it("[PLN5] [PRO17] a sample that fits no window is beyond every bound behind it", () => {
    const file = fileWith(
      [
        step("a", "ev1", 9),
        step("b", "ev1", 2, { within: ["w"] }),
        step("c", "ev1", 1, { after: [{ step: "b", within: "PT5M" }], doneBy: "PT9H" }),
      ],
      { ...FORMAT, windows: [{ id: "w", kind: "listed", spans: [{ from: "PT0M", to: "PT10M" }] }] },
    );
    const risk = riskOf(file, 20);
    expect(risk.unfit).toBe(1);
    expect(risk.broken.map(({ share }) => share)).toEqual([1, 1]);
  });

  it("[FOR2] [PRO17] leaves out what is settled on the day, and counts what can still be kept", () => {
    const file = fileWith(
      [
        step("a", "ev1", 5, { doneBy: "PT4M" }),
        step("b", "ev1", 5, { after: [{ step: "a", within: "PT1M" }], doneBy: "PT12M" }),
        step("c", "ev1", 5, { after: [{ step: "b", within: "PT0M" }], doneBy: "PT20M" }),
      ],
      FORMAT,
    );
    const log = LogWriter.started(file).done(["a", 5]);
    const brokenAt = (pet: number) => forecastRisk(walkStateAt(log.ledger, minute(pet)), 10)?.broken;
    expect(brokenAt(6)).toEqual([]);
    // Overdue since ten, and still not done at 13.
    expect(brokenAt(13)).toEqual([{ bound: { step: "b", doneBy: minutes(12) }, share: 1 }]);
    log.done(["b", 17]);
    expect(brokenAt(17)).toEqual([{ bound: { step: "c", doneBy: minutes(20) }, share: 1 }]);
  });

  test.prop([fc.nat({ max: 12 }), fc.nat({ max: 12 }), fc.nat({ max: 30 }), fc.nat({ max: 15 })])(
    "[PRO17] with durations of one length breaks exactly what the plan breaks",
    (a, b, doneBy, within) => {
      const file = fileWith(
        [
          step("a", "ev1", a),
          step("b", "ev2", b),
          step("c", ["ev1", "ev2"], 3, {
            after: [{ step: "a", within: `PT${within}M` }],
            doneBy: `PT${doneBy}M`,
          }),
        ],
        FORMAT,
      );
      const { findings } = planOf(outlineOf(procedureOf(file)));
      const { broken } = riskOf(file, 3);
      const codes = broken.map(({ bound }) => ("doneBy" in bound ? "time/done-late" : "time/started-late"));
      expect(codes.sort()).toEqual(
        findings
          .filter(({ steps }) => steps[0] === ("c" as StepId))
          .map(({ code }) => code)
          .sort(),
      );
      expect(broken.every(({ share }) => share === 1)).toBe(true);
    },
  );
});
