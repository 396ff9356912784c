import { expect, type Locator, type Page, test } from "@playwright/test";
import type { Instant, RecordId, StepId } from "../../src/core/units/index.ts";
import { openImported } from "./imported-walk.ts";
import { shortWalk } from "./short-walk.ts";
import { openPanel, tapDone } from "./walk-by-tapping.ts";
import { bundledText, playedLog, procedureFile, WrittenWalk } from "./written-walk.ts";

/** How far the page can be scrolled sideways, in px; regions made to scroll by themselves do not count. */
const sideways = (page: Page) =>
  page.evaluate(() => {
    const scrollers = [
      document.scrollingElement,
      ...document.querySelectorAll("main, .follow-scroll, .side-body"),
    ];
    return Math.max(...scrollers.map((element) => (element ? element.scrollWidth - element.clientWidth : 0)));
  });

async function boxOf(locator: Locator) {
  const box = await locator.boundingBox();
  if (!box) throw new Error(`${locator} is not laid out`);
  return box;
}

async function expectHighTargets(page: Page): Promise<void> {
  const low = await page.evaluate(() => {
    const targets = [
      ...document.querySelectorAll<HTMLElement>(
        "button, select, summary, a[href], input:not([type=radio]):not([type=checkbox]):not([hidden]), textarea",
      ),
    ];
    return targets
      .filter((target) => target.checkVisibility() && target.getBoundingClientRect().height > 0)
      .filter((target) => {
        const needed = target.classList.contains("done-button") ? 76 : 48;
        return target.getBoundingClientRect().height < needed - 0.5;
      })
      .map(
        (target) =>
          `${target.textContent?.slice(0, 30) || target.tagName} ${target.getBoundingClientRect().height}`,
      );
  });
  expect(low).toEqual([]);
}

const midway = () => {
  const file = procedureFile(bundledText("osier-ranging-head"));
  const start = (Date.now() - 134 * 60_000) as never;
  return playedLog(file, { seed: 7, start, until: Date.now() as never });
};

test("no screen scrolls sideways and every target is large enough", async ({ page }) => {
  test.setTimeout(90_000);
  const walk = midway();
  await openImported(page, walk);
  await expect(page.locator('[data-stage="working"]').first()).toBeVisible();
  expect(await sideways(page)).toBe(0);
  await expectHighTargets(page);
  for (const address of [
    "/",
    "/read/example-osier-ranging-head",
    "/plan/example-osier-ranging-head",
    `/timeline/${walk.walk}`,
    `/review/${walk.walk}`,
    "/join",
  ]) {
    await page.goto(address);
    await expect(page.getByRole("heading", { level: 1 }).filter({ visible: true }).first()).toBeVisible();
    await page.waitForTimeout(300);
    expect(await sideways(page), address).toBe(0);
    await expectHighTargets(page);
  }
});

test("on a phone the tables of a review stand row by row, each cell behind the name of its column", async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const walk = midway();
  await openImported(page, walk);
  await page.evaluate(() => localStorage.setItem("tetherline.language", '"ar"'));
  await page.goto(`/review/${walk.walk}`);
  const tables = page.locator(".review-table");
  await expect(tables.last()).toBeVisible();
  const wide = await tables.evaluateAll((all) =>
    all.filter((one) => one.scrollWidth > one.clientWidth).map((one) => one.getAttribute("aria-labelledby")),
  );
  expect(wide).toEqual([]);
  const steps = page.getByRole("table").last();
  const named = await steps
    .locator("td:not(:empty)")
    .first()
    .evaluate((cell) => getComputedStyle(cell, "::before").content);
  expect(named).not.toMatch(/^(none|""|normal)$/);
  await expect(steps.getByRole("cell").first()).toBeVisible();
  await page.goto(`/handover/${walk.walk}`);
  const crew = page.locator(".handover-crew");
  await expect(crew.getByRole("cell").first()).toBeVisible();
  expect(await crew.evaluate((one) => one.scrollWidth - one.clientWidth)).toBeLessThanOrEqual(0);
  const narrow = await crew.getByRole("cell").evaluateAll((cells) => cells.map((cell) => cell.clientWidth));
  expect(Math.min(...narrow)).toBeGreaterThan(300);
});

test("no figure of a time in the table of what is written is broken over two lines", async ({ page }) => {
  await page.goto("/write/example-osier-ranging-head");
  await expect(page.locator('[data-column="time"]').filter({ visible: true }).nth(4)).toBeVisible();
  const broken = await page.locator('li [data-column="time"]').evaluateAll((cells) =>
    cells.flatMap((cell) => {
      const texts = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT);
      const lines: string[] = [];
      for (let text = texts.nextNode(); text; text = texts.nextNode()) {
        const range = document.createRange();
        range.selectNodeContents(text);
        const tops = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
        if (tops.size > 1) lines.push(text.textContent ?? "");
      }
      return lines;
    }),
  );
  expect(broken).toEqual([]);
  const beyond = await page
    .locator('li [data-column="time"]')
    .evaluateAll((cells) => cells.filter((cell) => cell.scrollWidth > cell.clientWidth + 1).length);
  expect(beyond).toBe(0);
});

