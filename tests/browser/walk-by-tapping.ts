import { expect, type Page } from "@playwright/test";

/** The orbit walk that comes with the app. */
export const ORBIT_WALK = "Ranging head exchange and fin shunt";

/** Opens the shelf and starts following a procedure; the clock is not started yet. */
export async function openWalk(page: Page, title: string = ORBIT_WALK): Promise<void> {
  await page.goto("/");
  await page.getByRole("button", { name: `Follow ${title}`, exact: true }).click();
  await expect(page.getByRole("button", { name: "Start the clock" })).toBeVisible();
}

/** Starts the clock of the walk on screen. */
export async function startClock(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Start the clock" }).click();
  await expect(page.locator(".done-button").first()).toBeVisible();
}

/** Marks up to `most` steps done by tapping; returns how many were confirmed on screen. Stops when no step can be marked. */
export async function tapSteps(page: Page, most: number): Promise<number> {
  // One that was just tapped stands in place for a moment, switched off.
  const done = page.locator(".done-button:not([aria-disabled])").first();
  const complete = page.getByText("Every step is complete.");
  for (let confirmed = 0; confirmed < most; confirmed += 1) {
    const before = await doneCount(page);
    await expect(done.or(complete).first()).toBeAttached();
    if (await complete.isVisible()) return confirmed;
    await done.click();
    await expect.poll(() => doneCount(page), { intervals: [10, 20, 50, 100] }).toBe(before + 1);
  }
  return most;
}

/** How many steps the list shows as done. */
export function doneCount(page: Page): Promise<number> {
  return page.locator('li[data-stage="done"]').count();
}
