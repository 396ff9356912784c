import { expect, type Page, test } from "@playwright/test";
import { applyChanges } from "../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../src/core/procedure/index.ts";
import { violations } from "./axe-violations.ts";
import { chooseFile } from "./imported-walk.ts";
import { bundledText } from "./written-walk.ts";

const BASE = JSON.parse(bundledText("osier-bring-in")) as ProcedureFile;
const [FIRST, SECOND] = BASE.tasks.flatMap(({ steps }) => steps);

const revision = (letter: string, changes: readonly Change[]) => {
  const { file } = applyChanges(BASE, [{ head: { revision: letter } }, ...changes]);
  if (!file || !FIRST || !SECOND) throw new Error("the changes of the test cannot be applied");
  return JSON.stringify(file, null, 2);
};

const OURS = revision("X", [{ change: FIRST?.id ?? "", set: { time: "PT11M" } }]);
const THEIRS = revision("Y", [
  { change: FIRST?.id ?? "", set: { time: "PT13M" } },
  { change: SECOND?.id ?? "", set: { do: "Say it out loud" } },
]);

const selected = (page: Page, label: string, name: RegExp) =>
  page
    .getByLabel(label)
    .locator("option")
    .filter({ hasText: name })
    .first()
    .getAttribute("value")
    .then((value) => page.getByLabel(label).selectOption(value));

test("two revisions are compared, a third is merged in, and the change bars are printed", async ({
  page,
}) => {
  await page.goto("/");
  await expect(page.getByRole("button", { name: /^Follow / }).first()).toBeVisible();
  await chooseFile(page, { name: "ours.procedure.json", text: OURS });
  await expect(page.getByRole("status").first()).toContainText("ours");
  await chooseFile(page, { name: "theirs.procedure.json", text: THEIRS });
  await expect(page.getByRole("status").first()).toContainText("theirs");

  await page.goto("/compare");
  await expect(page.getByText("Choose the two revisions that are to be compared.")).toBeVisible();
  await selected(page, "Earlier", /rev\. Y/);
  await selected(page, "Later", /rev\. X/);
  const changes = page.getByRole("region", { name: "What changed" });
  await expect(changes.getByText(/time PT13M → PT11M/)).toBeVisible();
  const effect = page.getByRole("region", { name: "What it comes to" });
  await expect(effect.getByRole("row", { name: /^Finish/ })).toBeVisible();
  await expect(effect.getByText("being sampled")).toHaveCount(0);
  await expect(page.locator(".timeline-chart")).toHaveCount(2);
  expect(await violations(page, "body")).toEqual([]);

  await selected(page, "Both were made from", new RegExp(`rev\\. ${BASE.revision}`));
  await expect(page.getByText("One thing is left to be decided.")).toBeVisible();
  const conflict = page.getByRole("group", { name: /: time$/ });
  for (const choice of await conflict.getByRole("radio").all()) await expect(choice).not.toBeChecked();
  await conflict.getByRole("radio", { name: /rev\. Y/ }).check();
  await page.getByLabel("Who saves it").fill("Ground, desk two");
  await page.getByRole("button", { name: /^Save as revision / }).click();
  await expect(page.getByText(/is on the shelf, beside the others\./)).toBeVisible();
  const revisions = page.getByRole("region", { name: "Revisions on the shelf" });
  await expect(revisions.getByRole("row", { name: /Ground, desk two/ })).toBeVisible();
  await expect(revisions.getByRole("row")).toHaveCount(5);
  expect(await violations(page, "body")).toEqual([]);

  await page.getByRole("link", { name: "Print with change bars" }).click();
  await expect(page.getByRole("heading", { name: /^What changed against/ })).toBeVisible();
  const barred = page.locator("tr.print-step[data-changed]");
  await expect(barred).toHaveCount(2);
  await expect(barred.first()).toContainText("changed");
  await page.emulateMedia({ media: "print" });
  const bar = await barred.first().evaluate((row) => getComputedStyle(row).borderLeftWidth);
  expect(Number.parseFloat(bar)).toBeGreaterThanOrEqual(4);
});

test("a file from outside is compared without being put on the shelf, also after a reload and on paper", async ({
  page,
}) => {
  await page.goto(`/compare?after=example-${BASE.id}`);
  await expect(page.getByLabel("Later")).toHaveValue(`example-${BASE.id}`);
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Compare with a file…" }).click();
  await (await chooser).setFiles({
    name: "mine.json",
    mimeType: "application/json",
    buffer: Buffer.from(OURS),
  });
  await expect(page.getByRole("region", { name: "What changed" })).toBeVisible();
  await page.reload();
  await expect(page.getByRole("region", { name: "What changed" })).toBeVisible();
  await page.getByRole("link", { name: "Print with change bars" }).click();
  await expect(page.getByRole("heading", { name: /mine\.json/ })).toBeVisible();
  await page.goto("/");
  await expect(page.getByText("rev. X")).toHaveCount(0);
});
