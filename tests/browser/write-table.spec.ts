import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, expect, type Page, test } from "@playwright/test";
import { violations } from "./axe-violations.ts";

test.use({ actionTimeout: 15_000 });

const tool = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const rowOf = (page: Page, text: string) => page.getByRole("row").filter({ hasText: text });
const actions = (page: Page) =>
  page.locator(".write-step .write-do").evaluateAll((all) => all.map((one) => one.textContent));

/** A new procedure with steps of these texts, on the page that writes it. */
async function written(page: Page, title: string, steps: readonly string[]): Promise<void> {
  await page.goto("/write");
  await page.getByLabel("Title").fill(title);
  await tool(page, "Begin").click();
  for (const step of steps) {
    await tool(page, "Add a step").click();
    await expect(page.locator(".write-editor")).toBeFocused();
    await page.keyboard.type(step);
    await page.keyboard.press("Enter");
    await expect(rowOf(page, step)).toBeVisible();
    await page.keyboard.press("Escape");
  }
  await expect(page.getByText("On this device.")).toBeVisible();
}

test("[WRT2] the table goes by keys alone, with one tab stop", async ({ page }) => {
  await written(page, "Keys", ["One", "Two", "Three"]);
  expect(await page.locator('[role="treegrid"] [tabindex="0"]').count()).toBe(1);
  // The last step has the focus after it was typed.
  await page.keyboard.press("Alt+ArrowUp");
  await expect.poll(() => actions(page)).toEqual(["One", "Three", "Two"]);
  await page.keyboard.press("Alt+ArrowUp");
  await expect.poll(() => actions(page)).toEqual(["Three", "One", "Two"]);
  await page.keyboard.press("Control+z");
  await expect.poll(() => actions(page)).toEqual(["One", "Three", "Two"]);
  await page.keyboard.press("Control+y");
  await expect.poll(() => actions(page)).toEqual(["Three", "One", "Two"]);
  await expect(rowOf(page, "Three")).toHaveAttribute("aria-selected", "true");

  // Escape leaves a text as it was, Enter takes it.
  await page.keyboard.press("Home");
  await page.keyboard.press("Enter");
  await page.keyboard.type("Never");
  await page.keyboard.press("Escape");
  expect(await actions(page)).toEqual(["Three", "One", "Two"]);
  await page.keyboard.press("F2");
  await page.keyboard.type("Third");
  await page.keyboard.press("Enter");
  await expect.poll(() => actions(page)).toEqual(["Third", "One", "Two"]);

  await page.keyboard.press("Shift+ArrowDown");
  await expect(page.locator('[aria-selected="true"]')).toHaveCount(2);
  await page.keyboard.press("Control+d");
  await expect.poll(() => actions(page)).toEqual(["Third", "One", "Third", "One", "Two"]);
  await page.keyboard.press("Delete");
  await expect.poll(() => actions(page)).toEqual(["Third", "One", "Two"]);
  expect(await page.locator('[role="treegrid"] [tabindex="0"]').count()).toBe(1);
  await expect(page.locator('[role="treegrid"] [tabindex="0"]')).toBeFocused();
});

test("[WRT2] steps are written one after the other by keys alone: text, who, time, what they come after", async ({
  page,
}) => {
  await written(page, "At speed", ["One"]);
  const draft = page.locator(".write-draft").getByRole("textbox", { name: "Do" });
  const cell = (text: string, column: string) => rowOf(page, text).locator(`[data-column="${column}"]`);
  await page.keyboard.press("Insert");
  await expect(draft).toBeFocused();
  await page.keyboard.type("Two");
  await page.keyboard.press("Tab");
  await page.keyboard.type("ev2+iv");
  await page.keyboard.press("Tab");
  await page.keyboard.type("1.5");
  await page.keyboard.press("Tab");
  await page.keyboard.type("1.1 + 2");
  await page.keyboard.press("Enter");
  await expect(draft).toBeFocused();
  await expect(cell("Two", "who")).toHaveText(/EV2.*IV/);
  await expect(cell("Two", "time")).toHaveText("1.5");
  await expect(cell("Two", "after")).toHaveText("1.1 + 2");
  // Who does the next one is taken over; what names nobody is not taken, and its cell stays open.
  await page.keyboard.type("Three");
  await page.keyboard.press("Tab");
  const who = page.getByRole("treegrid").getByRole("textbox", { name: "Who" });
  await page.keyboard.type("nobody");
  await page.keyboard.press("Enter");
  await expect(who).toHaveAttribute("aria-invalid", "true");
  await page.keyboard.press("Escape");
  await expect(cell("Three", "who")).toHaveText(/EV2.*IV/);
  // A step and a task that are begun and left make nothing, and cost no undo.
  await page.keyboard.press("Insert");
  await page.keyboard.press("Escape");
  await page.keyboard.press("Shift+Insert");
  await page.keyboard.press("Escape");
  await expect.poll(() => actions(page)).toEqual(["One", "Two", "Three"]);
  await page.keyboard.press("Control+z");
  await expect.poll(() => actions(page)).toEqual(["One", "Two"]);
  await rowOf(page, "Two").click();
  await page.keyboard.press("Shift+Insert");
  await page.keyboard.type("Way back");
  await page.keyboard.press("Enter");
  await page.keyboard.type("Four");
  await page.keyboard.press("Enter");
  await expect(rowOf(page, "Four")).toContainText("2.1");
});

