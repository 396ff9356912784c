import { useCallback, useSyncExternalStore } from "react";

/** Whether a media query holds on the reader's device at the moment. */
export function useMedia(query: string): boolean {
  const watch = useCallback(
    (onChange: () => void) => {
      const list = window.matchMedia(query);
      list.addEventListener("change", onChange);
      return () => list.removeEventListener("change", onChange);
    },
    [query],
  );
  return useSyncExternalStore(watch, () => window.matchMedia(query).matches);
}

/** Whether the reader's device asks for less motion. */
export const useIsCalm = (): boolean => useMedia("(prefers-reduced-motion: reduce)");
