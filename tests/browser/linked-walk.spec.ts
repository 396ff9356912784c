import { expect, test } from "@playwright/test";
import { violations } from "./axe-violations.ts";
import { chooseFile } from "./imported-walk.ts";
import {
  inviteFor,
  joinWalk,
  linkCell,
  listText,
  newTablet,
  openLinkPanel,
  shareWalk,
} from "./linked-tablet.ts";
import { shortFile } from "./short-walk.ts";
import { type StartedHub, startHubProcess } from "./started-hub.ts";
import { startClock } from "./walk-by-tapping.ts";

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
  const options = { viewport, hasTouch: true };
  const iv = await newTablet(browser, hub, options);
  const ground = await newTablet(browser, hub, options);
  const watcher = await newTablet(browser, hub, options);
  const pages = [iv.page, ground.page, watcher.page];

  await test.step("IV opens a walk and shares it, ground joins as marker, a third as watcher", async () => {
    await iv.page.goto("/");
    await chooseFile(iv.page, { name: "short.procedure.json", text: JSON.stringify(shortFile) });
    await iv.page.getByRole("button", { name: "Follow Short trial", exact: true }).click();
    await shareWalk(iv.page, hub, "Inside");
    await joinWalk(ground, await inviteFor(iv.page, "Marker"), "Ground");
    await joinWalk(watcher, await inviteFor(iv.page, "Watcher"), "Back room");
    for (const page of pages) await expect(linkCell(page)).toContainText("Linked");
    const panel = await openLinkPanel(iv.page);
    for (const name of ["Inside", "Ground", "Back room"]) await expect(panel.getByText(name)).toBeVisible();
    await panel.getByRole("button", { name: "Make a code" }).click();
    await expect(panel.getByRole("img", { name: /QR code/ })).toBeVisible();
    expect(await violations(iv.page, ".side-panel")).toEqual([]);
    await panel.getByRole("button", { name: "Back", exact: true }).click();
  });

  await test.step("the clock and a mark on one are seen on all", async () => {
    await startClock(iv.page);
    for (const page of pages) await expect(page.locator(".follow-bar")).toContainText("Running");
    await ground.page.locator(doneIn("ev2-check")).click();
    for (const page of pages)
      await expect(page.locator(stage("ev2-check"))).toHaveAttribute("data-stage", "done");
  });

  await test.step("IV is offline; both mark on, one step both of them", async () => {
    await iv.context.setOffline(true);
    await iv.page.locator(doneIn("ev1-check")).click();
    await iv.page.locator(doneIn("iv-power")).click();
    await expect(linkCell(iv.page)).toContainText("2 not sent");
    await ground.page.locator(doneIn("ev1-check")).click();
    await ground.page.locator(doneIn("hand-over")).click();
    await expect(watcher.page.locator(stage("hand-over"))).toHaveAttribute("data-stage", "done");
  });

  await test.step("IV returns: all three screens agree", async () => {
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

  await test.step("a mark and a skip at once: the order decides, and the loser's author is told", async () => {
    await iv.context.setOffline(true);
    await ground.page
      .locator(`${stage("iv-test")} button`)
      .last()
      .click();
    const panel = ground.page.getByRole("dialog");
    await panel.getByLabel("Reason or note").fill("no time");
    await panel.getByRole("button", { name: "Skip this step" }).click();
    await expect(watcher.page.locator(stage("iv-test"))).toHaveAttribute("data-stage", "skipped");
    // Later by the clock, so that the skip stands first in the order.
    await iv.page.locator(doneIn("iv-test")).click();
    await iv.context.setOffline(false);
    await expect(iv.page.locator(stage("iv-test"))).toHaveAttribute("data-stage", "skipped", {
      timeout: 60_000,
    });
    await expect(iv.page.locator(".notice-strip")).toContainText("did not count");
    await iv.page.getByRole("button", { name: "Understood" }).click();
    await expect(iv.page.locator(".notice-strip")).toHaveCount(0);
    await expect(ground.page.locator(".notice-strip")).toHaveCount(0);
  });

  await test.step("the hub is killed and comes back: marks made meanwhile arrive", async () => {
    await hub.restart();
    await ground.page
      .locator(`${stage("try-bolt")} .done-button`)
      .first()
      .click();
    for (const page of pages) {
      await expect(page.locator(stage("try-bolt"))).toHaveAttribute("data-stage", "done", {
        timeout: 90_000,
      });
    }
  });

  await test.step("a watcher cannot mark, by the screen or by any request", async () => {
    await expect(watcher.page.locator(".done-button")).toHaveCount(0);
    const before = await listText(iv.page);
    const answers = await watcher.page.evaluate(async () => {
      const walk = window.location.pathname.split("/").at(-1) ?? "";
      const at = new Date().toISOString();
      const entry = (source: string, type: string) => ({
        specversion: "1.0",
        id: "0000000099",
        source,
        type,
        subject: walk,
        time: at,
        recordedtime: at,
        sequence: "0000000099",
        hlc: `${String(Date.now()).padStart(15, "0")}-0000`,
        actor: "watcher",
        datacontenttype: "application/json",
        data: { step: "ev2-stow" },
      });
      const { device } = (await (await fetch(`/api/walks/${walk}/session`)).json()) as { device: string };
      const found: unknown[] = [];
      for (const source of [device, "/devices/another", ""]) {
        for (const type of ["tetherline.step.done", "tetherline.note.made", "tetherline.unknown.type"]) {
          for (const contentType of [
            "application/cloudevents-batch+json",
            "application/cloudevents+json",
            "application/json",
          ]) {
            const body = entry(source, type);
            const response = await fetch(`/api/walks/${walk}/entries`, {
              method: "POST",
              headers: { "content-type": contentType },
              body: JSON.stringify(contentType === "application/cloudevents+json" ? body : [body]),
            });
            const text = await response.text();
            found.push({ status: response.status, accepted: /"outcome":"(accepted|known)"/.test(text) });
          }
        }
      }
      const invited = await fetch(`/api/walks/${walk}/invitations`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ role: "lead" }),
      });
      found.push({ status: invited.status, accepted: invited.ok });
      return found;
    });
    expect(answers).toHaveLength(28);
    for (const answer of answers) expect(answer).toMatchObject({ accepted: false });
    await iv.page.waitForTimeout(1000);
    expect(await listText(iv.page)).toBe(before);
  });

  await test.step("taken off by the lead, the watcher's link ends and says so", async () => {
    const panel = await openLinkPanel(iv.page);
    await panel.getByRole("button", { name: "Take Back room off the walk" }).click();
    await expect(linkCell(watcher.page)).toContainText("Link ended");
  });
  for (const { context } of [iv, ground, watcher]) await context.close();
});

test("[HUB] a walk of before, brought in as a file, is shared whole; a QR address fills in the code", async ({
  browser,
  viewport,
}) => {
  const options = { viewport, hasTouch: true };
  const { shortWalk } = await import("./short-walk.ts");
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
  await second.page.goto("/join/AAA-AAA-AAA");
  await second.page.getByLabel("Who uses this tablet").fill("Second");
  await second.page.getByRole("button", { name: "Join the walk" }).click();
  await expect(second.page.getByRole("alert")).toBeVisible();
  for (const { context } of [lead, second]) await context.close();
});
