import { expect, type Page, test } from "@playwright/test";
import { violations } from "./axe-violations.ts";
import { chooseFile } from "./imported-walk.ts";
import {
  inviteFor,
  linkCell,
  listText,
  newTablet,
  openLinkPanel,
  shareWalk,
  startClockForAll,
  threeTablets,
} from "./linked-tablet.ts";
import { shortWalk } from "./short-walk.ts";
import { type StartedHub, startHubProcess } from "./started-hub.ts";
import { openPanel, tapDone } from "./walk-by-tapping.ts";

let hub: StartedHub;

test.beforeAll(async ({ browserName: _ }, testInfo) => {
  hub = await startHubProcess(4610 + testInfo.parallelIndex * 40, "--name", "Test hub");
});

test.afterAll(async () => hub?.stop());

const doneIn = (step: string) => `[data-row="${step}"] .done-button`;
const stage = (step: string) => `[data-row="${step}"]`;

test("[HUB] three tablets on one walk: one goes offline, all mark on, it returns, and all agree", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const { iv, ground, watcher, pages, gap, close } = await threeTablets(browser, hub, {
    viewport,
    hasTouch: true,
    serviceWorkers: "allow",
  });

  await test.step("the lead sees who follows, and hands out codes", async () => {
    const panel = await openLinkPanel(iv.page);
    for (const name of ["Inside", "Ground", "Back room"]) await expect(panel.getByText(name)).toBeVisible();
    await panel.getByRole("button", { name: "Make a code" }).click();
    await expect(panel.getByRole("img", { name: /QR code/ })).toBeVisible();
    expect(await violations(iv.page, ".side-panel")).toEqual([]);
    await panel.getByRole("button", { name: "Back", exact: true }).click();
  });

  await test.step("the clock and a mark on one are seen on all", async () => {
    await startClockForAll(iv.page, pages);
    await tapDone(ground.page.locator(doneIn("ev2-check")));
    for (const page of pages)
      await expect(page.locator(stage("ev2-check"))).toHaveAttribute("data-stage", "done");
  });

  await test.step("IV is offline; both mark on, one step both of them", async () => {
    await iv.context.setOffline(true);
    gap.set("closed");
    await tapDone(iv.page.locator(doneIn("ev1-check")));
    await tapDone(iv.page.locator(doneIn("iv-power")));
    await expect(linkCell(iv.page)).toContainText("2 not sent");
    await tapDone(ground.page.locator(doneIn("ev1-check")));
    await tapDone(ground.page.locator(doneIn("hand-over")));
    await expect(watcher.page.locator(stage("hand-over"))).toHaveAttribute("data-stage", "done");
  });

  await test.step("IV returns: all three screens agree", async () => {
    await gap.set("open");
    await iv.context.setOffline(false);
    for (const page of pages) {
      await expect(linkCell(page)).toContainText("all sent", { timeout: 60_000 });
      for (const step of ["ev1-check", "ev2-check", "iv-power", "hand-over"]) {
        await expect(page.locator(stage(step))).toHaveAttribute("data-stage", "done", { timeout: 60_000 });
      }
      await expect(page.locator(stage("ev1-check"))).toContainText("also marked by");
    }
    const expected = await listText(iv.page);
    for (const page of pages) await expect.poll(() => listText(page)).toBe(expected);
  });

  await close();
});

test("[HUB] a mark and a skip of one step at once: the order decides, both show it, the loser is told", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const { iv, ground, watcher, pages, gap, close } = await threeTablets(browser, hub, {
    viewport,
    hasTouch: true,
  });
  await startClockForAll(iv.page, pages);
  await expect(iv.page.locator(doneIn("ev2-check"))).toBeVisible();
  await iv.context.setOffline(true);
  gap.set("closed");
  await ground.page.locator(stage("ev2-check")).getByRole("button").last().click();
  const panel = ground.page.getByRole("dialog");
  await panel.getByLabel("Reason or note").fill("no time");
  await panel.getByRole("button", { name: "Skip this step" }).click();
  await expect(watcher.page.locator(stage("ev2-check"))).toHaveAttribute("data-stage", "skipped");
  // Later by the clock, so that the skip stands first in the order.
  await tapDone(iv.page.locator(doneIn("ev2-check")));
  await expect(iv.page.locator(stage("ev2-check"))).toHaveAttribute("data-stage", "done");
  await gap.set("open");
  await iv.context.setOffline(false);
  for (const page of pages) {
    await expect(page.locator(stage("ev2-check"))).toHaveAttribute("data-stage", "skipped", {
      timeout: 60_000,
    });
  }
  await expect(iv.page.locator(".notice-strip")).toContainText("did not count");
  await iv.page.getByRole("button", { name: "Understood" }).click();
  await expect(iv.page.locator(".notice-strip")).toHaveCount(0);
  await expect(ground.page.locator(".notice-strip")).toHaveCount(0);
  await close();
});

