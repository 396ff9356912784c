import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Observation } from "../../src/core/learn/observation.ts";
import { movedTime } from "../../src/core/learn/proposal.ts";
import {
  bandOf,
  estimateOf,
  halfOf,
  posteriorOf,
  predictiveScale,
  priorOf,
  spreadRatio,
} from "../../src/core/learn/step-model.ts";
import { weighed } from "../../src/core/learn/weigh.ts";
import {
  brier,
  clusteredInterval,
  commonLength,
  commonSlope,
  credibility,
  crps,
  holm,
  incompleteBeta,
  logGamma,
  median,
  medianSpread,
  quantile,
  theilSen,
  tQuantile,
  tShareBelow,
  wilsonInterval,
} from "../../src/core/statistics/index.ts";
import { NO_TIME, ofSeconds } from "../../src/core/units/index.ts";

interface Case<Data, Expected> {
  readonly id: string;
  readonly data: Data;
  readonly expected: Expected;
}

const { cases } = JSON.parse(readFileSync("tests/truth/fixtures/learn.json", "utf8")) as {
  cases: readonly Case<unknown, unknown>[];
};

function caseOf<Data, Expected>(id: string): Case<Data, Expected> {
  const found = cases.find((one) => one.id === id);
  if (!found) throw new RangeError(`no case ${id}`);
  return found as Case<Data, Expected>;
}

/** Within a share of the expected value, and of 1 near zero. */
const near = (actual: number, expected: number, within = 1e-9) =>
  expect(Math.abs(actual - expected), `${actual} for ${expected}`).toBeLessThanOrEqual(
    within * (Math.abs(expected) < 1e-300 ? 1 : Math.abs(expected)),
  );

describe("[LRN2] special functions", () => {
  interface Special {
    readonly lgamma: readonly (readonly [number, number])[];
    readonly betainc_x_a_b: readonly (readonly [number, number, number, number])[];
    readonly tquantile_p_df: readonly (readonly [number, number, number])[];
    readonly tcdf_t_df: readonly (readonly [number, number, number])[];
  }
  const { data } = caseOf<Special, unknown>("special-40digit");

  it("[LRN2] agree with 40 digits", () => {
    for (const [x, value] of data.lgamma)
      expect(Math.abs(logGamma(x) - value)).toBeLessThan(1e-9 * Math.max(1, Math.abs(value)));
    for (const [x, a, b, value] of data.betainc_x_a_b) near(incompleteBeta(x, a, b), value);
    for (const [share, degrees, value] of data.tquantile_p_df) {
      near(tQuantile(share, degrees), value);
      near(tQuantile(1 - share, degrees), -value);
    }
    for (const [t, degrees, value] of data.tcdf_t_df) near(tShareBelow(t, degrees), value);
  });
});

describe("[CMP1] figures of many walks", () => {
  it("[CMP1] quantiles are those of definition 8", () => {
    const { data, expected } = caseOf<{ x: number[]; p: number }, { type: Readonly<Record<string, number>> }>(
      "hf-nine-types",
    );
    near(quantile(data.x, data.p) ?? Number.NaN, expected.type["8"] ?? Number.NaN);
  });

  it("[CMP1] the spread of the rest is not moved by an outlier", () => {
    const { data, expected } = caseOf<{ x: number[] }, { modifiedZlast: number }>("outlier-grubbs");
    const [middle, spread] = [median(data.x) ?? 0, medianSpread(data.x) ?? 1];
    // The published score is 0.6745 of the deviation over the bare median of deviations.
    const score = (0.6745 * 1.4826 * ((data.x.at(-1) ?? 0) - middle)) / spread;
    expect(Math.abs(score - expected.modifiedZlast)).toBeLessThan(0.0006);
  });

  it("[CMP1] probabilities are adjusted for how many are tested", () => {
    const { data, expected } = caseOf<
      { p: number[] },
      { rejectAt10: number; rejectAt05: number; adjustedFirst4: number[] }
    >("holm-bh1995");
    const adjusted = holm(data.p);
    for (const [at, value] of expected.adjustedFirst4.entries()) near(adjusted[at] ?? Number.NaN, value);
    expect(adjusted.filter((p) => p <= 0.1)).toHaveLength(expected.rejectAt10);
    expect(adjusted.filter((p) => p <= 0.05)).toHaveLength(expected.rejectAt05);
  });

  it("[CMP1] the fitness of a lane is that of its longest common subsequence", () => {
    const { data, expected } = caseOf<
      { plan: string; trace: string },
      { lcs: number; cost: number; fitness: number }
    >("lane-alignment-lcs");
    const common = commonLength([...data.plan], [...data.trace]);
    expect(common).toBe(expected.lcs);
    expect(data.plan.length + data.trace.length - 2 * common).toBe(expected.cost);
  });
});

