import { expect, type Page, test } from "@playwright/test";
import type { Duration, Instant } from "../../src/core/units/index.ts";
import { later } from "../../src/core/units/index.ts";
import { violations } from "./axe-violations.ts";
import { chooseFile, openImported } from "./imported-walk.ts";
import { shortWalk } from "./short-walk.ts";
import { openPanel, tapDone } from "./walk-by-tapping.ts";
import { bundledText, playedLog, procedureFile, WrittenWalk } from "./written-walk.ts";

/** The sizes differ in where things stand, not in their colours: on the phone one theme is enough. */
function themesHere(): readonly string[] {
  return test.info().project.name === "landscape" ? ["day", "night", "dim"] : ["day"];
}

async function expectClean(
  page: Page,
  screen: string,
  within = "body",
  themes = themesHere(),
): Promise<void> {
  // A phone's follow screen may be scrolled so that its clock lies over half a card, which is no fault of the card.
  await page.locator(".follow").evaluateAll((all) => {
    for (const one of all) one.scrollTo({ top: 0 });
  });
  for (const theme of themes) {
    await page.locator("html").evaluate((html, name) => {
      html.dataset["theme"] = name;
    }, theme);
    // The themes have the same elements in other colours.
    const only = theme === themes[0] ? undefined : ["color-contrast"];
    expect.soft(await violations(page, within, only), `${screen}, ${theme}`).toEqual([]);
  }
}

const file = procedureFile(bundledText("osier-ranging-head"));
const now = () => Date.now() as Instant;
const minutesAgo = (minutes: number) => later(now(), (-minutes * 60_000) as Duration);

/** A walk at the step where suits are checked: warnings, records, a value outside its limits, a confirmation. */
function atSuitCheck(): WrittenWalk {
  return new WrittenWalk(file, { start: minutesAgo(12), walk: "at-suit-check" })
    .done(["suits-on-battery", 2], ["lock-pressure", 3])
    .enter("record.taken", { step: "ev1-suit", record: "pressure", value: 31 }, 4)
    .enter("record.taken", { step: "ev1-suit", record: "oxygen", value: 6000 }, 4)
    .enter("note.made", { text: "Left glove light flickers." }, 5)
    .enter("supply.read", { crew: "ev1", supply: "oxygen", value: 6000 }, 6)
    .enter("step.done", { step: "close-hatch" }, 6);
}

/** A walk that stands before its decision. */
function atDecision(): ReturnType<typeof playedLog> {
  const start = minutesAgo(200);
  const whole = playedLog(file, { seed: 4, start, until: null });
  const lines = whole.text.trimEnd().split("\n");
  const cut = lines.findIndex((line) => line.includes('"decision.taken"') || line.includes("decision.taken"));
  return { walk: whole.walk, text: `${lines.slice(0, cut).join("\n")}\n` };
}

/** A walk with a fourth of the steps: its every row is looked at in three themes. */
function closed(): ReturnType<typeof playedLog> {
  const short = procedureFile(bundledText("osier-bring-in"));
  return playedLog(short, { seed: 4, start: minutesAgo(600), until: null });
}

/** A procedure whose wording and order the checker has something to say about. */
const withFindings = (() => {
  const changed = JSON.parse(bundledText("sorrel-ridge-traverse")) as {
    id: string;
    title: string;
    limits: unknown;
  };
  return JSON.stringify({
    ...changed,
    id: "short-limit",
    title: "Ridge in a hurry",
    limits: { elapsed: "PT20M" },
  });
})();