test("in a language from right to left panels stand on the left, and times and the file run from left to right", async ({
  page,
}) => {
  await page.setViewportSize({ width: 1180, height: 820 });
  await page.goto("/");
  await page.evaluate(() => localStorage.setItem("tetherline.language", '"ar"'));
  await page.goto("/write/example-osier-ranging-head");
  const time = page.locator('li [data-column="time"]').filter({ hasText: "/" }).first();
  await expect(time).toBeVisible();
  const lefts = await time
    .locator(".write-figure")
    .evaluateAll((parts) => parts.map((part) => [part.textContent, part.getBoundingClientRect()] as const))
    .then((parts) => parts.filter(([, { top }]) => top === parts[0]?.[1].top).map(([, { left }]) => left));
  expect(lefts.length).toBeGreaterThan(1);
  expect(lefts).toEqual(lefts.toSorted((a, b) => a - b));
  await page.getByRole("button", { name: "النص" }).click();
  const line = page.locator(".cm-line").first();
  await expect(line).toHaveText("{");
  expect(await line.evaluate((one) => getComputedStyle(one).textAlign)).toBe("left");
  await page.goto("/plan/example-osier-ranging-head");
  await page.getByRole("button", { name: "ما يتسع له الوقت" }).click();
  expect((await boxOf(page.getByRole("dialog"))).x).toBe(0);
});

test("at twice the size nothing is lost", async ({ page, viewport }) => {
  // Content must reflow down to 320 px (WCAG 2.2, 1.4.10); a phone is enlarged by pinching beyond that.
  const width = Math.max(320, Math.round((viewport?.width ?? 0) / 2));
  await page.setViewportSize({ width, height: Math.round((viewport?.height ?? 0) / 2) });
  await openImported(page, shortWalk(4));
  expect(await sideways(page)).toBe(0);
  const done = page.locator(".done-button").first();
  await done.scrollIntoViewIfNeeded();
  await expect(done).toBeInViewport();
  await tapDone(done);
  await expect(page.locator('li[data-stage="done"]')).toHaveCount(1);
  await page.goto("/");
  expect(await sideways(page)).toBe(0);
  await expect(page.getByRole("button", { name: /^Follow / }).first()).toBeVisible();
});

test("no panel covers the clock or the cards", async ({ page }) => {
  await openImported(page, midway());
  const cards = page.locator(".crew-cards");
  await expect(cards).toBeVisible();
  for (const name of ["Notes", "Items", "Readings", "Hold", "Contingencies", "Close walk", "More"]) {
    await openPanel(page, name);
    const panel = await boxOf(page.getByRole("dialog"));
    for (const part of [page.locator(".follow-bar"), cards]) {
      const { y, height } = await boxOf(part);
      expect(panel.y, name).toBeGreaterThanOrEqual(y + height - 1);
    }
    await page.keyboard.press("Escape");
  }
});

test("the step in hand stays in view when the device is turned, and when the reader comes back", async ({
  page,
}) => {
  await openImported(page, midway());
  const current = page.locator('li[data-stage="working"]').first();
  await expect(current).toBeInViewport();
  for (const [width, height] of [
    [820, 1180],
    [390, 844],
    [844, 390],
    [1180, 820],
  ] as const) {
    await page.setViewportSize({ width, height });
    await expect(current, `at ${width} × ${height}`).toBeInViewport();
    await expect(page.getByRole("button", { name: "Back to now" })).toHaveCount(0);
    // Each strand is drawn once, in a piece for each stretch of the list.
    expect(await page.locator(".braided-body > *").count()).toBe(2);
  }
});

test("nothing in the head of the follow screen is cut", async ({ page }) => {
  await openImported(page, midway());
  for (const [width, height] of [
    [1180, 820],
    [820, 1180],
    [390, 844],
    [844, 390],
  ] as const) {
    await page.setViewportSize({ width, height });
    const cut = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>(".follow-head *, .crew-cards *")]
        .filter((element) => element.checkVisibility() && !(element instanceof SVGElement))
        .filter(({ scrollWidth, clientWidth }) => clientWidth > 0 && scrollWidth > clientWidth + 1)
        .map((element) => `${element.className} ${element.textContent?.slice(0, 40)}`),
    );
    expect(cut, `at ${width} × ${height}`).toEqual([]);
    const shown = (await page.locator(".follow-head").textContent()) ?? "";
    for (const part of ["Ranging head exchange", "rev.", "PET", "Turn back", "margin"])
      expect(shown, `at ${width} × ${height}`).toContain(part);
  }
});

test("at arm's length the clock, the alerts, the open steps and the next two are large enough", async ({
  page,
  viewport,
}) => {
  // On a phone, which is held nearer, the room goes to what there is to read: the clock alone must be that large.
  const isTablet = (viewport?.width ?? 0) >= 640;
  const file = procedureFile(bundledText("osier-ranging-head"));
  const start = (Date.now() - 14 * 60_000) as Instant;
  const walk = new WrittenWalk(file, { start, walk: "arms-length" })
    .done(["suits-on-battery", 2], ["lock-pressure", 3])
    .enter("record.taken", { step: "ev1-suit" as StepId, record: "pressure" as RecordId, value: 31 }, 4);
  await openImported(page, walk);
  const next = page.locator(
    '.follow-open ~ .follow-line:is([data-stage="later"], [data-stage="maybe"]) .follow-do',
  );
  const tabletParts = {
    alerts: page.locator(".alert-strip .alert-text"),
    "open steps": page.locator(".open-do"),
    "the next step": next.nth(0),
    "the one behind it": next.nth(1),
  };
  const parts = { clock: page.locator(".follow-pet"), ...(isTablet ? tabletParts : {}) };
  for (const [name, part] of Object.entries(parts)) {
    await expect(part.first(), name).toBeVisible();
    const sizes = await part.evaluateAll((all) =>
      all.map((one) => parseFloat(getComputedStyle(one).fontSize)),
    );
    expect(Math.min(...sizes), name).toBeGreaterThanOrEqual(24);
  }
  const beyond = isTablet ? next.nth(2) : next.nth(0);
  expect(await beyond.evaluate((one) => parseFloat(getComputedStyle(one).fontSize))).toBeLessThan(24);
});
