import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { beliefsWithout, posteriorOf } from "../../../src/core/learn/step-model.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { fileWith, step } from "../procedure-builder.ts";
import { flownIn, learned, ofStep, timeOf, twoSteps, walkOf } from "./observed-walks.ts";

const walksOf = (
  times: readonly number[],
  mode: "live" | "rehearsal" = "live",
): readonly (readonly Entry[])[] => times.map((time, at) => flownIn(`${mode}-${at}`, [time, 10], { mode }));

const likelyOf = (file: ProcedureFile, id: string) =>
  file.tasks.flatMap(({ steps }) => steps).find((one) => one.id === id);

const minutes = fc.double({ min: 0.2, max: 60, noNaN: true });
const severalTimes = fc.array(minutes, { minLength: 1, maxLength: 8 });

describe("what walks tell of a step", () => {
  it("[LRN2] [LRN3] without evidence it is the planner's, digit for digit, and nothing is offered", () => {
    const { steps, learning, plannerWeight } = learned([]);
    expect(plannerWeight).toBe(1);
    expect(learning).toBeNull();
    expect(steps.map(({ moved, offer, weight }) => ({ moved, offer, weight }))).toMatchObject([
      { offer: "no-evidence", weight: 0 },
      { offer: "no-evidence", weight: 0 },
    ]);
    const [turn] = steps;
    expect(turn?.moved.low).toBeCloseTo(2, 12);
    expect(turn?.moved.likely).toBeCloseTo(3, 12);
    expect(turn?.moved.high).toBeCloseTo(6, 12);
    expect(turn?.band).toEqual(turn?.plannedBand);
  });

  it("[LRN2] all rehearsals together weigh less than one live walk, and a live walk weighs 1", () => {
    const { weight, observations } = ofStep(
      learned([...walksOf([3.2, 3.1, 3.3], "rehearsal"), ...walksOf([3.2])]),
      "turn",
    );
    expect(observations.map(({ mode, weight: own }) => [mode, own])).toEqual([
      ["live", 1],
      ["rehearsal", 0.25],
      ["rehearsal", 0.25],
      ["rehearsal", 0.25],
    ]);
    expect(weight).toBe(1.75);
  });

  it("[LRN2] one that is far off what the others say weighs less, and is not left out", () => {
    const step = ofStep(learned(walksOf([3, 3.1, 2.9, 3, 3.1, 60])), "turn");
    const far = step.observations.at(-1);
    expect(far).toMatchObject({ isOutlier: true });
    expect(far?.weight).toBeCloseTo(3 / Math.abs(far?.off ?? 0), 12);
    expect(step.observations.filter(({ isOutlier }) => isOutlier)).toHaveLength(1);
    expect(step.weight).toBeLessThan(6);
    expect(step.weight).toBeGreaterThan(5);
  });

  it("[LRN2] what was broken off moves the belief up when it was long, and hardly when it was short", () => {
    const brokenAt = (at: number) =>
      walkOf("broken").enter("walk.closed", { end: "terminated", reason: "late" }, at).entries;
    const { mu } = ofStep(learned([]), "turn").belief;
    expect(ofStep(learned([brokenAt(9)]), "turn").observations).toMatchObject([{ isBrokenOff: true }]);
    expect(ofStep(learned([brokenAt(9)]), "turn").belief.mu).toBeGreaterThan(mu + 0.2);
    expect(ofStep(learned([brokenAt(0.2)]), "turn").belief.mu).toBeGreaterThan(mu - 0.001);
    expect(ofStep(learned([brokenAt(0.2)]), "turn").observations[0]?.isOutlier).toBe(false);
  });

  it("[LRN2] from 20 steps with evidence on the walks tell how far the planner's figures hold", () => {
    const many = (count: number) =>
      fileWith(Array.from({ length: count }, (_, at) => step(`s${at}`, "ev1", null, timeOf(6, 8, 12))));
    const flown = (count: number, of: (index: number, walk: number) => number) => {
      const file = many(count);
      const logs = [0, 1, 2].map((walk) =>
        flownIn(
          `w${walk}`,
          Array.from({ length: count }, (_, index) => of(index, walk)),
          { file },
        ),
      );
      return learned(logs, file).plannerWeight;
    };
    const far = (index: number, walk: number) => (index % 2 === 0 ? 4 : 16) + walk * 0.01;
    expect(flown(19, far)).toBe(1);
    // Each walk agrees with the others, and none with the plan: the plan counts for as little as it may.
    expect(flown(20, far)).toBe(0.5);
    // The steps differ by less than the walks of one step do: the plan counts for as much as it may.
    expect(flown(20, (_, walk) => 6 + 3 * walk)).toBe(8);
  });

  it("[LRN2] a step that was never done twice says nothing of how far the plan holds", () => {
    const file = fileWith(Array.from({ length: 20 }, (_, at) => step(`s${at}`, "ev1", 8)));
    const log = flownIn(
      "w",
      Array.from({ length: 20 }, (_, at) => 6 + at),
      { file },
    );
    expect(learned([log], file).plannerWeight).toBe(1);
  });

  test.prop([severalTimes, severalTimes, fc.integer()])(
    "[LRN2] the order of the logs changes nothing",
    (live, rehearsed, seed) => {
      const logs = [...walksOf(live), ...walksOf(rehearsed, "rehearsal")];
      const turned = logs.toSorted((a, b) => hash(a, seed) - hash(b, seed));
      const figures = (of: readonly (readonly Entry[])[]) =>
        learned(of).steps.map(({ belief, moved, offer }) => ({ belief, moved, offer }));
      expect(figures(turned)).toEqual(figures(logs));
    },
  );

  const hash = ([first]: readonly Entry[], seed: number) =>
    [...(first?.walk ?? "")].reduce((sum, letter) => Math.imul(sum ^ letter.charCodeAt(0), 0x01000193), seed);

  test.prop([fc.double({ min: 2.2, max: 5, noNaN: true }), fc.integer({ min: 1, max: 8 })])(
    "[LRN2] twice the evidence that agrees never widens the band",
    (time, count) => {
      const near = (times: number) => Array.from({ length: times }, (_, at) => time * (1 + (at % 2) * 0.01));
      const ratio = (times: number) => {
        const { p10, p90 } = ofStep(learned(walksOf(near(times))), "turn").band;
        return p90 / p10;
      };
      expect(ratio(2 * count)).toBeLessThanOrEqual(ratio(count) * (1 + 1e-9));
    },
  );

  test.prop([
    fc.double({ min: 2, max: 6, noNaN: true }),
    fc.integer({ min: 1, max: 12 }),
    fc.double({ min: 2, max: 6, noNaN: true }),
  ])(
    "[LRN2] rehearsals together never move the mean as far as one live walk would",
    (rehearsed, count, live) => {
      const { mu: before } = ofStep(learned([]), "turn").belief;
      const many = ofStep(
        learned(
          walksOf(
            Array.from({ length: count }, () => rehearsed),
            "rehearsal",
          ),
        ),
        "turn",
      );
      const one = ofStep(learned(walksOf([rehearsed])), "turn");
      fc.pre(one.observations.every(({ isOutlier }) => !isOutlier));
      expect(Math.abs(many.belief.mu - before)).toBeLessThanOrEqual(Math.abs(one.belief.mu - before) + 1e-12);
      const both = ofStep(
        learned([
          ...walksOf(
            Array.from({ length: count }, () => rehearsed),
            "rehearsal",
          ),
          ...walksOf([live]),
        ]),
        "turn",
      );
      const weight = (mode: string) =>
        both.observations.reduce((sum, own) => sum + (own.mode === mode ? own.weight : 0), 0);
      expect(weight("rehearsal")).toBeLessThan(1);
    },
  );

  test.prop([severalTimes])("[LRN3] what is moved keeps low, likely and high in order", (times) => {
    for (const { moved } of learned(walksOf(times)).steps) {
      expect(moved.low).toBeLessThanOrEqual(moved.likely);
      expect(moved.likely).toBeLessThanOrEqual(moved.high);
    }
  });
});

