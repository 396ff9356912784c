import { expect, type Page, test } from "@playwright/test";
import { openImported } from "./imported-walk.ts";
import { shortWalk } from "./short-walk.ts";
import { openPanel, steady, tapDone } from "./walk-by-tapping.ts";
import { bundledText, playedLog, procedureFile } from "./written-walk.ts";

const row = (page: Page, step: string) => page.locator(`[data-row="${step}"]`);
const card = (page: Page, call: string) => page.locator(".crew-card", { hasText: call });
const doneIn = (page: Page, step: string) => row(page, step).locator(".done-button");
const tool = (page: Page, name: string) =>
  page.getByRole("navigation", { name: "Walk" }).getByRole("button", { name, exact: true });

async function openPanelOf(page: Page, step: string) {
  await row(page, step).getByRole("button").last().click();
  const panel = page.getByRole("dialog");
  await expect(panel).toBeVisible();
  return panel;
}

test("a joint step shows who waits for whom, and starts when both are there", async ({ page }) => {
  await openImported(page, shortWalk(4));
  await tapDone(doneIn(page, "ev2-check"));
  await expect(card(page, "EV2")).toContainText("waits for EV1");
  await expect(row(page, "hand-over")).toContainText("EV2 is here: waits for EV1");
  await expect(doneIn(page, "hand-over")).toHaveCount(0);
  await tapDone(doneIn(page, "ev1-check"));
  await expect(doneIn(page, "hand-over")).toBeVisible();
  await expect(card(page, "EV2")).toContainText("working");
});

test("[WLK7] a value outside its limits is taken and flagged, one that is no number is not", async ({
  page,
}) => {
  await openImported(page, shortWalk(2));
  const field = page.getByRole("textbox", { name: /Suit pressure/ });
  await field.fill("much");
  await field.press("Enter");
  await expect(row(page, "ev1-check")).toContainText("a number, please");
  await field.fill("27,5");
  await field.press("Enter");
  await expect(row(page, "ev1-check")).toContainText("outside the limits");
  await expect(field).toHaveValue("27.5");
  await tapDone(doneIn(page, "ev1-check"));
  await expect(row(page, "ev1-check")).toContainText("Suit pressure is outside its limits");
});

test("what is typed into a field is kept when Done is tapped right after", async ({ page }) => {
  await openImported(page, shortWalk(2));
  await page.getByRole("textbox", { name: /Suit pressure/ }).fill("29,5");
  await steady(doneIn(page, "ev1-check"));
  await doneIn(page, "ev1-check").tap();
  await expect(row(page, "ev1-check")).toHaveAttribute("data-stage", "done");
  const panel = await openPanelOf(page, "ev1-check");
  await expect(panel).toContainText("29.5");
});

test("one tap is one entry, however quickly it is repeated", async ({ page }) => {
  await openImported(page, shortWalk(2));
  await steady(doneIn(page, "ev2-check"));
  await doneIn(page, "ev2-check").evaluate((button: HTMLElement) => {
    button.click();
    button.click();
    button.click();
  });
  await expect(row(page, "ev2-check")).toHaveAttribute("data-stage", "done");
  await tool(page, "More").click();
  await expect(page.getByText("None: every entry counts.")).toBeVisible();
});

test("a step is skipped with a reason, done out of order, and opened again", async ({ page }) => {
  await openImported(page, shortWalk(4));
  let panel = await openPanelOf(page, "ev2-check");
  await expect(panel.getByRole("button", { name: "Skip this step" })).toBeDisabled();
  await panel.getByLabel("Reason or note").fill("Checked in the airlock");
  await panel.getByRole("button", { name: "Skip this step" }).click();
  await expect(row(page, "ev2-check")).toHaveAttribute("data-stage", "skipped");

  panel = await openPanelOf(page, "ev2-stow");
  await panel.getByLabel("Reason or note").fill("The bag was open");
  await panel.getByRole("button", { name: "Done out of order" }).click();
  await expect(row(page, "ev2-stow")).toContainText("out of order");

  panel = await openPanelOf(page, "ev2-check");
  await expect(panel).toContainText("Checked in the airlock");
  await panel.getByLabel("Reason or note").fill("It was another suit");
  await panel.getByRole("button", { name: "Open it again" }).click();
  await expect(row(page, "ev2-check")).toHaveAttribute("data-stage", "working");
});

test("a get-ahead is skipped without a reason, and a step is done before its lag is over", async ({
  page,
}) => {
  await openImported(
    page,
    shortWalk(9).done(["ev1-check", 2], ["ev2-check", 3], ["hand-over", 5], ["iv-power", 5], ["ev2-stow", 8]),
  );
  await expect(doneIn(page, "iv-test")).toContainText("Done already");
  await tapDone(doneIn(page, "iv-test"));
  await expect(row(page, "iv-test")).toHaveAttribute("data-stage", "done");
  const panel = await openPanelOf(page, "ev2-photos");
  await panel.getByRole("button", { name: "Skip this step" }).click();
  await expect(row(page, "ev2-photos")).toHaveAttribute("data-stage", "skipped");
});

test("[WLK5] a decision taken otherwise later brings the other branch in", async ({ page }) => {
  await openImported(page, shortWalk(9).done(["ev1-check", 2], ["ev2-check", 3], ["hand-over", 5]));
  await tapDone(doneIn(page, "try-bolt").filter({ hasText: "turns" }));
  await expect(row(page, "bolt-out")).toHaveAttribute("data-stage", "working");
  await expect(row(page, "call-stuck")).toHaveCount(0);
  const panel = await openPanelOf(page, "try-bolt");
  await panel.getByRole("button", { name: "stuck" }).click();
  await expect(row(page, "call-stuck")).toBeVisible();
  await expect(row(page, "bolt-out")).toHaveCount(0);
});

