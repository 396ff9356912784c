import { useCallback, useSyncExternalStore } from "react";
import type { WalkId } from "../../core/units/index.ts";
import type { LinkStatus } from "../../io/link/index.ts";
import { useServices } from "../session/index.ts";

/** How a walk is linked. The component is drawn again when that changes. */
export function useLink(walk: WalkId): LinkStatus {
  const { links } = useServices();
  const watch = useCallback((onChange: () => void) => links.watch(walk, onChange), [links, walk]);
  const status = useCallback(() => links.status(walk), [links, walk]);
  return useSyncExternalStore(watch, status);
}
