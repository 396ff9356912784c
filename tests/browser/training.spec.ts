import { expect, type Page, test } from "@playwright/test";
import { surprise, surprisesText } from "../core/training/surprise-builder.ts";
import { violations } from "./axe-violations.ts";
import { chooseFile } from "./imported-walk.ts";
import { inviteFor, joinWalk, newTablet, shareWalk } from "./linked-tablet.ts";
import { shortFile } from "./short-walk.ts";
import { type StartedHub, startHubProcess } from "./started-hub.ts";
import { tapDone } from "./walk-by-tapping.ts";

let hub: StartedHub;

test.beforeAll(async ({ browserName: _ }, testInfo) => {
  hub = await startHubProcess(5210 + testInfo.parallelIndex * 40, "--name", "Test hub");
});

test.afterAll(async () => hub?.stop());

const expectation = (within: string, notice: string, act: string) => ({
  expect: { who: ["iv"], notice, within, act },
});
const SURPRISES = surprisesText(
  [
    surprise(
      "pressure",
      { kind: "record", step: "ev1-check", record: "pressure", value: 27 },
      {
        title: "Low suit pressure",
        ...expectation("PT30M", "The pressure is too low.", "Have it read again."),
      },
    ),
    surprise(
      "slow",
      { kind: "stretch", step: "hand-over", factor: 4 },
      { title: "A slow hand-over", ...expectation("PT30M", "It lasts.", "Ask why.") },
    ),
    surprise(
      "bolt",
      { kind: "decision", decision: "bolt", outcome: "stuck" },
      { title: "The bolt is stuck", ...expectation("PT30M", "It is stuck.", "Call EV2.") },
    ),
  ],
  { procedure: "short-trial", title: "Three for the short trial" },
);

const surprisesSent = (page: Page) =>
  page.evaluate(async () => {
    const walk = window.location.pathname.split("/").at(-1) ?? "";
    const answer = await fetch(`/api/walks/${walk}/entries`);
    return ((await answer.text()).match(/tetherline\.surprise\./g) ?? []).length;
  });

test("[TRN2] [TRN3] three surprises are fired at two followers, and talked over from the review alone", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const options = { viewport, hasTouch: true };
  const [iv, ground, trainer] = [
    await newTablet(browser, hub, options),
    await newTablet(browser, hub, options),
    await newTablet(browser, hub, options),
  ];

  await test.step("the lead opens a rehearsal, and lets in a marker and a trainer", async () => {
    await iv.page.goto("/");
    await chooseFile(iv.page, { name: "short.procedure.json", text: JSON.stringify(shortFile) });
    await iv.page.getByRole("button", { name: "Rehearse Short trial", exact: true }).click();
    await shareWalk(iv.page, hub, "Inside");
    await joinWalk(ground, await inviteFor(iv.page, "Marker"), "Ground");
    await joinWalk(trainer, await inviteFor(iv.page, "Trainer"), "Trainer");
    await expect(trainer.page.locator(".done-button")).toHaveCount(0);
    await iv.page.getByRole("button", { name: "Start the rehearsal clock" }).click();
    for (const { page } of [ground, trainer])
      await expect(page.locator(".follow-bar")).toContainText("Running");
  });

  await test.step("the trainer fires three by hand", async () => {
    const { page } = trainer;
    await page.getByRole("button", { name: "More", exact: true }).click();
    await page.getByRole("button", { name: "Surprises", exact: true }).click();
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      page.getByRole("button", { name: "Choose a file…" }).click(),
    ]);
    await chooser.setFiles({
      name: "short.surprises.json",
      mimeType: "application/json",
      buffer: Buffer.from(SURPRISES),
    });
    for (const title of ["Low suit pressure", "A slow hand-over", "The bolt is stuck"]) {
      await page.getByRole("button", { name: `Fire “${title}”`, exact: true }).click();
      await page.getByRole("button", { name: `Fire “${title}” now` }).click();
      await expect(page.getByText(`“${title}” has been fired.`)).toBeVisible();
    }
    await expect.poll(() => surprisesSent(page)).toBe(3);
    // The lead's tablet plays the crew, and is sent them.
    await expect.poll(() => surprisesSent(iv.page)).toBe(3);
  });

  await test.step("the followers see what they would see, and not that it is a surprise", async () => {
    await iv.page.getByRole("radio", { name: "60×" }).check({ force: true });
    await iv.page.getByRole("button", { name: "Play", exact: true }).click();
    for (const { page } of [iv, ground])
      await expect(page.locator(".alert-strip")).toContainText("27", { timeout: 60_000 });
    await tapDone(ground.page.locator(".alert-strip").getByRole("button", { name: "Seen" }).first());
    await expect(iv.page.locator('[data-row="call-stuck"]')).toHaveAttribute("data-stage", "done", {
      timeout: 60_000,
    });
    await iv.page.getByRole("button", { name: "Pause", exact: true }).click();
    expect(await surprisesSent(ground.page)).toBe(0);
    for (const { page } of [iv, ground])
      expect(await page.locator("body").textContent()).not.toMatch(/surprise/i);
    await expect(trainer.page.getByText(/saw the alert/)).toBeVisible();
    expect(await violations(trainer.page, ".train")).toEqual([]);
  });

  await test.step("once it is closed, the follower's review tells all three beside what was expected", async () => {
    await iv.page.getByRole("button", { name: "More", exact: true }).click();
    await iv.page.getByRole("button", { name: "Close walk", exact: true }).click();
    await iv.page.getByRole("radio", { name: /^Terminated/ }).check({ force: true });
    await iv.page.getByRole("textbox", { name: /[Rr]eason/ }).fill("enough for today");
    await iv.page.getByRole("button", { name: "Close the walk: terminated" }).click();
    await expect(ground.page.getByText("The walk is closed.").first()).toBeVisible();
    await ground.page.getByRole("button", { name: "Read the review" }).click();
    const part = ground.page
      .locator("section", {
        has: ground.page.getByRole("heading", { name: /^Surprises of this rehearsal/ }),
      })
      .last();
    await expect(part.getByRole("heading", { level: 3 })).toHaveCount(3);
    const items = part.locator(".surprise-item");
    await expect(items.filter({ hasText: "Low suit pressure" })).toContainText(
      /Expected\s*IV, within 30 min: The pressure is too low\.[\s\S]*saw the alert/,
    );
    await expect(items.filter({ hasText: "A slow hand-over" })).toContainText(/Finish as forecast.*later/);
    await expect(items.filter({ hasText: "The bolt is stuck" })).toContainText("comes out as stuck");
    expect(await surprisesSent(ground.page)).toBe(3);
    expect(await violations(ground.page, ".surprise-list")).toEqual([]);
  });
  for (const { context } of [iv, ground, trainer]) await context.close();
});

