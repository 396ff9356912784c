import { expect, type Page, test } from "@playwright/test";
import { openImported } from "./imported-walk.ts";
import { bundledText, playedLog, procedureFile } from "./written-walk.ts";

/** The texts that reach beyond the box they stand in, and those that are cut with an ellipsis. */
const misfits = (page: Page) =>
  page.evaluate(() => {
    const boxOf = (element: Element): Element => {
      let at = element;
      while (getComputedStyle(at).display === "inline" && at.parentElement) at = at.parentElement;
      return at;
    };
    const found = new Set<string>();
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      const parent = text.parentElement;
      if (!parent || !text.textContent?.trim() || parent.closest("svg, option, script, style")) continue;
      if (!parent.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
      const box = boxOf(parent);
      const room = box.getBoundingClientRect();
      // What only a screen reader reads has no room to stand in.
      if (room.width < 2 || room.height < 2) continue;
      const range = document.createRange();
      range.selectNodeContents(text);
      const taken = range.getBoundingClientRect();
      const isCut = getComputedStyle(box).textOverflow === "ellipsis" && box.scrollWidth > box.clientWidth;
      if (taken.right > room.right + 1 || taken.left < room.left - 1 || isCut)
        found.add(`${box.tagName.toLowerCase()}.${box.className}: ${text.textContent.trim().slice(0, 60)}`);
    }
    return [...found];
  });

const file = procedureFile(bundledText("osier-ranging-head"));

test("[WRD2] words that are longer by two fifths fit where they stand", async ({ page }) => {
  test.setTimeout(180_000);
  const start = (Date.now() - 134 * 60_000) as never;
  const walk = playedLog(file, { seed: 7, start, until: Date.now() as never });
  await openImported(page, walk);
  await page.evaluate(() => localStorage.setItem("tetherline.language", '"en-XA"'));
  const kept = `${walk.walk}`;
  for (const address of [
    "/",
    "/read/example-osier-ranging-head",
    "/plan/example-osier-ranging-head",
    "/brief/procedure/example-osier-ranging-head",
    "/write",
    `/follow/${kept}`,
    `/timeline/${kept}`,
    `/review/${kept}`,
    `/train/${kept}`,
    "/walks/osier-ranging-head",
    "/learn/osier-ranging-head",
    "/compare",
    "/library",
    "/join",
  ]) {
    await page.goto(address);
    await expect(page.locator("html")).toHaveAttribute("lang", "en-XA");
    await expect(page.getByRole("heading").filter({ visible: true }).first()).toBeVisible();
    await page.waitForTimeout(500);
    expect.soft(await misfits(page), address).toEqual([]);
    const sideways = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect.soft(sideways, address).toBeLessThanOrEqual(0);
  }
});
