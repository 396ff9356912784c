import type { RefObject } from "react";
import { useLayoutEffect, useState } from "react";

/** The width assumed where there is no layout, as in tests, in px. */
const UNMEASURED = 960;

/** The inner width of an element in px, kept up to date. */
export function useVisibleWidth(element: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(UNMEASURED);
  useLayoutEffect(() => {
    const target = element.current;
    if (!target) return;
    const measure = () => setWidth(target.clientWidth || UNMEASURED);
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => observer.disconnect();
  }, [element]);
  return width;
}
