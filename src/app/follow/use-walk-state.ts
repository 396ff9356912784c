import { createContext, useContext, useDeferredValue } from "react";
import type { WalkState } from "../../core/walk/index.ts";

/** The state that the follow screen shows. `null` without a provider. */
export const WalkStateContext = createContext<WalkState | null>(null);

/**
 * The state that the follow screen shows, for a part of a row that needs more of the walk than the row holds. It is
 * allowed to be a little behind, so that a tap is drawn first.
 */
export function useWalkState(): WalkState | null {
  return useDeferredValue(useContext(WalkStateContext));
}
