import { expect, test } from "@playwright/test";
import { doneCount, openWalk, startClock, tapSteps } from "./walk-by-tapping.ts";

test("undo strikes the entry, and the step is open again", async ({ page }) => {
  await openWalk(page);
  await startClock(page);
  await tapSteps(page, 3);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => doneCount(page)).toBe(2);
});

test("two tabs on one walk agree", async ({ page, context }) => {
  await openWalk(page);
  await startClock(page);
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(other.locator(".done-button").first()).toBeVisible();
  await tapSteps(page, 2);
  await expect.poll(() => doneCount(other)).toBe(2);
  await tapSteps(other, 2);
  await expect.poll(() => doneCount(page)).toBe(4);
});
