import { describe, expect, it } from "vitest";
import type { Risk } from "../../src/core/plan/index.ts";
import { planOf, riskModelOf, sampleRisk } from "../../src/core/plan/index.ts";
import { pertQuantiles, QUANTILE_CELLS } from "../../src/core/plan/pert-quantiles.ts";
import type { Outline, ProcedureFile } from "../../src/core/procedure/index.ts";
import type { Duration, StepId } from "../../src/core/units/index.ts";
import { formatDuration, inMinutes } from "../../src/core/units/index.ts";
import { outlineFrom, step } from "../core/procedure-builder.ts";
import cases from "./fixtures/risk.json" with { type: "json" };

interface Activity {
  readonly id: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly predecessors: readonly string[];
}

const idOf = (activity: string) => `s-${activity.toLowerCase()}`;
const text = (minutes: number) => formatDuration(Math.round(minutes * 60_000) as Duration);

/** Each activity a step of a crew member of its own; one unit of time is a minute. */
function outlineOf(
  activities: readonly Activity[],
  time: (activity: Activity) => NonNullable<ProcedureFile["tasks"][number]["steps"][number]["time"]>,
  more: Partial<ProcedureFile> = {},
): Outline {
  return outlineFrom(
    activities.map((one) =>
      step(idOf(one.id), idOf(one.id), null, { time: time(one), after: one.predecessors.map(idOf) }),
    ),
    { crew: activities.map(({ id }) => ({ id: idOf(id), call: id, station: "inside" as const })), ...more },
  );
}

const threePoint = ({ low, likely, high }: Activity) => ({
  low: text(low),
  likely: text(likely),
  high: text(high),
});
const mean = ({ low, likely, high }: Activity) => text((low + 4 * likely + high) / 6);

function riskOf(outline: Outline, samples: number, seed = 1): Risk {
  return sampleRisk(riskModelOf(planOf(outline)), samples, seed);
}

const N = 40_000;
const minutesOf = (time: number | null) => (time === null ? Number.NaN : inMinutes(time as Duration));
function expectWithin(found: number, expected: number, tolerance: number, what = "") {
  expect(Math.abs(found - expected), `${what} ${found} for ${expected}`).toBeLessThanOrEqual(tolerance);
}

/** So far a share may be off: four standard errors of this run. */
const ofShare = (share: number) => 4 * Math.sqrt((share * (1 - share)) / N) + 1e-9;

describe("the PERT-beta distribution", () => {
  const { low, likely, high, ...known } = cases.formulas;
  const outline = (limit: number) =>
    outlineOf([{ id: "a", low, likely, high, predecessors: [] }], threePoint, {
      limits: { elapsed: text(limit) },
    });

  it("[PLN5] pert-formulas: the table of quantiles is good to a thousandth of the range", () => {
    expectWithin(1 + (4 * (likely - low)) / (high - low), known.alpha, known.tolerance);
    const quantiles = pertQuantiles(known.alpha);
    for (const [share, expected] of [
      [0.1, known.p10],
      [0.5, known.p50],
      [0.9, known.p90],
      [known.cdf5, 5],
    ] as const) {
      const place = share * QUANTILE_CELLS;
      const [from = 0, to = 0] = quantiles.slice(Math.floor(place));
      const found = from + (to - from) * (place - Math.floor(place));
      expectWithin(low + (high - low) * found, expected, 0.001 * (high - low), `${share}`);
    }
  });

  it("[PLN5] pert-formulas: sampled mean, variance, quantiles and probability", () => {
    const risk = riskOf(outline(5), N);
    const sd = Math.sqrt(known.var);
    expectWithin(minutesOf(risk.mean), known.mean, (4 * sd) / Math.sqrt(N));
    // The variance of a sample variance is at most 2σ⁴/n for a distribution with tails as light as these.
    expectWithin(minutesOf(risk.sd) ** 2, known.var, 4 * known.var * Math.sqrt(2 / N));
    // It is not the classic one of the tables.
    expect(Math.abs(minutesOf(risk.sd) ** 2 - known.classic)).toBeGreaterThan(0.2);
    for (const [found, expected] of [
      [risk.p10, known.p10],
      [risk.p50, known.p50],
      [risk.p90, known.p90],
    ] as const)
      expectWithin(minutesOf(found), expected, 0.04);
    expectWithin(risk.withinLimit ?? Number.NaN, known.cdf5, ofShare(known.cdf5));
  });
});

describe("published three-point networks", () => {
  const { reliable, critpath, atoz } = cases;

  it.each([reliable, critpath, atoz])("[PLN2] $id: the plan of the means", (one) => {
    const { timeline } = planOf(outlineOf(one.activities, mean));
    expect(minutesOf(timeline?.course.finish ?? null)).toBe(one.finishOfMeans);
    const critical = one.activities
      .filter(({ id }) => timeline?.slack.get(idOf(id) as StepId)?.critical)
      .map(({ id }) => id);
    expect(critical).toEqual("critical" in one ? one.critical : one.criticalOfMeans.split("-"));
  });

  it("[PLN2] pert-reliable: the means of the table, and the plan of all that may go badly", () => {
    for (const { id, low, likely, high } of reliable.activities)
      expect([id, (low + 4 * likely + high) / 6]).toEqual([
        id,
        reliable.means[id as keyof typeof reliable.means],
      ]);
    const { timeline } = planOf(outlineOf(reliable.activities, ({ high }) => text(high)));
    expect(minutesOf(timeline?.course.finish ?? null)).toBe(reliable.allHigh);
  });

  it("[PLN5] mc-reliable: mean, spread, quantiles and criticality of ten million other samples", () => {
    const outline = outlineOf(reliable.activities, threePoint);
    const risk = riskOf(outline, N);
    const { sd } = reliable;
    expectWithin(minutesOf(risk.mean), reliable.mean, (4 * sd) / Math.sqrt(N) + 4 * reliable.se_mean);
    expectWithin(minutesOf(risk.sd), sd, 4 * sd * Math.sqrt(0.5 / N));
    for (const [found, share] of [
      [risk.p10, 0.1],
      [risk.p50, 0.5],
      [risk.p90, 0.9],
    ] as const) {
      const expected = reliable.quant[String(share) as keyof typeof reliable.quant];
      // The standard error of a quantile, with the density of a normal distribution of this spread there (at most 8 times less than at its top).
      const density = share === 0.5 ? 0.3989 / sd : 0.1755 / sd;
      expectWithin(
        minutesOf(found),
        expected,
        (4 * Math.sqrt((share * (1 - share)) / N)) / density,
        `${share}`,
      );
    }
    for (const [id, share] of Object.entries(reliable.crit)) {
      const found = risk.criticality.get(idOf(id) as StepId) ?? Number.NaN;
      expectWithin(found, share, ofShare(share), id);
    }
  });

  it.each(Object.entries(reliable.P))("[PLN5] mc-reliable: within %s in %d", (limit, share) => {
    const outline = outlineOf(reliable.activities, threePoint, { limits: { elapsed: text(Number(limit)) } });
    expectWithin(riskOf(outline, N, 3).withinLimit ?? Number.NaN, share, ofShare(share));
  });
});
