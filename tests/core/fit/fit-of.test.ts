import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { FitCase } from "../../../src/core/fit/index.ts";
import { fitOf, planCase, walkCase } from "../../../src/core/fit/index.ts";
import { planOf, riskModelOf, sampleRisk } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { Duration, TaskId } from "../../../src/core/units/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, procedureOf, step, task } from "../procedure-builder.ts";

const limitOf = (minutes: number) => (minutes * 60_000) as Duration;

const BY_LIKELY = { chance: null, samples: 200, seed: 1, tries: 10_000 };

const optional = (id: string, minutes: number, more: { by?: string; worth?: number } = {}) =>
  task(id, [step(`${id}-work`, more.by ?? "ev1", minutes)], {
    priority: "get-ahead",
    ...(more.worth === undefined ? {} : { worth: more.worth }),
  });

const format2 = (tasks: ProcedureFile["tasks"], more: Partial<ProcedureFile> = {}) =>
  fileWith(tasks, { format: "tetherline.procedure/2", ...more });

const caseOf = (file: ProcedureFile) => planCase(outlineOf(procedureOf(file)), { outcomes: new Map() });

const setOf = (...ids: string[]) => new Set(ids as TaskId[]);

describe("what fits a plan", () => {
  const file = format2([
    task("main", [step("a", "ev1", 10), step("b", "ev2", 25)]),
    optional("p", 10, { worth: 5 }),
    optional("q", 12, { worth: 6 }),
    optional("r", 4, { by: "ev2" }),
    task("last", [step("end", ["ev1", "ev2"], 5)]),
  ]);

  it("[FIT1] gives sets by their worth, each with what it comes to and the changes that make it so", () => {
    const fit = fitOf(caseOf(file), { ...BY_LIKELY, limit: limitOf(35) });
    expect(fit).toMatchObject({ verdict: "proven", bound: 7, shortBy: null });
    expect(fit.sets.map(({ keep, worth }) => [keep, worth])).toEqual([
      [["q", "r"], 7],
      [["q"], 6],
      [["p", "r"], 6],
      [["p"], 5],
      [["r"], 1],
    ]);
    expect(fit.sets[0]).toMatchObject({
      drop: ["p"],
      finish: limitOf(34),
      margin: limitOf(1),
      withinLimit: 1,
    });
    expect(fit.essential).toMatchObject({ keep: [], finish: limitOf(30) });
  });

  it("[FIT1] names the set that leaves out the fewest, where the best leaves out more", () => {
    const short = format2([
      task("main", [step("a", "ev1", 10)]),
      optional("long", 20, { worth: 9 }),
      optional("p", 8, { worth: 2 }),
      optional("q", 9, { worth: 3 }),
      optional("r", 10, { worth: 2 }),
    ]);
    const fit = fitOf(caseOf(short), { ...BY_LIKELY, limit: limitOf(30) });
    expect(fit.sets[0]).toMatchObject({ keep: ["long"], worth: 9 });
    expect(fit.fewest).toMatchObject({ keep: ["p", "q"], drop: ["long", "r"], worth: 5 });
    const all = fitOf(caseOf(short), { ...BY_LIKELY, limit: limitOf(90) });
    expect(all.sets[0]?.drop).toEqual([]);
    expect(all.fewest).toBeNull();
    expect(fitOf(caseOf(short), { ...BY_LIKELY, limit: limitOf(5) })).toMatchObject({
      verdict: "does-not-fit",
      fewest: null,
    });
  });

  it("[FIT1] [FIT4] changes nothing itself: its changes made in the file give the plan that it promised", () => {
    for (const { changes, finish } of fitOf(caseOf(file), { ...BY_LIKELY, limit: limitOf(40) }).sets) {
      const applied = applyChanges(file, changes);
      expect(applied.problem).toBeNull();
      if (!applied.file) throw new Error("not applied");
      expect(planOf(outlineOf(procedureOf(applied.file))).timeline?.course.finish).toBe(finish);
    }
  });

  it("[FIT1] keeps everything where there is no limit", () => {
    const fit = fitOf(caseOf(file), { ...BY_LIKELY, limit: null });
    expect(fit.sets[0]).toMatchObject({ keep: ["p", "q", "r"], margin: null, withinLimit: null });
    expect(fit.verdict).toBe("proven");
  });

  it("[FIT1] leaves no essential work out: it says by how much it is short, and what the lead names is left out", () => {
    const short = fitOf(caseOf(file), { ...BY_LIKELY, limit: limitOf(20) });
    expect(short).toMatchObject({ verdict: "does-not-fit", sets: [], bound: 0, shortBy: limitOf(10) });
    expect(short.essential?.keep).toEqual([]);
    const without = planCase(outlineOf(procedureOf(file)), { outcomes: new Map() }, setOf("main"));
    expect(fitOf(without, { ...BY_LIKELY, limit: limitOf(20) }).sets[0]?.keep).toEqual(["q", "r"]);
  });

  it("[FIT2] says how much more there could be when it ends before every set is looked at", () => {
    const fit = fitOf(caseOf(file), { ...BY_LIKELY, limit: limitOf(35), tries: 2 });
    expect(fit.verdict).toBe("best-found");
    expect(fit.bound).toBeGreaterThanOrEqual(7);
    expect(fit.tried).toBe(2);
  });

  it("[FIT1] offers no set that breaks a rule of the checker, and one that needs another only with it", () => {
    const fetching = format2(
      [
        task("main", [step("a", "ev1", 1)]),
        task(
          "fetch",
          [step("take", "ev1", 1, { at: "rack", moves: [{ item: "lamp", to: { crew: "ev1" } }] })],
          {
            priority: "get-ahead",
          },
        ),
        task(
          "hang",
          [
            step("go", "ev1", null, { to: "hook" }),
            step("put", "ev1", 1, { at: "hook", moves: [{ item: "lamp", to: { place: "hook" } }] }),
            step("back", "ev1", null, { to: "rack" }),
          ],
          { priority: "get-ahead", worth: 5 },
        ),
      ],
      {
        crew: [
          { id: "ev1", call: "EV1", station: "outside", start: "rack" },
          { id: "ev2", call: "EV2", station: "outside", start: "rack" },
          { id: "iv", call: "IV", station: "inside" },
        ],
        places: [{ id: "rack", refuge: true }, { id: "hook" }],
        routes: [{ between: ["rack", "hook"], length: 1, time: "PT1M" }],
        items: [{ id: "lamp", start: { place: "rack" }, end: { place: "hook" } }],
      },
    );
    const fit = fitOf(caseOf(fetching), { ...BY_LIKELY, limit: limitOf(60) });
    expect(fit.sets.map(({ keep }) => keep)).toContainEqual(["fetch", "hang"]);
    expect(fit.sets.map(({ keep }) => keep)).not.toContainEqual(["hang"]);
  });
});

