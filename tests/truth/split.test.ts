import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { loadSolver } from "../../src/cli/load-solver.ts";
import { outlineOf } from "../../src/core/procedure/index.ts";
import type { SplitAnswer, SplitOptions } from "../../src/core/split/index.ts";
import { splitCase, splitOf } from "../../src/core/split/index.ts";
import { procedureOf } from "../core/procedure-builder.ts";

const VALUES = "../shared/check-values/fit.json";

interface Case {
  readonly id: string;
  readonly data: never;
  readonly expected: never;
}

const cases: readonly Case[] = existsSync(VALUES) ? JSON.parse(readFileSync(VALUES, "utf8")).cases : [];

const caseOf = <Data, Expected>(id: string) => {
  const found = cases.find((one) => one.id === id);
  return { data: found?.data as Data, expected: found?.expected as Expected };
};

const SECONDS = 1_000;
const ALL: SplitOptions = { tries: 20_000, seed: 1, parts: 200_000 };

/** No part is looked at by the first proof, so that the second one shows everything. */
const BY_PROGRAM: SplitOptions = {
  ...ALL,
  parts: 0,
  second: { solver: await loadSolver(), nodes: 2_000 },
};

/** One operation that may be done in one of several lanes. */
interface Operation {
  readonly id: string;
  readonly lanes: readonly { readonly lane: number; readonly time: number }[];
  readonly after: readonly string[];
}

const seconds = (count: number) => `PT${count}S`;

/** The operations in an order in which none stands before one that it waits for: a file in any other could not be planned. */
function inOrder(operations: readonly Operation[]): readonly Operation[] {
  const done = new Set<string>();
  const sorted: Operation[] = [];
  while (sorted.length < operations.length)
    for (const one of operations)
      if (!done.has(one.id) && one.after.every((id) => done.has(id))) {
        done.add(one.id);
        sorted.push(one);
      }
  return sorted;
}

/** Each operation is a task of its own, free in its place. */
function fileOf(lanes: number, operations: readonly Operation[]): unknown {
  return {
    format: "tetherline.procedure/2",
    id: "shop",
    title: "Shop",
    crew: Array.from({ length: lanes }, (_, lane) => ({
      id: `lane-${lane}`,
      call: `Lane ${lane}`,
      station: "inside",
    })),
    tasks: inOrder(operations).map(({ id, lanes: [first, ...others], after }) => ({
      id: `task-${id}`,
      title: `Task ${id}`,
      order: "free",
      steps: [
        {
          id,
          by: [`lane-${first?.lane}`],
          do: "Work",
          time: seconds(first?.time ?? 0),
          after,
          or: others.map(({ lane, time }) => ({ by: [`lane-${lane}`], time: seconds(time) })),
        },
      ],
    })),
  };
}

function answerTo(file: unknown, options: SplitOptions = ALL): SplitAnswer {
  const procedure = procedureOf(file);
  return splitOf(
    splitCase({ file: file as never, outline: outlineOf(procedure) }, { start: null, light: null }),
    options,
  );
}

/** What an optimum asks of an answer: the bound is no later, and the finish no earlier. The tolerance is in ms. */
function holds({ bound, finish }: SplitAnswer, optimum: number, tolerance = 0): void {
  expect(bound).toBeLessThanOrEqual(optimum * SECONDS + tolerance);
  expect(finish).toBeGreaterThanOrEqual(optimum * SECONDS - tolerance);
}

/** The optimum is found and proven, and no bound before the proof is later than it. */
function provesBest(file: unknown, optimum: number): void {
  holds(answerTo(file, { ...ALL, tries: 100, parts: 0 }), optimum);
  const answer = answerTo(file);
  expect(answer).toMatchObject({ finish: optimum * SECONDS, bound: optimum * SECONDS, isProven: true });
}

interface Shop {
  readonly machines: number;
  readonly jobs: readonly (readonly { readonly machine: number; readonly dur: number }[])[];
}

interface FlexibleShop {
  readonly machines: number;
  readonly jobs: readonly (readonly (readonly { readonly machine: number; readonly dur: number }[])[])[];
}

