import { useSyncExternalStore } from "react";

/** A phone, upright or on its side; follow.css has the same bounds. */
const SMALL = ["(max-width: 639px)", "(max-height: 500px)"].join();

function subscribe(onChange: () => void): () => void {
  const query = window.matchMedia(SMALL);
  query.addEventListener("change", onChange);
  return () => query.removeEventListener("change", onChange);
}

/** True while the window has the size of a phone. */
export function useIsSmall(): boolean {
  return useSyncExternalStore(subscribe, () => window.matchMedia(SMALL).matches);
}
