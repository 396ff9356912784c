import { readFileSync } from "node:fs";
import { csvParse } from "d3-dsv";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan, Timeline } from "../../../src/core/plan/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import { outlineOf, readProcedure } from "../../../src/core/procedure/index.ts";
import type { Duration, Instant } from "../../../src/core/units/index.ts";
import { inSeconds } from "../../../src/core/units/index.ts";
import { csvOf, planCsv, planSheets, workbookFile } from "../../../src/core/workbook/index.ts";
import { laneBlocks, rowLength } from "../../../src/core/workbook/lane-blocks.ts";
import { inWords } from "../../../src/words/index.ts";
import { openedWorkbook } from "./opened-workbook.ts";

const START = Date.UTC(2031, 3, 2, 9) as Instant;

const small = {
  format: "tetherline.procedure/2",
  id: "two-bolts",
  title: "=Two bolts",
  revision: "A",
  limits: { elapsed: "PT1H" },
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "lock" },
    { id: "ev2", call: "EV2", station: "outside", start: "lock" },
  ],
  places: [{ id: "lock", label: "Airlock" }],
  tasks: [
    {
      id: "bolts",
      title: "Bolts",
      steps: [
        { id: "one", by: ["ev1"], do: "=1+1 is no formula", time: "PT3M", at: "lock" },
        { id: "two", by: ["ev2"], do: 'Drive, "slowly"\nand stop', time: "PT90S", at: "lock" },
        { id: "both", by: ["ev1", "ev2"], do: "Lift together", time: "PT5M", at: "lock", after: ["one"] },
      ],
    },
  ],
};

function procedureOf(file: object) {
  const { procedure, findings } = readProcedure(JSON.stringify(file));
  if (!procedure) throw new Error(JSON.stringify(findings));
  return procedure;
}

function planned(file: object, start: Instant | null = null): { plan: Plan; timeline: Timeline } {
  const plan = planOf(outlineOf(procedureOf(file)), { start });
  if (!plan.timeline) throw new Error("no timeline");
  return { plan, timeline: plan.timeline };
}

const demo = () => JSON.parse(readFileSync("procedures/osier-ranging-head.procedure.json", "utf8"));

describe("a plan as CSV", () => {
  it("[WRT11] tells each step with seconds of PET, and UTC where a start is known", () => {
    const { plan, timeline } = planned(small, START);
    const rows = csvParse(planCsv(plan, timeline, inWords));
    expect(rows.map(({ step }) => step)).toEqual(["one", "two", "both"]);
    expect(rows[2]).toMatchObject({
      by: "ev1 ev2",
      start_s: "180",
      finish_s: "480",
      start_utc: "2031-04-02T09:03:00.000Z",
      finish_utc: "2031-04-02T09:08:00.000Z",
      likely_s: "300",
      where: "lock",
      after: "one",
      critical: "yes",
      waits: "ev2 90 s: EV1",
    });
    expect(rows[1]).toMatchObject({ slack_s: "90", critical: "no", action: 'Drive, "slowly"\nand stop' });
  });

  it("[WRT11] leaves the columns of UTC empty without a start, and marks what looks like a formula", () => {
    const { plan, timeline } = planned(small);
    const [row] = csvParse(planCsv(plan, timeline, inWords));
    expect(row).toMatchObject({ start_utc: "", finish_utc: "", action: "'=1+1 is no formula" });
  });

  it("[WRT11] gives any text back as it was, by RFC 4180", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: "binary" }), { minLength: 1 }), (texts) => {
        const plain = texts.filter((text) => !/^[=+\-@\t\r＝＋－＠]/.test(text) && !text.includes("\u0000"));
        fc.pre(plain.length > 0);
        const back = csvParse(
          csvOf(
            ["text", "more"],
            plain.map((text) => ({ text, more: "." })),
          ),
        );
        expect(back.map(({ text }) => text)).toEqual(plain);
      }),
    );
  });
});

