import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Risk } from "../../../src/core/plan/index.ts";
import {
  KeptDraws,
  pertSampler,
  planOf,
  riskModelOf,
  sampleRisk,
  seededSource,
  windowMargins,
} from "../../../src/core/plan/index.ts";
import type { Outline, ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { Duration, StepId } from "../../../src/core/units/index.ts";
import { formatDuration } from "../../../src/core/units/index.ts";
import { forecastRisk, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, outlineFrom, step } from "../procedure-builder.ts";

const MINUTE = 60_000;

function riskOf(outline: Outline, samples: number, seed = 1): Risk {
  return sampleRisk(riskModelOf(planOf(outline)), samples, seed);
}

const threePoint = (low: number, likely: number, high: number) => {
  const text = (minutes: number) => formatDuration(Math.round(minutes * MINUTE) as Duration);
  return { time: { low: text(low), likely: text(likely), high: text(high) } };
};

/** The probability that a duration stays below `x`: the density of the distribution summed up over a hundred thousand cells. */
function below(x: number, low: number, likely: number, high: number): number {
  const a = 1 + (4 * (likely - low)) / (high - low);
  const cells = 100_000;
  let [sum, whole] = [0, 0];
  for (let cell = 0; cell < cells; cell += 1) {
    const at = (cell + 0.5) / cells;
    const mass = at ** (a - 1) * (1 - at) ** (5 - a);
    whole += mass;
    if (low + at * (high - low) < x) sum += mass;
  }
  return sum / whole;
}

const ofShare = (share: number, samples: number) => 4 * Math.sqrt((share * (1 - share)) / samples) + 1e-9;

const CREW = ["ev1", "ev2", "iv"] as const;
const drawnSteps = fc.array(
  fc.record({
    by: fc.subarray([...CREW], { minLength: 1 }),
    minutes: fc.nat({ max: 12 }),
    after: fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.constantFrom(0, 0, 5)), { maxLength: 2 }),
    within: fc.constantFrom<readonly string[]>([], [], [], ["light"], ["light", "contact"]),
  }),
  { minLength: 1, maxLength: 14 },
);

const WINDOWS: ProcedureFile["windows"] = [
  {
    id: "light",
    kind: "listed",
    spans: [
      { from: "PT0M", to: "PT14M" },
      { from: "PT25M", to: "PT40M" },
      { from: "PT50M", to: "P2D" },
    ],
  },
  { id: "contact", kind: "listed", spans: [{ from: "PT33M", to: "P2D" }] },
];

