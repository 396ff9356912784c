import { Listeners } from "../../core/units/index.ts";
/** A theme that a reader may choose, or `auto`, which follows the device between day and night. */
export const themeChoices = ["auto", "day", "night", "dim"] as const;

export type ThemeChoice = (typeof themeChoices)[number];

/** The theme in force, with `auto` resolved. */
export type Theme = Exclude<ThemeChoice, "auto">;

const STORED_AS = "tetherline.theme";
const DEVICE_IS_DARK = "(prefers-color-scheme: dark)";

const listeners = new Listeners();

/** The stored choice. It is `auto` when nothing valid is stored or the store is not available. */
export function currentThemeChoice(): ThemeChoice {
  try {
    const stored = localStorage.getItem(STORED_AS);
    return themeChoices.find((choice) => choice === stored) ?? "auto";
  } catch {
    return chosenWithoutStore;
  }
}

/** Used when the store is not available. The choice then lasts for this visit. */
let chosenWithoutStore: ThemeChoice = "auto";

/** The theme for a choice on a device that is, or is not, set to dark. */
export function resolveTheme(choice: ThemeChoice, deviceIsDark: boolean): Theme {
  if (choice !== "auto") return choice;
  return deviceIsDark ? "night" : "day";
}

/** Stores the choice, applies it at once and notifies the subscribers. */
export function chooseTheme(choice: ThemeChoice): void {
  chosenWithoutStore = choice;
  try {
    localStorage.setItem(STORED_AS, choice);
  } catch {
    // Without a store the choice lasts for this visit.
  }
  applyTheme();
  listeners.tell();
}

/** Calls back after each choice; returns a function that ends the subscription. */
export const subscribeToThemeChoice = listeners.add;

/** Sets `data-theme` on the document and follows the device from then on. Call it once, before the first paint. */
export function startTheme(): void {
  applyTheme();
  window.matchMedia(DEVICE_IS_DARK).addEventListener("change", applyTheme);
}

function applyTheme(): void {
  const theme = resolveTheme(currentThemeChoice(), window.matchMedia(DEVICE_IS_DARK).matches);
  document.documentElement.dataset["theme"] = theme;
  const paper = getComputedStyle(document.documentElement).getPropertyValue("--sheet").trim();
  document.querySelector('meta[name="theme-color"]')?.setAttribute("content", paper);
}
