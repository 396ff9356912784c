import { expect, test } from "@playwright/test";
import { fileWith, step, task } from "../core/procedure-builder.ts";
import { chooseFile } from "./imported-walk.ts";

const FILE = fileWith(
  [
    task("work", [
      step("go-mast", "ev1", null, { to: "mast" }),
      step("mast-work", "ev1", 20, { at: "mast" }),
      step("go-fin", "ev1", null, { to: "fin" }),
      step("fin-work", "ev1", 30, { at: "fin", or: [["ev2"]] }),
    ]),
    task("home", [step("home-1", "ev1", null, { to: "lock" }), step("home-2", "ev2", null, { to: "lock" })], {
      closeout: true,
    }),
  ],
  {
    format: "tetherline.procedure/2",
    id: "shared-work",
    title: "Shared work",
    crew: [
      { id: "ev1", call: "EV1", station: "outside", start: "lock" },
      { id: "ev2", call: "EV2", station: "outside", start: "lock" },
    ],
    places: [{ id: "lock", refuge: true }, { id: "mast" }, { id: "fin" }],
    routes: [
      { between: ["lock", "mast"], length: 8, time: "PT4M" },
      { between: ["mast", "fin"], length: 12, time: "PT6M" },
    ],
  },
);

test("a better split is found in a worker, with the way there laid anew, and saved as a revision", async ({
  page,
}) => {
  await page.goto("/");
  await chooseFile(page, { name: "shared.json", text: JSON.stringify(FILE) });
  await page.goto("/plan/shared-work");
  await page.getByRole("button", { name: "Best split" }).click();
  const panel = page.getByRole("dialog", { name: "Best split" });
  await expect(panel.getByRole("status")).toHaveText(/^Proven best: finish 0:50, 20 min earlier\./);
  await expect(panel.getByText("Step 1.4 “Do fin-work” is done by EV2 instead of EV1.")).toBeVisible();
  await expect(panel.getByText("Everybody together goes 56 m instead of 40 m.")).toBeVisible();
  await panel.getByRole("button", { name: "Save as revision B" }).click();
  // The page of the new revision comes over the one of the file.
  await expect(page.getByText("In the file: finish 0:50").filter({ visible: true })).toBeVisible();
  await expect(panel.filter({ visible: true })).toHaveCount(0);
  await page.getByRole("button", { name: "Read" }).filter({ visible: true }).click();
  await expect(page.getByText("Move to fin").filter({ visible: true })).toBeVisible();
});