describe("what is offered", () => {
  const offer = (times: readonly number[]) => ofStep(learned(walksOf(times)), "turn").offer;

  it.each([
    ["one-walk", [5]],
    ["offered", [4.5, 4.6]],
    ["hardly-moved", [3.1, 3.2]],
    ["disagree", [0.6, 9, 25]],
  ])("[LRN3] %s after walks of %j min", (expected, times) => {
    expect(offer(times)).toBe(expected);
  });

  it("[LRN3] a tenth of a short step is not enough: it takes half a minute", () => {
    const file = fileWith([step("turn", "ev1", null, timeOf(1, 1.5, 2.5)), step("stow", "ev1", 10)]);
    const logs = [1.9, 1.95].map((time, at) => flownIn(`w${at}`, [time, 10], { file }));
    const { moved, offer: made } = ofStep(learned(logs, file), "turn");
    expect(moved.likely / 1.5).toBeGreaterThan(1.1);
    expect(made).toBe("hardly-moved");
  });

  it("[LRN4] thin is what fewer than three walks tell, or what weighs less than two", () => {
    const thin = (live: number, rehearsed: number) =>
      ofStep(
        learned([
          ...walksOf(
            Array.from({ length: live }, () => 3),
            "live",
          ),
          ...walksOf(
            Array.from({ length: rehearsed }, () => 3),
            "rehearsal",
          ),
        ]),
        "turn",
      ).isThin;
    expect([thin(2, 0), thin(3, 0), thin(1, 9), thin(2, 1), thin(0, 9)]).toEqual([
      true,
      false,
      true,
      false,
      true,
    ]);
  });

  it("[LRN4] what rehearsals alone tell is said to be from rehearsals alone", () => {
    const rehearsed = ofStep(learned(walksOf([4, 4, 4], "rehearsal")), "turn");
    expect(rehearsed.isRehearsedOnly).toBe(true);
    expect(ofStep(learned([...walksOf([4], "rehearsal"), ...walksOf([4])]), "turn").isRehearsedOnly).toBe(
      false,
    );
    expect(ofStep(learned([]), "turn").isRehearsedOnly).toBe(false);
  });
});