const operationsOf = ({ jobs }: FlexibleShop): readonly Operation[] =>
  jobs.flatMap((job, number) =>
    job.map((modes, position) => ({
      id: `job-${number}-${position}`,
      lanes: modes.map(({ machine, dur }) => ({ lane: machine, time: dur })),
      after: position === 0 ? [] : [`job-${number}-${position - 1}`],
    })),
  );

const flexible = ({ machines, jobs }: Shop): FlexibleShop => ({
  machines,
  jobs: jobs.map((job) => job.map((one) => [one])),
});

interface Travelling {
  readonly travel: readonly (readonly number[])[];
  readonly windows: readonly (readonly [number, number])[];
}

const place = (site: number) => `site-${site}`;

const routesOf = (time: (from: number, to: number) => number, count: number) =>
  Array.from({ length: count }, (_, from) => from).flatMap((from) =>
    Array.from({ length: count }, (_, to) => to).flatMap((to) =>
      from < to ? [{ between: [place(from), place(to)], length: 1, time: seconds(time(from, to)) }] : [],
    ),
  );

/** One person who works so long at each place in its window, and comes back. */
function roundFile({ travel, windows }: Travelling, service: number): unknown {
  // The time of the work is in the way from a place, except from the first.
  const time = (from: number, to: number) => Number(((travel[to]?.[from] ?? 0) - 10).toFixed(4));
  const homeward = (from: number, to: number) => (from === 0 ? (travel[0]?.[to] ?? 0) : time(from, to));
  // In the order in which the windows close: a file that misses one could not be planned.
  const written = [...windows.keys()]
    .slice(1)
    .sort((a, b) => (windows[a]?.[1] ?? 0) - (windows[b]?.[1] ?? 0));
  return {
    format: "tetherline.procedure/2",
    id: "round",
    title: "Round",
    crew: [{ id: "ev1", call: "EV1", station: "outside", start: place(0) }],
    places: travel.map((_, site) => ({ id: place(site), refuge: site === 0 })),
    routes: routesOf(homeward, travel.length),
    windows: windows.map(([from, to], site) => ({
      id: `window-${site}`,
      kind: "listed",
      spans: [{ from: seconds(from), to: seconds(to + service) }],
    })),
    tasks: [
      ...written.map((site) => ({
        id: `task-${site}`,
        title: "Work",
        order: "free",
        steps: [
          { id: `go-${site}`, by: ["ev1"], do: "Go there", to: place(site) },
          {
            id: `work-${site}`,
            by: ["ev1"],
            do: "Work",
            at: place(site),
            time: seconds(service),
            within: [`window-${site}`],
          },
        ],
      })),
      {
        id: "home",
        title: "Home",
        closeout: true,
        steps: [{ id: "home", by: ["ev1"], do: "Go home", to: place(0) }],
      },
    ],
  };
}

interface Units {
  readonly lanes: number;
  readonly travel: readonly (readonly number[])[];
  readonly units: readonly { readonly lanes: number }[];
  readonly tasks: readonly { readonly id: number; readonly unit: number }[];
  readonly steps: readonly {
    readonly id: number;
    readonly task: number;
    readonly dur: number;
    readonly site: number;
    readonly lanesNeeded: number;
    readonly after: readonly number[];
    readonly windows: readonly (readonly [number, number])[] | null;
  }[];
}

