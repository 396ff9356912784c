import type { PointerEvent as ReactPointerEvent, RefObject } from "react";
import { useCallback, useEffect, useRef, useState } from "react";
import type { Message } from "../../words/index.ts";
import type { DropPlace } from "./drop-place.ts";
import { dropPlace, rowsAlong } from "./drop-place.ts";
import { scrollerOf } from "./page-scroll.ts";
import type { Sight } from "./row-sight.ts";
import { sightOf } from "./row-sight.ts";
import type { TableRow } from "./sheet-rows.ts";

/** What is dragged, and where it would go. */
export interface RowDrag {
  /** The rows that move, by key: those that are dragged, and the steps of tasks among them. */
  readonly rows: readonly string[];
  /** `null` where letting go does nothing. */
  readonly place: DropPlace | null;
  /** Why it cannot go there; `null` where it can. */
  readonly problem: Message | null;
}

interface RowDragParts {
  readonly table: RefObject<HTMLElement | null>;
  readonly rows: readonly TableRow[];
  readonly selected: readonly string[];
  /** Why rows cannot be moved to another one; `null` where they can be. */
  readonly whyNotMoved: (rows: readonly string[], to: string | null) => Message | null;
  /** Called once they are let go, with how far the page was scrolled when they were taken up, in px. */
  readonly onMove: (rows: readonly string[], to: string | null, scroll: number) => void;
}

/** A pointer that moved less, in px, is a tap and drags nothing. */
const LEAST = 6;
/** Pointers as far beside the table, in px, have left it. */
const BESIDE = 48;
/** As near to an edge of what is in sight, in px, the page is scrolled, and as fast at most, in px for each frame. */
const EDGE = 72;
const FASTEST = 18;

/** How far the page is scrolled in the next frame for a pointer at a height; 0 away from the edges. */
export function scrollBy(y: number, { top, bottom }: Sight): number {
  const edge = Math.min(EDGE, (bottom - top) / 4);
  const into = y < top + edge ? y - (top + edge) : y > bottom - edge ? y - (bottom - edge) : 0;
  return Math.max(-FASTEST, Math.min(FASTEST, Math.round((into / edge) * FASTEST)));
}

/**
 * Drags rows by the handle of one of them ([WRT2]); what is selected with it comes along. Nothing is changed before they are let go, which
 * is one gesture. Escape, leaving the table, a pointer that the system takes away, and rows that change meanwhile end it without one.
 */
export function useRowDrag({ table, rows, selected, whyNotMoved, onMove }: RowDragParts): {
  readonly drag: RowDrag | null;
  readonly onPointerDown: (event: ReactPointerEvent) => void;
} {
  const [drag, setDrag] = useState<RowDrag | null>(null);
  const latest = useRef({ rows, whyNotMoved, onMove });
  latest.current = { rows, whyNotMoved, onMove };
  const end = useRef<(() => void) | null>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: the rows are not read, they are what changed under the pointer.
  useEffect(() => () => end.current?.(), [rows]);

  const onPointerDown = useCallback(
    (event: ReactPointerEvent) => {
      const { target, pointerId } = event;
      const handle = target instanceof Element ? target.closest("[data-handle]") : null;
      const key = handle?.closest<HTMLElement>("[data-row]")?.dataset["row"];
      const shown = table.current;
      if (key === undefined || !shown || !event.isPrimary || event.button !== 0 || end.current) return;
      const dragged = selected.includes(key) ? selected : [key];
      const from = { x: event.clientX, y: event.clientY };
      const scroll = scrollerOf(shown).scrollTop;
      let at = from;
      const along = [...rowsAlong(latest.current.rows, dragged)];
      let isDragging = false;
      let now: RowDrag | null = null;
      let frame = 0;

      const look = () => {
        const place = placeUnder(shown, latest.current.rows, dragged, at);
        const same = now?.place?.to === place?.to && now?.place?.under === place?.under;
        if (now && same) return;
        const problem = place && latest.current.whyNotMoved(dragged, place.to);
        now = { rows: along, place, problem };
        setDrag(now);
      };
      const onFrame = () => {
        const by = scrollBy(at.y, sightOf(shown));
        if (by !== 0) {
          scrollerOf(shown).scrollTop += by;
          look();
        }
        frame = requestAnimationFrame(onFrame);
      };
      const onPointerMove = (moved: PointerEvent) => {
        if (moved.pointerId !== pointerId) return;
        at = { x: moved.clientX, y: moved.clientY };
        if (!isDragging) {
          if (Math.hypot(at.x - from.x, at.y - from.y) < LEAST) return;
          isDragging = true;
          frame = requestAnimationFrame(onFrame);
        }
        look();
      };
      const stop = () => {
        end.current = null;
        cancelAnimationFrame(frame);
        for (const [name, listener] of listeners)
          window.removeEventListener(name, listener as EventListener, { capture: true });
        setDrag(null);
      };
      const onPointerUp = (up: PointerEvent) => {
        if (up.pointerId !== pointerId) return;
        const place = now?.place;
        stop();
        if (!isDragging) return;
        swallowClick();
        if (place) latest.current.onMove(dragged, place.to, scroll);
      };
      const onKeyDown = (pressed: KeyboardEvent) => {
        if (pressed.key !== "Escape") return;
        pressed.preventDefault();
        pressed.stopPropagation();
        stop();
        if (isDragging) window.addEventListener("pointerup", swallowClick, { capture: true, once: true });
      };
      const onCancel = (cancelled: PointerEvent) => {
        if (cancelled.pointerId === pointerId) stop();
      };
      const onBlur = (left: FocusEvent) => {
        // A cell that loses the focus to the handle is no matter.
        if (!(left.target instanceof Node)) stop();
      };
      const listeners = [
        ["pointermove", onPointerMove],
        ["pointerup", onPointerUp],
        ["pointercancel", onCancel],
        ["keydown", onKeyDown],
        ["blur", onBlur],
      ] as const;
      for (const [name, listener] of listeners)
        window.addEventListener(name, listener as EventListener, { capture: true });
      end.current = stop;
    },
    [table, selected],
  );
  return { drag, onPointerDown };
}

/** Keeps the click that follows a drag from choosing the row under it. */
function swallowClick(): void {
  const swallow = (event: Event) => event.stopPropagation();
  window.addEventListener("click", swallow, { capture: true, once: true });
  setTimeout(() => window.removeEventListener("click", swallow, { capture: true }), 0);
}

/** Where rows would go that are let go at a point of the window; `null` beside the table and outside what is in sight. */
function placeUnder(
  table: HTMLElement,
  rows: readonly TableRow[],
  dragged: readonly string[],
  { x, y }: { readonly x: number; readonly y: number },
): DropPlace | null {
  const box = table.getBoundingClientRect();
  const sight = sightOf(table);
  if (x < box.left - BESIDE || x > box.right + BESIDE) return null;
  if (y < Math.max(box.top, sight.top) - BESIDE / 2 || y > Math.min(box.bottom, sight.bottom) + BESIDE / 2)
    return null;
  const shown = [...table.querySelectorAll<HTMLElement>("[data-row]")];
  const above = shown.findLast((row) => {
    const { top, height } = row.getBoundingClientRect();
    return top + height / 2 <= y;
  });
  const under = above ? rows.findIndex(({ key }) => key === above.dataset["row"]) : 0;
  return dropPlace(rows, dragged, under);
}
