import { execFileSync } from "node:child_process";
import { expect, type Page, test } from "@playwright/test";
import type { Instant } from "../../src/core/units/index.ts";
import { openImported } from "./imported-walk.ts";
import { bundledText, playedLog, procedureFile } from "./written-walk.ts";

interface PlanDocument {
  readonly steps: readonly {
    readonly id: string;
    readonly start: number | null;
    readonly finish: number | null;
  }[];
}

/** A start is cut to the minute and a finish goes up to the next one, so that neither flatters. */
const hourMinute = (seconds: number, rounded: (minutes: number) => number) => {
  const minutes = rounded(seconds / 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
};

test("the printable page has every step with the plan's times, alerts before the action, and a box to tick", async ({
  page,
}) => {
  const path = "procedures/osier-ranging-head.procedure.json";
  const plan = JSON.parse(
    execFileSync("node", ["src/tetherline.mjs", "plan", path, "--json"], { encoding: "utf8" }),
  ) as PlanDocument;
  const file = procedureFile(bundledText("osier-ranging-head"));
  const steps = file.tasks.flatMap((task) => task.steps);
  await page.goto("/print/example-osier-ranging-head");
  await page.emulateMedia({ media: "print" });
  const rows = page.locator("section.print-steps:not(.print-contingencies) tr.print-step");
  await expect(rows).toHaveCount(steps.length);
  const read = await rows.evaluateAll((all) =>
    all.map((row) => ({
      planned: row.querySelector(".print-planned")?.textContent ?? "",
      action: row.querySelector(".print-do")?.textContent ?? "",
      order: [...row.querySelectorAll(".print-alert, [data-level], .print-do")].map((part) =>
        part.matches(".print-do"),
      ),
      boxes: row.querySelectorAll(".print-box-done").length,
    })),
  );
  for (const [index, step] of steps.entries()) {
    const planned = plan.steps.find(({ id }) => id === step.id);
    const row = read[index];
    expect(row?.action).toBe(step.do);
    expect(row?.boxes, step.id).toBe(1);
    expect(row?.order.at(-1), `${step.id}: the action comes after its alerts`).toBe(true);
    expect(row?.order.length, step.id).toBe((step.alerts?.length ?? 0) + 1);
    if (planned?.start == null || planned.finish === null) expect(row?.planned, step.id).toBe("–");
    else {
      const times = [
        ...new Set([hourMinute(planned.start, Math.floor), hourMinute(planned.finish, Math.ceil)]),
      ].join("–");
      expect(row?.planned, step.id).toBe(times);
    }
  }
  // Every page of the document itself, not what fits one screen.
  const pdf = await page.pdf({ format: "A4" });
  expect((pdf.toString("latin1").match(/\/Type\s*\/Page\b/g) ?? []).length).toBeGreaterThan(5);
});

/** The paper, and what the margins of the printed pages leave of it, in CSS px at 96 to the inch. */
const PAPERS = [
  {
    format: "A4",
    width: Math.floor((186 / 25.4) * 96),
    height: Math.floor((268 / 25.4) * 96),
    box: [595, 842],
  },
  {
    format: "Letter",
    width: Math.floor((191.9 / 25.4) * 96),
    height: Math.floor((250.4 / 25.4) * 96),
    box: [612, 792],
  },
] as const;

/** What of a printed page would be cut: what is wider than the paper, rows higher than a page, heads that do not come again. */
const cutOff = (page: Page, height: number) =>
  page.evaluate((most) => {
    const wide = [...document.querySelectorAll("body *")].filter(
      (one) => one.checkVisibility() && one.getBoundingClientRect().right > innerWidth + 1,
    );
    const rows = [...document.querySelectorAll("main tr")];
    const torn = rows.filter(
      (row) =>
        row.getBoundingClientRect().height > most ||
        (row.closest("tbody") !== null && getComputedStyle(row).breakInside !== "avoid"),
    );
    const heads = [...document.querySelectorAll("main thead")].filter(
      (head) => head.checkVisibility() && getComputedStyle(head).display !== "table-header-group",
    );
    return [...wide, ...torn, ...heads].map(
      (one) => `${one.tagName} ${one.className} ${one.textContent?.slice(0, 40)}`,
    );
  }, height);

test("the review, the handover and the paper procedure of a walk are whole on A4 and on letter paper", async ({
  page,
}) => {
  test.setTimeout(240_000);
  const file = procedureFile(bundledText("osier-ranging-head"));
  const start = (Date.now() - 600 * 60_000) as Instant;
  const { walk, text } = playedLog(file, { seed: 4, start, until: null });
  await openImported(page, { walk, text }, "review");
  for (const [screen, least] of [
    ["print-walk", 3],
    ["handover", 1],
    ["print-paper", 6],
  ] as const) {
    for (const { format, width, height, box } of PAPERS) {
      await page.emulateMedia({ media: "print" });
      await page.setViewportSize({ width, height });
      await page.goto(`/${screen}/${walk}`);
      await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
      await page.evaluate(() => document.fonts.ready);
      expect.soft(await cutOff(page, height), `${screen} on ${format}`).toEqual([]);
      const tall = await page.evaluate(() => document.querySelector("main")?.scrollHeight ?? 0);
      const pdf = (await page.pdf({ format, preferCSSPageSize: true })).toString("latin1");
      const pages = (pdf.match(/\/Type\s*\/Page\b/g) ?? []).length;
      expect
        .soft(pages, `${screen} on ${format}`)
        .toBeGreaterThanOrEqual(Math.max(least, Math.floor((tall / height) * 0.8)));
      // What is kept together leaves gaps, but not half a document of them.
      expect.soft(pages, `${screen} on ${format}`).toBeLessThanOrEqual(Math.ceil((tall / height) * 1.5) + 2);
      const [, wide, high] = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(pdf) ?? [];
      // In points; the browser rounds up.
      expect.soft(Math.abs(Number(wide) - box[0]), format).toBeLessThanOrEqual(1.5);
      expect.soft(Math.abs(Number(high) - box[1]), format).toBeLessThanOrEqual(1.5);
    }
  }
});

test("[WRT11] a plan leaves as a table, a workbook and a poster on one large sheet and its list", async ({
  page,
}) => {
  await page.goto("/plan/example-osier-ranging-head");
  const leaves = page.getByRole("group", { name: "Take the plan along" });
  for (const [button, name] of [
    ["Table (CSV)", "osier-ranging-head.plan.csv"],
    ["Workbook (.xlsx)", "osier-ranging-head.plan.xlsx"],
  ] as const) {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      leaves.getByRole("button", { name: button }).click(),
    ]);
    expect(download.suggestedFilename()).toBe(name);
    const chunks: Buffer[] = [];
    for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
    const bytes = Buffer.concat(chunks);
    // A workbook is a ZIP archive (ECMA-376 part 2), which begins with "PK".
    expect(bytes.subarray(0, 2).toString("latin1")).toBe(name.endsWith("xlsx") ? "PK" : "nu");
  }
  await leaves.getByRole("link", { name: "Poster" }).click();
  await expect(page.locator(".timeline-strip")).toHaveCount(3);
  for (const [paper, box] of [
    ["A3", [1191, 842]],
    ["Tabloid (11 × 17 in)", [1224, 792]],
  ] as const) {
    await page.getByRole("button", { name: paper, exact: true }).click();
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g), paper).toHaveLength(2);
    const [, width, height] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf) ?? [];
    expect([Math.round(Number(width)), Math.round(Number(height))]).toEqual(box);
  }
});