describe("the risk of a plan", () => {
  test.prop([drawnSteps, fc.nat()], { numRuns: 100 })(
    "[PLN5] of fixed durations is the plan: finish, no spread, the critical path",
    (drawn, seed) => {
      const outline = outlineFrom(
        drawn.map(({ by, minutes, after, within }, index) => {
          const links = new Map(
            after.flatMap(([back, lag]) => (index - back < 0 ? [] : [[`s${index - back}`, lag] as const])),
          );
          return step(`s${index}`, by, minutes, {
            after: [...links].map(([id, lag]) => ({ step: id, lag: `PT${lag}M` })),
            within: [...within],
          });
        }),
        { windows: WINDOWS, limits: { elapsed: "PT45M" } },
      );
      const { timeline, margin } = planOf(outline);
      expect(timeline).not.toBeNull();
      if (!timeline) return;
      const risk = riskOf(outline, 5, seed);
      const { finish } = timeline.course;
      expect(risk).toMatchObject({ mean: finish, sd: 0, p10: finish, p50: finish, p90: finish, unfit: 0 });
      expect(risk.withinLimit).toBe((margin ?? 0) >= 0 ? 1 : 0);
      const path = [...risk.criticality].flatMap(([id, share]) => (share > 0 ? [id] : []));
      expect(path.toSorted()).toEqual(timeline.criticalPath.toSorted());
      expect([...risk.criticality.values()].every((share) => share === 0 || share === 1)).toBe(true);
      expect([...risk.influence.values()].every((one) => one === 0)).toBe(true);
    },
  );

  const SPREAD = [
    step("a", "ev1", null, threePoint(5, 8, 20)),
    step("b", "ev2", null, threePoint(9, 10, 11)),
    step("c", ["ev1", "ev2"], null, { ...threePoint(3, 4, 6) }),
  ];

  it("[PLN5] the same seed gives the same figures, another one others", () => {
    const outline = outlineFrom(SPREAD);
    expect(riskOf(outline, 500, 7)).toEqual(riskOf(outline, 500, 7));
    expect(riskOf(outline, 500, 7).mean).not.toBe(riskOf(outline, 500, 8).mean);
    expect(riskOf(outline, 500).withinLimit).toBeNull();
  });

  test.prop([
    fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.nat({ max: 9 })), { minLength: 1, maxLength: 5 }),
  ])(
    "[PLN5] draws that were kept give the figures that new ones give, whatever was edited in between",
    (edits) => {
      const draws = new KeptDraws();
      for (const [likely, spread] of edits) {
        const steps = [
          step("a", "ev1", likely, threePoint(likely, likely + spread, likely + 2 * spread)),
          step("b", "ev2", 5, threePoint(4, 5, 9)),
          ...(spread > 4 ? [step("c", "iv", spread, { after: ["a"] })] : []),
        ];
        const model = riskModelOf(planOf(outlineFrom(steps)));
        expect(sampleRisk(model, 300, likely, { influence: true, draws })).toEqual(
          sampleRisk(model, 300, likely),
        );
      }
    },
  );

  it("[PLN5] agrees with a plan of every sample drawn by the library's beta sampler", () => {
    const outline = outlineFrom(SPREAD);
    const samples = 20_000;
    const { whereabouts } = planOf(outline);
    const sample = pertSampler(seededSource(5));
    const finishes = Array.from({ length: samples }, () => {
      const [a = 0, b = 0, c = 0] = whereabouts.times.map(sample);
      return Math.max(a, b) + c;
    });
    const mean = finishes.reduce((sum, one) => sum + one, 0) / samples;
    const sd = Math.sqrt(finishes.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (samples - 1));
    const risk = riskOf(outline, samples);
    expect(Math.abs((risk.mean ?? 0) - mean)).toBeLessThan((4 * Math.SQRT2 * sd) / Math.sqrt(samples));
    expect(Math.abs((risk.sd ?? 0) / sd - 1)).toBeLessThan(0.03);
  });

  it("[PLN5] the step whose spread is widest moves the finish most", () => {
    const outline = outlineFrom([
      step("narrow", "ev1", null, threePoint(9, 10, 11)),
      step("wide", "ev1", null, threePoint(5, 10, 30)),
      step("beside", "ev2", null, threePoint(1, 2, 3)),
      step("fixed", "iv", 1),
    ]);
    const { influence } = riskOf(outline, 2000);
    const [narrow = 0, wide = 0, beside = 1, fixed] = ["narrow", "wide", "beside", "fixed"].map((id) =>
      influence.get(id as StepId),
    );
    expect(wide).toBeGreaterThan(0.95);
    expect(narrow).toBeLessThan(0.3);
    expect(Math.abs(beside)).toBeLessThan(0.1);
    expect(fixed).toBe(0);
  });
});

/** `a` takes 49, 50 or 52 min; then `b`, 20 min, must end by 70 min, else it waits until 300 min. */
const windowed = (low: number, likely: number, high: number, spans: [string, string][], more = {}) =>
  outlineFrom(
    [
      step("a", "ev1", null, threePoint(low, likely, high)),
      step("b", "ev1", 20, { within: ["w"] }),
      step("c", "ev1", 10),
    ],
    { windows: [{ id: "w", kind: "listed", spans: spans.map(([from, to]) => ({ from, to })) }], ...more },
  );
const BOTH: [string, string][] = [
  ["PT0M", "PT70M"],
  ["PT300M", "PT400M"],
];

