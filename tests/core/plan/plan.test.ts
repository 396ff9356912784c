import { describe, expect, it } from "vitest";
import type { Plan, PlanOptions } from "../../../src/core/plan/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { DecisionId, Instant } from "../../../src/core/units/index.ts";
import { inMinutes, parseInstant } from "../../../src/core/units/index.ts";
import { plannedStep } from "../planned-step.ts";
import { outlineFrom, step, task } from "../procedure-builder.ts";

const plan = (options: PlanOptions, ...file: Parameters<typeof outlineFrom>) =>
  planOf(outlineFrom(...file), options);

/** Start and finish of each planned step in minutes. */
function times({ timeline }: Plan): Record<string, readonly [number, number]> {
  return Object.fromEntries(
    [...(timeline?.course.steps.values() ?? [])].map((one) => [
      one.step,
      [inMinutes(one.start), inMinutes(one.finish)] as const,
    ]),
  );
}

const planned = ({ timeline }: Plan, id: string) => timeline && plannedStep(timeline, id);
const pathOf = ({ timeline }: Plan) => timeline?.criticalPath;

describe("a plan", () => {
  it("[PLN1] [PRO2] starts each step when its performers and predecessors let it, with lags", () => {
    const made = plan({}, [
      step("a", "ev1", 5),
      step("b", "ev2", 3),
      step("meet", ["ev1", "ev2"], 2),
      step("c", "iv", 1, { after: [{ step: "b", lag: "PT10M" }] }),
      step("d", "ev1", 4, { after: ["c"] }),
    ]);
    expect(times(made)).toEqual({ a: [0, 5], b: [0, 3], meet: [5, 7], c: [13, 14], d: [14, 18] });
    expect(inMinutes(made.timeline?.course.finish ?? 0)).toBe(18);
  });

  it("[PLN1] [PRO6] takes the likely duration, and zero for a milestone", () => {
    const made = plan({}, [
      step("a", "ev1", null, { time: { low: "PT1M", likely: "PT2M", high: "PT9M" } }),
      step("mark", "ev1", 0),
      step("b", "ev1", 1),
    ]);
    expect(times(made)).toEqual({ a: [0, 2], mark: [2, 2], b: [2, 3] });
  });

  it("[PLN1] [PRO6] takes the time of a translation from the quickest way, of the slowest performer", () => {
    const crew = ["ev1", "ev2"].map((id, index) => ({
      id,
      call: id,
      station: "outside" as const,
      start: index === 0 ? "hatch" : "mast",
    }));
    const made = plan(
      {},
      [step("both", ["ev1", "ev2"], null, { to: "boom" }), step("back", "ev1", null, { to: "hatch" })],
      {
        crew,
        places: [{ id: "hatch" }, { id: "boom" }, { id: "mast" }],
        routes: [
          { between: ["hatch", "boom"], length: 9, time: "PT8M" },
          { between: ["hatch", "mast"], length: 2, time: "PT1M" },
          { between: ["mast", "boom"], length: 3, time: "PT3M" },
        ],
      },
    );
    expect(times(made)).toEqual({ both: [0, 4], back: [4, 8] });
  });

  it("[PLN1] puts a step wholly into one span of every window it names", () => {
    const windows = {
      windows: [
        {
          id: "light",
          kind: "daylight" as const,
          spans: [
            { from: "PT0M", to: "PT12M" },
            { from: "PT30M", to: "PT60M" },
          ],
        },
        {
          id: "contact",
          kind: "listed" as const,
          spans: [
            { from: "PT0M", to: "PT20M" },
            { from: "PT35M", to: "PT90M" },
          ],
        },
      ],
    };
    const made = plan(
      {},
      [step("a", "ev1", 8), step("b", "ev1", 5, { within: ["light", "contact"] })],
      windows,
    );
    expect(times(made)).toEqual({ a: [0, 8], b: [35, 40] });
    expect(planned(made, "b")?.waits).toEqual([
      { crew: "ev1", time: 22 * 60_000, on: { window: "light" } },
      { crew: "ev1", time: 5 * 60_000, on: { window: "contact" } },
    ]);
    expect(pathOf(made)).toEqual(["b"]);
    // Both ends of a span belong to it.
    const exact = plan({}, [step("a", "ev1", 8), step("b", "ev1", 4, { within: ["light"] })], windows);
    expect(times(exact)["b"]).toEqual([8, 12]);
  });

  it("[PLN1] takes windows given as instants from the start", () => {
    const file = [
      [step("a", "ev1", 1, { within: ["contact"] })],
      {
        windows: [
          {
            id: "contact",
            kind: "listed",
            spans: [{ from: "2031-04-02T09:10:00Z", to: "2031-04-02T12:00:00+02:00" }],
          },
        ],
      },
    ] as Parameters<typeof outlineFrom>;
    const start = parseInstant("2031-04-02T09:00:00Z") as Instant;
    expect(times(plan({ start }, ...file))).toEqual({ a: [10, 11] });
    const unknown = plan({}, ...file);
    expect(times(unknown)).toEqual({ a: [0, 1] });
    expect(unknown.findings).toMatchObject([{ level: "caution", code: "window/not-known", steps: ["a"] }]);
  });

  it("[PLN4] reports a step that fits no span, and makes no plan", () => {
    const made = plan({}, [step("a", "ev1", 8), step("b", "ev1", 5, { within: ["dark"] })], {
      windows: [{ id: "dark", kind: "darkness", spans: [{ from: "PT0M", to: "PT12M" }] }],
    });
    expect(made.timeline).toBeNull();
    expect(made.findings).toMatchObject([
      { level: "error", code: "window/no-fit", steps: ["b"], pointer: "/tasks/0/steps/1" },
    ]);
  });

  it("[PLN2] gives latest times, slack and free slack", () => {
    const made = plan({}, [
      step("a", "ev1", 5),
      step("b", "ev2", 2),
      step("c", "ev2", 1),
      step("meet", ["ev1", "ev2"], 3),
      step("loose", "iv", 4),
    ]);
    const brief = (id: string) => {
      const one = planned(made, id);
      return one && [one.latestStart, one.latestFinish, one.slack, one.freeSlack].map(inMinutes);
    };
    expect(brief("a")).toEqual([0, 5, 0, 0]);
    expect(brief("b")).toEqual([2, 4, 2, 0]);
    expect(brief("c")).toEqual([4, 5, 2, 2]);
    expect(brief("meet")).toEqual([5, 8, 0, 0]);
    expect(brief("loose")).toEqual([4, 8, 4, 4]);
    expect(planned(made, "a")?.critical).toBe(true);
    expect(planned(made, "b")?.critical).toBe(false);
    expect(pathOf(made)).toEqual(["a", "meet"]);
  });

  it("[PLN2] traces the critical path through what lets each step go last, lag included, ties by reading order", () => {
    const TIED = [
      step("a", "ev1", 5),
      step("b", "ev2", 5),
      step("c", "iv", 2),
      step("tie", ["ev1", "ev2"], 1, { after: [{ step: "c", lag: "PT3M" }] }),
    ];
    const made = plan({}, [
      ...TIED,
      step("lagged", "iv", 1, { after: [{ step: "c", lag: "PT20M" }, "tie"] }),
    ]);
    expect(pathOf(made)).toEqual(["c", "lagged"]);
    // Three predecessors let the tie go at the same time: the first in reading order is followed.
    expect(pathOf(plan({}, TIED))).toEqual(["a", "tie"]);
  });

  it("[PLN3] names what each wait is for: the performers of what finishes last, or a lag", () => {
    const made = plan({}, [
      step("a", "ev1", 5),
      step("b", "ev2", 2),
      step("meet", ["ev1", "ev2"], 1),
      step("vent", "iv", 1),
      step("test", ["iv", "ev2"], 1, { after: [{ step: "vent", lag: "PT30M" }] }),
    ]);
    expect(planned(made, "meet")?.waits).toEqual([
      { crew: "ev2", time: 3 * 60_000, on: { crew: ["ev1"], step: "a" } },
    ]);
    expect(planned(made, "test")?.waits).toEqual([
      { crew: "iv", time: 30 * 60_000, on: { lag: "vent" } },
      { crew: "ev2", time: 25 * 60_000, on: { lag: "vent" } },
    ]);
    expect(planned(made, "a")?.waits).toEqual([]);
  });

  it("[PLN3] divides a wait where what binds it changes: people, then a lag, then a window", () => {
    const made = plan(
      {},
      [
        step("a", "ev1", 5),
        step("b", "ev2", 2),
        step("test", "ev2", 1, { after: [{ step: "a", lag: "PT10M" }], within: ["contact"] }),
      ],
      { windows: [{ id: "contact", kind: "listed", spans: [{ from: "PT40M", to: "PT60M" }] }] },
    );
    expect(planned(made, "test")?.waits).toEqual([
      { crew: "ev2", time: 3 * 60_000, on: { crew: ["ev1"], step: "a" } },
      { crew: "ev2", time: 10 * 60_000, on: { lag: "a" } },
      { crew: "ev2", time: 25 * 60_000, on: { window: "contact" } },
    ]);
  });

  it("[PRO5] counts a decision as expected unless told otherwise", () => {
    const file: Parameters<typeof outlineFrom> = [
      [
        step("ask", "ev1", 1, {
          decide: { id: "bolt", ask: "?", outcomes: ["free", "stuck"], expect: "free" },
        }),
        step("short", "ev1", 2, { when: { bolt: "free" } }),
        step("long", "ev1", 20, { when: { bolt: "stuck" } }),
      ],
    ];
    expect(times(plan({}, ...file))).toEqual({ ask: [0, 1], short: [1, 3] });
    const outcomes = new Map([["bolt" as DecisionId, "stuck"]]);
    expect(times(plan({ outcomes }, ...file))).toEqual({ ask: [0, 1], long: [1, 21] });
  });

  it("[PRO9] leaves get-aheads out of the finish unless asked for", () => {
    const file: Parameters<typeof outlineFrom> = [
      [
        task("main", [step("a", "ev1", 5)]),
        task("spare", [step("x", "ev1", 7)], { priority: "get-ahead" }),
        task("end", [step("z", "ev1", 1)]),
      ],
      { limits: { elapsed: "PT10M" } },
    ];
    expect(times(plan({}, ...file))).toEqual({ a: [0, 5], z: [5, 6] });
    expect(plan({}, ...file)).toMatchObject({ margin: 4 * 60_000, findings: [] });
    const all = plan({ getAheads: true }, ...file);
    expect(times(all)).toEqual({ a: [0, 5], x: [5, 12], z: [12, 13] });
    expect(all.findings).toMatchObject([
      { level: "error", code: "time/over-limit", pointer: "/limits/elapsed" },
    ]);
  });

  it("[ORD1] [PRO7] makes no plan of a deadlock, and one of crew that is elsewhere with a finding", () => {
    const stuck = plan({}, [step("a", "ev1", 1, { after: ["b"] }), step("b", "ev1", 1)]);
    expect(stuck.timeline).toBeNull();
    expect(stuck.findings.map(({ code }) => code)).toEqual(["order/deadlock"]);
    const elsewhere = plan({}, [step("a", "ev1", 1, { at: "boom" })], {
      crew: [{ id: "ev1", call: "EV1", station: "outside", start: "hatch" }],
      places: [{ id: "hatch" }, { id: "boom" }],
    });
    expect(elsewhere.timeline).not.toBeNull();
    expect(elsewhere.findings).toMatchObject([
      { level: "error", code: "place/not-there", pointer: "/tasks/0/steps/0/at" },
    ]);
  });

  it("[PRO6] reports a translation for which there is no way", () => {
    const made = plan({}, [step("a", "ev1", null, { to: "boom" })], {
      crew: [{ id: "ev1", call: "EV1", station: "outside", start: "hatch" }],
      places: [{ id: "hatch" }, { id: "boom" }],
      routes: [{ between: ["hatch", "boom"], length: 6 }],
    });
    expect(made.timeline).toBeNull();
    expect(made.findings).toMatchObject([{ code: "place/no-way", pointer: "/tasks/0/steps/0/to" }]);
  });
});
