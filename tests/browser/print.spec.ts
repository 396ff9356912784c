import { execFileSync } from "node:child_process";
import { expect, test } from "@playwright/test";
import { bundledText, procedureFile } from "./written-walk.ts";

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