describe("what fits with a chance", () => {
  const spread = { low: "PT5M", likely: "PT10M", high: "PT40M" };
  const file = format2([
    task("main", [step("a", "ev1", 10)]),
    task("p", [step("p-work", "ev1", null, { time: spread })], { priority: "get-ahead", worth: 5 }),
    optional("q", 12, { worth: 1 }),
  ]);

  it("[FIT1] leaves out what would be done in time by likely times alone", () => {
    const limit = limitOf(24);
    expect(fitOf(caseOf(file), { ...BY_LIKELY, limit }).sets[0]?.keep).toEqual(["p"]);
    const fit = fitOf(caseOf(file), { ...BY_LIKELY, limit, chance: 0.9 });
    expect(fit.sets[0]).toMatchObject({ keep: ["q"], withinLimit: 1, error: 0 });
    expect(fit.sets.every(({ withinLimit }) => (withinLimit ?? 0) >= 0.9)).toBe(true);
  });

  it("[FIT2] says how much later the limit would have to be for the chance, never too little", () => {
    const must = format2([task("p", [step("p-work", "ev1", null, { time: spread })])]);
    const fit = fitOf(caseOf(must), { ...BY_LIKELY, samples: 4_000, limit: limitOf(12), chance: 0.9 });
    const enough = limitOf(12) + (fit.shortBy ?? 0);
    expect(fit.verdict).toBe("does-not-fit");
    const again = (limit: number) =>
      fitOf(caseOf(must), { ...BY_LIKELY, samples: 4_000, limit: limit as Duration, chance: 0.9 });
    expect(again(enough).essential?.withinLimit).toBeGreaterThanOrEqual(0.9);
    expect(again(enough - 60_000).essential?.withinLimit).toBeLessThan(0.9);
  });

  it("[FIT2] the same seed gives the same answer", () => {
    const ask = () => fitOf(caseOf(file), { ...BY_LIKELY, limit: limitOf(40), chance: 0.5 });
    expect(JSON.stringify(ask())).toBe(JSON.stringify(ask()));
  });
});