test("[WRT2] who does the step that is being written is tapped meanwhile, and its text stays", async ({
  page,
}) => {
  await written(page, "Tapped", ["One"]);
  await tool(page, "Add a step").click();
  await page.keyboard.type("Tw");
  const who = (call: string) =>
    page.locator(".write-beside").getByRole("button", { name: call, exact: true });
  await expect(who("EV1")).toHaveAttribute("aria-pressed", "true");
  await who("EV2").click();
  await expect(who("EV1")).toHaveAttribute("aria-pressed", "false");
  await who("IV").click();
  await page.keyboard.type("o");
  await page.keyboard.press("Enter");
  await expect(rowOf(page, "Two").locator('[data-column="who"]')).toHaveText(/EV2.*IV/);
  // What was typed counts when another row is tapped; a step without a text is none.
  await page.keyboard.type("4");
  await rowOf(page, "One").click();
  await expect(rowOf(page, "Two").locator('[data-column="time"]')).toHaveText("4");
  await tool(page, "Add a step").click();
  await rowOf(page, "Two").click();
  await expect(rowOf(page, "Two")).toHaveAttribute("aria-selected", "true");
  await expect(page.locator(".write-draft")).toHaveCount(0);
  await expect.poll(() => actions(page)).toEqual(["One", "Two"]);
});

test("[WRT4] a finding leads to its step with one tap", async ({ page }) => {
  await written(page, "Findings", ["Open the hatch"]);
  await page.getByRole("button", { name: /finding/ }).click();
  await expect(page.locator(".finding").first()).toBeVisible();
  const findings = await page.locator(".finding").count();
  expect(findings).toBeGreaterThan(0);
  await page.locator(".finding").getByRole("button", { name: "Go to the step" }).first().click();
  await expect(rowOf(page, "Open the hatch")).toHaveAttribute("aria-selected", "true");
  await expect(page.locator(".write-beside").getByRole("heading", { name: "Step 1.1" })).toBeVisible();
});

test("[WRT4] a mend is applied with one tap, and undone as one gesture", async ({ page }) => {
  await page.goto("/write/example-osier-bring-in");
  await expect(page.getByText("of what is written")).toBeVisible();
  // Somebody does a step where they are not: the mend brings them there.
  const where = page.locator('.write-step [data-column="where"]').filter({ hasText: /^[A-Z]/ });
  await where.nth(2).click();
  const field = page.locator(".write-beside").getByLabel("Where", { exact: true });
  const options = await field
    .locator("option")
    .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
  for (const place of options.filter((one) => one !== "")) {
    await field.selectOption(place);
    await expect(page.getByText("of what is written")).toBeVisible();
    await page
      .getByRole("button", { name: /findings?$/ })
      .first()
      .click();
    if ((await page.getByRole("button", { name: /^Mend: / }).count()) > 0) break;
    await where.nth(2).click();
  }
  const mends = page.getByRole("button", { name: /^Mend: / });
  const said = (await mends.first().textContent()) ?? "";
  const mend = page.getByRole("button", { name: said, exact: true });
  await mend.click();
  await expect(page.getByText("of what is written")).toBeVisible();
  await expect(mend).toHaveCount(0);
  await tool(page, "Undo").click();
  await expect(mend).toHaveCount(1);
});

test("[WRT1] of two pages that write one manuscript the later one is told", async ({ page, context }) => {
  await written(page, "Two pages", ["One"]);
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(rowOf(other, "One")).toBeVisible();
  await tool(page, "Add a step").click();
  await page.keyboard.type("Of the first");
  await page.keyboard.press("Enter");
  await expect(page.getByText("On this device.")).toBeVisible();
  await tool(other, "Add a step").click();
  await other.keyboard.type("Of the other");
  await other.keyboard.press("Enter");
  const told = other
    .getByRole("alert")
    .filter({ hasText: "Another page of this device wrote this manuscript" });
  await expect(told).toBeVisible();
  await tool(other, "Take the other one").click();
  await expect(rowOf(other, "Of the first")).toBeVisible();
  await expect(told).toBeHidden();
});