describe("steps of other revisions", () => {
  const flownOtherwise = (more: object) => {
    const file = twoSteps();
    const old = likelyOf(file, "turn");
    if (!old) throw new RangeError("no step");
    Object.assign(old, more);
    return learned([flownIn("w", [4, 10], { file })]);
  };

  it("[LRN6] are the same by their id, whatever their text and times say", () => {
    const { steps, unmatched } = flownOtherwise({ do: "Turn it twice", ...timeOf(1, 1, 1) });
    expect(steps[0]?.observations).toHaveLength(1);
    expect(unmatched).toEqual([]);
  });

  it("[LRN6] start afresh with other performers", () => {
    const { steps, unmatched } = flownOtherwise({ by: ["ev2"] });
    expect(steps[0]?.observations).toEqual([]);
    expect(unmatched.map(({ entry }) => entry.step.id)).toEqual(["turn"]);
  });

  it("[LRN6] start afresh when they move other items", () => {
    const items = [{ id: "wrench", start: { crew: "ev1" } }];
    const file = twoSteps();
    Object.assign(file, { items });
    const old = likelyOf(file, "turn");
    Object.assign(old ?? {}, { moves: [{ item: "wrench", to: { crew: "iv" } }] });
    expect(learned([flownIn("w", [4, 10], { file })]).unmatched.map(({ entry }) => entry.step.id)).toEqual([
      "turn",
    ]);
  });
});

describe("the learning curve", () => {
  /** Rehearsals that begin an hour after one another would need other clocks: their ids settle which is first. */
  const repeats = (times: readonly number[], mode: "live" | "rehearsal" = "rehearsal") =>
    learned(times.map((time, at) => flownIn(`r${at}`, [time, 2 * time], { mode }))).learning;

  it("[LRN5] a fifth less with every doubling is found, and claimed from four walks on", () => {
    const times = [1, 2, 3, 4, 5, 6].map(
      (repeat) => 10 * repeat ** Math.log2(0.8) * (1 + 0.005 * (-1) ** repeat),
    );
    const curve = repeats(times);
    expect(curve).toMatchObject({ walks: 6, steps: 2, isClaimed: true });
    expect(curve?.rate).toBeCloseTo(0.8, 1);
    expect(repeats(times.slice(0, 3))).toMatchObject({ walks: 3, isClaimed: false });
  });

  it("[LRN5] a slope that chance may make is not claimed", () => {
    expect(repeats([5, 6, 5.5, 5.2, 6.1])).toMatchObject({ isClaimed: false });
  });

  it("[LRN5] live walks, and a single rehearsal, have none", () => {
    expect(repeats([5, 4, 3, 2], "live")).toBeNull();
    expect(repeats([5])).toBeNull();
  });
});

describe("the belief without one observation", () => {
  test.prop([
    fc.array(
      fc.tuple(fc.double({ min: -2, max: 4, noNaN: true }), fc.double({ min: 0.05, max: 1, noNaN: true })),
      { minLength: 1, maxLength: 12 },
    ),
  ])("[LRN2] is the belief after the others", (drawn) => {
    const prior = { mu: 1, kappa: 1, alpha: 2, beta: 0.05 };
    const logs = drawn.map(([y, weight]) => ({ y, weight, isBrokenOff: false }));
    for (const [at, belief] of beliefsWithout(prior, logs).entries()) {
      const others = posteriorOf(
        prior,
        logs.filter((_, other) => other !== at),
      );
      for (const field of ["mu", "kappa", "alpha", "beta"] as const)
        expect(belief[field]).toBeCloseTo(others[field], 9);
    }
  });
});
