import { useSyncExternalStore } from "react";
import type { RecordedLight } from "../../core/plan/index.ts";
import { currentLightChoice, watchLightChoice } from "./light-choice.ts";

/** The source of day and night chosen on this device. The component is drawn again when it changes. */
export function useLightChoice(): RecordedLight | null {
  return useSyncExternalStore(watchLightChoice, currentLightChoice);
}
