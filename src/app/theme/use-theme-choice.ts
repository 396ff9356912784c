import { useSyncExternalStore } from "react";
import { currentThemeChoice, subscribeToThemeChoice, type ThemeChoice } from "./theme-choice.ts";

/** The reader's present choice. The component is drawn again when it changes. */
export function useThemeChoice(): ThemeChoice {
  return useSyncExternalStore(subscribeToThemeChoice, currentThemeChoice);
}