describe("[CMP2] scores of forecasts", () => {
  it("[CMP2] the score of a sample", () => {
    const { data, expected } = caseOf<{ cases: [number[], number][] }, { crps: number[] }>("crps-ensemble");
    for (const [at, [sample, truth]] of data.cases.entries())
      near(crps(sample, truth), expected.crps[at] ?? Number.NaN, 1e-12);
  });

  it("[CMP2] the score of chances", () => {
    const { data, expected } = caseOf<{ p: number[]; o: number[] }, { brier: number }>("brier-sklearn");
    const said = data.p.map((chance, at) => ({ chance, cameTrue: data.o[at] === 1 }));
    near(brier(said) ?? Number.NaN, expected.brier, 1e-12);
  });

  it("[CMP2] clusters of ten, ten of which and six came out so, tell as much as four members by hand", () => {
    // The share is 0.8; (2² + 2²) · 2/20² = 0.04 is its variance among the two, and 0.8 · 0.2/0.04 = 4.
    const by = clusteredInterval([
      { count: 10, of: 10 },
      { count: 6, of: 10 },
    ]);
    expect(by).toEqual(wilsonInterval(3.2, 4));
  });

  it("[CMP2] the interval of a share", () => {
    const { data, expected } = caseOf<{ k_n: [number, number][] }, { wilson: [number, number][] }>(
      "coverage-interval",
    );
    for (const [at, [count, of]] of data.k_n.entries()) {
      const { from, to } = wilsonInterval(count, of);
      near(from, expected.wilson[at]?.[0] ?? Number.NaN);
      near(to, expected.wilson[at]?.[1] ?? Number.NaN);
    }
  });
});

describe("[LRN5] slopes", () => {
  it("[LRN5] the slope that steps have in common, with its error by walk", () => {
    const { data, expected } = caseOf<
      { rows_step_k_logd: [number, number, number][] },
      { b: number; se: number; rate: number }
    >("learning-pooled");
    const groups = [0, 1, 2].map((step) =>
      data.rows_step_k_logd
        .filter(([of]) => of === step)
        .map(([, repeat, y]) => ({ cluster: String(repeat), x: Math.log(repeat), y })),
    );
    const found = commonSlope(groups);
    near(found?.slope ?? Number.NaN, expected.b);
    near(found?.standardError ?? Number.NaN, expected.se);
    near(2 ** (found?.slope ?? Number.NaN), expected.rate);
  });

  it("[LRN5] one walk that is off does not move the slope that checks it", () => {
    const { data, expected } = caseOf<{ x: number[]; y: number[] }, { slope: number }>("theil-helsel");
    expect(theilSen([data.x.map((x, at) => ({ x, y: data.y[at] ?? 0 }))])).toBe(expected.slope);
  });
});

describe("[LRN2] how far the planner is believed", () => {
  it("[LRN2] the variances among groups and within them", () => {
    const { data, expected } = caseOf<
      { x: number[][]; w: number[][] },
      { mean: number; between: number; within: number }
    >("buhlmann-hachemeister");
    const found = credibility(
      data.x.map((row, group) => row.map((value, at) => ({ value, weight: data.w[group]?.[at] ?? 1 }))),
    );
    expect(Math.abs((found?.mean ?? 0) - expected.mean)).toBeLessThan(0.006);
    expect(Math.abs((found?.between ?? 0) - expected.between)).toBeLessThan(0.006);
    expect(Math.abs((found?.within ?? 0) - expected.within)).toBeLessThan(0.006);
  });

  it("[LRN2] the same by another published analysis of variance", () => {
    const { data, expected } = caseOf<
      { groups: Readonly<Record<string, number[]>> },
      { tau2: number; sigma2: number; mean: number }
    >("re-dyestuff");
    const groups = Object.values(data.groups).map((row) => row.map((value) => ({ value, weight: 1 })));
    const found = credibility(groups);
    near(found?.between ?? 0, expected.tau2, 1e-9);
    near(found?.within ?? 0, expected.sigma2, 1e-9);
    near(found?.mean ?? 0, expected.mean, 1e-9);
  });
});

