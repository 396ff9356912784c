import { describe, expect, it } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { SplitAnswer } from "../../../src/core/split/index.ts";
import { splitCase, splitOf } from "../../../src/core/split/index.ts";
import type { StepId } from "../../../src/core/units/index.ts";
import { fileWith, procedureOf, step, task } from "../procedure-builder.ts";

const MINUTE = 60_000;
const ALL = { tries: 2_000, seed: 1, parts: 20_000 };

const format2 = (tasks: ProcedureFile["tasks"], more: Partial<ProcedureFile> = {}) =>
  fileWith(tasks, { format: "tetherline.procedure/2", ...more });

/** Two people outside, with three places in a row of which the first is a refuge. */
const outside = (tasks: ProcedureFile["tasks"], more: Partial<ProcedureFile> = {}) =>
  format2(tasks, {
    crew: [
      { id: "ev1", call: "EV1", station: "outside", start: "lock" },
      { id: "ev2", call: "EV2", station: "outside", start: "lock" },
      { id: "iv", call: "IV", station: "inside" },
    ],
    places: [{ id: "lock", refuge: true }, { id: "mast" }, { id: "fin" }],
    routes: [
      { between: ["lock", "mast"], length: 8, time: "PT4M" },
      { between: ["mast", "fin"], length: 12, time: "PT6M" },
    ],
    ...more,
  });

const home = task(
  "home",
  [
    step("home-1", "ev1", null, { to: "lock" }),
    step("home-2", "ev2", null, { to: "lock" }),
    step("close", ["ev1", "ev2"], 5),
  ],
  { closeout: true },
);

const answerTo = (file: ProcedureFile, pinned: readonly string[] = [], options = ALL): SplitAnswer =>
  splitOf(
    splitCase(
      { file, outline: outlineOf(procedureOf(file)) },
      { start: null, light: null },
      new Set(pinned as StepId[]),
    ),
    options,
  );

/** The procedure that an answer makes of a file, by its steps. */
function made(file: ProcedureFile, { changes }: SplitAnswer) {
  const applied = applyChanges(file, changes);
  if (!applied.file) throw new Error("not applied");
  const outline = outlineOf(procedureOf(applied.file));
  return {
    file: applied.file,
    plan: planOf(outline),
    ids: outline.steps.map(({ step: { id } }) => id as string),
    step: (id: string) => outline.step(id)?.step ?? null,
  };
}

