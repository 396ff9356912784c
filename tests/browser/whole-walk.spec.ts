import { expect, test } from "@playwright/test";
import { doneCount, openPanel, openWalk, startClock, tapSteps } from "./walk-by-tapping.ts";

test.use({ serviceWorkers: "allow" });

test("the orbit walk is followed by tapping, offline and through a reload, to its review", async ({
  page,
  context,
}, { project }) => {
  test.setTimeout(900_000);
  // Each tap waits until it counts, so that the whole walk is tapped at one size and its first part on the phone.
  const isWhole = project.name === "landscape";
  await openWalk(page);
  // From here on the service worker must be in charge, so that the reload below needs no network.
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await startClock(page);
  const first = isWhole ? 60 : 20;
  expect(await tapSteps(page, first)).toBe(first);

  await context.setOffline(true);
  await page.reload();
  await expect.poll(() => doneCount(page)).toBe(first);
  const rest = await tapSteps(page, isWhole ? 200 : 10);
  if (isWhole) {
    expect(rest).toBeGreaterThan(60);
    await expect(page.getByText("Every step is complete.")).toBeVisible();
    await expect(page.locator(".crew-card", { hasText: "finished" })).toHaveCount(4);
  }

  await openPanel(page, "Close walk");
  const end = isWhole ? "complete" : "terminated";
  await page.getByRole("radio", { name: new RegExp(`^${end}`, "i") }).check();
  if (!isWhole) await page.getByLabel("Reason").fill("Enough for today");
  await page.getByRole("button", { name: `Close the walk: ${end}` }).click();
  await expect(page).toHaveURL(/\/review\//);
  await expect(page.getByRole("heading", { level: 1 }).filter({ visible: true })).toBeVisible();
});