describe("what fits a walk", () => {
  const file = format2(
    [
      task("main", [step("a", "ev1", 10), step("b", "ev2", 25)]),
      task("p", [step("p-1", "ev1", 5), step("p-2", "ev1", 5)], { priority: "get-ahead" }),
      optional("q", 12),
      task("last", [step("end", ["ev1", "ev2"], 5)]),
    ],
    { limits: { elapsed: "PT45M" } },
  );
  const askedAt = (log: LogWriter, at: number, leftOut: ReadonlySet<TaskId> = new Set()) => {
    const fitCase = walkCase(log.ledger, minute(at), leftOut);
    return { fitCase, fit: fitOf(fitCase, { ...BY_LIKELY, limit: limitOf(45) }) };
  };

  it("[FIT1] goes on from what has happened", () => {
    const { fit, fitCase } = askedAt(LogWriter.started(file).done(["a", 22]), 22);
    expect(fitCase.now).toBe(limitOf(22));
    expect(fit.sets.map(({ keep, finish }) => [keep, finish])).toEqual([
      [["p"], limitOf(37)],
      [["q"], limitOf(39)],
      [[], limitOf(30)],
    ]);
  });

  it("[FIT1] brings in a get-ahead when the walk is early", () => {
    const { fit } = askedAt(LogWriter.started(file).done(["a", 5]), 5);
    expect(fit.sets[0]).toMatchObject({ keep: ["p", "q"], finish: limitOf(32) });
  });

  it("[FIT1] a get-ahead that is begun is done to its end, and is no choice any more", () => {
    const { fit, fitCase } = askedAt(LogWriter.started(file).done(["a", 10], ["p-1", 20]), 20);
    expect(fitCase.choices.map(({ id }) => id)).toEqual(["q"]);
    expect(fitCase.courseWith(new Set())?.steps.has("p-2" as never)).toBe(true);
    expect(fit.essential?.finish).toBe(limitOf(30));
  });

  it("[FIT1] does no more of a task that the lead leaves out", () => {
    const late = LogWriter.started(file).done(["a", 10]);
    expect(askedAt(late, 44).fit.verdict).toBe("does-not-fit");
    const { fit } = askedAt(late, 39, setOf("main"));
    expect(fit.sets[0]).toMatchObject({ keep: [], finish: limitOf(44) });
  });

  it("[FIT1] before the clock is started it is the plan of record", () => {
    const { fit } = askedAt(LogWriter.opened(file), 0);
    expect(fit.sets[0]).toMatchObject({ keep: ["p", "q"], finish: limitOf(37) });
  });
});

/** A few tasks by two people, some of them get-aheads, with steps that wait for each other. */
const anyCase: fc.Arbitrary<FitCase> = fc
  .array(
    fc.record({
      isOptional: fc.boolean(),
      worth: fc.integer({ min: 0, max: 9 }),
      steps: fc.array(
        fc.record({
          by: fc.constantFrom("ev1", "ev2", "both"),
          minutes: fc.integer({ min: 1, max: 20 }),
          spread: fc.integer({ min: 0, max: 30 }),
        }),
        { minLength: 1, maxLength: 3 },
      ),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((tasks) =>
    caseOf(
      format2(
        tasks.map(({ isOptional, worth, steps }, number) =>
          task(
            `t${number}`,
            steps.map(({ by, minutes, spread }, index) =>
              step(`t${number}-${index}`, by === "both" ? ["ev1", "ev2"] : by, null, {
                time: { low: "PT1M", likely: `PT${minutes}M`, high: `PT${minutes + spread}M` },
              }),
            ),
            isOptional ? { priority: "get-ahead", worth } : {},
          ),
        ),
      ),
    ),
  );

/** Every set of the choices of a case. */
function everySet({ choices }: FitCase): ReadonlySet<TaskId>[] {
  return Array.from(
    { length: 2 ** choices.length },
    (_, number) => new Set(choices.flatMap(({ id }, place) => ((number >> place) % 2 === 1 ? [id] : []))),
  );
}

describe("the search", () => {
  test.prop([anyCase, fc.integer({ min: 1, max: 120 })])(
    "[FIT1] [FIT2] finds what looking at every set finds, and the bound is never below it",
    (fitCase, minutes) => {
      const limit = limitOf(minutes);
      const worth = (set: ReadonlySet<TaskId>) =>
        fitCase.choices.reduce((sum, one) => sum + (set.has(one.id) ? (one.worth ?? 1) : 0), 0);
      const fitting = everySet(fitCase).filter(
        (set) => (fitCase.courseWith(set)?.finish ?? Infinity) <= limit,
      );
      const fit = fitOf(fitCase, { ...BY_LIKELY, limit });
      expect(fit.verdict).toBe(fitting.length === 0 ? "does-not-fit" : "proven");
      if (fitting.length === 0) return;
      const best = Math.max(...fitting.map(worth));
      expect(fit.bound).toBe(best);
      expect(fit.sets[0]?.worth).toBe(best);
      const early = fitOf(fitCase, { ...BY_LIKELY, limit, tries: 2 });
      expect(early.bound).toBeGreaterThanOrEqual(best);
    },
  );

  test.prop([anyCase, fc.integer({ min: 1, max: 2 ** 32 - 1 })])(
    "[FIT1] a task more is never done in time in more samples",
    (fitCase, seed) => {
      const share = (set: ReadonlySet<TaskId>, limit: number) => {
        const course = fitCase.courseWith(set);
        return course && sampleRisk({ ...riskModelOf(course), limit }, 50, seed).withinLimit;
      };
      const none = fitCase.courseWith(new Set())?.finish ?? 0;
      for (const set of everySet(fitCase))
        for (const { id } of fitCase.choices) {
          const more = share(new Set([...set, id]), none * 1.1);
          expect(more).toBeLessThanOrEqual(share(set, none * 1.1) ?? Number.NaN);
        }
    },
  );

  test.prop([anyCase])("[FIT1] leaving a task out never makes the finish later", (fitCase) => {
    for (const set of everySet(fitCase))
      for (const { id } of fitCase.choices) {
        const less = new Set([...set].filter((one) => one !== id));
        expect(fitCase.courseWith(less)?.finish).toBeLessThanOrEqual(
          fitCase.courseWith(set)?.finish ?? Number.NaN,
        );
      }
  });
});