describe("a plan as a workbook", () => {
  it("[WRT11] has a grid of crew by time and a list, with times as numbers", async () => {
    const { plan, timeline } = planned(small, START);
    const [grid, list] = await openedWorkbook(await workbookFile(planSheets(plan, timeline, inWords)));
    expect([grid?.name, list?.name]).toEqual(["Grid", "List"]);
    // A text stays a text, whatever it begins with.
    expect(grid?.cells.get("A1")).toBe("=Two bolts");
    expect(["A6", "B6", "C6", "D6"].map((cell) => grid?.cells.get(cell))).toEqual([
      "PET",
      "UTC",
      "EV1",
      "EV2",
    ]);
    // 2031-04-02 is day 47,940 of the 1900 date system (ECMA-376 part 1, 18.17.4.1), 09:00 is 0.375 of it.
    expect(grid?.cells.get("B7")).toBeCloseTo(47_940.375, 9);
    expect(grid?.cells.get("A8")).toBeCloseTo(1 / 1440, 12);
    expect(grid?.cells.get("C7")).toBe("0:00:00 · 1.1 =1+1 is no formula (3 min)");
    expect(grid?.cells.get("C10")).toBe("0:03:00 · 1.3 Lift together (5 min, with EV2)");
    expect(grid?.cells.get("D10")).toBe("0:03:00 · 1.3 Lift together (5 min, with EV1)");
    expect(grid?.joined).toEqual(expect.arrayContaining(["C7:C9", "D7:D8", "C10:C14", "D10:D14"]));
    expect(list?.cells.get("E9")).toBeCloseTo(180 / 86_400, 12);
    expect(list?.cells.get("G9")).toBeCloseTo(47_940.375 + 180 / 86_400, 9);
  });

  it("[WRT11] has no UTC without a start, and says so", async () => {
    const { plan, timeline } = planned(small);
    const [grid] = await openedWorkbook(await workbookFile(planSheets(plan, timeline, inWords)));
    expect(grid?.cells.get("A3")).toBe("PET 0 is at no given instant.");
    expect(grid?.cells.get("B6")).toBe("EV1");
  });

  it("[WRT11] names every step of a whole walk once for each of its performers", async () => {
    const { plan, timeline } = planned(demo(), START);
    const [grid, list] = await openedWorkbook(await workbookFile(planSheets(plan, timeline, inWords)));
    const said = [...(grid?.cells.values() ?? [])].join("\n");
    for (const id of timeline.course.steps.keys()) {
      const entry = plan.outline.step(id);
      const times = said.split(`· ${entry?.number} ${entry?.step.do} (`).length - 1;
      expect(times, id).toBe(entry?.step.by.length);
    }
    expect([...(list?.cells.keys() ?? [])].filter((cell) => /^A\d+$/.test(cell))).toHaveLength(
      timeline.course.steps.size + 6,
    );
  });
});

describe("the rows of the grid", () => {
  it("[WRT11] are at most 120, and as short as that allows", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 * 24 * 3_600_000 }), (finish) => {
        const row = rowLength(finish as Duration);
        expect(Math.ceil(finish / row)).toBeLessThanOrEqual(120);
        expect(row % 60_000).toBe(0);
      }),
    );
    expect(inSeconds(rowLength((6.5 * 3_600_000) as Duration))).toBe(300);
  });

  it("[WRT11] hold blocks that never overlap and cover each step's beginning", () => {
    const { timeline } = planned(demo());
    for (const minutes of [1, 5, 60]) {
      const row = (minutes * 60_000) as Duration;
      for (const blocks of laneBlocks(timeline.course, row)) {
        let free = 0;
        for (const block of blocks) {
          expect(block.row).toBeGreaterThanOrEqual(free);
          expect(block.rows).toBeGreaterThanOrEqual(1);
          for (const { start } of block.steps) expect(Math.floor(start / row)).toBe(block.row);
          free = block.row + block.rows;
        }
      }
    }
  });
});
