import { expect, type Page, test } from "@playwright/test";
import { arabicWords } from "../../src/words/arabic/index.ts";
import { englishWords } from "../../src/words/english/index.ts";
import { frenchWords } from "../../src/words/french/index.ts";
import type { Catalogue, MessageKey } from "../../src/words/index.ts";
import { violations } from "./axe-violations.ts";

test.use({ serviceWorkers: "allow" });

/** Chooses on a shelf that was just opened; `words` are those of the language that it is in. */
async function choose(page: Page, words: Catalogue, name: string, field: MessageKey = "parts/language") {
  await page.getByRole("button", { name: words["shelf/choices"] ?? "", exact: true }).click();
  await page.getByRole("combobox", { name: words[field] ?? "", exact: true }).selectOption({ label: name });
}
const heading = (page: Page, name: string) => page.getByRole("heading", { name, exact: true });

test("[WRD3] a language is chosen on the shelf, at once and for the next visits, offline too", async ({
  page,
  context,
}) => {
  await page.goto("/");
  await choose(page, englishWords, "Français");
  await expect(heading(page, frenchWords["shelf/procedures"] ?? "")).toBeVisible();
  await expect(page.locator("html")).toHaveAttribute("lang", "fr");
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.reload();
  await expect(heading(page, frenchWords["shelf/procedures"] ?? "")).toBeVisible();
  await context.setOffline(true);
  await page.reload();
  await expect(heading(page, frenchWords["shelf/procedures"] ?? "")).toBeVisible();
  await page.goto("/read/example-osier-ranging-head");
  await expect(heading(page, frenchWords["read/findings"] ?? "")).toBeVisible();
  await expect(page.locator("html")).toHaveAttribute("lang", "fr");
  await page.goto("/");
  await choose(page, frenchWords, "English");
  await expect(heading(page, englishWords["shelf/procedures"])).toBeVisible();
});

test("[WRD3] Arabic is read from right to left; what is chosen and nothing else is changed", async ({
  page,
}) => {
  await page.goto("/");
  await choose(page, englishWords, "العربية");
  // Each sentence of ours begins with the mark that says which way it runs.
  await expect(heading(page, `\u200f${arabicWords["shelf/procedures"]}`)).toBeVisible();
  await expect(page.locator("html")).toHaveAttribute("dir", "rtl");
  await expect(page.locator("html")).toHaveAttribute("lang", "ar");
  const isWide = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
  expect(isWide).toBe(false);
  expect(await violations(page, ".shelf")).toEqual([]);
});

test("[WRD5] units are chosen on the shelf, by keys too, at once and for the next visits", async ({
  page,
}) => {
  await page.goto("/");
  await choose(page, englishWords, "with US customary", "parts/units");
  const units = page.getByRole("combobox", { name: "Units", exact: true });
  await expect(units).toBeFocused();
  await expect(units).toHaveValue("us");
  await page.goto("/print/example-osier-ranging-head");
  await expect(page.getByText(/\d kPa \(\d+(\.\d+)? psi\)/).first()).toBeVisible();
  await page.goto("/");
  await choose(page, englishWords, "as written", "parts/units");
  await page.goto("/print/example-osier-ranging-head");
  await expect(page.getByText(/\d kPa/).first()).toBeVisible();
  await expect(page.getByText(/ psi\)/)).toHaveCount(0);
});
