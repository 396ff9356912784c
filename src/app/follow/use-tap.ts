import type { MouseEvent, TouchEvent } from "react";
import { useRef } from "react";

/** What a button needs to be tapped. */
export interface TapHandlers {
  readonly onClick: (event: MouseEvent<HTMLElement>) => void;
  readonly onTouchStart: (event: TouchEvent<HTMLElement>) => void;
  readonly onTouchEnd: (event: TouchEvent<HTMLElement>) => void;
}

/** A finger that moved farther than this did not tap, in px. */
const STEADY = 16;

/**
 * Answers a tap when the finger is lifted, not only after the browser has played a mouse to the page as well, which takes
 * longer than keeping the entry. Mouse, keyboard and screen readers click as ever; one tap is never taken for two.
 */
export function useTap(onTap: () => void): TapHandlers {
  const from = useRef<{ readonly x: number; readonly y: number } | null>(null);
  return {
    onClick: onTap,
    onTouchStart: ({ touches }) => {
      const touch = touches[0];
      from.current = touch && touches.length === 1 ? { x: touch.clientX, y: touch.clientY } : null;
    },
    onTouchEnd: (event) => {
      const touch = event.changedTouches[0];
      const start = from.current;
      from.current = null;
      // Once the list scrolls under the finger, its lifting can no longer be prevented.
      if (!touch || !start || !event.cancelable) return;
      if (Math.hypot(touch.clientX - start.x, touch.clientY - start.y) > STEADY) return;
      event.preventDefault();
      // A value being typed is entered when its field is left, as it is by a click elsewhere.
      if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
      onTap();
    },
  };
}
