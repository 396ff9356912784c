import { useEffect, useRef } from "react";
import type { Played } from "./use-playback.ts";

const KEYS: Readonly<Record<string, (play: Played) => void>> = {
  " ": (play) => play.toggle(),
  k: (play) => play.toggle(),
  ArrowRight: (play) => play.step("on"),
  ArrowLeft: (play) => play.step("back"),
  PageDown: (play) => play.task("on"),
  PageUp: (play) => play.task("back"),
};

/** Plays a briefing by keys wherever the focus is, except in a field that has keys of its own. */
export function useBriefKeys(play: Played): void {
  const latest = useRef(play);
  latest.current = play;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const act = KEYS[event.key];
      if (!act || event.ctrlKey || event.metaKey || event.altKey) return;
      const at = event.target instanceof HTMLElement ? event.target.tagName : "";
      if (/^(INPUT|SELECT|TEXTAREA)$/.test(at) || (event.key === " " && /^(BUTTON|A)$/.test(at))) return;
      event.preventDefault();
      act(latest.current);
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
}