describe("the best split", () => {
  it("[FIT3] gives a step to who else could do it, in the time of that one, and keeps the choice open", () => {
    const file = format2([
      task("a", [
        step("one", "ev1", 20),
        step("two", "ev1", 10, { or: [{ by: ["ev2"], time: "PT12M" }, ["iv"]] }),
      ]),
      task("b", [step("three", "iv", 15)]),
    ]);
    const answer = answerTo(file);
    expect(answer).toMatchObject({
      status: "proven",
      before: 30 * MINUTE,
      finish: 20 * MINUTE,
      bound: 20 * MINUTE,
      gap: 0,
    });
    expect(answer.changes).toEqual([
      {
        change: "two",
        set: {
          by: ["ev2"],
          time: "PT12M",
          or: [
            { by: ["ev1"], time: "PT10M" },
            { by: ["iv"], time: "PT10M" },
          ],
        },
      },
    ]);
    expect(answer.suggestions).toEqual([
      { kind: "performers", steps: ["two"], from: ["ev1"], to: ["ev2"], gain: 10 * MINUTE },
    ]);
    expect(answer.moved).toEqual([
      { step: "two", from: ["ev1"], to: ["ev2"], before: 20 * MINUTE, start: 0, wasCritical: true },
    ]);
    // Asked again, the better plan stays as it is.
    expect(answerTo(made(file, answer).file)).toMatchObject({
      status: "unchanged",
      isProven: true,
      changes: [],
    });
  });

  it("[FIT3] moves a free task, and no other, past none of closeout and none that it waits for", () => {
    const tasks = [
      task("first", [step("a", "ev1", 10)]),
      task("long", [step("b", "ev1", 30)]),
      task("early", [step("c", "ev1", 5), step("d", "ev2", 40)], { order: "free" }),
      task("last", [step("e", ["ev1", "ev2"], 5)], { closeout: true }),
    ];
    const linked = tasks.with(
      2,
      task("early", [step("c", "ev1", 5, { after: ["a"] }), step("d", "ev2", 40, { after: ["c"] })], {
        order: "free",
      }),
    );
    const answer = answerTo(format2(linked));
    expect(answer).toMatchObject({ status: "proven", before: 90 * MINUTE, finish: 60 * MINUTE });
    expect(answer.changes).toEqual([{ move: "early", list: "tasks", behind: "first" }]);
    expect(answer.suggestions).toEqual([
      { kind: "order", task: "early", behind: "first", gain: 30 * MINUTE },
    ]);
    const fixed = linked.with(
      2,
      task("early", [step("c", "ev1", 5, { after: ["a"] }), step("d", "ev2", 40, { after: ["c"] })]),
    );
    expect(answerTo(format2(fixed))).toMatchObject({ status: "unchanged", hasNoChoice: true });
  });

  it("[FIT3] lays the translations between anew by the quickest ways, and drops those that lead nowhere", () => {
    const file = outside([
      task("work", [
        step("go-mast", "ev1", null, { to: "mast" }),
        step("mast-work", "ev1", 20, { at: "mast" }),
        step("go-fin", "ev1", null, { to: "fin" }),
        step("fin-work", "ev1", 30, { at: "fin", or: [["ev2"]] }),
      ]),
      home,
    ]);
    const answer = answerTo(file);
    const { plan, ids, step: stepOf } = made(file, answer);
    expect(answer).toMatchObject({ status: "proven", before: 75 * MINUTE, finish: 55 * MINUTE });
    expect(ids).toEqual(["go-mast", "mast-work", "ev2-to-fin", "fin-work", "home-1", "home-2", "close"]);
    expect(stepOf("ev2-to-fin")).toMatchObject({ by: ["ev2"], to: "fin", do: "Move to fin" });
    expect(plan.timeline?.course.finish).toBe(55 * MINUTE);
    expect(answer.cost).toMatchObject({ changedHands: 1, metres: { before: 40, after: 56 } });
  });

  it("[FIT3] keeps what passes from hand to hand in one hand: all of it moves, or nothing", () => {
    const kit = {
      items: [{ id: "kit", start: { place: "lock" }, end: { place: "lock" } }],
    };
    const steps = (or: readonly string[]) =>
      outside(
        [
          task("long", [step("busy", "ev1", 40)]),
          task("kit", [
            step("take", "ev1", 1, {
              or: or.includes("take") ? [["ev2"]] : [],
              at: "lock",
              moves: [{ item: "kit", to: { crew: "ev1" } }],
            }),
            step("use", "ev1", 10, { or: [["ev2"]] }),
            step("put", "ev1", 1, {
              or: or.includes("put") ? [["ev2"]] : [],
              at: "lock",
              moves: [{ item: "kit", to: { place: "lock" } }],
            }),
          ]),
          home,
        ],
        kit,
      );
    const whole = steps(["take", "put"]);
    const answer = answerTo(whole);
    expect(answer.finish).toBe(45 * MINUTE);
    const { step: stepOf } = made(whole, answer);
    expect(stepOf("take")).toMatchObject({ by: ["ev2"], moves: [{ item: "kit", to: { crew: "ev2" } }] });
    expect(stepOf("put")).toMatchObject({ by: ["ev2"] });
    expect(answer.suggestions).toContainEqual(
      expect.objectContaining({ kind: "performers", steps: ["take", "put"], to: ["ev2"] }),
    );
    const half = answerTo(steps(["take"]));
    expect(half.changes.filter((change) => "change" in change && change.change !== "use")).toEqual([]);
  });

  it("[FIT3] makes the later step wait by name where nobody's lane makes sure of it any more", () => {
    const file = format2(
      [
        task("power", [step("off", "ev1", 10, { sets: { power: "off" } })]),
        task("other", [step("busy", "ev1", 30)]),
        task("mate", [step("mating", "ev1", 10, { needs: { power: "off" }, or: [["ev2"]] })], {
          order: "free",
        }),
      ],
      { states: [{ id: "power", values: ["on", "off"], start: "on" }] },
    );
    const answer = answerTo(file);
    expect(answer).toMatchObject({ status: "proven", before: 50 * MINUTE, finish: 40 * MINUTE });
    const { step: stepOf } = made(file, answer);
    expect(stepOf("mating")?.by).toEqual(["ev2"]);
    expect(stepOf("mating")?.after).toMatchObject([{ step: "off" }]);
  });

  it("[FIT3] nobody comes to confirm their own step, and both of a joint step stay", () => {
    const file = format2([
      task("a", [
        step("one", "ev1", 20),
        step("two", "ev1", 10, { or: [["ev2"]], confirm: { by: "ev2", text: "It is tight" } }),
        step("three", ["ev1", "ev2"], 5, { or: [["ev1", "iv"]] }),
      ]),
    ]);
    expect(answerTo(file)).toMatchObject({ status: "unchanged", isProven: true });
  });

  it("[FIT3] leaves pinned steps and closeout alone, whatever they say of others", () => {
    const file = format2([
      task("a", [step("one", "ev1", 20), step("two", "ev1", 10, { or: [["ev2"]] })]),
      task("end", [step("close", "ev1", 15, { or: [["ev2"]] })], { closeout: true, order: "free" }),
    ]);
    expect(answerTo(file, ["two"])).toMatchObject({ status: "unchanged", hasNoChoice: true });
    expect(answerTo(file).changes).toMatchObject([{ change: "two" }]);
  });

  it("[FIT3] takes the revolution that a window costs for what it is, and tells what becomes tighter", () => {
    const file = format2(
      [
        task("a", [step("one", "ev1", 20), step("two", "ev1", 20, { or: [["ev2"]] })], { order: "free" }),
        task("b", [step("look", "ev1", 20, { within: ["day"] })], { order: "free" }),
        task("c", [step("three", "ev2", 25)]),
      ],
      {
        windows: [
          {
            id: "day",
            kind: "listed",
            spans: [
              { from: "PT0S", to: "PT45M" },
              { from: "PT90M", to: "PT3H" },
            ],
          },
        ],
      },
    );
    const answer = answerTo(file);
    // As written the look is missed, and comes a revolution later; it costs less to look first, or to share the work.
    expect(answer).toMatchObject({ status: "proven", before: 110 * MINUTE, finish: 45 * MINUTE });
    expect(answer.cost?.tighter).toEqual([{ window: "day", before: 70 * MINUTE, after: 5 * MINUTE }]);
  });

  it("[FIT3] offers nothing whose undoing costs nothing", () => {
    const file = format2([
      task("long", [step("busy", "ev1", 60)]),
      task("short", [step("one", "ev2", 5, { or: [["iv"]] }), step("two", "ev2", 5, { or: [["iv"]] })], {
        order: "free",
      }),
      task("more", [step("three", "ev1", 10, { or: [["ev2"], ["iv"]] })]),
    ]);
    const answer = answerTo(file);
    expect(answer.finish).toBe(60 * MINUTE);
    expect(answer.suggestions).toMatchObject([{ kind: "performers", steps: ["three"] }]);
  });

  it("[FIT3] does not offer what the checker refuses, and looks for something else", () => {
    // Whoever holds the bar has both hands full, which only the checker knows.
    const file = format2(
      [
        task("a", [step("busy", "ev1", 30)]),
        task("b", [
          step("grip", "ev1", 5, { or: [["ev2"], ["iv"]], moves: [{ item: "bar", to: { crew: "ev1" } }] }),
          step("drop", "ev1", 5, { or: [["ev2"], ["iv"]], moves: [{ item: "bar", to: { place: "bench" } }] }),
        ]),
      ],
      {
        places: [{ id: "bench", refuge: true }],
        items: [
          { id: "bar", hands: 2, start: { place: "bench" } },
          { id: "lamp", hands: 1, start: { crew: "ev2" } },
        ],
      },
    );
    const answer = answerTo(file);
    expect(answer.finish).toBe(30 * MINUTE);
    expect(answer.suggestions).toMatchObject([{ kind: "performers", steps: ["grip", "drop"], to: ["iv"] }]);
  });

  it("[FIT3] has no answer for a file without a plan", () => {
    const file = format2([
      task("a", [step("one", "ev1", 10, { after: ["two"] }), step("two", "ev1", 10, { or: [["ev2"]] })]),
    ]);
    expect(answerTo(file)).toMatchObject({ status: "no-plan", before: null, finish: null, changes: [] });
  });

  it("[FIT3] leaves get-aheads and what hangs on a decision where they are, and their translations right", () => {
    const file = outside([
      task("work", [
        step("go-mast", "ev1", null, { to: "mast" }),
        step("mast-work", "ev1", 20, {
          at: "mast",
          decide: { id: "loose", ask: "Is it loose?", outcomes: ["yes", "no"], expect: "no" },
        }),
        step("tighten", "ev1", 10, { at: "mast", when: { loose: "yes" } }),
      ]),
      task("extra", [step("photo", "ev1", 5, { at: "mast" })], { priority: "get-ahead" }),
      task(
        "fin",
        [
          step("go-fin", "ev1", null, { to: "fin" }),
          step("fin-work", "ev1", 30, { at: "fin", or: [["ev2"]] }),
        ],
        {
          order: "free",
        },
      ),
      home,
    ]);
    const answer = answerTo(file);
    expect(answer.finish).toBe(55 * MINUTE);
    const { plan, file: next } = made(file, answer);
    expect(plan.timeline?.course.finish).toBe(55 * MINUTE);
    expect(planOf(outlineOf(procedureOf(next)), { getAheads: true }).findings).toEqual([]);
  });
});
