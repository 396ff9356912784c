import { expect, test } from "@playwright/test";
import { doneCount, openWalk, startClock, tapSteps } from "./walk-by-tapping.ts";

test("the orbit walk is followed by tapping, offline and through a reload, to its review", async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  await openWalk(page);
  // From here on the service worker must be in charge, so that the reload below needs no network.
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await startClock(page);
  expect(await tapSteps(page, 60)).toBe(60);

  await context.setOffline(true);
  await page.reload();
  await expect.poll(() => doneCount(page)).toBe(60);
  const rest = await tapSteps(page, 200);
  expect(rest).toBeGreaterThan(60);
  await expect(page.getByText("Every step is complete.")).toBeVisible();
  await expect(page.locator(".crew-card", { hasText: "finished" })).toHaveCount(4);

  await page.getByRole("button", { name: "Close walk" }).click();
  await page.getByRole("radio", { name: /^Complete/ }).check();
  await page.getByRole("button", { name: "Close the walk: complete" }).click();
  await expect(page).toHaveURL(/\/review\//);
  await expect(page.getByRole("heading", { level: 1 }).filter({ visible: true })).toBeVisible();
});

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