/** Units of tasks, each with a kit that one person keeps from the start to the end. */
function unitsFile({ lanes, travel, units, tasks, steps }: Units): unknown {
  const crew = Array.from({ length: lanes }, (_, lane) => `ev${lane + 1}`);
  const mayBe = (unit: number) => crew.filter((_, lane) => ((units[unit]?.lanes ?? 0) >> lane) & 1);
  const kept = (unit: number, to: object) => [{ item: `kit-${unit}`, to }];
  const [base] = [place(0)];
  const hand = (unit: number, to: "holder" | "base", id: string, from: object) => {
    const [first, ...others] = mayBe(unit);
    return {
      id,
      by: [first],
      or: others.map((one) => [one]),
      do: "Hand over",
      time: "PT0S",
      moves: kept(unit, to === "base" ? { place: base } : { crew: first }),
      ...from,
    };
  };
  return {
    format: "tetherline.procedure/2",
    id: "units",
    title: "Units",
    crew: crew.map((id) => ({ id, call: id.toUpperCase(), station: "outside", start: base })),
    places: travel.map((_, site) => ({ id: place(site), refuge: site === 0 })),
    routes: routesOf((from, to) => travel[from]?.[to] ?? 0, travel.length),
    items: units.map((_, unit) => ({ id: `kit-${unit}`, start: { place: base } })),
    windows: steps.flatMap(({ id, windows }) =>
      windows
        ? [
            {
              id: `window-${id}`,
              kind: "listed",
              spans: windows.map(([from, to]) => ({ from: seconds(from), to: seconds(to) })),
            },
          ]
        : [],
    ),
    tasks: [
      {
        id: "take",
        title: "Take",
        steps: units.map((_, unit) => hand(unit, "holder", `take-${unit}`, { at: base })),
      },
      ...tasks.map(({ id, unit }) => ({
        id: `task-${id}`,
        title: `Task ${id}`,
        order: "free",
        steps: steps
          .filter(({ task }) => task === id)
          .map((step) => {
            const [first, ...others] = mayBe(unit);
            const second = crew.find((one) => one !== first);
            return {
              id: `step-${step.id}`,
              by: step.lanesNeeded === 2 ? [first, second] : [first],
              or: step.lanesNeeded === 2 ? [] : others.map((one) => [one]),
              do: "Work",
              at: place(step.site),
              time: seconds(step.dur),
              after: step.after.map((before) => `step-${before}`),
              moves: kept(unit, { crew: first }),
              ...(step.windows ? { within: [`window-${step.id}`] } : {}),
            };
          }),
      })),
      {
        id: "home",
        title: "Home",
        closeout: true,
        steps: crew.map((id) => ({ id: `home-${id}`, by: [id], do: "Go home", to: base })),
      },
    ],
  };
}

const shopFile = (id: string) => {
  const { data } = caseOf<Shop, never>(id);
  return fileOf(data.machines, operationsOf(flexible(data)));
};

const flexibleFile = (id: string) => {
  const { data } = caseOf<FlexibleShop, never>(id);
  return fileOf(data.machines, operationsOf(data));
};

