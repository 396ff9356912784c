import type { MouseEvent, TouchEvent } from "react";
import { useRef } from "react";
import type { TapPoint } from "./tap-guard.ts";

/** The event handlers that a button needs for taps. */
export interface TapHandlers {
  readonly onClick: (event: MouseEvent<HTMLElement>) => void;
  readonly onTouchStart: (event: TouchEvent<HTMLElement>) => void;
  readonly onTouchEnd: (event: TouchEvent<HTMLElement>) => void;
}

/** A finger that moved farther than this, in px, did not tap. */
const STEADY = 16;

/**
 * Responds to a tap when the finger is lifted. The browser's click event comes only after its emulated mouse events,
 * which takes longer than keeping the entry. Mouse, keyboard and screen readers use the click event as usual. One tap
 * never counts twice. `onTap` is told which control was tapped and where; the point is `null` for a key or a screen
 * reader.
 */
export function useTap(onTap: (control: HTMLElement, point: TapPoint | null) => void): TapHandlers {
  const from = useRef<{ readonly x: number; readonly y: number } | null>(null);
  return {
    onClick: ({ currentTarget, detail, clientX, clientY }) =>
      onTap(currentTarget, detail === 0 ? null : { x: clientX, y: clientY }),
    onTouchStart: ({ touches }) => {
      const touch = touches[0];
      from.current = touch && touches.length === 1 ? { x: touch.clientX, y: touch.clientY } : null;
    },
    onTouchEnd: (event) => {
      const touch = event.changedTouches[0];
      const start = from.current;
      from.current = null;
      // Once the list scrolls under the finger, the touchend event can no longer be cancelled.
      if (!touch || !start || !event.cancelable) return;
      if (Math.hypot(touch.clientX - start.x, touch.clientY - start.y) > STEADY) return;
      event.preventDefault();
      // A value that is being typed is entered when its field loses focus, as it is with a click elsewhere.
      if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
      onTap(event.currentTarget, { x: touch.clientX, y: touch.clientY });
    },
  };
}
