import type { RefObject } from "react";
import { useLayoutEffect, useState } from "react";

/** Where nothing is laid out, as under test, a drawing this wide is made. */
const UNMEASURED = 960;

/** The inner width of an element in px, followed as it changes. */
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
