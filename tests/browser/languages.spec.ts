import { expect, type Page, test } from "@playwright/test";
import { applyChanges } from "../../src/core/changes/index.ts";
import type { ProcedureFile } from "../../src/core/procedure/index.ts";
import { violations } from "./axe-violations.ts";
import { chooseFile } from "./imported-walk.ts";
import { bundledText } from "./written-walk.ts";

test.use({ actionTimeout: 15_000 });

const button = (page: Page, name: string) =>
  page.getByRole("button", { name, exact: true }).filter({ visible: true });
const visible = (page: Page, text: string) => page.getByText(text).filter({ visible: true }).first();

test("[WRD4] a text is put into another language, and the walk is followed in it, the author's one tap away", async ({
  page,
}) => {
  await page.goto("/write/example-practice");
  await expect(page.getByText("of what is written")).toBeVisible();
  await button(page, "Lists").click();
  await page.getByLabel("List", { exact: true }).selectOption("Languages");
  await page.getByLabel("Language tag, such as fr or pt-BR").fill("sv");
  await button(page, "Add the language").click();
  await page.getByLabel("Texts shown").selectOption("Missing or older");
  const first = page.getByRole("textbox", { name: "iv-door · Do", exact: true });
  await first.fill("Öppna ytterdörren");
  await first.press("Enter");
  await expect(first).toHaveValue("Öppna ytterdörren");
  await expect(page.getByRole("textbox", { name: "ev1-mast · Do", exact: true })).toBeFocused();
  expect(await violations(page, ".language-texts")).toEqual([]);
  await button(page, "Undo").click();
  await expect(first).toHaveValue("");
  await button(page, "Redo").click();
  await expect(first).toHaveValue("Öppna ytterdörren");
  await expect(page.getByText("On this device.")).toBeVisible();

  await button(page, "Save as a revision").click();
  await page.getByLabel("Who saves it").fill("The planner");
  await page.getByLabel("Why").fill("Swedish begun");
  await page.getByRole("button", { name: /^Save as revision/ }).click();
  await expect(page.getByText(/Revision .* is on the shelf\./)).toBeVisible();
  await page.getByRole("navigation", { name: "Screens" }).getByRole("button", { name: "Shelf" }).click();
  await page
    .getByRole("button", { name: /^Rehearse Practice/ })
    .first()
    .click();

  await expect(visible(page, "Open the outer door")).toBeVisible();
  await button(page, "More").click();
  await page.getByLabel("Texts of the procedure").selectOption("svenska");
  await expect(page.getByRole("dialog")).toContainText("texts have no words for svenska yet");
  await page.keyboard.press("Escape");
  await expect(visible(page, "Öppna ytterdörren")).toHaveAttribute("lang", "sv");
  const missing = page.locator("li[data-row=ev1-mast]");
  await expect(missing.locator("[lang=en]")).toHaveText("Walk to the lamp mast");
  await expect(missing).toContainText("as written");
  expect(await violations(page, ".follow")).toEqual([]);

  await button(page, "As written").click();
  await expect(visible(page, "Open the outer door")).toBeVisible();
  await expect(missing).not.toContainText("as written");
  await button(page, "svenska").click();
  await expect(visible(page, "Öppna ytterdörren")).toBeVisible();
});

test("[WRD4] the practice walk is read in the language of the screens, each text in its own direction", async ({
  page,
}) => {
  await page.goto("/read/example-practice");
  await expect(visible(page, "Open the outer door")).toBeVisible();
  await page.getByLabel("Texts of the procedure").selectOption("العربية");
  const door = visible(page, "افتح الباب الخارجي");
  await expect(door).toHaveAttribute("dir", "rtl");
  await expect(door).toHaveAttribute("lang", "ar");
  await expect(page.locator(".text-mark")).toHaveCount(0);
  expect(await violations(page, ".read")).toEqual([]);

  await page.evaluate(() => localStorage.removeItem("tetherline.texts"));
  await page.goto("/");
  await page.getByRole("button", { name: "Language and display" }).click();
  await page.getByRole("combobox", { name: "Language", exact: true }).selectOption({ label: "Français" });
  await expect(page.locator("html")).toHaveAttribute("lang", "fr");
  await page.goto("/read/example-practice");
  await expect(visible(page, "Ouvrir la porte extérieure")).toBeVisible();
  await page.goto("/print/example-practice");
  await expect(visible(page, "Ouvrir la porte extérieure")).toHaveAttribute("lang", "fr");
});

test("[WRD4] what is compared, learnt and drawn as a sample is named in the reader's language, and what differs as written", async ({
  page,
}) => {
  const { file } = applyChanges(JSON.parse(bundledText("practice")) as ProcedureFile, [
    { head: { revision: "X" } },
    { change: "iv-door", set: { do: "Open the outer door wide", time: "PT9M" } },
    { drop: "ev1-volts" },
  ]);
  await page.goto("/");
  await page.evaluate(() => localStorage.setItem("tetherline.texts", '"fr"'));
  await chooseFile(page, { name: "later.procedure.json", text: JSON.stringify(file) });
  await expect(page.getByRole("status").first()).toContainText("later");
  await page.goto("/compare?before=example-practice");
  const later = page.getByLabel("Later").locator("option", { hasText: "rev. X" }).first();
  await page.getByLabel("Later").selectOption(await later.getAttribute("value"));
  await expect(page.getByRole("region", { name: "What changed" })).toContainText("Open the outer door wide");
  const charts = page.locator(".timeline-chart");
  const doors = ["Open the outer door (as written)", "Open the outer door wide (as written)"];
  for (const [side, text] of doors.entries()) {
    await expect(charts.nth(side).getByRole("button", { name: text })).toBeAttached();
    await expect(charts.nth(side).getByRole("button", { name: "Dévisser l’ancienne lampe" })).toBeAttached();
  }
  expect(await violations(page, "main")).toEqual([]);
  await page.getByRole("link", { name: "Print with change bars" }).click();
  await expect(page.getByRole("row", { name: /Open the outer door wide.*as written/ })).toBeVisible();
  await expect(page.locator("del")).toHaveText("Lire à IV la tension à la douille");

  await page.goto("/marks");
  const sample = page.locator(".site-figure").first();
  await expect(sample.getByText("Mât de la lampe").first()).toBeAttached();
  await button(page, "As written").click();
  await expect(sample.getByText("Lamp mast").first()).toBeAttached();
  await page.goto("/learn/example-practice");
  await expect(page.getByRole("heading", { level: 1 })).toContainText("Entraînement");
});