describe("risk and windows", () => {
  const samples = 20_000;

  it("[PLN5] a window just met or just missed is a step in the finish", () => {
    expect(riskOf(windowed(50, 50, 50, BOTH), 10).mean).toBe(80 * MINUTE);
    expect(riskOf(windowed(51, 51, 51, BOTH), 10).mean).toBe(330 * MINUTE);
    const met = below(50, 49, 50, 52);
    const outline = windowed(49, 50, 52, BOTH, { limits: { elapsed: "PT100M" } });
    const risk = riskOf(outline, samples);
    expect(Math.abs((risk.withinLimit ?? 0) - met)).toBeLessThan(ofShare(met, samples) + 0.001);
    expect(risk.p90).toBe(330 * MINUTE);
    expect(risk.p10 ?? 0).toBeLessThanOrEqual(80 * MINUTE);
    // Where the window binds, the path begins with the step it binds.
    const [a, b, c] = risk.criticality.values();
    expect(a).toBe(risk.withinLimit);
    expect([b, c]).toEqual([1, 1]);
  });

  it("[PLN5] the rank correlation counts equal finishes as equal", () => {
    const met = below(50, 49, 50, 52);
    // Two finishes only: met, then held until the window of `c` opens, or missed.
    const outline = outlineFrom(
      [
        step("a", "ev1", null, threePoint(49, 50, 52)),
        step("b", "ev1", 20, { within: ["w"] }),
        step("c", "ev1", 10, { within: ["late"] }),
      ],
      {
        windows: [
          { id: "w", kind: "listed", spans: BOTH.map(([from, to]) => ({ from, to })) },
          {
            id: "late",
            kind: "listed",
            spans: [
              { from: "PT100M", to: "PT200M" },
              { from: "PT350M", to: "PT400M" },
            ],
          },
        ],
      },
    );
    // Spearman with mean ranks of a rising function with two values, reached with the shares p and 1 − p: √(3p(1 − p)).
    const [influence = 0] = riskOf(outline, 1000).influence.values();
    expect(Math.abs(influence - Math.sqrt(3 * met * (1 - met)))).toBeLessThan(0.02);
  });

  it("[PLN5] samples without a fitting span are counted as such, and as not within the limit", () => {
    const met = below(50, 49, 50, 52);
    const outline = windowed(49, 50, 52, BOTH.slice(0, 1), { limits: { elapsed: "PT100M" } });
    const risk = riskOf(outline, samples);
    expect(Math.abs(risk.unfit - (1 - met))).toBeLessThan(ofShare(met, samples) + 0.001);
    expect(risk.withinLimit).toBeCloseTo(1 - risk.unfit, 12);
    expect([...risk.criticality.values()]).toEqual([1, 1, 1]);
    expect([...risk.missed.steps]).toEqual([["b", risk.unfit]]);
    expect([...risk.missed.windows]).toEqual([["w", risk.unfit]]);
    const none = riskOf(windowed(51, 52, 53, BOTH.slice(0, 1), { limits: { elapsed: "PT100M" } }), 50);
    expect(none).toMatchObject({
      mean: null,
      sd: null,
      p10: null,
      p50: null,
      p90: null,
      withinLimit: 0,
      unfit: 1,
    });
    expect([...none.criticality.values()]).toEqual([0, 0, 0]);
  });
});

