import { useSyncExternalStore } from "react";
import type { RecordedLight } from "../../core/plan/index.ts";
import { currentLightChoice, watchLightChoice } from "./light-choice.ts";

/** What is chosen for day and night on this device; draws again when it changes. */
export function useLightChoice(): RecordedLight | null {
  return useSyncExternalStore(watchLightChoice, currentLightChoice);
}
