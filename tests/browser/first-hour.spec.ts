import { expect, test } from "@playwright/test";
import { violations } from "./axe-violations.ts";
import { closeWalk, guideOf, obey, obeyUntil, openPractice, saidBy } from "./practice-walk.ts";
import { doneCount, tapDone } from "./walk-by-tapping.ts";

test.use({ serviceWorkers: "allow" });

test("[PRA2] whoever knows nothing but what the guide says comes from the shelf to the review", async ({
  page,
}) => {
  await openPractice(page);
  expect(await violations(page, ".follow")).toEqual([]);
  const said = await obeyUntil(page, "Close the walk");
  expect(said.filter((words) => words.includes("the strand hangs loose down to it")).length).toBeGreaterThan(
    0,
  );
  expect(
    said.filter((words) => words.includes("a knot draws their strands together")).length,
  ).toBeGreaterThan(0);
  await expect(guideOf(page)).toContainText("Tried: 4 of 5");
  await closeWalk(page);
  await expect(guideOf(page)).toContainText("This is the review");
  await expect(guideOf(page)).toContainText("Tried: 5 of 5");
  expect(await violations(page, ".practice-guide")).toEqual([]);
  const review = page.locator(".review");
  await expect(review).toContainText("Too little voltage");
  await expect(review).toContainText("19");
  await expect(review).toContainText("EV1");

  // It has said its last: the shelf offers the practice walk first no more.
  await page.getByRole("button", { name: "Finish the practice" }).click();
  await expect(guideOf(page)).toHaveCount(0);
  await page.getByRole("button", { name: "Shelf", exact: true }).filter({ visible: true }).click();
  await expect(page.getByRole("heading", { name: "Walks" })).toBeVisible();
  await expect(page.getByRole("heading", { name: "Start here" })).toHaveCount(0);
});

test("[PRA3] [PRA4] put away, reloaded, done otherwise and in a second page, the guide goes along and blocks nothing", async ({
  page,
  context,
}) => {
  await openPractice(page);
  for (let count = 0; count < 3; count += 1) {
    const said = await obey(page);
    await expect(guideOf(page)).not.toContainText(said);
  }
  const done = await doneCount(page);
  await page.getByRole("button", { name: "Put the guide away" }).click();
  await page.reload();
  await expect(page.getByRole("button", { name: "Show the practice guide" })).toBeVisible();
  await expect.poll(() => doneCount(page)).toBe(done);
  await page.getByRole("button", { name: "Show the practice guide" }).click();

  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => doneCount(page)).toBe(done - 1);
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(guideOf(other).locator(".practice-next")).toHaveText(await saidBy(page));
  const before = await saidBy(page);
  await obey(other);
  await expect(guideOf(page).locator(".practice-next")).not.toHaveText(before);
  await other.close();

  await obeyUntil(page, "To see what an alert is like");
  await obey(page, "27");
  await expect(guideOf(page)).toContainText("lies within the limits, so nothing is raised");
  await tapDone(page.locator('[data-row="ev1-volts"] .done-button'));
  await expect(guideOf(page)).toContainText("Or go on with step 3.1");
});
