import { readFileSync } from "node:fs";
import { expect, type Locator, type Page, test } from "@playwright/test";
import { STEADY_FOR } from "../../src/app/follow/tap-guard.ts";
import { type Duration, type Instant, later } from "../../src/core/units/index.ts";
import { openImported } from "./imported-walk.ts";
import { ORBIT_WALK } from "./orbit-walk.ts";
import { doneCount, steady } from "./walk-by-tapping.ts";
import { bundledText, playedLog, procedureFile, WrittenWalk } from "./written-walk.ts";

/** Moves with Tab, or back with Shift+Tab, until an element has the focus, seeing to it that the focus is always on something and always visible. */
async function tabTo(page: Page, target: Locator, most = 250): Promise<void> {
  for (let presses = 0; presses < most; presses += 1) {
    const way = await target.evaluate((element) => {
      const at = document.activeElement;
      if (at === element) return null;
      const isBehind =
        at !== null &&
        at !== document.body &&
        (element.compareDocumentPosition(at) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
      return isBehind ? "Shift+Tab" : "Tab";
    });
    if (way === null) return;
    await page.keyboard.press(way);
    const focus = await page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return null;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      return {
        name: element.outerHTML.slice(0, 120),
        isMarked: outlineStyle !== "none" && Number.parseFloat(outlineWidth) > 0,
      };
    });
    if (focus) expect(focus.isMarked, `no focus mark on ${focus.name}`).toBe(true);
  }
  throw new Error(`Tab does not reach ${target}`);
}

async function pressOn(page: Page, target: Locator, key = "Enter"): Promise<void> {
  await tabTo(page, target);
  await page.keyboard.press(key);
}

const focusIsOn = (page: Page) =>
  page.evaluate(() =>
    document.activeElement === document.body ? "nothing" : (document.activeElement?.className ?? ""),
  );

const tool = (page: Page, name: string) =>
  page.getByRole("navigation", { name: "Walk" }).getByRole("button", { name, exact: true });

