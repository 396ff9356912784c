import { expect, test } from "@playwright/test";
import type { Duration, Instant } from "../../src/core/units/index.ts";
import { later } from "../../src/core/units/index.ts";
import { fileWith, step, task } from "../core/procedure-builder.ts";
import { chooseFile } from "./imported-walk.ts";
import { inviteFor, joinWalk, linkCell, newTablet, shareWalk } from "./linked-tablet.ts";
import { type StartedHub, startHubProcess } from "./started-hub.ts";
import { openPanel, tapSteps } from "./walk-by-tapping.ts";
import { WrittenWalk } from "./written-walk.ts";

let hub: StartedHub;

test.beforeAll(async ({ browserName: _ }, testInfo) => {
  hub = await startHubProcess(4760 + testInfo.parallelIndex * 40, "--name", "Test hub");
});

test.afterAll(async () => hub?.stop());

/** A walk at a mast: with its contingency there is time for one of its two get-aheads. */
const file = fileWith(
  [
    task("out", [step("leave", ["ev1", "ev2"], 5)]),
    task("mast", [
      step("loosen", "ev1", 10, { do: "Loosen the fastener" }),
      step("hold", "ev2", 10, { do: "Hold the cover" }),
    ]),
    task("photos", [step("take-photos", ["ev1", "ev2"], 15)], {
      title: "Photographs",
      priority: "get-ahead",
    }),
    task("survey", [step("look-round", "ev1", 8)], { title: "Survey", priority: "get-ahead" }),
    task("swap", [step("swap-head", ["ev1", "ev2"], 20, { do: "Swap the head" })]),
    task("home", [step("come-in", ["ev1", "ev2"], 10)], { closeout: true }),
  ],
  {
    id: "mast-work",
    title: "Mast work",
    crew: [
      { id: "ev1", call: "EV1", station: "outside" },
      { id: "ev2", call: "EV2", station: "outside" },
      { id: "iv", call: "IV", station: "inside" },
    ],
    limits: { elapsed: "PT1H20M" },
    contingencies: [
      {
        id: "stuck",
        title: "Fastener stuck",
        tasks: [task("free-it", [step("use-bar", ["ev1", "ev2"], 6, { do: "Turn it with the bar" })])],
      },
    ],
  },
);

test("[AMD1] [FIT1] late at the mast with a stuck fastener: the contingency comes in, a get-ahead goes, and the walk keeps to its limit", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const options = { viewport, hasTouch: true };
  const start = later(Date.now() as Instant, (-30 * 60_000) as Duration);
  const walk = new WrittenWalk(file, { start, walk: "mast-walk" }).done(["leave", 12]);
  const lead = await newTablet(browser, hub, options);
  await lead.page.goto("/");
  await chooseFile(lead.page, { name: "mast.walk.jsonl", text: walk.text });
  await lead.page.goto("/follow/mast-walk");
  await shareWalk(lead.page, hub, "Ground");
  const inside = await newTablet(browser, hub, options);
  await joinWalk(inside, await inviteFor(lead.page, "Marker"), "Inside");

  await test.step("the contingency, in two taps and with what it comes to", async () => {
    await openPanel(lead.page, "Contingencies");
    await lead.page.getByRole("button", { name: "Fastener stuck", exact: true }).click();
    await lead.page.getByRole("button", { name: "Bring it in: see what it would come to" }).click();
    const panel = lead.page.getByRole("dialog", { name: "Amend the plan" });
    await expect(panel.getByRole("row", { name: /^Finish/ })).toBeVisible();
    await panel.getByLabel("Why").fill("The fastener does not turn");
    await panel.getByRole("button", { name: "Enter the amendment" }).click();
    await expect(panel).toBeHidden();
  });
  await test.step("what still fits, and the plan made so", async () => {
    await lead.page.getByRole("button", { name: "Late?", exact: true }).click();
    const late = lead.page.getByRole("dialog", { name: "What still fits" });
    await expect(late.getByText(/^Proven best/)).toBeVisible();
    const best = late.locator(".fit-set").first();
    await expect(best).toContainText("Survey");
    await expect(best).toContainText("Left out: Photographs");
    await best.getByRole("button", { name: "See what the plan would come to with this" }).click();
    const panel = lead.page.getByRole("dialog", { name: "Amend the plan" });
    await expect(panel.getByRole("row", { name: /^Finish/ })).toBeVisible();
    await panel.getByLabel("Why").fill("Late at the mast");
    await panel.getByRole("button", { name: "Enter the amendment" }).click();
    await expect(panel).toBeHidden();
  });

  for (const { page } of [lead, inside]) {
    await expect(page.locator('[data-row="use-bar"]')).toBeVisible();
    await expect(page.locator('[data-row="take-photos"]')).toHaveCount(0);
    await expect(page.locator(".follow-bar")).not.toContainText("over the limit");
  }
  const strip = inside.page.locator(".amendment-strip");
  await expect(inside.page.locator('[data-row="gone take-photos"]')).toContainText(
    "taken out by an amendment",
  );
  await expect(strip).toContainText("The fastener does not turn");
  await strip.getByRole("button", { name: "Seen" }).first().click();
  await expect(strip).toContainText("Late at the mast");
  await strip.getByRole("button", { name: "Seen" }).first().click();
  await expect(strip).toHaveCount(0);

  await tapSteps(inside.page, 3);
  await expect(linkCell(inside.page)).toContainText("all sent");
  await expect(lead.page.locator('li[data-stage="done"]')).toHaveCount(4);
  await tapSteps(lead.page, 10);
  await expect(lead.page.getByText("Every step is complete.")).toBeVisible();
  await openPanel(lead.page, "Close walk");
  await lead.page.getByRole("radio", { name: /^complete/i }).check();
  await lead.page.getByRole("button", { name: "Close the walk: complete" }).click();
  await expect(lead.page).toHaveURL(/\/review\//);

  await inside.page.goto("/review/mast-walk");
  for (const { page } of [lead, inside]) {
    const amendments = page.getByRole("region", { name: "Amendments of the plan" }).first();
    const [first, second] = [/The fastener does not turn/, /Late at the mast/].map((name) =>
      amendments.getByRole("row", { name }),
    );
    // Who, why, each change, and what each did to the finish and the margin.
    await expect(first ?? amendments).toContainText("IV");
    await expect(first ?? amendments).toContainText("contingency stuck: brought in behind hold");
    await expect(first ?? amendments).toContainText(/1:0\d:\d\d → 1:\d\d:\d\d/);
    await expect(second ?? amendments).toContainText("task photos: dropped");
    await expect(second ?? amendments).toContainText(/1:\d\d:\d\d → 1:\d\d:\d\d/);
    await expect(second ?? amendments).toContainText(/\d+ min → \d+ min/);
    await expect(page.getByText(/over the limit/)).toHaveCount(0);
  }
  for (const { context } of [lead, inside]) await context.close();
});