test("axe finds nothing on the shelf and on a procedure's screens", async ({ page }) => {
  test.setTimeout(600_000);
  await page.goto("/");
  await expect(page.getByRole("button", { name: /^Follow / }).first()).toBeVisible();
  await expectClean(page, "empty shelf");
  await chooseFile(page, { name: "hurry.procedure.json", text: withFindings });
  await chooseFile(page, { name: "walk.walk.jsonl", text: atSuitCheck().text });
  await chooseFile(page, { name: "nothing.json", text: "{ not json" });
  await page.getByText("More", { exact: true }).first().click();
  await expectClean(page, "shelf with a walk and a message");

  await page.getByRole("button", { name: "Read Ridge in a hurry" }).click();
  await expect(page.getByRole("heading", { name: "Findings" })).toBeVisible();
  await expectClean(page, "read, with findings");
  await page.getByRole("button", { name: "Timeline" }).click();
  await expect(page).toHaveURL(/\/plan\//);
  await expectClean(page, "timeline as planned");
  await page.goto("/read/example-osier-ranging-head");
  await expect(page.getByRole("heading", { name: "Findings" })).toBeVisible();
  await expectClean(page, "read", "body", ["day"]);
  await page.goto("/print/example-osier-bring-in");
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expectClean(page, "printable page");
  await page.goto("/join/abc-def-ghj");
  await expect(page.getByRole("heading", { name: "Join a walk" })).toBeVisible();
  await expectClean(page, "join");
  for (const address of [
    "/read/none",
    "/plan/none",
    "/print/none",
    "/follow/none",
    "/timeline/none",
    "/review/none",
  ]) {
    await page.goto(address);
    await expect(page.getByText("There is no such").first()).toBeVisible();
    // They all look alike.
    await expectClean(page, address, "body", address === "/follow/none" ? themesHere() : ["day"]);
  }
});

test("axe finds nothing on the follow screen and its panels", async ({ page }) => {
  test.setTimeout(600_000);
  const prepared = new WrittenWalk(file, { start: now(), walk: "prepared", isStarted: false });
  await openImported(page, prepared);
  await expect(page.getByRole("button", { name: "Start the clock" })).toBeVisible();
  await expectClean(page, "prepared");

  await openImported(page, atSuitCheck());
  await expect(page.locator(".done-button").first()).toBeVisible();
  await tapDone(page.locator(".done-button").first());
  await expectClean(page, "running, with alerts, records and a confirmation");
  for (const name of ["Notes", "Items", "Readings", "Hold", "Contingencies", "Close walk", "More"]) {
    await openPanel(page, name);
    await expectClean(page, `panel ${name}`, ".side-panel");
    await page.getByRole("button", { name: "Back", exact: true }).click();
  }
  await page
    .getByRole("button", { name: /^More for step/ })
    .first()
    .click();
  await expectClean(page, "panel of a step", ".side-panel");
  await page.getByRole("button", { name: "Back", exact: true }).click();
  await page.getByRole("button", { name: "More", exact: true }).click();
  await page.getByRole("button", { name: "Link and followers", exact: true }).click();
  await expect(page.getByRole("button", { name: "Share this walk" })).toBeVisible();
  await expectClean(page, "panel Link", ".side-panel");
  await page.getByRole("button", { name: "Back", exact: true }).click();
  await page.getByRole("button", { name: "Hold", exact: true }).click();
  await page.getByRole("dialog").getByRole("button", { name: "Hold", exact: true }).click();
  await expect(page.getByRole("button", { name: "Lift the hold" })).toBeVisible();
  await expectClean(page, "held");
  await page.getByRole("button", { name: "Figures", exact: true }).click();
  await expectClean(page, "panel Figures", ".side-panel");

  await openImported(page, atDecision());
  await expect(page.getByText("Does cover bolt 3 turn?")).toBeVisible();
  await expectClean(page, "before a decision");
});

/** A walk that is late and has alerts of every level. */
function late(): WrittenWalk {
  return new WrittenWalk(file, { start: minutesAgo(130), walk: "late" })
    .done(["suits-on-battery", 2], ["lock-pressure", 3])
    .enter("record.taken", { step: "ev1-suit", record: "pressure", value: 26.5 }, 4)
    .done(["ev1-suit", 5]);
}

test("axe finds nothing on alerts, what still fits, the handover and the paper of a late walk", async ({
  page,
}) => {
  test.setTimeout(600_000);
  await openImported(page, late());
  await page.locator(".alert-more").click();
  await expect(page.getByRole("dialog", { name: "Alerts" })).toBeVisible();
  await expectClean(page, "alerts, and the list of them");
  await page.getByRole("button", { name: "Back", exact: true }).click();
  await page.getByRole("button", { name: /Against plan/ }).click();
  await expect(page.getByText(/^Does not fit/)).toBeVisible();
  await expectClean(page, "panel Late?", ".side-panel");
  // The shorter the walk, the sooner its every row is looked at.
  const short = shortWalk(40).done(["ev2-check", 3]).enter("hold.called", { reason: "A wait." }, 5);
  for (const screen of ["handover", "print-paper"] as const) {
    await openImported(page, short, screen);
    await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
    await expectClean(page, screen);
  }
});

test("axe finds nothing on help and on what is entered from paper", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "Help", exact: true }).click();
  await expect(page.getByRole("dialog", { name: "Help: the shelf" })).toBeVisible();
  await expectClean(page, "help of the shelf", ".side-panel");
  await page.getByRole("button", { name: "All marks" }).click();
  await expect(page.getByRole("img", { name: /worksite/i })).toBeVisible();
  await expectClean(page, "all marks", ".marks");
  await openImported(page, atSuitCheck());
  for (const name of ["Help", "Enter from paper"]) {
    await page.getByRole("button", { name: "More", exact: true }).click();
    await page.getByRole("dialog").getByRole("button", { name, exact: true }).click();
    await expect(page.getByRole("dialog").getByRole("listitem").first()).toBeVisible();
    await expectClean(page, `panel ${name}`, ".side-panel");
    await page.getByRole("button", { name: "Back", exact: true }).click();
  }
});

test("axe finds nothing on a walk's timeline and review", async ({ page }) => {
  test.setTimeout(600_000);
  const running = atDecision();
  await openImported(page, running, "timeline");
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expectClean(page, "timeline of a running walk", "body", ["day"]);
  await page.goto(`/review/${running.walk}`);
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expectClean(page, "review of a running walk", "body", ["day"]);
  const over = closed();
  await openImported(page, over);
  await expect(page.getByText("The walk is closed.")).toBeVisible();
  await expectClean(page, "follow, closed");
  await page.goto(`/review/${over.walk}`);
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expectClean(page, "review of a closed walk");
  await page.goto(`/print-walk/${over.walk}`);
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expectClean(page, "printable review");
});
