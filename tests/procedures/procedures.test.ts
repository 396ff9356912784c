import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkProcedureText } from "../../src/core/check/index.ts";
import { fragmentJsonSchema } from "../../src/core/fragment/index.ts";
import { lightFor, readOrbit } from "../../src/core/light/index.ts";
import { planOf } from "../../src/core/plan/index.ts";
import type { Outline, ProcedureFile } from "../../src/core/procedure/index.ts";
import { procedureJsonSchema } from "../../src/core/procedure/index.ts";
import { readSurprises, surprisesJsonSchema } from "../../src/core/training/index.ts";
import { inMinutes, parseInstant } from "../../src/core/units/index.ts";
import { HORIZON } from "../../src/core/window/index.ts";

const FILES = readdirSync("procedures").filter((name) => name.endsWith(".procedure.json"));
const read = (name: string) => checkProcedureText(readFileSync(`procedures/${name}`, "utf8"));

function outlineOf(name: string): Outline {
  const { outline } = read(name);
  if (!outline) throw new Error(`${name} cannot be read`);
  return outline;
}

describe("the procedures", () => {
  it("are four at least", () => {
    expect(FILES.length).toBeGreaterThanOrEqual(4);
  });

  it.each(FILES)("%s has no error findings, and keeps to its limit", (name) => {
    const { findings } = read(name);
    expect(findings.filter(({ level }) => level === "error")).toEqual([]);
    const { margin, timeline } = planOf(outlineOf(name));
    expect(timeline).not.toBeNull();
    expect(margin ?? -1).toBeGreaterThan(0);
  });

  it.each(FILES)("[CHK3] %s draws no advice either", (name) => {
    expect(read(name).findings.filter(({ level }) => level === "advice")).toEqual([]);
  });

  it("come with the JSON Schema made from the Zod schema: `npm run -s tetherline -- schema > procedures/procedure.schema.json`", () => {
    const committed: unknown = JSON.parse(readFileSync("procedures/procedure.schema.json", "utf8"));
    expect(committed).toEqual(JSON.parse(JSON.stringify(procedureJsonSchema())));
  });

  it("come with the JSON Schema of fragments: `npm run -s tetherline -- schema --fragment > procedures/fragment.schema.json`", () => {
    const committed: unknown = JSON.parse(readFileSync("procedures/fragment.schema.json", "utf8"));
    expect(committed).toEqual(JSON.parse(JSON.stringify(fragmentJsonSchema())));
    for (const name of readdirSync("procedures").filter((one) => one.endsWith(".fragment.json")))
      expect(JSON.parse(readFileSync(`procedures/${name}`, "utf8"))).toMatchObject({
        $schema: "./fragment.schema.json",
      });
  });

  it("come with the JSON Schema of surprises: `npm run -s tetherline -- schema --surprises > procedures/surprises.schema.json`", () => {
    const committed: unknown = JSON.parse(readFileSync("procedures/surprises.schema.json", "utf8"));
    expect(committed).toEqual(JSON.parse(JSON.stringify(surprisesJsonSchema())));
  });

  it.each(readdirSync("procedures").filter((name) => name.endsWith(".surprises.json")))(
    "[TRN1] %s draws no findings, and names its schema",
    (name) => {
      const text = readFileSync(`procedures/${name}`, "utf8");
      const { procedure } = outlineOf(name.replace(".surprises.json", ".procedure.json"));
      expect(readSurprises(text, procedure).findings).toEqual([]);
      expect((JSON.parse(text) as { $schema?: string }).$schema).toBe("./surprises.schema.json");
    },
  );

  it.each(FILES)("%s names its schema, so that editors complete it", (name) => {
    const file = JSON.parse(readFileSync(`procedures/${name}`, "utf8")) as { $schema?: string };
    expect(file.$schema).toBe("./procedure.schema.json");
  });
});

describe("what a briefing shows of the procedures", () => {
  it.each(FILES)(
    "[MAP2] %s has every place at a point, and no way is shorter than the straight line",
    (name) => {
      const { places, routes } = outlineOf(name).procedure;
      const at = new Map(places.map(({ id, x, y, z }) => [id, [x, y, z].map((axis) => axis ?? Number.NaN)]));
      for (const { between, length } of routes) {
        const [from, to] = between.map((id) => at.get(id) ?? []);
        const straight = Math.hypot(...(from ?? []).map((axis, index) => axis - (to?.[index] ?? Number.NaN)));
        expect(straight, between.join(" ")).toBeLessThanOrEqual(length);
        // Nobody wanders about: a way is not much longer either.
        expect(length, between.join(" ")).toBeLessThan(1.5 * straight);
      }
    },
  );

  it.each(FILES)(
    "[MAP3] %s carries its drawings as they are in procedures/pictures: `npm run pictures`",
    (name) => {
      const { pictures } = outlineOf(name).procedure;
      expect(pictures.length).toBeGreaterThan(0);
      for (const { id, data } of pictures)
        expect(data).toBe(readFileSync(`procedures/pictures/${id}.svg`).toString("base64"));
    },
  );

  it.each(FILES)("[BRF2] %s has a note for each task", (name) => {
    for (const { id, brief } of outlineOf(name).procedure.tasks) expect(brief, id).toBeTruthy();
  });

  it("are all the drawings there are", () => {
    const shown = FILES.flatMap((name) => outlineOf(name).procedure.pictures.map(({ id }) => `${id}.svg`));
    expect(new Set(shown)).toEqual(new Set(readdirSync("procedures/pictures")));
    for (const name of FILES) {
      const { procedure, steps } = outlineOf(name);
      const atSteps = new Set(steps.flatMap(({ step }) => step.pictures));
      expect(procedure.pictures.map(({ id }) => id).filter((id) => !atSteps.has(id))).toEqual([]);
    }
  });
});