test("a hold stops every lane and the clock runs on", async ({ page }) => {
  await openImported(page, shortWalk(4).done(["ev2-check", 3]));
  await tool(page, "Hold").click();
  await page
    .getByRole("dialog")
    .getByLabel(/^Reason/)
    .fill("Weather of the sun");
  await page.getByRole("dialog").getByRole("button", { name: "Hold", exact: true }).click();
  await expect(page.locator(".follow-bar")).toContainText("Held");
  const veil = page.locator(".held-veil");
  await expect(veil).toContainText("Weather of the sun");
  await expect(veil).toContainText("Called by EV1.");
  const pet = await page.locator(".follow-pet").textContent();
  await expect(page.locator(".follow-pet")).not.toHaveText(pet ?? "");
  await tapDone(page.getByRole("button", { name: "Lift the hold" }));
  await expect(page.locator(".follow-bar")).toContainText("Running");
});

test("the items and readings panels enter what is told", async ({ page }) => {
  await openImported(page, shortWalk(4));
  await openPanel(page, "Items");
  const panel = page.getByRole("dialog");
  await panel.getByRole("combobox", { name: "Item", exact: true }).selectOption("driver");
  await panel.getByRole("combobox", { name: "Is now" }).selectOption({ label: "with EV2" });
  await panel.getByLabel("Why").fill("Handed over early");
  await panel.getByRole("button", { name: "Enter the move" }).click();
  await expect(panel.getByRole("row", { name: /Driver/ })).toContainText("with EV2");
  await panel.getByRole("button", { name: "Back" }).click();

  await tool(page, "Readings").click();
  await panel.getByRole("textbox").first().fill("5900,5");
  await panel.getByRole("button", { name: "Enter", exact: true }).first().click();
  await expect(panel).toContainText("5900.5 kPa read");
});

test("[LOG4] entries without effect are listed with their reason", async ({ page }) => {
  await openImported(page, shortWalk(4).done(["ev2-stow", 1], ["nowhere", 2]));
  await tool(page, "More").click();
  const listed = page.getByRole("dialog").getByRole("listitem");
  await expect(listed).toHaveCount(2);
  await expect(listed.first()).toContainText("Entry 3:");
});

test("a reader who scrolls away is left there and offered the way back to now", async ({ page }) => {
  const file = procedureFile(bundledText("osier-ranging-head"));
  const start = (Date.now() - 120 * 60_000) as never;
  await openImported(page, playedLog(file, { seed: 7, start, until: Date.now() as never }));
  const current = page.locator('[data-stage="working"]').first();
  await expect(current).toBeInViewport();
  await page.locator(".follow-scroll").hover();
  await page.waitForTimeout(800);
  await page.locator(".follow-scroll").evaluate((list) => list.scrollTo({ top: 0 }));
  const back = page.getByRole("button", { name: "Back to now" });
  await expect(back).toBeVisible();
  await expect(current).not.toBeInViewport();
  await back.click();
  await expect(current).toBeInViewport();
  await expect(back).toHaveCount(0);
});

test("the screen is kept awake during a walk and let go after it", async ({ page }) => {
  await page.addInitScript(() => {
    const locks = { asked: 0, held: 0 };
    const request = async () => {
      locks.asked += 1;
      locks.held += 1;
      const lock = new EventTarget();
      return Object.assign(lock, {
        release: async () => {
          locks.held -= 1;
          lock.dispatchEvent(new Event("release"));
        },
      });
    };
    Object.defineProperty(navigator, "wakeLock", { value: { request } });
    Object.assign(window, { locks });
  });
  const held = () => page.evaluate(() => (window as unknown as { locks: { held: number } }).locks.held);
  await openImported(page, shortWalk(2));
  // The shelf that is gone to is drawn for the first time at first, and is the one that was come from afterwards.
  for (const isAgain of [false, true]) {
    if (isAgain) await page.getByRole("button", { name: "Go on" }).first().click();
    await expect.poll(held).toBe(1);
    await tool(page, "More").click();
    await page.getByRole("dialog").getByRole("button", { name: "Shelf" }).click();
    await expect(page.getByRole("heading", { name: "Tetherline" })).toBeVisible();
    await expect.poll(held).toBe(0);
  }
});

test("a rehearsal is played at sixty times the pace, paused, and tapped along", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "Rehearse Ranging head exchange and fin shunt" }).click();
  await page.getByRole("button", { name: "Start the rehearsal clock" }).click();
  await page.getByRole("radio", { name: /60/ }).check();
  await page.getByRole("button", { name: "Play", exact: true }).click();
  const done = page.locator('li[data-stage="done"]');
  await expect.poll(() => done.count(), { timeout: 30_000 }).toBeGreaterThan(5);
  await page.getByRole("button", { name: "Pause" }).click();
  await page.waitForTimeout(600);
  const count = await done.count();
  const pet = await page.locator(".follow-pet").textContent();
  await page.waitForTimeout(1200);
  expect(await done.count()).toBe(count);
  expect(await page.locator(".follow-pet").textContent()).toBe(pet);
  await tapDone(page.locator(".done-button").first());
  await expect.poll(() => done.count()).toBe(count + 1);
});
