import { expect, test } from "@playwright/test";
import { forgedRequests } from "./forged-requests.ts";
import { linkCell, listText, openLinkPanel, startClockForAll, threeTablets } from "./linked-tablet.ts";
import { type StartedHub, startHubProcess } from "./started-hub.ts";
import { tapDone } from "./walk-by-tapping.ts";

let hub: StartedHub;

test.beforeAll(async ({ browserName: _ }, testInfo) => {
  hub = await startHubProcess(4810 + testInfo.parallelIndex * 40, "--name", "Test hub");
});

test.afterAll(async () => hub?.stop());

test("[HUB] a watcher cannot mark by any request, and once taken off sees nothing more", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const { iv, watcher, pages, close } = await threeTablets(browser, hub, { viewport, hasTouch: true });
  await startClockForAll(iv.page, pages);

  await test.step("neither on the screen nor by a request of its page", async () => {
    await expect(watcher.page.locator(".done-button")).toHaveCount(0);
    const before = await listText(iv.page);
    const answers = await forgedRequests(watcher.page);
    expect(answers).toHaveLength(59);
    expect(answers.filter(({ taken, status }) => taken || status >= 500)).toEqual([]);
    // What came in would be on the lead's screen by the time that something entered later is.
    await tapDone(iv.page.locator('[data-row="ev2-check"] .done-button'));
    await expect(watcher.page.locator('[data-row="ev2-check"]')).toHaveAttribute("data-stage", "done");
    const stages = (text: string) => text.split("\n").filter((line) => !/^(ev2-check|hand-over)/.test(line));
    expect(stages(await listText(iv.page))).toEqual(stages(before));
  });

  await test.step("taken off by the lead, its link ends and says so; what is marked after does not reach it", async () => {
    const panel = await openLinkPanel(iv.page);
    await panel.getByRole("button", { name: "Take Back room off the walk" }).click();
    await expect(linkCell(watcher.page)).toContainText("Link ended");
    await panel.getByRole("button", { name: "Back", exact: true }).click();
    await tapDone(iv.page.locator('[data-row="ev1-check"] .done-button'));
    await expect(linkCell(iv.page)).toContainText("all sent");
    await watcher.page.reload();
    await expect(linkCell(watcher.page)).toContainText("Link ended");
    await expect(watcher.page.locator('[data-row="ev1-check"]')).toHaveAttribute("data-stage", "working");
  });
  await close();
});
