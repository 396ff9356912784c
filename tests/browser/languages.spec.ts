import { expect, type Page, test } from "@playwright/test";
import { violations } from "./axe-violations.ts";

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
