import type { RefObject } from "react";
import { createContext, useCallback, useContext, useEffect, useRef, useState } from "react";
import type { TapPoint, TapRefusal } from "./tap-guard.ts";
import { TapGuard } from "./tap-guard.ts";

/** Returns whether a tap on a control counts. */
export type JudgeTap = (control: Element, point: TapPoint | null) => boolean;

/** Judges the taps on the controls that mark something. Without a provider every tap counts. */
export const TapGuardContext = createContext<JudgeTap>(() => true);

/** The judge of the screen that a control is on. */
export const useJudgeTap = (): JudgeTap => useContext(TapGuardContext);

/** The controls whose taps are judged carry this attribute. */
const GUARDED = "[data-guarded]";

/**
 * Watches the controls of a screen and judges the taps on them. `onRefused` is told of each tap that does not count,
 * so that it can be said.
 */
export function useTapGuard(
  screen: RefObject<HTMLElement | null>,
  onRefused: (refusal: TapRefusal) => void,
): JudgeTap {
  const [guard] = useState(() => new TapGuard(() => performance.now()));
  const look = useCallback(() => {
    if (screen.current) guard.look(screen.current.querySelectorAll(GUARDED));
  }, [guard, screen]);
  const asked = useRef<number | null>(null);
  // Once a picture, when it is laid out anyway. What was tapped before is refused all the same: it is not known there.
  const lookSoon = useCallback(() => {
    asked.current ??= requestAnimationFrame(() => {
      asked.current = null;
      look();
    });
  }, [look]);
  // What is drawn anew may be elsewhere, and so may what stands below it.
  useEffect(lookSoon);
  useEffect(() => {
    const element = screen.current;
    if (!element) return;
    element.addEventListener("scroll", lookSoon, { passive: true, capture: true });
    window.addEventListener("resize", lookSoon);
    return () => {
      element.removeEventListener("scroll", lookSoon, { capture: true });
      window.removeEventListener("resize", lookSoon);
      if (asked.current !== null) cancelAnimationFrame(asked.current);
      asked.current = null;
    };
  }, [screen, lookSoon]);
  return useCallback(
    (control, point) => {
      const refusal = guard.judge(control, point);
      if (refusal !== null) onRefused(refusal);
      return refusal === null;
    },
    [guard, onRefused],
  );
}