test("[TRN2] a trainer fires by hand in a second tab of the tablet that plays the crew, without a hub and without a network", async ({
  page,
  context,
}) => {
  await page.goto("/");
  const said = await chooseFile(page, { name: "short.surprises.json", text: SURPRISES });
  expect(said).toContain("These are surprises for rehearsals of the procedure “short-trial”");
  await chooseFile(page, { name: "short.procedure.json", text: JSON.stringify(shortFile) });
  await page.getByRole("button", { name: "Rehearse Short trial", exact: true }).click();
  await page.getByRole("button", { name: "Start the rehearsal clock" }).click();
  await expect(page.locator(".follow-bar")).toContainText("Running");
  const other = await context.newPage();
  await other.goto(page.url().replace("/follow/", "/train/"));
  await expect(other.getByText(/The rehearsal is followed on this device too/)).toBeVisible();
  await context.setOffline(true);
  await expect(other.getByRole("heading", { name: "Low suit pressure" })).toHaveCount(0);
  await other.getByRole("button", { name: "I am the trainer: show the surprises" }).click();
  await other.getByRole("button", { name: "Fire “Low suit pressure”", exact: true }).click();
  await other.getByRole("button", { name: "Fire “Low suit pressure” now" }).click();
  await expect(other.getByText("“Low suit pressure” has been fired.")).toBeVisible();
  expect(await violations(other, ".train")).toEqual([]);
  await page.getByRole("radio", { name: "60×" }).check({ force: true });
  await page.getByRole("button", { name: "Play", exact: true }).click();
  await expect(page.locator(".alert-strip")).toContainText("27", { timeout: 60_000 });
  await page.getByRole("button", { name: "Pause", exact: true }).click();
  expect(await page.locator("body").textContent()).not.toMatch(/surprise/i);
  // Nothing has put this browser's copy of the app by, so that a page which was not opened before needs the network.
  await context.setOffline(false);
  await page.getByRole("button", { name: "More", exact: true }).click();
  await page.getByRole("button", { name: "Review so far" }).click();
  await page.waitForURL(/\/review\//);
  await expect(page.locator(".review-part").first()).toBeVisible();
  await expect(page.getByRole("heading", { name: /^Surprises of this rehearsal/ })).toHaveCount(0);
});