describe("percentiles of all samples", () => {
  it("[PLN5] are none among the samples that fit no window", () => {
    // More than a tenth and less than a half of the samples miss.
    const met = below(50, 49, 50, 52);
    const risk = riskOf(windowed(49, 50, 52, BOTH.slice(0, 1)), 4000);
    expect(met).toBeGreaterThan(0.2);
    expect(met).toBeLessThan(0.5);
    expect(risk.p10 ?? 0).toBeGreaterThan(79 * MINUTE);
    expect(risk.p50).toBeNull();
    expect(risk.p90).toBeNull();
    expect(risk.mean ?? 0).toBeLessThanOrEqual(80 * MINUTE);
  });

  it("[PLN5] what is missed is counted for each step and window, once a sample", () => {
    const shut: ProcedureFile["windows"] = ["w", "v"].map((id) => ({
      id,
      kind: "listed",
      spans: [{ from: "PT0M", to: "PT10M" }],
    }));
    const outline = outlineFrom(
      [
        step("a", "ev1", 9),
        step("b", "ev1", 2, { within: ["w"] }),
        step("behind", "ev1", 1, { within: ["w"] }),
        step("beside", "ev2", 1, { within: ["w"] }),
        step("other", "iv", 11, { within: ["w", "v"] }),
      ],
      { windows: shut },
    );
    const { timeline, network, whereabouts, windows } = planOf(outline);
    expect(timeline).toBeNull();
    const risk = sampleRisk(riskModelOf({ network, whereabouts, windows }), 40, 1);
    expect(risk.unfit).toBe(1);
    expect(Object.fromEntries(risk.missed.steps)).toEqual({ b: 1, other: 1 });
    expect(Object.fromEntries(risk.missed.windows)).toEqual({ w: 1, v: 1 });
  });

  test.prop([fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 9 }), fc.nat({ max: 99 })])(
    "[PLN5] are those of a list in which every sample that fits none comes last",
    (samples, late, seed) => {
      const risk = riskOf(windowed(49, 50 + late / 5, 52, BOTH.slice(0, 1)), samples, seed);
      const complete = Math.round((1 - risk.unfit) * samples);
      for (const [share, value] of [
        [0.1, risk.p10],
        [0.5, risk.p50],
        [0.9, risk.p90],
      ] as const) {
        expect(value === null).toBe(Math.ceil((samples - 1) * share) >= complete);
      }
    },
  );
});

describe("window margins", () => {
  it("[PLN5] are how much later the tightest step of a window could start and still lie in its span", () => {
    const outline = outlineFrom(
      [
        step("a", "ev1", 5, { within: ["w"] }),
        step("b", "ev2", 8, { within: ["w", "v"] }),
        step("c", "iv", 3),
      ],
      {
        windows: [
          { id: "v", kind: "listed", spans: [{ from: "PT30M", to: "PT60M" }] },
          {
            id: "w",
            kind: "listed",
            spans: [
              { from: "PT0M", to: "PT9M" },
              { from: "PT20M", to: "PT39M" },
            ],
          },
          { id: "none", kind: "listed", spans: [] },
        ],
      },
    );
    const { timeline, windows } = planOf(outline);
    const margins = windowMargins(
      outline,
      windows,
      ({ step: { id } }) => timeline?.course.steps.get(id) ?? null,
    );
    expect(margins).toEqual([
      { window: "v", step: "b", margin: 22 * MINUTE },
      { window: "w", step: "b", margin: 1 * MINUTE },
    ]);
  });
});

