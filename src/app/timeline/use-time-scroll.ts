import type { RefObject } from "react";
import { useCallback, useLayoutEffect, useRef, useState } from "react";
import type { TimeScale } from "./time-scale.ts";

/**
 * Where the present is drawn, as a share of the visible width from the left, so that more of what is to come is
 * visible.
 */
const NOW_AT = 0.35;
const SEEN_STEP = 24;

const stepped = (left: number) => Math.ceil(left / SEEN_STEP) * SEEN_STEP;

interface TimeScroll {
  /** True while the chart follows the present. */
  readonly following: boolean;
  /**
   * The left edge of the visible part, rounded to a number of px, so that names move along without being drawn again
   * for each pixel.
   */
  readonly seenFrom: number;
  readonly backToNow: () => void;
  readonly onScroll: () => void;
  /** Scrolls the stretch from one x to another into view and stops following the present. */
  readonly reveal: (from: number, to: number) => void;
}

/**
 * Scrolls with the present until the reader scrolls away. When the scale changes, the middle of the visible part stays
 * in the middle.
 */
export function useTimeScroll(
  element: RefObject<HTMLElement | null>,
  scale: TimeScale,
  now: number | null,
): TimeScroll {
  const [following, setFollowing] = useState(true);
  const [seenFrom, setSeenFrom] = useState(0);
  const placed = useRef(0);
  const middle = useRef<{ readonly pet: number; readonly width: number } | null>(null);

  const place = useCallback(
    (left: number) => {
      const target = element.current;
      if (!target) return;
      target.scrollLeft = left;
      placed.current = target.scrollLeft;
      setSeenFrom(stepped(target.scrollLeft));
      middle.current = { pet: scale.pet(target.scrollLeft + target.clientWidth / 2), width: scale.width };
    },
    [element, scale],
  );

  useLayoutEffect(() => {
    const target = element.current;
    if (!target) return;
    if (following && now !== null) place(scale.x(now) - target.clientWidth * NOW_AT);
    else if (middle.current && middle.current.width !== scale.width)
      place(scale.x(middle.current.pet) - target.clientWidth / 2);
  }, [element, following, now, place, scale]);

  const onScroll = useCallback(() => {
    const target = element.current;
    if (!target || Math.abs(target.scrollLeft - placed.current) < 2) return;
    placed.current = target.scrollLeft;
    setSeenFrom(stepped(target.scrollLeft));
    middle.current = { pet: scale.pet(target.scrollLeft + target.clientWidth / 2), width: scale.width };
    setFollowing(false);
  }, [element, scale]);

  const reveal = useCallback(
    (from: number, to: number) => {
      const target = element.current;
      if (!target) return;
      const { scrollLeft, clientWidth } = target;
      if (from >= scrollLeft + 16 && Math.min(to, from + clientWidth - 40) <= scrollLeft + clientWidth - 16)
        return;
      setFollowing(false);
      place(from - clientWidth * 0.25);
    },
    [element, place],
  );

  return { following, seenFrom, backToNow: () => setFollowing(true), onScroll, reveal };
}
