import { expect, test } from "@playwright/test";
import { writeLines } from "../../src/core/log/index.ts";
import { flownIn, twoSteps } from "../core/learn/observed-walks.ts";
import { violations } from "./axe-violations.ts";
import { chooseFile } from "./imported-walk.ts";

test("walks are brought in, compared, opened at a step, and what they tell is saved as a revision", async ({
  page,
}) => {
  await page.goto("/");
  await chooseFile(page, { name: "trial.procedure.json", text: JSON.stringify(twoSteps()) });
  for (const [at, time] of [4.5, 4.6, 4.4].entries()) {
    const text = writeLines(flownIn(`flown-${at}`, [time, 10]));
    await chooseFile(page, { name: `flown-${at}.walk.jsonl`, text });
  }
  await page.goto("/walks/trial");
  await expect(page.getByRole("heading", { name: "3 walks" })).toBeVisible();
  expect(await violations(page, "main")).toEqual([]);
  await page.locator("summary", { hasText: "3 walks" }).first().click();
  await page.getByRole("button", { name: /^4 min 30 s, live walk of/ }).click();
  // The review is opened at the step.
  const row = page.locator('tr[aria-current="location"]').filter({ visible: true });
  await expect(row).toContainText("Do turn");
  await expect(row).toBeInViewport();

  await page.goto("/learn/trial");
  await expect(page.getByText("3 live walks and 0 rehearsals on this device")).toBeVisible();
  expect(await violations(page, "main")).toEqual([]);
  await page.getByRole("checkbox").first().check();
  await page.getByRole("button", { name: "Save 1 time as revision B" }).click();
  await page.waitForURL(/\/plan\//);
  await page.goto("/");
  await expect(page.getByText(/Times of turn after the walks flown-0, flown-1 and flown-2\./)).toBeVisible();
});
