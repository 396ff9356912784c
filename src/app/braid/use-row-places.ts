import type { RefObject } from "react";
import { useCallback, useEffect, useLayoutEffect, useRef, useState } from "react";
import type { BraidMarker, BraidRow, PlacedRow } from "./braid-geometry.ts";

/** The rows of a list with their measured positions, and the markers that belong to them. */
export interface PlacedRows {
  readonly rows: readonly PlacedRow[];
  readonly markers: readonly BraidMarker[];
  readonly height: number;
  readonly isNarrow: boolean;
}

/** A row's height when it was last visible, and the position of its bead within it, in px. */
interface RowPlace {
  readonly height: number;
  readonly bead: number;
}

const NARROW_BELOW = 640;

/**
 * How long a list is drawn whole before rows out of sight may be skipped, in ms. After that the browser knows the
 * height of each row.
 */
const DRAWN_WHOLE_FOR = 500;

const isNarrow = () => window.innerWidth < NARROW_BELOW;

/**
 * Measures the positions of a list's rows after each change. Rows and positions are returned together, so that what is
 * drawn beside the list never mixes earlier rows with later positions. `maySkip` says that rows out of sight need not
 * be laid out.
 */
export function useRowPlaces(
  list: RefObject<HTMLElement | null>,
  rows: readonly BraidRow[],
  markers: readonly BraidMarker[],
): { readonly placed: PlacedRows; readonly maySkip: boolean } {
  const [placed, setPlaced] = useState(
    (): PlacedRows => ({ rows: [], markers: [], height: 0, isNarrow: isNarrow() }),
  );
  const [width, setWidth] = useState(0);
  const [maySkip, setMaySkip] = useState(false);
  const seen = useRef(new WeakMap<Element, RowPlace>());
  const skipped = useRef(new WeakSet<Element>());
  const latest = useRef({ rows, markers });
  const measuredHeight = useRef(-1);

  const measure = useCallback(() => {
    const element = list.current;
    if (!element) return;
    const top = element.getBoundingClientRect().top;
    let next = 0;
    const ys = [...element.children].map((row) => {
      const known = skipped.current.has(row) ? seen.current.get(row) : undefined;
      // Measuring a row whose content is skipped would force its layout. Its height is still the one last seen.
      if (known) {
        next += known.height;
        return Math.round(next - known.height + known.bead);
      }
      const box = row.getBoundingClientRect();
      const bead = row.querySelector("[data-bead]")?.getBoundingClientRect() ?? box;
      const offset = bead.top - box.top + bead.height / 2;
      seen.current.set(row, { height: box.height, bead: offset });
      next = box.bottom - top;
      return Math.round(box.top - top + offset);
    });
    const height = element.scrollHeight;
    measuredHeight.current = height;
    const now = latest.current;
    setPlaced({
      rows: now.rows.map(({ key, lanes, stage }, index) => ({ key, lanes, stage, y: ys[index] ?? 0 })),
      markers: now.markers,
      height,
      isNarrow: isNarrow(),
    });
  }, [list]);

  useLayoutEffect(() => {
    latest.current = { rows, markers };
    measure();
  }, [measure, rows, markers]);

  useLayoutEffect(() => {
    const element = list.current;
    if (!element) return;
    const observer = new ResizeObserver(() => {
      setWidth(element.clientWidth);
      // A height that was already measured needs no action: the change that caused it measured it.
      if (element.scrollHeight !== measuredHeight.current) measure();
    });
    observer.observe(element);
    // One scroll brings many rows into view at once, so they are measured together.
    let asked = 0;
    const onSkipping = (event: Event) => {
      if (!(event.target instanceof Element)) return;
      if ((event as ContentVisibilityAutoStateChangeEvent).skipped) skipped.current.add(event.target);
      else {
        skipped.current.delete(event.target);
        cancelAnimationFrame(asked);
        asked = requestAnimationFrame(measure);
      }
    };
    element.addEventListener("contentvisibilityautostatechange", onSkipping, { capture: true });
    return () => {
      observer.disconnect();
      cancelAnimationFrame(asked);
      element.removeEventListener("contentvisibilityautostatechange", onSkipping, { capture: true });
    };
  }, [list, measure]);

  // At another width every row has another height.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the width is not read, it starts the wait anew.
  useEffect(() => {
    setMaySkip(false);
    const timer = setTimeout(() => setMaySkip(true), DRAWN_WHOLE_FOR);
    return () => clearTimeout(timer);
  }, [width]);

  return { placed, maySkip };
}
