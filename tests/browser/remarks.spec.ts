import { expect, test } from "@playwright/test";
import { violations } from "./axe-violations.ts";

test("a comment on a step is a finding until it is resolved, an agreement is to one text, and both survive a reload", async ({
  page,
}) => {
  await page.goto("/read/example-osier-bring-in");
  await page.getByRole("button", { name: "Remarks", exact: true }).click();
  const panel = page.getByRole("dialog", { name: "Remarks" });
  await expect(panel.getByText(/^A remark approves nothing\./)).toBeVisible();
  await panel.getByLabel("Your name").fill("K. Lind");
  await panel.getByLabel("The role in which you speak").fill("Ground");
  await panel.getByLabel("About").selectOption({ index: 2 });
  await panel.getByRole("textbox", { name: "Comment" }).fill("Say for how long.");
  await panel.getByRole("button", { name: "Add the comment" }).click();
  await expect(page.getByRole("button", { name: "Remarks (1 open)" })).toBeVisible();
  await panel.getByRole("button", { name: "Agree to this text" }).click();
  await expect(panel.getByText("holds for this text", { exact: true })).toBeVisible();
  expect(await violations(page, "body")).toEqual([]);

  await page.reload();
  await expect(page.getByText("K. Lind (Ground): Say for how long.").first()).toBeVisible();
  await page.getByRole("button", { name: "Remarks (1 open)" }).click();
  await expect(panel.getByText("holds for this text", { exact: true })).toBeVisible();
  await panel.getByRole("button", { name: "Resolve: Say for how long." }).click();
  await expect(page.getByRole("button", { name: "Remarks", exact: true })).toBeVisible();

  const download = page.waitForEvent("download");
  await panel.getByRole("button", { name: "Save as a file" }).click();
  expect((await download).suggestedFilename()).toBe("osier-bring-in.remarks.jsonl");
});

test("a fragment is put in from the plan, and the result is a revision of its own", async ({ page }) => {
  await page.goto("/plan/example-osier-ranging-head");
  await page.getByRole("button", { name: "Fragments" }).click();
  const panel = page.getByRole("dialog", { name: "Fragments" });
  await panel.getByLabel("Fragment", { exact: true }).selectOption({ label: "Hand over, rev. A" });
  await panel.getByLabel("Who gives").selectOption({ label: "EV1" });
  await panel.getByLabel("Who takes").selectOption({ label: "EV2" });
  await panel.getByLabel("What is handed over").selectOption({ index: 1 });
  await panel.getByLabel("Where", { exact: true }).selectOption({ index: 1 });
  expect(await violations(page, "body")).toEqual([]);
  await panel.getByRole("button", { name: "Put it in" }).click();
  await expect(page).toHaveURL(/\/plan\/osier-ranging-head$/);
  await page.goto("/read/osier-ranging-head");
  await expect(page.getByText(/^Hand .* to EV2$/).first()).toBeVisible();
});