describe.skipIf(cases.length === 0)("the best split, against published and enumerated answers", () => {
  it.each([
    ["jsp-small-8ops", "small job shop"],
    ["jsp-ft06", "Fisher and Thompson 1963, 36 steps in six lanes"],
    ["jsp-la01", "Lawrence 1984, 50 steps in five lanes"],
  ])("[FIT3] proves the best order of a job shop (%s: %s)", (id) => {
    const { data, expected } = caseOf<Shop, { makespan: number }>(id);
    provesBest(fileOf(data.machines, operationsOf(flexible(data))), expected.makespan);
  });

  it.each([
    ["fjsp-sfjs08", "Fattahi et al. 2007"],
    ["fjsp-mfjs01", "Fattahi et al. 2007"],
    ["fjsp-kacem1", "any step in any lane, each in its own time"],
  ])("[FIT3] proves who does what best in a flexible job shop (%s: %s)", (id) => {
    const { data, expected } = caseOf<FlexibleShop, { makespan: number }>(id);
    provesBest(fileOf(data.machines, operationsOf(data)), expected.makespan);
  });

  it.each(["lanes2-pinedo", "lanes2-pinedo-shorter"])(
    "[FIT3] lets somebody wait where that is better than never to (%s)",
    (id) => {
      const { data, expected } = caseOf<
        { lanes: number; durations: number[]; precedence: [number, number][] },
        { makespan: number }
      >(id);
      const lanes = Array.from({ length: data.lanes }, (_, lane) => lane);
      const operations = data.durations.map((time, index) => ({
        id: `job-${index + 1}`,
        lanes: lanes.map((lane) => ({ lane, time })),
        after: data.precedence.flatMap(([one, other]) => (other === index + 1 ? [`job-${one}`] : [])),
      }));
      provesBest(fileOf(data.lanes, operations), expected.makespan);
    },
  );

  it("[FIT3] proves the best order of tasks of two steps each (two-machine flow shop, Johnson's order)", () => {
    const { data, expected } = caseOf<{ jobs: Record<string, [number, number]> }, { makespan: number }>(
      "flow2-five",
    );
    const file = {
      format: "tetherline.procedure/2",
      id: "flow",
      title: "Flow",
      crew: ["ev1", "ev2"].map((id) => ({ id, call: id.toUpperCase(), station: "inside" })),
      tasks: Object.entries(data.jobs).map(([job, [first, second]]) => ({
        id: `task-${job.toLowerCase()}`,
        title: job,
        order: "free",
        steps: [
          { id: `${job.toLowerCase()}-1`, by: ["ev1"], do: "Work", time: seconds(first) },
          {
            id: `${job.toLowerCase()}-2`,
            by: ["ev2"],
            do: "Work",
            time: seconds(second),
            after: [`${job.toLowerCase()}-1`],
          },
        ],
      })),
    };
    provesBest(file, expected.makespan);
  });

  it("[FIT3] finds 50 where the bound of one lane that may break off is 49 (Carlier 1982)", () => {
    const { data, expected } = caseOf<
      { jobs: { release: number; dur: number; tail: number }[] },
      { makespan: number; preemptiveBound: number }
    >("one-lane-carlier");
    const file = {
      format: "tetherline.procedure/2",
      id: "one-lane",
      title: "One lane",
      crew: [
        { id: "ev1", call: "EV1", station: "inside" },
        ...data.jobs.map((_, job) => ({ id: `tail-${job}`, call: `Tail ${job}`, station: "inside" })),
      ],
      tasks: data.jobs.map(({ release, dur, tail }, job) => ({
        id: `task-${job}`,
        title: `Task ${job}`,
        order: "free",
        steps: [
          { id: `job-${job}`, by: ["ev1"], do: "Work", time: seconds(dur), notBefore: seconds(release) },
          { id: `after-${job}`, by: [`tail-${job}`], do: "Wait", time: seconds(tail), after: [`job-${job}`] },
        ],
      })),
    };
    const bound = answerTo(file, { ...ALL, parts: 0 }).bound;
    expect(bound).toBe(expected.preemptiveBound * SECONDS);
    provesBest(file, expected.makespan);
  });

  it.each(["tw-rc207.4", "tw-rc202.2"])(
    "[FIT3] goes round by the order that is back first, windows kept (%s, by dynamic programming)",
    (id) => {
      const { data, expected } = caseOf<Travelling, { makespan: number }>(id);
      const answer = answerTo(roundFile(data, 10));
      holds(answer, expected.makespan, 20);
      expect(answer.finish).toBeLessThan(expected.makespan * SECONDS + 20);
      expect(answer.isProven).toBe(true);
    },
  );

  it.each([
    ["jsp-ft06", () => shopFile("jsp-ft06")],
    ["fjsp-sfjs08", () => flexibleFile("fjsp-sfjs08")],
    ["fjsp-mfjs01", () => flexibleFile("fjsp-mfjs01")],
    ["split-2lanes-16steps", () => unitsFile(caseOf<Units, never>("split-2lanes-16steps").data)],
  ])("[FIT3] the second proof shows the published optimum alone (%s)", (id, fileOfCase) => {
    const { expected } = caseOf<never, { makespan?: number; finish?: number }>(id);
    const optimum = (expected.makespan ?? expected.finish ?? 0) * SECONDS;
    const file = fileOfCase();
    expect(answerTo(file, { ...ALL, parts: 0 }).isProven).toBe(false);
    expect(answerTo(file, BY_PROGRAM)).toMatchObject({
      finish: optimum,
      bound: optimum,
      isProven: true,
      second: { status: "proven" },
    });
  });

  it.each([
    ["fjsp-mfjs01", () => flexibleFile("fjsp-mfjs01")],
    ["tw-rc202.2", () => roundFile(caseOf<Travelling, never>("tw-rc202.2").data, 10)],
  ])("[FIT3] the second proof shows what the first leaves open after 50,000 parts (%s)", (_, fileOfCase) => {
    const file = fileOfCase();
    expect(answerTo(file, { ...ALL, parts: 50_000 }).isProven).toBe(false);
    const answer = answerTo(file, { ...BY_PROGRAM, parts: 50_000 });
    expect(answer).toMatchObject({ isProven: true, second: { status: "proven" } });
  });

  it("[FIT3] keeps a kit in one hand, windows and joint steps (16 steps in two lanes, by another branch and bound)", () => {
    const { data, expected } = caseOf<Units, { finish: number; simpleLowerBound: number }>(
      "split-2lanes-16steps",
    );
    provesBest(unitsFile(data), expected.finish);
  });
});
