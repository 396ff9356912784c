import { expect, test } from "@playwright/test";
import { violations } from "./axe-violations.ts";
import { openWalk, startClock } from "./walk-by-tapping.ts";

test("[MAP5] [MAP6] the map stands beside the list, is moved by keys and buttons, and tells about whom is tapped", async ({
  page,
}) => {
  await openWalk(page);
  await startClock(page);
  await page.getByRole("navigation", { name: "Walk" }).getByRole("button", { name: "Map" }).click();
  const panel = page.getByRole("dialog", { name: "Map" });
  const map = panel.getByRole("group", { name: /^Map of the worksite/ });
  await expect(map).toBeVisible();
  const [list, beside] = await Promise.all([
    page.locator(".follow-scroll").boundingBox(),
    panel.boundingBox(),
  ]);
  expect((list?.x ?? 0) + (list?.width ?? 0)).toBeLessThanOrEqual((beside?.x ?? 0) + 1);
  await expect(page.locator(".done-button").first()).toBeVisible();

  const stage = panel.locator(".map-stage");
  const place = () => stage.evaluate((element) => element.style.transform);
  const height = () => stage.evaluate((element) => element.clientHeight);
  const whole = await height();
  await panel.getByRole("button", { name: "Larger" }).click();
  await panel.getByRole("button", { name: "Larger" }).click();
  expect(await height()).toBeGreaterThan(whole * 1.1);
  const before = await place();
  await map.focus();
  await page.keyboard.press("ArrowRight");
  await expect.poll(place).not.toBe(before);
  const moved = await place();
  await panel.getByRole("button", { name: "Further up" }).click();
  await expect.poll(place).not.toBe(moved);
  await map.focus();
  await page.keyboard.press("0");
  await expect.poll(height).toBe(whole);

  await panel.getByRole("button", { name: /^EV1/ }).first().click();
  await expect(panel.getByRole("heading", { name: "EV1" })).toBeVisible();
  await expect(panel.getByText("anchored at Sluice airlock, inside")).toBeVisible();
  await panel.getByLabel("Tell about").selectOption({ label: "Approach mast, head" });
  await expect(panel.getByRole("heading", { name: "Approach mast, head" })).toBeVisible();
  expect(await violations(page, ".map-beside")).toEqual([]);

  await page.setViewportSize({ width: 820, height: 1180 });
  await expect.poll(async () => (await panel.boundingBox())?.width).toBe(820);
  await panel.getByRole("button", { name: "Back" }).click();
  await expect(panel).toBeHidden();
});
