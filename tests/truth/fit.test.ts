import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { fitOf, planCase } from "../../src/core/fit/index.ts";
import { searchSets } from "../../src/core/fit/search.ts";
import { outlineOf } from "../../src/core/procedure/index.ts";
import type { Duration, TaskId } from "../../src/core/units/index.ts";
import { procedureOf } from "../core/procedure-builder.ts";

const VALUES = "../shared/check-values/fit.json";

interface Case<Data, Expected> {
  readonly id: string;
  readonly data: Data;
  readonly expected: Expected;
}

const cases: readonly Case<never, never>[] = existsSync(VALUES)
  ? JSON.parse(readFileSync(VALUES, "utf8")).cases
  : [];

const caseOf = <Data, Expected>(id: string) =>
  cases.find((one) => one.id === id) as unknown as Case<Data, Expected>;

const outlineFromFile = (file: unknown) => outlineOf(procedureOf(file));

const MINUTE = 60_000;
const ALL = { chance: null, samples: 100, seed: 1, tries: 100_000 };

/** A lane of fixed order: each task goes to where its steps are, and all are back at the start at the end. */
interface FixedOrder {
  readonly lanes: number;
  readonly travel: readonly (readonly number[])[];
  readonly base: number;
  readonly tasks: readonly {
    readonly id: number;
    readonly unit: number;
    readonly optional: boolean;
    readonly value: number;
  }[];
  readonly steps: readonly {
    readonly id: number;
    readonly task: number;
    readonly dur: number;
    readonly site: number;
    readonly after: readonly number[];
  }[];
  readonly laneOfUnit: readonly number[];
  readonly secondLane: readonly number[];
  readonly limit: number;
}

const minutes = (count: number) => `PT${count}M`;

function fixedOrderFile({ lanes, travel, base, tasks, steps, ...data }: FixedOrder): unknown {
  const lane = (number: number) => `ev${number + 1}`;
  const place = (site: number) => `site-${site}`;
  return {
    format: "tetherline.procedure/2",
    id: "fixed-order",
    title: "Tasks in a fixed order",
    crew: Array.from({ length: lanes }, (_, number) => ({
      id: lane(number),
      call: lane(number).toUpperCase(),
      station: "outside",
      start: place(base),
    })),
    places: travel.map((_, site) => ({ id: place(site), refuge: site === base })),
    routes: travel.flatMap((row, from) =>
      row.flatMap((time, to) =>
        from < to ? [{ between: [place(from), place(to)], length: time, time: minutes(time) }] : [],
      ),
    ),
    tasks: [
      ...tasks.map(({ id, unit, optional, value }) => ({
        id: `task-${id}`,
        title: `Task ${id}`,
        ...(optional ? { priority: "get-ahead", worth: value } : {}),
        steps: steps
          .filter(({ task }) => task === id)
          .flatMap((step, index, all) => {
            const first = data.laneOfUnit[unit] ?? 0;
            const second = data.secondLane[step.id] ?? -1;
            const by = [first, ...(second >= 0 ? [second] : [])].map(lane);
            const goes = index === 0 || all[index - 1]?.site !== step.site;
            return [
              ...(goes
                ? by.map((who) => ({
                    id: `go-${step.id}-${who}`,
                    by: [who],
                    do: "Go there",
                    to: place(step.site),
                  }))
                : []),
              {
                id: `step-${step.id}`,
                by,
                do: "Work",
                time: minutes(step.dur),
                // A get-ahead never waits for another one here ([PRO9]); the best set is the same without that link.
                after: step.after.flatMap((before) => (steps[before]?.task === id ? [`step-${before}`] : [])),
              },
            ];
          }),
      })),
      {
        id: "home",
        title: "Home",
        closeout: true,
        steps: Array.from({ length: lanes }, (_, number) => ({
          id: `home-${number}`,
          by: [lane(number)],
          do: "Go home",
          to: place(base),
        })),
      },
    ],
  };
}

