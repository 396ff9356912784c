import { expect, test } from "@playwright/test";
import { fileWith, step, task } from "../core/procedure-builder.ts";
import { chooseFile } from "./imported-walk.ts";

test.use({ serviceWorkers: "allow" });

/** Pieces of work for three people, any of them for any: the longest chain says little of the best split. */
const FILE = fileWith(
  [41, 37, 33, 29, 27, 23, 19, 17, 13, 11].map((time, number) =>
    task(`task-${number}`, [step(`work-${number}`, "ev1", time, { or: [["ev2"], ["iv"]] })], {
      order: "free",
    }),
  ),
  { format: "tetherline.procedure/2", id: "open-work", title: "Open work" },
);

test("[FIT3] a second proof comes when it is asked for, works without a link from then on, and says when it is not there", async ({
  page,
  context,
}) => {
  test.slow();
  await page.goto("/");
  await page.evaluate(() => navigator.serviceWorker.ready);
  await chooseFile(page, { name: "open.json", text: JSON.stringify(FILE) });
  await page.goto("/plan/open-work");
  await page.getByRole("button", { name: "Best split" }).click();
  const panel = page.getByRole("dialog", { name: "Best split" });
  const prove = panel.getByRole("button", { name: "Prove it" });
  await expect(panel.getByText(/^Best found: finish 1:24/)).toBeVisible();
  await expect(prove).toBeVisible({ timeout: 60_000 });

  await context.setOffline(true);
  await prove.click();
  await expect(
    panel.getByText(/^The proof needs a part of the app that is not on this device yet/),
  ).toBeVisible();

  await context.setOffline(false);
  await prove.click();
  await expect(panel.getByText(/^Proven best: finish 1:24/)).toBeVisible({ timeout: 60_000 });
  await expect(panel.getByText(/^Shown a second time by a program/)).toBeVisible();

  await context.setOffline(true);
  await page.reload();
  await page.getByRole("button", { name: "Best split" }).click();
  await prove.click({ timeout: 60_000 });
  await expect(panel.getByText(/^Shown a second time by a program/)).toBeVisible({ timeout: 60_000 });
});
