import { expect, test } from "@playwright/test";
import type { Duration, Instant } from "../../src/core/units/index.ts";
import { later } from "../../src/core/units/index.ts";
import { fileWith, step, task } from "../core/procedure-builder.ts";
import { openImported } from "./imported-walk.ts";
import { WrittenWalk } from "./written-walk.ts";

const FILE = fileWith(
  [
    task("wash", [step("washing", "ev1", 40, { do: "Wash the panel", or: [["ev2"]] })]),
    task("wire", [step("wiring", "ev1", 30, { do: "Lay the wire", or: [["ev2"]] })]),
    task("last", [step("come-in", ["ev1", "ev2"], 5)], { closeout: true }),
  ],
  { format: "tetherline.procedure/2", id: "shared-rest", title: "Shared rest" },
);

test("[FIT3] [FIT4] [AMD3] a lead finds the best split of the rest beside what still fits, and takes it up as an amendment", async ({
  page,
}) => {
  const start = later(Date.now() as Instant, (-6 * 60_000) as Duration);
  await openImported(page, new WrittenWalk(FILE, { start, walk: "rest-walk" }));
  await page.getByRole("button", { name: "Late?", exact: true }).click();
  await page.getByRole("button", { name: "Best split of the rest" }).click();
  const rest = page.getByRole("dialog", { name: "Best split of the rest" });
  await expect(rest.getByText(/^Proven best: finish 0:45, 30 min earlier/)).toBeVisible();
  await expect(rest.getByText(/^The walk as it was at PET 0:0[67]:\d\d\.$/)).toBeVisible();
  await expect(rest.getByText("Step 2.1 “Lay the wire” is done by EV2 instead of EV1.")).toBeVisible();
  await rest.getByRole("button", { name: "See what the plan would come to with this" }).click();

  const panel = page.getByRole("dialog", { name: "Amend the plan" });
  await expect(panel.getByRole("row", { name: /^Finish/ })).toBeVisible();
  await expect(panel.getByRole("button", { name: "Enter the amendment" })).toBeDisabled();
  await panel.getByLabel("Why").fill("EV2 has nothing to do");
  await panel.getByRole("button", { name: "Enter the amendment" }).click();
  await expect(panel).toBeHidden();
  await expect(page.locator('[data-row="wiring"]')).toContainText("EV2");

  // Asked again, there is nothing left that would be better.
  await page.getByRole("button", { name: "Late?", exact: true }).click();
  await page.getByRole("button", { name: "Best split of the rest" }).click();
  await expect(rest.getByText(/^There is nothing to choose|^Keep the plan/)).toBeVisible();
});
