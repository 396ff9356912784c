import { expect, test } from "@playwright/test";
import { openImported } from "./imported-walk.ts";
import { bundledText, playedLog, procedureFile } from "./written-walk.ts";

test("the shelf is where it was when another page is left again", async ({ page }) => {
  await page.goto("/");
  const third = page.getByRole("button", { name: /^Read / }).nth(2);
  const top = await third.boundingBox();
  await page.mouse.move(500, 400);
  await page.mouse.wheel(0, 400);
  await expect.poll(async () => (await third.boundingBox())?.y).not.toBe(top?.y);
  await page.waitForTimeout(300);
  const before = await third.boundingBox();
  await third.click();
  await expect(page).toHaveURL(/\/read\//);
  await expect(page.getByRole("list").filter({ visible: true }).first()).toBeVisible();
  await expect(page.getByRole("heading", { name: "Tetherline" })).toBeHidden();
  await page.goBack();
  const again = page.getByRole("button", { name: /^Read / }).nth(2);
  await expect
    .poll(async () => Math.abs(((await again.boundingBox())?.y ?? 0) - (before?.y ?? 0)))
    .toBeLessThan(2);
  await page.goForward();
  await expect(page).toHaveURL(/\/read\//);
  await page.goBack();
  await expect(again).toBeVisible();
});

test("a walk is listed before the store is read, and opened by a tap at that moment", async ({ page }) => {
  const file = procedureFile(bundledText("practice"));
  const walk = playedLog(file, { seed: 1, start: Date.UTC(2031, 3, 2, 9) as never, until: null });
  await openImported(page, walk);
  await page.goto("/");
  await expect(page.getByText(/entries|last entry|closed|running/i).first()).toBeVisible();
  // A store that takes its time.
  await page.addInitScript(() => {
    const open = indexedDB.open.bind(indexedDB);
    Object.defineProperty(indexedDB, "open", {
      value: (...asked: Parameters<typeof open>) => {
        const until = performance.now() + 400;
        while (performance.now() < until);
        return open(...asked);
      },
    });
  });
  await page.reload({ waitUntil: "commit" });
  await expect(page.getByText("Listed here last time, not read yet.").first()).toBeVisible();
  await page
    .getByRole("button", { name: /^(Go on|Review)$/ })
    .first()
    .click();
  await expect(page).toHaveURL(/\/(follow|review)\//);
  await expect(page.getByText(file.title).filter({ visible: true }).first()).toBeVisible();
});

test("an address that names no walk ends on a page that says so", async ({ page }) => {
  await page.goto("/follow/nothing");
  await expect(page.getByRole("button", { name: /shelf/i }).filter({ visible: true }).first()).toBeVisible();
});
