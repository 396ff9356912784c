import { expect, type Locator, type Page } from "@playwright/test";
import { openPanel, tapDone } from "./walk-by-tapping.ts";

/** The guide beside the practice walk, or above its review. */
export const guideOf = (page: Page): Locator => page.getByRole("region", { name: "Practice guide" });

/** What the guide says at this moment. */
export const saidBy = (page: Page): Promise<string> =>
  guideOf(page)
    .locator(".practice-next")
    .evaluate((said) => said.textContent ?? "");

/** The row of the list that shows a step by its number. */
const rowOf = (page: Page, number: string): Locator =>
  page
    .locator("li[data-row]")
    .filter({ has: page.locator(".follow-number").getByText(number, { exact: true }) });

/** Opens the practice walk that the shelf offers first, and starts its clock as the guide says. */
export async function openPractice(page: Page): Promise<void> {
  await page.goto("/");
  await page.getByRole("button", { name: "Open the practice walk" }).click();
  await expect(guideOf(page)).toContainText("Start the rehearsal clock");
}

/**
 * Does the next thing that the guide asks for, knowing nothing but its words; returns them. `otherwise` is a value to be entered
 * instead of the one that is asked for.
 */
export async function obey(page: Page, otherwise: string | null = null): Promise<string> {
  const words = await saidBy(page);
  const number = /step (\d+\.\d+)/i.exec(words.replace(/joint step \d+\.\d+/, ""))?.[1] ?? "";
  const value = /enter (\d+) V/i.exec(words)?.[1];
  if (words.includes("“Start the rehearsal clock”"))
    await page.getByRole("button", { name: "Start the rehearsal clock" }).click();
  else if (words.includes("“Contingencies”"))
    await bringIn(page, /“Contingencies” at the foot, “(.+?)”/.exec(words)?.[1] ?? "");
  else if (value !== undefined) {
    const field = rowOf(page, number).getByRole("textbox");
    await field.fill(otherwise ?? value);
    await field.press("Enter");
  } else if (words.includes("“Confirmed”")) await tapDone(page.getByRole("button", { name: "Confirmed" }));
  else if (words.includes("“Close the walk”")) await closeWalk(page);
  else await tapDone(rowOf(page, number).locator(".done-button"));
  return words;
}

/** Does what the guide asks for until it asks for something with the given words; returns all that it asked for. */
export async function obeyUntil(page: Page, words: string): Promise<string[]> {
  const all: string[] = [];
  while (!(await saidBy(page)).includes(words)) {
    if (all.length > 40) throw new Error(`the guide never says “${words}”: ${all.join(" / ")}`);
    const said = await obey(page);
    all.push(said);
    await expect.poll(() => saidBy(page)).not.toBe(said);
  }
  return all;
}

async function bringIn(page: Page, contingency: string): Promise<void> {
  await openPanel(page, "Contingencies");
  await page.getByRole("dialog").getByRole("button", { name: contingency, exact: true }).click();
  await page.getByRole("button", { name: /^Bring it in/ }).click();
  const panel = page.getByRole("dialog", { name: "Amend the plan" });
  await panel.getByRole("button", { name: "Enter the amendment" }).click();
  await expect(panel).toBeHidden();
}

/** Closes the walk with the button below the list, as complete. */
export async function closeWalk(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Close the walk", exact: true }).click();
  await page.getByRole("radio", { name: /^complete/i }).check();
  await page.getByRole("button", { name: "Close the walk: complete" }).click();
  await expect(page).toHaveURL(/\/review\//);
}
