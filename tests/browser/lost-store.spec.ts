import { expect, type Page, test } from "@playwright/test";
import { linkCell, openLinkPanel, startClockForAll, threeTablets } from "./linked-tablet.ts";
import { type StartedHub, startHubProcess } from "./started-hub.ts";
import { tapDone } from "./walk-by-tapping.ts";

let hub: StartedHub;

test.beforeAll(async ({ browserName: _ }, testInfo) => {
  hub = await startHubProcess(4810 + testInfo.parallelIndex * 40, "--name", "Test hub");
});

test.afterAll(async () => hub?.stop());

const doneIn = (step: string) => `[data-row="${step}"] .done-button`;
const stage = (step: string) => `[data-row="${step}"]`;

/** Clears what pages of a tablet keep, as its user or its browser may do at any time. */
async function clear(page: Page, storageTypes: "indexeddb" | "indexeddb,cookies"): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send("Storage.clearDataForOrigin", { origin: new URL(page.url()).origin, storageTypes });
}

test("[LINK] the store is cleared under a linked tablet: its marks arrive, and the walk comes back when it is loaded anew", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const { iv, ground, pages, close } = await threeTablets(browser, hub, {
    viewport,
    hasTouch: true,
    serviceWorkers: "allow",
  });
  const isDone = (page: Page, step: string) =>
    expect(page.locator(stage(step))).toHaveAttribute("data-stage", "done", { timeout: 60_000 });
  await startClockForAll(iv.page, pages);

  await clear(ground.page, "indexeddb");
  await tapDone(ground.page.locator(doneIn("ev2-check")));
  await isDone(iv.page, "ev2-check");
  await expect(linkCell(ground.page)).toContainText("Linked");
  const panel = await openLinkPanel(ground.page);
  await expect(panel.getByText("marker · this tablet")).toBeVisible();
  await expect(panel.getByText("Owner’s code")).toHaveCount(0);
  await panel.getByRole("button", { name: "Back", exact: true }).click();

  await clear(ground.page, "indexeddb");
  await ground.page.reload();
  await isDone(ground.page, "ev2-check");
  await tapDone(ground.page.locator(doneIn("ev1-check")));
  await isDone(iv.page, "ev1-check");

  await clear(ground.page, "indexeddb,cookies");
  await ground.page.reload();
  await expect(ground.page.getByText("join the walk with a new code")).toBeVisible();
  await ground.page.getByRole("button", { name: "Join a walk" }).click();
  await expect(ground.page.getByLabel("Code (nine letters and digits)")).toBeVisible();
  await close();
});