describe.skipIf(cases.length === 0)("what fits, against published and enumerated answers", () => {
  it("[FIT1] finds the set of greatest value where lanes and order are kept (enumerated)", () => {
    const { data, expected } = caseOf<
      FixedOrder,
      { value: number; kept: number[]; finish: number; finishAll: number }
    >("fit-fixed-order");
    const essential = data.tasks.reduce((sum, { optional, value }) => sum + (optional ? 0 : value), 0);
    const fitCase = planCase(outlineFromFile(fixedOrderFile(data)), { outcomes: new Map() });
    const fit = fitOf(fitCase, { ...ALL, limit: (data.limit * MINUTE) as Duration });
    const [best] = fit.sets;
    expect(fit.verdict).toBe("proven");
    expect((best?.worth ?? 0) + essential).toBe(expected.value);
    expect(fit.bound + essential).toBe(expected.value);
    expect(best?.finish).toBe(expected.finish * MINUTE);
    expect(best?.keep).toEqual(
      expected.kept.filter((id) => data.tasks[id]?.optional).map((id) => `task-${id}`),
    );
    const all = fitCase.courseWith(new Set(fitCase.choices.map(({ id }) => id)));
    expect(all?.finish).toBe(expected.finishAll * MINUTE);
  });

  it("[FIT1] fills one lane as a knapsack is filled (Burkardt, KNAPSACK_01 P02)", () => {
    const { data, expected } = caseOf<
      { capacity: number; weights: number[]; values: number[] },
      { value: number }
    >("knapsack-p02");
    const file = {
      format: "tetherline.procedure/2",
      id: "knapsack",
      title: "Knapsack",
      crew: [{ id: "iv", call: "IV", station: "inside" }],
      tasks: data.weights.map((weight, index) => ({
        id: `item-${index}`,
        title: `Item ${index}`,
        priority: "get-ahead",
        worth: data.values[index],
        steps: [{ id: `step-${index}`, by: ["iv"], do: "Work", time: minutes(weight) }],
      })),
    };
    const limit = (data.capacity * MINUTE) as Duration;
    const fit = fitOf(planCase(outlineFromFile(file), { outcomes: new Map() }), { ...ALL, limit });
    expect(fit).toMatchObject({ verdict: "proven", bound: expected.value });
    expect(fit.sets[0]?.worth).toBe(expected.value);
  });

  it("[FIT1] takes the set that meets the limit with the chance asked for, not the one by likely times (all outcomes summed)", () => {
    const { data, expected } = caseOf<
      {
        limit: number;
        p: number;
        tasks: { id: string; lane: number; dur: number[]; essential?: boolean; value: number }[];
        closeout: { dur: number[] };
      },
      {
        kept: string[];
        value: number;
        probability: number;
        nominalBest: { kept: string[]; value: number; probability: number };
      }
    >("fit-risk");
    /** The chances of each length of several steps one after another, each with three lengths. */
    const lengths = (steps: readonly (readonly number[])[]) =>
      steps.reduce<ReadonlyMap<number, number>>(
        (sums, step) => {
          const next = new Map<number, number>();
          for (const [sum, chance] of sums)
            for (const [index, length] of step.entries())
              next.set(sum + length, (next.get(sum + length) ?? 0) + chance * (index === 1 ? 0.5 : 0.25));
          return next;
        },
        new Map([[0, 1]]),
      );
    const works = (kept: ReadonlySet<TaskId>, lane: number) =>
      data.tasks.filter((task) => task.lane === lane && (task.essential || kept.has(task.id as TaskId)));
    const chanceOf = (kept: ReadonlySet<TaskId>) => {
      const [one, two] = [0, 1].map((lane) => lengths(works(kept, lane).map(({ dur }) => dur)));
      let chance = 0;
      for (const [a, p] of one ?? [])
        for (const [b, q] of two ?? [])
          for (const [c, r] of lengths([data.closeout.dur]))
            if (Math.max(a, b) + c <= data.limit) chance += p * q * r;
      return chance;
    };
    const likely = (kept: ReadonlySet<TaskId>) =>
      Math.max(...[0, 1].map((lane) => works(kept, lane).reduce((sum, { dur }) => sum + (dur[1] ?? 0), 0))) +
      (data.closeout.dur[1] ?? 0);
    const choices = data.tasks.filter(({ essential }) => !essential);
    const searched = (fits: (kept: ReadonlySet<TaskId>) => boolean) =>
      searchSets({
        order: choices.map(({ id, value }) => ({ id, worth: value })) as never,
        value: (task) => task.worth ?? 1,
        bound: { beyond: (_, from) => choices.slice(from).reduce((sum, { value }) => sum + value, 0) },
        fits,
        isSound: () => true,
        wanted: 1,
        tries: 1_000,
      });
    const byChance = searched((kept) => chanceOf(kept) >= data.p);
    expect([...(byChance.best[0]?.kept ?? [])].sort()).toEqual(expected.kept);
    expect(byChance).toMatchObject({ isProven: true, bound: expected.value });
    expect(chanceOf(byChance.best[0]?.kept ?? new Set())).toBeCloseTo(expected.probability, 10);
    const byLikely = searched((kept) => likely(kept) <= data.limit);
    expect(byLikely.best[0]?.worth).toBe(expected.nominalBest.value);
    expect(chanceOf(byLikely.best[0]?.kept ?? new Set())).toBeCloseTo(expected.nominalBest.probability, 9);
  });
});
