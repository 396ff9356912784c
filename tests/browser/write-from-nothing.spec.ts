import { expect, type Page, test } from "@playwright/test";

const tool = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const rowOf = (page: Page, text: string) => page.getByRole("row").filter({ hasText: text });
const table = (page: Page) => page.getByRole("treegrid", { name: "Tasks and steps" });
const beside = (page: Page) => page.locator(".write-beside");

/** Adds a step behind the chosen row: its text, and then its time, each ended by Enter, which begins the next step. */
async function addStep(page: Page, action: string, minutes: string): Promise<void> {
  await tool(page, "Add a step").click();
  await expect(table(page).getByRole("textbox", { name: "Do" })).toBeFocused();
  await page.keyboard.type(action);
  await page.keyboard.press("Enter");
  await expect(rowOf(page, action)).toHaveAttribute("aria-selected", "true");
  await expect(table(page).getByRole("textbox", { name: "Time, min" })).toBeFocused();
  await page.keyboard.type(minutes);
  await page.keyboard.press("Enter");
  await expect(page.locator(".write-draft").getByRole("textbox", { name: "Do" })).toBeFocused();
  await page.keyboard.press("Escape");
  await expect(page.locator(".write-draft")).toHaveCount(0);
  await expect(rowOf(page, action).locator('[data-column="time"]')).toHaveText(minutes);
}

async function addToList(page: Page, list: string, name: string): Promise<void> {
  await page.getByLabel("List", { exact: true }).selectOption(list);
  await tool(page, `Add to ${list}`).click();
  const member = page.locator(".write-member").last();
  await member.getByLabel("Name", { exact: true }).fill(name);
  await member.getByLabel("Name", { exact: true }).press("Enter");
  await expect(member.locator("summary")).toHaveText(name);
}

test.use({ actionTimeout: 15_000 });

test("[WRT1] from nothing to a procedure that is rehearsed, without a line of JSON", async ({ page }) => {
  await page.goto("/");
  await tool(page, "Write a new procedure").click();
  await page.getByLabel("Title").fill("Fetch the lamp");
  await tool(page, "Begin").click();
  await expect(table(page)).toBeVisible();

  await addStep(page, "Open the hatch", "3");
  await addStep(page, "Take up the lamp", "2/3/6");

  // Places, a route and an item, each in its list.
  await tool(page, "Lists").click();
  await addToList(page, "Places", "Hatch");
  await addToList(page, "Places", "Boom");
  await page.getByLabel("List", { exact: true }).selectOption("Routes");
  await tool(page, "Add to Routes").click();
  await expect(page.locator(".write-member summary")).toHaveText("Hatch – Boom");
  await addToList(page, "Items", "Lamp");
  await page.getByLabel("List", { exact: true }).selectOption("Crew");
  for (const call of ["EV1", "EV2"]) {
    const member = page.locator(".write-member").filter({ hasText: call }).first();
    await member.getByLabel("At the start").selectOption({ label: "Hatch" });
  }
  await page.getByLabel("List", { exact: true }).selectOption("Title and limits");
  await tool(page, "Add: Limits").click();
  await page.getByLabel("Elapsed limit, minutes").fill("1:00");
  await page.getByLabel("Elapsed limit, minutes").press("Enter");

  // The step moves the lamp into the hands of who does it.
  await tool(page, "Table").click();
  await rowOf(page, "Take up the lamp").click();
  await beside(page).getByLabel("Where", { exact: true }).selectOption({ label: "Hatch" });
  await beside(page).getByRole("button", { name: "Add: Moves" }).click();
  await expect(rowOf(page, "Take up the lamp").locator('[data-column="moves"]')).toHaveText("Lamp → EV1");

  // A hand-over is a joint step with its move.
  await tool(page, "Hand-over").click();
  await tool(page, "Add the hand-over").click();
  const handOver = rowOf(page, "Hand over Lamp");
  await expect(handOver.locator('[data-column="moves"]')).toHaveText("Lamp → EV2");
  await expect(handOver.locator('[data-column="who"]')).toHaveText(/EV1.*EV2/);

  await addStep(page, "Close the hatch", "2");
  // It comes after the hand-over: Link, a lag, and a tap on that step.
  await tool(page, "Link").click();
  await beside(page).getByLabel("Minutes that must pass in between").fill("1");
  await handOver.locator('[data-column="do"]').click();
  await expect(rowOf(page, "Close the hatch").locator('[data-column="after"]')).toHaveText("1.3 + 1");

  // Undo and redo, by buttons and by keys; what is written survives a reload.
  await tool(page, "Undo").click();
  await expect(rowOf(page, "Close the hatch").locator('[data-column="after"]')).toHaveText("");
  await tool(page, "Redo").click();
  await expect(rowOf(page, "Close the hatch").locator('[data-column="after"]')).toHaveText("1.3 + 1");
  await expect(page.getByText("On this device.")).toBeVisible();
  await page.reload();
  await expect(rowOf(page, "Close the hatch").locator('[data-column="after"]')).toHaveText("1.3 + 1");
  await expect(tool(page, "Undo")).toBeEnabled();
  await expect(page.getByText("of what is written")).toBeVisible();
  await expect(page.getByText("0:10")).toBeVisible();

  await tool(page, "Save as a revision").click();
  await beside(page).getByLabel("Who saves it").fill("The planner");
  await beside(page).getByLabel("Why").fill("First draft");
  await tool(page, "Save as revision A").click();
  await expect(page.getByText("Revision A is on the shelf.")).toBeVisible();
  await page.getByRole("navigation", { name: "Screens" }).getByRole("button", { name: "Shelf" }).click();
  await page.getByRole("button", { name: "Rehearse Fetch the lamp" }).click();
  // On a phone the cards leave the step out.
  await expect(page.getByText("Open the hatch").locator("visible=true").first()).toBeVisible();
  await page.getByRole("button", { name: "Start the rehearsal clock" }).click();
  await expect(page.locator(".done-button").first()).toBeVisible();
});