test("[AMD1] [AMD4] the lead amends the plan: every tablet shows it and is told until it was seen, and undoing takes it back", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const { iv, ground, watcher, pages, close } = await threeTablets(browser, hub, {
    viewport,
    hasTouch: true,
  });
  await startClockForAll(iv.page, pages);
  await openPanel(iv.page, "More");
  await iv.page.getByRole("dialog").getByRole("button", { name: "Amend the plan" }).click();
  const panel = iv.page.getByRole("dialog", { name: "Amend the plan" });
  await panel.getByText("A new step", { exact: true }).click();
  const fresh = panel.locator("details", { hasText: "What is to be done" });
  await fresh.getByLabel("What is to be done").fill("Look at the seal");
  await fresh.getByRole("checkbox", { name: "EV2" }).check();
  await fresh.getByLabel("Behind").selectOption({ label: "1.9 Do ev2-stow" });
  await fresh.getByRole("button", { name: "Add the step" }).click();
  await panel.getByText("A task", { exact: true }).click();
  await panel.getByLabel("Task", { exact: true }).selectOption("Spare");
  await panel.getByRole("button", { name: "Take the task out" }).click();
  await expect(panel.getByRole("row", { name: /^Finish/ })).toBeVisible();
  expect(await violations(iv.page, ".side-panel")).toEqual([]);
  await panel.getByLabel("Why").fill("The seal was touched");
  await panel.getByRole("button", { name: "Enter the amendment" }).click();
  await expect(panel).toBeHidden();

  for (const page of pages) {
    await expect(page.getByText("Look at the seal").first()).toBeVisible();
    await expect(page.locator(stage("ev2-photos"))).toHaveCount(0);
    await expect(page.getByText("Against amended plan")).toBeVisible();
  }
  const strip = (page: Page) => page.locator(".amendment-strip");
  await expect(strip(iv.page)).toHaveCount(0);
  for (const { page } of [ground, watcher]) {
    await expect(strip(page)).toContainText("The seal was touched");
    await expect(page.locator(".amended-tag")).toHaveText([
      "taken out by an amendment",
      "new by an amendment",
    ]);
  }
  await strip(ground.page).getByRole("button", { name: "What changed" }).click();
  await expect(ground.page.getByRole("dialog")).toContainText("taken out");
  await ground.page.getByRole("button", { name: "Back", exact: true }).click();
  await strip(ground.page).getByRole("button", { name: "Seen" }).click();
  await expect(strip(ground.page)).toHaveCount(0);
  await expect(ground.page.locator(".amended-tag")).toHaveCount(0);
  await expect(strip(watcher.page)).toHaveCount(1);

  await iv.page.getByRole("button", { name: "Undo", exact: true }).click();
  for (const page of pages) {
    await expect(page.getByText("Look at the seal")).toHaveCount(0);
    await expect(page.locator(stage("ev2-photos"))).toHaveCount(1);
  }
  await expect(strip(watcher.page)).toHaveCount(0);
  await close();
});

test("[HUB] the hub is killed under the tablets and comes back: what was marked meanwhile arrives", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const { iv, ground, pages, close } = await threeTablets(browser, hub, { viewport, hasTouch: true });
  await startClockForAll(iv.page, pages);
  await hub.kill();
  await expect(linkCell(ground.page)).toContainText("Linking", { timeout: 60_000 });
  await tapDone(ground.page.locator(doneIn("ev2-check")));
  await tapDone(iv.page.locator(doneIn("ev1-check")));
  await expect(linkCell(ground.page)).toContainText("1 not sent");
  await hub.start();
  for (const page of pages) {
    for (const step of ["ev1-check", "ev2-check"])
      await expect(page.locator(stage(step))).toHaveAttribute("data-stage", "done", { timeout: 90_000 });
    await expect(linkCell(page)).toContainText("all sent");
  }
  await close();
});

test("[HUB] a walk of before, brought in as a file, is shared whole; a QR address fills in the code", async ({
  browser,
  viewport,
}) => {
  const options = { viewport, hasTouch: true };
  const written = shortWalk(10, "walk-from-a-file").enter("step.done", { step: "ev2-check" }, 3);
  const lead = await newTablet(browser, hub, options);
  await lead.page.goto("/");
  await chooseFile(lead.page, { name: "from-a-file.walk.jsonl", text: written.text });
  await lead.page.goto("/follow/walk-from-a-file");
  await shareWalk(lead.page, hub, "Ground lead");
  const code = await inviteFor(lead.page, "Marker");
  const second = await newTablet(browser, hub, options);
  await second.page.goto(`/join/${code}`);
  await expect(second.page.getByLabel("Code (nine letters and digits)")).toHaveValue(code);
  await second.page.getByLabel("Who uses this tablet").fill("Second");
  await second.page.getByRole("button", { name: "Join the walk" }).click();
  await expect(second.page.locator(stage("ev2-check"))).toHaveAttribute("data-stage", "done");
  const third = await newTablet(browser, hub, options);
  await third.page.goto("/join");
  await third.page.getByLabel("Code (nine letters and digits)").fill(hub.ownerCode);
  await third.page.getByLabel("Who uses this tablet").fill("Third");
  await third.page.getByRole("button", { name: "Join the walk" }).click();
  await third.page.getByRole("radio", { name: /walk-from-a-file/ }).check();
  expect(await violations(third.page, ".join-page")).toEqual([]);
  await third.page.getByRole("button", { name: "Join the walk" }).click();
  await expect(third.page.locator(stage("ev2-check"))).toHaveAttribute("data-stage", "done");
  const panel = await openLinkPanel(third.page);
  await expect(panel.getByText("Ground lead")).toBeVisible();
  await lead.page.goto("/");
  const saved = lead.page.waitForEvent("download");
  await lead.page.getByLabel("More for Short trial").click();
  await lead.page.getByRole("button", { name: "Export and remove from this device" }).click();
  await saved;
  await expect(panel.getByText("Ground lead")).toHaveCount(0);
  await second.page.goto("/join/AAA-AAA-AAA");
  await second.page.getByLabel("Who uses this tablet").fill("Second");
  await second.page.getByRole("button", { name: "Join the walk" }).click();
  await expect(second.page.getByRole("alert")).toBeVisible();
  for (const { context } of [lead, second, third]) await context.close();
});
