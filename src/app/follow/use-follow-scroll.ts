import { useCallback, useEffect, useRef, useState } from "react";

/** How the list follows the walk. */
export interface FollowScroll {
  /** The element that scrolls. */
  readonly scroller: React.RefObject<HTMLDivElement | null>;
  /** False once the reader has scrolled away. */
  readonly following: boolean;
  /** Goes back to now, and follows from there. */
  readonly toNow: () => void;
  /** Brings one row into view and stays there. */
  readonly show: (row: string) => void;
}

/** How long after a scroll of our own the scroll events still belong to it, in ms. */
const OWN_SCROLL = 700;

/** Scroll events that come no farther apart than this belong to the same scroll, in ms. */
const STILL_OWN = 250;

/** A list at least so high has room for what was just done, in px. */
const ROOMY = 500;

/** Keeps the row `now` in view until the reader scrolls away. */
export function useFollowScroll(now: string | null): FollowScroll {
  const scroller = useRef<HTMLDivElement>(null);
  const [following, setFollowing] = useState(true);
  const ownUntil = useRef(0);

  const bring = useCallback((row: string, smooth: boolean) => {
    const list = scroller.current;
    const element = list?.querySelector<HTMLElement>(`[data-row="${CSS.escape(row)}"]`);
    if (!list || !element) return;
    const top = element.getBoundingClientRect().top - list.getBoundingClientRect().top + list.scrollTop;
    ownUntil.current = performance.now() + OWN_SCROLL;
    // Two lines of what was just done stay in sight above, where there is room for them.
    const wanted = list.clientHeight > ROOMY ? 124 : 28;
    const above = Math.max(28, Math.min(wanted, list.clientHeight - element.offsetHeight - 8));
    list.scrollTo({ top: Math.max(0, top - above), behavior: smooth ? "smooth" : "instant" });
  }, []);

  const isFirst = useRef(true);
  useEffect(() => {
    if (!following || now === null) return;
    const calm = window.matchMedia("(prefers-reduced-motion: reduce)").matches;
    bring(now, !isFirst.current && !calm);
    isFirst.current = false;
  }, [now, following, bring]);

  // Turned round, or set in another type, the same rows stand elsewhere.
  useEffect(() => {
    const list = scroller.current;
    if (!list || !following || now === null) return;
    const observer = new ResizeObserver(() => {
      if (performance.now() > ownUntil.current) bring(now, false);
    });
    observer.observe(list);
    for (const part of list.children) observer.observe(part);
    return () => observer.disconnect();
  }, [now, following, bring]);

  useEffect(() => {
    const list = scroller.current;
    if (!list) return;
    const away = () => setFollowing(false);
    const scrolled = () => {
      const now = performance.now();
      if (now > ownUntil.current) away();
      // A scroll of our own over a long way goes on for longer.
      else ownUntil.current = Math.max(ownUntil.current, now + STILL_OWN);
    };
    list.addEventListener("wheel", away, { passive: true });
    list.addEventListener("touchmove", away, { passive: true });
    list.addEventListener("scroll", scrolled, { passive: true });
    return () => {
      list.removeEventListener("wheel", away);
      list.removeEventListener("touchmove", away);
      list.removeEventListener("scroll", scrolled);
    };
  }, []);

  const toNow = useCallback(() => setFollowing(true), []);
  const show = useCallback(
    (row: string) => {
      setFollowing(false);
      bring(row, false);
    },
    [bring],
  );
  return { scroller, following, toNow, show };
}