describe("the orbit walk", () => {
  const outline = outlineOf("osier-ranging-head.procedure.json");
  const { procedure, steps } = outline;

  it("is as long as a real one", () => {
    expect(steps.length).toBeGreaterThanOrEqual(110);
    expect(steps.filter(({ step }) => step.by.length > 1).length).toBeGreaterThanOrEqual(15);
    expect(procedure.items.length).toBeGreaterThanOrEqual(25);
    const hours = inMinutes(planOf(outline).timeline?.course.finish ?? 0) / 60;
    expect(hours).toBeGreaterThan(5);
    expect(hours).toBeLessThan(7);
  });

  it("[LGT1] comes with an orbit of its own, in which every window fits from a start on that its README names", () => {
    const { elements } = readOrbit(readFileSync("procedures/osier-ranging-head.orbit.txt", "utf8"));
    const start = parseInstant("2031-04-02T09:00:00Z");
    if (!elements || start === null) throw new Error("no orbit");
    const light = lightFor({ kind: "orbit", elements }, start, HORIZON);
    const { findings } = checkProcedureText(
      readFileSync("procedures/osier-ranging-head.procedure.json", "utf8"),
      { start, light },
    );
    expect(findings.filter(({ level }) => level !== "advice").map(({ code }) => code)).toEqual([]);
    expect(readFileSync("procedures/README.md", "utf8")).toContain("2031-04-02T09:00:00Z");
    expect(planOf(outline, { start, light }).timeline?.course.finish).toBe(
      planOf(outline).timeline?.course.finish,
    );
  });

  it("[PRO13] depends on states: without the step that sets one, those that need it are found", () => {
    for (const { step } of steps.filter((one) => one.step.sets)) {
      const text = readFileSync("procedures/osier-ranging-head.procedure.json", "utf8");
      const file = JSON.parse(text) as ProcedureFile;
      for (const task of file.tasks) {
        for (const one of task.steps) if (one.id === step.id) delete one.sets;
      }
      const found = checkProcedureText(JSON.stringify(file)).findings.filter(
        ({ level }) => level === "error",
      );
      expect([step.id, found.length > 0]).toEqual([step.id, true]);
      expect(found.every(({ code }) => /^state\/|way-closed$/.test(code))).toBe(true);
    }
  });

  it("has EV1, EV2, IV and ground", () => {
    expect(procedure.crew.map(({ station }) => station)).toEqual(["outside", "outside", "inside", "ground"]);
  });

  it("has bags in bags, hand-overs, re-anchored tethers and work that needs day or night", () => {
    const nested = procedure.items.filter(({ start }) => "item" in start).map(({ id }) => id);
    expect(procedure.items.some(({ start }) => "item" in start && nested.includes(start.item))).toBe(true);
    const handOvers = steps.filter(
      ({ step }) => step.by.length > 1 && step.moves.some(({ to }) => "crew" in to),
    );
    expect(handOvers.length).toBeGreaterThan(0);
    expect(steps.some(({ step }) => step.anchor !== undefined)).toBe(true);
    const kinds = steps.flatMap(({ step }) =>
      step.within.map((id) => procedure.windows.find((window) => window.id === id)?.kind),
    );
    expect(kinds.some((kind) => kind === "daylight" || kind === "darkness")).toBe(true);
  });

  it("has a decision with a branch, get-aheads, watches, alerts of every level and records with limits", () => {
    const [made] = outline.decisions;
    expect(made).toBeDefined();
    const branch = steps.filter(({ step }) =>
      Object.entries(step.when ?? {}).some(
        ([id, outcome]) => id === made?.decision.id && outcome !== made.decision.expect,
      ),
    );
    expect(branch.length).toBeGreaterThan(0);
    expect(procedure.tasks.filter(({ priority }) => priority === "get-ahead").length).toBeGreaterThan(0);
    expect(procedure.tasks.some(({ closeout }) => closeout)).toBe(true);
    expect(procedure.watches.length).toBeGreaterThan(0);
    expect(new Set(steps.flatMap(({ step }) => step.alerts.map(({ level }) => level)))).toEqual(
      new Set(["warning", "caution", "note"]),
    );
    expect(
      steps
        .flatMap(({ step }) => step.records)
        .some(({ min, max }) => min !== undefined && max !== undefined),
    ).toBe(true);
    expect(steps.some(({ step }) => step.confirm && !step.by.includes(step.confirm.by))).toBe(true);
  });
});