test("[WRT1] what was written is there after the browser was killed, and what was being typed", async ({
  viewport,
  baseURL,
}, testInfo) => {
  test.setTimeout(120_000);
  const profile = mkdtempSync(join(tmpdir(), "tetherline-write-killed-"));
  const open = () =>
    chromium.launchPersistentContext(profile, {
      ...testInfo.project.use.launchOptions,
      viewport,
      ...(baseURL ? { baseURL } : {}),
    });
  try {
    const first = await open();
    const page = await first.newPage();
    await written(page, "Killed", ["One", "Two"]);
    const address = page.url();
    await rowOf(page, "Two").click();
    await tool(page, "Move up").click();
    await tool(page, "Add a step").click();
    await page.keyboard.type("Stow the foot plate", { delay: 60 });
    await page.waitForTimeout(1000);
    // SIGKILL of every process of this browser, found by its profile: no time to tidy up.
    for (const id of execFileSync("pgrep", ["-f", profile], { encoding: "utf8" }).trim().split("\n"))
      process.kill(Number(id), "SIGKILL");
    await first.close().catch(() => undefined);

    const second = await open();
    const again = await second.newPage();
    await again.goto(address);
    await expect.poll(() => actions(again)).toEqual(["Two", "One"]);
    const halfTyped = again.getByRole("status").filter({ hasText: "this was being typed into “Do”" });
    await expect(halfTyped).toContainText("Stow the foot plate");
    await tool(again, "Put it away").click();
    await expect(halfTyped).toBeHidden();
    await again.reload();
    await expect.poll(() => actions(again)).toEqual(["Two", "One"]);
    await expect(halfTyped).toBeHidden();
    await tool(again, "Undo").click();
    await expect.poll(() => actions(again)).toEqual(["One", "Two"]);
    await second.close();
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});

test("[WRT2] the screen has no fault that axe finds", async ({ page }) => {
  await written(page, "Axe", ["One"]);
  await rowOf(page, "One").click();
  expect(await violations(page, "body")).toEqual([]);
  await tool(page, "Lists").click();
  expect(await violations(page, "body")).toEqual([]);
});

test("[WRT6] the file is typed as text beside the table, and what does not read touches nothing", async ({
  page,
}) => {
  await page.goto("/write/example-osier-pool-rehearsal");
  await page.getByRole("button", { name: "Text", exact: true }).click();
  const text = page.getByRole("textbox", { name: "The procedure as JSON" });
  await expect(text).toBeInViewport();
  // As wide as the pane: the styles of the editor are in force under the content security policy.
  expect((await text.boundingBox())?.width).toBeGreaterThan(400);
  await text.click();
  await page.keyboard.press("Control+Home");
  await page.keyboard.type("x");
  await expect(page.getByText("cannot be read yet")).toBeVisible();
  await page.getByRole("button", { name: "Table", exact: true }).click();
  await expect(page.getByRole("treegrid")).toBeVisible();
  await page.getByRole("button", { name: "Text", exact: true }).click();
  await expect(text).toContainText("x{");
  await text.click();
  await page.keyboard.press("Control+Home");
  await page.keyboard.press("Delete");
  await expect(page.getByText("The text and the procedure are in step.")).toBeVisible();
});

test("[WRT5] a place is put on the map and a picture is put in, each undone as one gesture", async ({
  page,
}) => {
  await page.goto("/write/example-osier-pool-rehearsal");
  await page.getByRole("button", { name: "Lists", exact: true }).click();
  await page.getByLabel("List", { exact: true }).selectOption("places");
  const map = page.getByRole("region", { name: "Places on the map" });
  await expect(map.locator("svg.worksite")).toBeVisible();
  await map.getByRole("button", { name: "→ Right" }).click();
  const undo = page.getByRole("button", { name: /^Undo/ });
  await expect(undo).toBeEnabled();
  await undo.click();
  await expect(undo).toBeDisabled();
  await page.getByLabel("List", { exact: true }).selectOption("pictures");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: /^Add/ }).last().click(),
  ]);
  await chooser.setFiles("procedures/pictures/seat.svg");
  await expect(page.locator("img.write-picture").last()).toBeVisible();
  await undo.click();
  await expect(undo).toBeDisabled();
});