test("a whole walk goes by keyboard alone", async ({ page }) => {
  test.setTimeout(900_000);
  await page.goto("/");
  await expect(page.getByRole("button", { name: `Follow ${ORBIT_WALK}` })).toBeVisible();
  await pressOn(page, page.getByRole("button", { name: `Follow ${ORBIT_WALK}`, exact: true }));
  await pressOn(page, page.getByRole("button", { name: "Start the clock" }));
  await expect(page.locator(".done-button:not([aria-disabled])").first()).toBeVisible();

  // Ten steps: after the first the focus goes on to the next step by itself, so that Enter is enough.
  await tabTo(page, page.locator(".done-button:not([aria-disabled])").first());
  for (let done = 1; done <= 10; done += 1) {
    if ((await focusIsOn(page)) !== "done-button")
      await tabTo(page, page.locator(".done-button:not([aria-disabled])").first());
    await page.waitForTimeout(STEADY_FOR + 60);
    await page.keyboard.press("Enter");
    await expect.poll(() => doneCount(page)).toBe(done);
    await expect.poll(() => focusIsOn(page), { message: `after step ${done}` }).not.toBe("nothing");
    await expect(page.locator('[aria-disabled="true"]')).toHaveCount(0);
    await expect.poll(() => focusIsOn(page), { message: `settled after step ${done}` }).not.toBe("nothing");
  }
  await expect(page.getByRole("status").filter({ hasText: "done:" })).toHaveAttribute("role", "status");

  await page.keyboard.press("Escape");
  for (const name of ["Hold", "Notes", "Readings", "Contingencies", "More"]) {
    await pressOn(page, tool(page, name));
    await expect(page.getByRole("dialog")).toBeVisible();
    expect(await page.evaluate(() => document.activeElement?.closest("[role=dialog]") !== null)).toBe(true);
    await page.keyboard.press("Escape");
    await expect(page.getByRole("dialog")).toHaveCount(0);
    await expect(tool(page, name)).toBeFocused();
  }

  // A step is skipped with its reason, and that is undone.
  const before = await page.locator('li[data-stage="skipped"]').count();
  const more = page.getByRole("button", { name: /^More for step/ }).first();
  const label = (await more.getAttribute("aria-label")) ?? "";
  await pressOn(page, more);
  const panel = page.getByRole("dialog");
  await expect(panel.getByRole("button", { name: "Skip this step" })).toBeDisabled();
  await tabTo(page, panel.getByLabel("Reason or note"));
  await page.keyboard.type("No need here");
  await pressOn(page, panel.getByRole("button", { name: "Skip this step" }));
  await expect(page.locator('li[data-stage="skipped"]')).toHaveCount(before + 1);
  await pressOn(page, page.getByRole("button", { name: "Undo" }));
  await expect(page.locator('li[data-stage="skipped"]')).toHaveCount(before);
  await expect(page.getByRole("button", { name: label })).toBeVisible();

  await pressOn(page, tool(page, "Hold"));
  await pressOn(page, page.getByRole("dialog").getByRole("button", { name: "Hold", exact: true }));
  await expect(page.locator('.follow[data-phase="held"]')).toBeVisible();
  const lift = page.getByRole("button", { name: "Lift the hold" });
  await steady(lift);
  await pressOn(page, lift);
  await expect(page.locator('.follow[data-phase="running"]')).toBeVisible();

  await pressOn(page, tool(page, "More"));
  await pressOn(page, page.getByRole("dialog").getByRole("button", { name: "Close walk" }));
  // Both are out, so that the walk cannot be called complete, and another end needs its reason.
  await expect(page.getByRole("radio", { name: /^Complete/ })).toHaveCount(0);
  await tabTo(page, page.getByRole("radio", { name: /^Terminated/ }));
  await page.keyboard.press("Space");
  await expect(page.getByRole("radio", { name: /^Terminated/ })).toBeChecked();
  await tabTo(page, page.getByRole("dialog").getByLabel("Reason"));
  await page.keyboard.type("Enough for today");
  await pressOn(page, page.getByRole("button", { name: "Close the walk: terminated" }));
  await expect(page).toHaveURL(/\/review\//);
  const exporting = page.getByRole("button", { name: "Log (JSON Lines)" });
  await expect(exporting).toBeVisible();
  await tabTo(page, exporting);
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  expect(readFileSync(await download.path(), "utf8").split("\n").length).toBeGreaterThan(14);
});

test("a value, a confirmation and a decision go by keyboard alone", async ({ page }) => {
  const file = procedureFile(bundledText("osier-ranging-head"));
  const start = later(Date.now() as Instant, (-12 * 60_000) as Duration);
  await openImported(
    page,
    new WrittenWalk(file, { start, walk: "at-suit-check" }).done(
      ["suits-on-battery", 2],
      ["lock-pressure", 3],
    ),
  );
  const pressure = page.getByRole("textbox", { name: /Suit pressure/ }).first();
  await tabTo(page, pressure);
  await page.keyboard.type("29,5");
  await page.keyboard.press("Enter");
  await expect(page.getByText("✓ recorded").first()).toBeVisible();
  const confirm = page.getByRole("button", { name: "Confirmed" }).first();
  await steady(confirm);
  await pressOn(page, confirm);
  await expect(page.getByText("✓ confirmed").first()).toBeVisible();

  const whole = playedLog(file, { seed: 4, start: later(start, (-200 * 60_000) as Duration), until: null });
  const lines = whole.text.split("\n");
  const cut = lines.findIndex((line) => line.includes("decision.taken"));
  await openImported(page, { walk: whole.walk, text: lines.slice(0, cut).join("\n") });
  await expect(page.getByText("Does cover bolt 3 turn?")).toBeVisible();
  const stuck = page.locator(".done-button").filter({ hasText: "stuck" });
  await steady(stuck);
  await pressOn(page, stuck);
  await expect(page.locator('[data-row="stuck-call"]')).toBeVisible();
  await expect(page.locator('[data-row="ev1-bolt-3-out"]')).toHaveCount(0);
});
