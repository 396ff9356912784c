import type { KeyboardEvent, MouseEvent, PointerEvent, RefObject } from "react";
import { useEffect, useRef } from "react";
import type { DrawnPoint } from "../../core/worksite/index.ts";

/** What a gesture has done to the map so far: moved it, and drawn it larger around a point of the room. */
export interface Gesture {
  readonly dx: number;
  readonly dy: number;
  readonly times: number;
  readonly around: DrawnPoint;
}

interface GestureParts {
  readonly room: RefObject<HTMLElement | null>;
  /** The element that holds the drawing. A transform is written straight to it while a gesture lasts. */
  readonly stage: RefObject<HTMLElement | null>;
  /** Where the stage lies while nothing moves it. */
  readonly at: DrawnPoint;
  /** Called once a gesture is over; the drawing is then made anew. */
  readonly onEnd: (gesture: Gesture) => void;
  readonly onKey: (key: string) => boolean;
}

/** A pointer that moved less than this has tapped, in px. */
const TAP = 6;
/** A wheel that has stood still for so long has done its gesture, in ms. */
const WHEEL_REST = 180;

/**
 * Moves and enlarges the map by one pointer, two pointers, the wheel and keys. While a gesture lasts only a transform is
 * written; whoever asks draws anew when it is over ([MAP6]).
 */
export function useMapGestures({ room, stage, at, onEnd, onKey }: GestureParts) {
  const pointers = useRef(new Map<number, DrawnPoint>());
  const begun = useRef<{ readonly middle: DrawnPoint; readonly apart: number } | null>(null);
  const gesture = useRef<Gesture | null>(null);
  const hasMoved = useRef(false);
  const latest = useRef({ at, onEnd });
  latest.current = { at, onEnd };

  const write = (next: Gesture) => {
    gesture.current = next;
    const { x, y } = latest.current.at;
    const { dx, dy, times, around } = next;
    const left = around.x - (around.x - x) * times + dx;
    const top = around.y - (around.y - y) * times + dy;
    if (stage.current)
      stage.current.style.transform = [`translate(${left}px,`, `${top}px)`, `scale(${times})`].join(" ");
  };
  const end = () => {
    const done = gesture.current;
    gesture.current = null;
    begun.current = null;
    if (done) latest.current.onEnd(done);
  };
  const inRoom = (event: { readonly clientX: number; readonly clientY: number }): DrawnPoint => {
    const box = room.current?.getBoundingClientRect();
    return { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) };
  };

  const handlers = useRef({ write, end, inRoom });
  handlers.current = { write, end, inRoom };
  useEffect(() => {
    const element = room.current;
    if (!element) return;
    let rest = 0;
    // React listens to the wheel without the right to keep the page from scrolling.
    const onWheel = (event: WheelEvent) => {
      const isMeant = event.ctrlKey || event.metaKey || element.contains(document.activeElement);
      if (!isMeant) return;
      event.preventDefault();
      const before = gesture.current;
      const times = Math.min(8, Math.max(0.125, (before?.times ?? 1) * 1.0015 ** -event.deltaY));
      handlers.current.write({
        dx: 0,
        dy: 0,
        times,
        around: before?.around ?? handlers.current.inRoom(event),
      });
      window.clearTimeout(rest);
      rest = window.setTimeout(() => handlers.current.end(), WHEEL_REST);
    };
    element.addEventListener("wheel", onWheel, { passive: false });
    return () => {
      window.clearTimeout(rest);
      element.removeEventListener("wheel", onWheel);
    };
  }, [room]);

  const onPointerDown = (event: PointerEvent<HTMLElement>) => {
    if (event.pointerType === "mouse" && event.button !== 0) return;
    // What the last pointers did counts before another one joins or leaves.
    if (gesture.current) end();
    pointers.current.set(event.pointerId, inRoom(event));
    begun.current = spreadOf([...pointers.current.values()]);
    if (pointers.current.size === 1) hasMoved.current = false;
  };
  const onPointerMove = (event: PointerEvent<HTMLElement>) => {
    if (!pointers.current.has(event.pointerId) || !begun.current) return;
    pointers.current.set(event.pointerId, inRoom(event));
    const { middle, apart } = spreadOf([...pointers.current.values()]);
    const [dx, dy] = [middle.x - begun.current.middle.x, middle.y - begun.current.middle.y];
    const times = begun.current.apart > 0 && apart > 0 ? apart / begun.current.apart : 1;
    if (!hasMoved.current && Math.hypot(dx, dy) < TAP && times === 1) return;
    if (!hasMoved.current) event.currentTarget.setPointerCapture?.(event.pointerId);
    hasMoved.current = true;
    write({ dx, dy, times, around: begun.current.middle });
  };
  const onPointerEnd = (event: PointerEvent<HTMLElement>) => {
    if (!pointers.current.delete(event.pointerId)) return;
    end();
    if (pointers.current.size > 0) begun.current = spreadOf([...pointers.current.values()]);
  };
  return {
    onPointerDown,
    onPointerMove,
    onPointerUp: onPointerEnd,
    onPointerCancel: onPointerEnd,
    // A drag that ends over a place is no tap on it.
    onClickCapture: (event: MouseEvent) => {
      if (!hasMoved.current) return;
      hasMoved.current = false;
      event.stopPropagation();
      event.preventDefault();
    },
    onKeyDown: (event: KeyboardEvent) => {
      if (event.altKey || event.ctrlKey || event.metaKey) return;
      if (onKey(event.key)) event.preventDefault();
    },
  };
}

/** The middle of some pointers and how far two of them are apart; 0 for one. */
function spreadOf(points: readonly DrawnPoint[]): { readonly middle: DrawnPoint; readonly apart: number } {
  const [a, b] = points;
  if (!a) return { middle: { x: 0, y: 0 }, apart: 0 };
  if (!b) return { middle: a, apart: 0 };
  return { middle: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, apart: Math.hypot(a.x - b.x, a.y - b.y) };
}
