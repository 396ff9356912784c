import { expect, type Locator, type Page } from "@playwright/test";
import { STEADY_FOR } from "../../src/app/follow/tap-guard.ts";
import { ORBIT_WALK } from "./orbit-walk.ts";

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
    await tapDone(done);
    await expect.poll(() => doneCount(page), { intervals: [10, 20, 50, 100] }).toBe(before + 1);
  }
  return most;
}

/**
 * Taps a button that marks something, once it has been where it is for long enough that the tap counts. Where the
 * screen moved at that very moment and says that nothing was marked, it looks and taps again, as it is told to.
 */
export async function tapDone(button: Locator): Promise<void> {
  const refused = button.page().getByText("Nothing was marked: the button had only just come");
  await expect(async () => {
    await expect(refused).toBeHidden();
    await steady(button);
    await button.click();
    expect(await refused.isVisible()).toBe(false);
  }).toPass({ timeout: 60_000 });
}

/** Waits until a button is clear of what lies over the screen, and has not moved for so long that a tap on it counts. */
export async function steady(button: Locator): Promise<void> {
  await button.evaluate((element, time) => {
    // Scrolled only as far as need be it could lie under the tools, and be scrolled once more by the tap itself.
    element.scrollIntoView({ block: "center" });
    const place = () => JSON.stringify(element.getBoundingClientRect());
    return new Promise<void>((resolve) => {
      let [last, since] = [place(), performance.now()];
      const look = () => {
        const now = performance.now();
        if (place() !== last) [last, since] = [place(), now];
        if (now - since > time) resolve();
        else requestAnimationFrame(look);
      };
      look();
    });
  }, STEADY_FOR + 60);
}

/** Opens a panel of the follow screen; what is not among the tools is reached through More. */
export async function openPanel(page: Page, name: string): Promise<void> {
  const tools = page.getByRole("navigation", { name: "Walk" });
  if (name === "Items" || name === "Close walk") {
    await tools.getByRole("button", { name: "More", exact: true }).click();
    await page.getByRole("dialog").getByRole("button", { name, exact: true }).click();
  } else await tools.getByRole("button", { name, exact: true }).click();
  await expect(page.getByRole("dialog")).toBeVisible();
}

/** How many steps the list shows as done. */
export function doneCount(page: Page): Promise<number> {
  return page.locator('li[data-stage="done"]').count();
}
