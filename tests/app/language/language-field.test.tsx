import { render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, expect, it } from "vitest";
import { chooseLanguage } from "../../../src/app/language/choose-language.ts";
import { startLanguage, wholeLanguage } from "../../../src/app/language/index.ts";
import { LanguageField } from "../../../src/app/language/language-field.tsx";
import { englishWords } from "../../../src/words/english/index.ts";
import { frenchWords } from "../../../src/words/french/index.ts";
import { words } from "../../../src/words/index.ts";

afterEach(async () => {
  await chooseLanguage("en-GB");
  localStorage.clear();
});

it("[WRD3] goes over at once, with the words of all screens, and says so to the page", async () => {
  render(<LanguageField />);
  await userEvent.selectOptions(screen.getByLabelText(englishWords["parts/language"]), "Français");
  await waitFor(() => expect(document.documentElement.lang).toBe("fr"));
  expect(words("parts/language")).toBe(frenchWords["parts/language"]);
  expect(words("write/undo")).toBe(frenchWords["write/undo"]);
  await chooseLanguage("ar-u-nu-latn");
  expect(document.documentElement).toHaveAttribute("dir", "rtl");
  expect(document.documentElement.lang).toBe("ar");
});

it("[WRD3] is kept on the device, and begins with the words of the first screen alone", async () => {
  await chooseLanguage("de");
  expect(localStorage.getItem("tetherline.language")).toBe('"de"');
  await startLanguage();
  expect(document.documentElement.lang).toBe("de");
  expect(() => words("write/undo")).toThrow();
  await wholeLanguage();
  expect(words("write/undo")).toBe("Rückgängig");
});

it("[WRD3] of two choices the later one holds, though the words of the first come last", async () => {
  await chooseLanguage("de");
  // Japanese was not loaded before, and German was.
  const first = chooseLanguage("ja");
  await chooseLanguage("de");
  await first;
  expect(document.documentElement.lang).toBe("de");
  expect(localStorage.getItem("tetherline.language")).toBe('"de"');
});

it("[WRD3] begins in English where nothing was kept, or what is no language", async () => {
  localStorage.setItem("tetherline.language", '"tlh"');
  await startLanguage();
  expect(words("parts/language")).toBe(englishWords["parts/language"]);
});
