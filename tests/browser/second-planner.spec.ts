import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { violations } from "./axe-violations.ts";
import { chooseFile } from "./imported-walk.ts";
import { procedureFile } from "./written-walk.ts";

test.use({ actionTimeout: 15_000 });

const TITLE = "Bring in a crewmate who cannot move alone";

const tool = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const cell = (page: Page, step: string, column: "do" | "time") =>
  page.locator(`.write-table [data-row="${step}"] [data-column="${column}"]`);

/** Types over what stands in a cell. */
async function typed(page: Page, step: string, column: "do" | "time", text: string): Promise<void> {
  await cell(page, step, column).click();
  if ((await page.locator(".write-editor").count()) === 0) await page.keyboard.press("Enter");
  await expect(page.locator(".write-editor")).toBeFocused();
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
  await expect(cell(page, step, column)).toContainText(text);
}

/** Saves what is written as a revision; returns the file as it is exported then. */
async function saved(page: Page, who: string, why: string, revision: string): Promise<string> {
  await tool(page, "Save as a revision").click();
  const beside = page.locator(".write-beside");
  await beside.getByLabel("Who saves it").fill(who);
  await beside.getByLabel("Why").fill(why);
  await tool(page, `Save as revision ${revision}`).click();
  await expect(page.getByText(`Revision ${revision} is on the shelf.`)).toBeVisible();
  const [download] = await Promise.all([page.waitForEvent("download"), tool(page, "Save the file").click()]);
  return readFileSync(await download.path(), "utf8");
}

/** Chooses a revision by its letter and, where two have the same one, by whether its author made it on this device. */
async function choose(page: Page, label: string, name: RegExp): Promise<void> {
  const option = page.getByLabel(label, { exact: true }).locator("option").filter({ hasText: name });
  await expect(option).toHaveCount(1);
  await page.getByLabel(label, { exact: true }).selectOption((await option.getAttribute("value")) ?? "");
}

test("[WRT8] [CHG5] a second planner goes on from the first one's revision; both are merged, saved and printed with change bars", async ({
  browser,
  viewport,
}) => {
  test.slow();
  const ada = await (await browser.newContext({ viewport, hasTouch: true })).newPage();
  const ben = await (await browser.newContext({ viewport, hasTouch: true })).newPage();

  const base = await test.step("Ada saves a revision of her own and gives the file away", async () => {
    await ada.goto("/write/example-osier-bring-in");
    await expect(ada.getByText("of what is written")).toBeVisible();
    await typed(ada, "no-answer", "do", "Call EV2 by radio four times");
    return saved(ada, "Ada", "One call more", "D");
  });
  expect(procedureFile(base).revision).toBe("D");

  const theirs =
    await test.step("Ben brings it in, moves a step, and changes its text and another one's", async () => {
      await ben.goto("/");
      await chooseFile(ben, { name: "from-ada.procedure.json", text: base });
      await ben
        .getByRole("button", { name: `Edit ${TITLE}` })
        .first()
        .click();
      await expect(ben.getByText("of what is written")).toBeVisible();
      await cell(ben, "ev1-drop", "do").click();
      await ben.keyboard.press("Alt+ArrowDown");
      await typed(ben, "ev1-drop", "do", "Hook the tool bag to the nearest ring");
      await typed(ben, "iv-lock-ready", "do", "Set the airlock for emergency repress");
      return saved(ben, "Ben", "The tool bag can wait", "E");
    });

  await test.step("Ada goes on meanwhile: a time, a step more, and a text that Ben changed too", async () => {
    await typed(ada, "ev1-drop", "time", "2");
    await cell(ada, "declare", "do").click();
    await tool(ada, "Add a step").click();
    await expect(ada.locator(".write-draft").getByRole("textbox", { name: "Do" })).toBeFocused();
    await ada.keyboard.type("Write down the PET of the call");
    await ada.keyboard.press("Enter");
    await ada.keyboard.type("0.5");
    await ada.keyboard.press("Enter");
    await ada.keyboard.press("Escape");
    await typed(ada, "iv-lock-ready", "do", "Set the airlock for emergency repress, valve R2 open");
    await saved(ada, "Ada", "Time for the bag", "E");
  });

  await test.step("she brings his file in and merges the two, conflict by conflict", async () => {
    await ada.goto("/");
    await chooseFile(ada, { name: "from-ben.procedure.json", text: theirs });
    await ada.goto("/compare");
    await expect(ada.getByText("Choose the two revisions that are to be compared.")).toBeVisible();
    await choose(ada, "Earlier", /rev\. E.*put on the shelf/);
    await choose(ada, "Later", /rev\. E.*saved by Ada/);
    const changes = ada.getByRole("region", { name: "What changed" });
    await expect(changes.getByText(/Write down the PET of the call/)).toBeVisible();
    await expect(changes.getByText(/moved/)).toBeVisible();
    await expect(ada.getByText("being sampled")).toHaveCount(0);
    await choose(ada, "Both were made from", /rev\. D · Bring in/);
    await expect(ada.getByText("One thing is left to be decided.")).toBeVisible();
    const conflict = ada.getByRole("group", { name: /iv-lock-ready/ });
    await expect(conflict.getByText(/valve R2 armed/)).toBeVisible();
    await conflict.getByRole("radio", { name: /saved by Ada/ }).check();
    await ada.getByLabel("Who saves it").fill("Ada");
    expect(await violations(ada, "body")).toEqual([]);
    await ada.getByRole("button", { name: /^Save as revision F/ }).click();
    await expect(ada.getByText(/is on the shelf, beside the others\./)).toBeVisible();
  });

  await test.step("what was merged has both planners' work, and is printed with change bars", async () => {
    await ada.goto("/compare");
    await choose(ada, "Earlier", /rev\. D · Bring in/);
    await choose(ada, "Later", /rev\. F · Bring in/);
    await ada.getByRole("link", { name: "Print with change bars" }).click();
    await expect(ada.getByRole("heading", { name: /^What changed against/ })).toBeVisible();
    // Of two neighbours that changed places the later one is told as moved.
    const barred = ada.locator("tr.print-step[data-changed] .print-changed");
    await expect(barred).toHaveText(["new", "moved", "changed", "changed"]);
    const texts = await ada.locator("tr.print-step").allTextContents();
    const at = (text: string) => texts.findIndex((one) => one.includes(text));
    expect(at("Declare the emergency")).toBeGreaterThanOrEqual(0);
    expect(at("Write down the PET of the call")).toBe(at("Declare the emergency") + 1);
    expect(at("Hook the tool bag to the nearest ring")).toBe(at("Read the numbers of EV2") + 1);
    expect(at("valve R2 open")).toBeGreaterThan(0);
  });
});