describe("[LRN2] the model of a step", () => {
  interface Model {
    readonly estimate: readonly [number, number, number];
    readonly kappa0: number;
    readonly live: readonly number[];
    readonly rehearsal: readonly number[];
  }
  interface Fitted {
    readonly mu: number;
    readonly kappa: number;
    readonly alpha: number;
    readonly beta: number;
    readonly q10_50_90: readonly number[];
    readonly share: number;
    readonly spread: number;
    readonly proposal: readonly number[];
  }

  it.each(["model-n0", "model-mix"])("[LRN2] [LRN3] %s: belief, band, spread and moved figures", (id) => {
    const { data, expected } = caseOf<Model, Fitted>(id);
    const [low = NO_TIME, likely = NO_TIME, high = NO_TIME] = data.estimate.map((minutes) =>
      ofSeconds(minutes * 60),
    );
    const estimate = estimateOf({ low, likely, high });
    if (!estimate) throw new RangeError("an estimate of no time");
    const prior = priorOf(estimate, data.kappa0);
    const observed = [
      ...data.live.map((minutes) => ({ minutes, mode: "live" })),
      ...data.rehearsal.map((minutes) => ({ minutes, mode: "rehearsal" })),
    ] as unknown as readonly Observation[];
    const belief = posteriorOf(prior, weighed(prior, observed));
    for (const field of ["mu", "kappa", "alpha", "beta"] as const) near(belief[field], expected[field], 1e-8);
    const { p10, p50, p90 } = bandOf(belief);
    for (const [at, value] of [p10, p50, p90].entries()) near(value, expected.q10_50_90[at] ?? 0, 1e-8);
    const ratio = spreadRatio(halfOf(belief), estimate);
    near(ratio, expected.spread, 1e-8);
    const moved = movedTime(belief, ratio, estimate, { low, likely, high });
    for (const [at, value] of [moved.low, moved.likely, moved.high].entries())
      near(value, expected.proposal[at] ?? 0, 1e-8);
    expect(Math.abs((belief.kappa - data.kappa0) / belief.kappa - expected.share)).toBeLessThan(1e-8);
  });

  it("[LRN2] the update of a textbook, and its interval for one more value", () => {
    const { data, expected } = caseOf<
      { y: number[]; prior: { mu0: number; kappa0: number; alpha0: number; beta0: number } },
      { mu: number; kappa: number; alpha: number; betaExact: number; predictive80: [number, number] }
    >("nig-degroot");
    const { mu0, kappa0, alpha0, beta0 } = data.prior;
    const belief = posteriorOf(
      { mu: mu0, kappa: kappa0, alpha: alpha0, beta: beta0 },
      data.y.map((y) => ({ y, weight: 1, isBrokenOff: false })),
    );
    expect(Math.abs(belief.mu - expected.mu)).toBeLessThan(0.005);
    expect(belief.kappa).toBe(expected.kappa);
    expect(belief.alpha).toBe(expected.alpha);
    near(belief.beta, expected.betaExact, 1e-6);
    const half = tQuantile(0.9, 2 * belief.alpha) * predictiveScale(belief);
    near(belief.mu - half, expected.predictive80[0], 1e-6);
    near(belief.mu + half, expected.predictive80[1], 1e-6);
  });

  it("[LRN2] what was broken off counts as in a published fit of survival times, when nothing is believed before", () => {
    const { data, expected } = caseOf<
      { failures: number[]; censoredAt: number; censored: number },
      { muExact: number; sigmaExact: number }
    >("censored-lognormal");
    const belief = posteriorOf({ mu: 0, kappa: 0, alpha: 0, beta: 0 }, [
      ...data.failures.map((time) => ({ y: Math.log(time), weight: 1, isBrokenOff: false })),
      ...Array.from({ length: data.censored }, () => ({
        y: Math.log(data.censoredAt),
        weight: 1,
        isBrokenOff: true,
      })),
    ]);
    expect(Math.abs(belief.mu - expected.muExact)).toBeLessThan(0.000002);
    expect(Math.abs(Math.sqrt(belief.beta / belief.alpha) - expected.sigmaExact)).toBeLessThan(0.000002);
  });

  it("[LRN2] the factor of a predictive interval", () => {
    const { data, expected } = caseOf<{ n: number; level: number }, { factor: number }>("t-predictive-hm");
    const factor = tQuantile((1 + data.level) / 2, data.n - 1) * Math.sqrt(1 + 1 / data.n);
    expect(Math.abs(factor - expected.factor)).toBeLessThan(0.006);
  });
});