describe("the risk of the rest of a walk", () => {
  const STEPS = [
    step("a", "ev1", null, threePoint(10, 12, 30)),
    step("b", "ev1", null, threePoint(4, 5, 9)),
    step("c", "ev2", 15),
  ];
  const file = fileWith(STEPS, { limits: { elapsed: "PT30M" } });
  const outline = outlineFrom(STEPS, { limits: { elapsed: "PT30M" } });
  const stateAt = (log: LogWriter, at: number) => walkStateAt(log.ledger, minute(at));

  it("[FOR2] before anything has passed it is the risk of the plan", () => {
    expect(forecastRisk(stateAt(LogWriter.opened(file), 0), 500, 3)).toEqual(riskOf(outline, 500, 3));
    expect(forecastRisk(stateAt(LogWriter.started(file), 0), 500, 3)).toEqual(riskOf(outline, 500, 3));
  });

  // Long in its range, and in the last hundredth of it: where the density has but a tail.
  it.each([
    [11, 10, 12, 30],
    [18, 10, 12, 30],
    [26, 10, 12, 30],
    [26, 10, 10, 30],
    [28.5, 10, 10, 30],
    [29, 10, 29, 30],
    [10.2, 10, 10, 30],
  ])(
    "[FOR2] a step in work for %d min, of %d to %d to %d: as the samples that last longer",
    (passed, ...time) => {
      const [low, likely, high] = time;
      const one = fileWith([step("a", "ev1", null, threePoint(low, likely, high))]);
      const risk = forecastRisk(stateAt(LogWriter.started(one), passed), 8000, 2);
      // What remains of the distribution, summed up directly: its mean and its median.
      const a = 1 + (4 * (likely - low)) / (high - low);
      const cells = 200_000;
      const masses = Array.from({ length: cells }, (_, cell) => {
        const at = (cell + 0.5) / cells;
        const x = low + at * (high - low);
        return [x, x > passed ? at ** (a - 1) * (1 - at) ** (5 - a) : 0] as const;
      });
      const whole = masses.reduce((sum, [, mass]) => sum + mass, 0);
      const mean = masses.reduce((sum, [x, mass]) => sum + x * mass, 0) / whole;
      const sd = Math.sqrt(masses.reduce((sum, [x, mass]) => sum + (x - mean) ** 2 * mass, 0) / whole);
      // Four standard errors, and the thousandth of the range to which the tables are good.
      const slack = (4 * sd) / Math.sqrt(8000) + 0.001 * (high - low);
      expect(Math.abs((risk?.mean ?? 0) / MINUTE - mean), `mean ${mean}`).toBeLessThan(slack);
      expect(Math.abs((risk?.sd ?? 0) / MINUTE - sd), `sd ${sd}`).toBeLessThan(
        0.05 * sd + 0.001 * (high - low),
      );
      expect((risk?.p10 ?? 0) / MINUTE).toBeGreaterThanOrEqual(passed);
    },
  );

  it("[FOR2] agrees with drawing until a sample lasts longer, what comes behind included", () => {
    const samples = 8000;
    const sample = pertSampler(seededSource(11));
    const { whereabouts } = planOf(outline);
    const [timeA, timeB] = whereabouts.times;
    if (!timeA || !timeB) throw new Error("there are two");
    const finishes = Array.from({ length: samples }, () => {
      let a = 0;
      while (a <= 14 * MINUTE) a = sample(timeA);
      return a + sample(timeB);
    });
    const risk = forecastRisk(stateAt(LogWriter.started(file), 14), samples, 4);
    const mean = finishes.reduce((sum, one) => sum + one, 0) / samples;
    const sd = Math.sqrt(finishes.reduce((sum, one) => sum + (one - mean) ** 2, 0) / samples);
    expect(Math.abs((risk?.mean ?? 0) - mean)).toBeLessThan(
      (4 * Math.SQRT2 * sd) / Math.sqrt(samples) + 0.001 * 20 * MINUTE,
    );
    const within = finishes.filter((one) => one <= 30 * MINUTE).length / samples;
    expect(Math.abs((risk?.withinLimit ?? 0) - within)).toBeLessThan(1.5 * ofShare(within, samples));
  });

  it("[FOR2] a step in work beyond its longest is over now; what is to come starts now at the earliest", () => {
    const late = forecastRisk(stateAt(LogWriter.started(file), 40), 2000, 1);
    expect(late?.p10 ?? 0).toBeGreaterThan(44 * MINUTE);
    expect(late?.p90 ?? 0).toBeLessThan(49 * MINUTE);
    expect(late?.withinLimit).toBe(0);
  });

  it("[FOR2] what is done keeps its times: a walk all done has no spread", () => {
    const log = LogWriter.started(file).done(["a", 13], ["c", 16], ["b", 21]);
    const risk = forecastRisk(stateAt(log, 25), 100, 1);
    const finish = 21 * MINUTE;
    expect(risk).toMatchObject({ mean: finish, sd: 0, p10: finish, p90: finish, withinLimit: 1, unfit: 0 });
    expect([...(risk?.influence.values() ?? [1])].every((one) => one === 0)).toBe(true);
    expect(risk?.criticality.get("b" as StepId)).toBe(1);
  });
});
