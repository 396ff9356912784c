import { useCallback, useEffect, useRef, useState } from "react";

/** The state of the list's scrolling, and how to control it. */
export interface FollowScroll {
  /** The element that scrolls. */
  readonly scroller: React.RefObject<HTMLDivElement | null>;
  /** False once the reader has scrolled away. */
  readonly following: boolean;
  /** Scrolls back to the present and follows it again. */
  readonly toNow: () => void;
  /** Scrolls one row into view and stays there. */
  readonly show: (row: string) => void;
}

/** How long after the program starts a scroll the scroll events are taken as its own, in ms. */
const OWN_SCROLL = 700;

/** While the program's own scroll goes on, scroll events at most this far apart belong to it, in ms. */
const STILL_OWN = 250;

/** How long the heights of the rows may change after the device is turned, in ms. */
const SETTLES_IN = 1500;

/** A list of at least this height has room for the steps that were just done, in px. */
const ROOMY = 500;

/** A row, and how far its top is below the top of the list, in px. */
interface Anchor {
  readonly row: string;
  readonly below: number;
}

/** The first row that is in view, or `null` when there is none. */
function anchorOf(list: HTMLElement): Anchor | null {
  const { top } = list.getBoundingClientRect();
  for (const row of list.querySelectorAll<HTMLElement>("[data-row]")) {
    const box = row.getBoundingClientRect();
    if (box.bottom > top) return { row: row.dataset["row"] ?? "", below: box.top - top };
  }
  return null;
}

/** Scrolls the list so that a row is again where it was. */
function restore(list: HTMLElement, { row, below }: Anchor): void {
  const element = list.querySelector<HTMLElement>(`[data-row="${CSS.escape(row)}"]`);
  if (!element) return;
  const now = element.getBoundingClientRect().top - list.getBoundingClientRect().top;
  list.scrollBy({ top: now - below, behavior: "instant" });
}

/** Whether any part of a row is in view. */
function isInView(list: HTMLElement, row: string): boolean {
  const box = list.querySelector(`[data-row="${CSS.escape(row)}"]`)?.getBoundingClientRect();
  const { top, bottom } = list.getBoundingClientRect();
  return box !== undefined && box.bottom > top && box.top < bottom;
}

/** Keeps the row `now` in view until the reader scrolls away. */
export function useFollowScroll(now: string | null): FollowScroll {
  const scroller = useRef<HTMLDivElement>(null);
  const [following, setFollowing] = useState(true);
  const ownUntil = useRef(0);
  /** The row the program's own scroll leads to, where that is, and how far from there the list was last seen, in px. */
  const own = useRef({ row: "", target: 0, left: 0 });

  const bring = useCallback((row: string, smooth: boolean) => {
    const list = scroller.current;
    const element = list?.querySelector<HTMLElement>(`[data-row="${CSS.escape(row)}"]`);
    if (!list || !element) return;
    const top = element.getBoundingClientRect().top - list.getBoundingClientRect().top + list.scrollTop;
    ownUntil.current = performance.now() + OWN_SCROLL;
    // Two lines of the steps just done remain visible above, where there is room for them.
    const wanted = list.clientHeight > ROOMY ? 124 : 28;
    const above = Math.max(28, Math.min(wanted, list.clientHeight - element.offsetHeight - 8));
    const target = Math.max(0, top - above);
    own.current = { row, target, left: Math.abs(list.scrollTop - target) };
    list.scrollTo({ top: target, behavior: smooth ? "smooth" : "instant" });
  }, []);

  const isFirst = useRef(true);
  useEffect(() => {
    if (!following || now === null) return;
    const calm = window.matchMedia("(prefers-reduced-motion: reduce)").matches;
    bring(now, !isFirst.current && !calm);
    isFirst.current = false;
  }, [now, following, bring]);

  /** The row that was at the top when the reader last scrolled, and how far below the top it was, in px. */
  const anchor = useRef<Anchor | null>(null);
  const sized = useRef({ width: 0, height: 0 });
  const keepPlace = useRef(() => {});
  keepPlace.current = () => {
    const list = scroller.current;
    if (!list) return;
    ownUntil.current = performance.now() + OWN_SCROLL;
    if (following && now !== null) bring(now, false);
    else if (anchor.current) restore(list, anchor.current);
  };

  // After the device is turned or the font changes, the same rows are at other heights. The browser then moves the
  // list as well, and the heights of rows out of sight settle one by one.
  useEffect(() => {
    const list = scroller.current;
    if (!list) return;
    let settlesUntil = 0;
    const observer = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = list;
      const now = performance.now();
      if (width !== sized.current.width || height !== sized.current.height) settlesUntil = now + SETTLES_IN;
      sized.current = { width, height };
      if (now < settlesUntil || now > ownUntil.current) keepPlace.current();
    });
    observer.observe(list);
    for (const part of list.children) observer.observe(part);
    // The window is told of a turn before the list is laid out anew, which is before the browser moves it.
    const turned = () => {
      ownUntil.current = performance.now() + OWN_SCROLL;
    };
    window.addEventListener("resize", turned);
    return () => {
      observer.disconnect();
      window.removeEventListener("resize", turned);
    };
  }, []);

  useEffect(() => {
    const list = scroller.current;
    if (!list) return;
    const away = () => setFollowing(false);
    let settling: ReturnType<typeof setTimeout> | undefined;
    // A reader may scroll while the program's own scroll is still taken to go on. Once it is over and the
    // row is not in view, the list was moved by the reader, who is then offered the way back.
    const settle = () => {
      const rest = ownUntil.current - performance.now();
      if (rest > 0) settling = setTimeout(settle, rest);
      else if (!isInView(list, own.current.row)) {
        away();
        anchor.current = anchorOf(list);
      }
    };
    const scrolled = () => {
      const now = performance.now();
      const left = Math.abs(list.scrollTop - own.current.target);
      // On a busy device the events of a scroll come late. What leads on to where the program scrolls, or is there
      // already, is still its own.
      const leadsOn = left <= own.current.left;
      own.current.left = Math.min(own.current.left, left);
      if (now > ownUntil.current && !leadsOn) {
        away();
        anchor.current = anchorOf(list);
      }
      // A long scroll of the program's own takes longer.
      else {
        ownUntil.current = Math.max(ownUntil.current, now + STILL_OWN);
        clearTimeout(settling);
        settling = setTimeout(settle, ownUntil.current - now);
      }
    };
    list.addEventListener("wheel", away, { passive: true });
    list.addEventListener("touchmove", away, { passive: true });
    list.addEventListener("scroll", scrolled, { passive: true });
    return () => {
      clearTimeout(settling);
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
      if (scroller.current) anchor.current = anchorOf(scroller.current);
    },
    [bring],
  );
  return { scroller, following, toNow, show };
}
