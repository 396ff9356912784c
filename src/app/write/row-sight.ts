import { scrollerOf } from "./page-scroll.ts";

/** The heights of the window between which something is seen, in px. */
export interface Sight {
  readonly top: number;
  readonly bottom: number;
}

/** Between which heights the table is seen: what stands fast above and below it covers the rest. */
export function sightOf(table: Element): Sight {
  const around = scrollerOf(table);
  const box =
    around === document.scrollingElement
      ? new DOMRect(0, 0, window.innerWidth, window.innerHeight)
      : around.getBoundingClientRect();
  const write = table.closest(".write");
  const bar = write?.querySelector(".write-row-bar");
  const beside = write?.querySelector(".write-beside")?.getBoundingClientRect();
  const own = table.getBoundingClientRect();
  const isUnder = beside && beside.left < own.right && beside.right > own.left;
  const covered =
    bar && getComputedStyle(bar).position === "sticky" ? bar.getBoundingClientRect().bottom : box.top;
  return {
    top: Math.max(box.top, covered),
    bottom: Math.min(box.bottom, isUnder ? beside.top : box.bottom),
  };
}

/** Scrolls a row of the table on a page into sight, to its middle; one that is seen whole stays where it is. */
export function revealRow(page: Element | null, row: string): void {
  const table = page?.querySelector(".write-table");
  const shown = table?.querySelector(`[data-row="${CSS.escape(row)}"]`);
  if (!table || !shown) return;
  const { top, bottom } = shown.getBoundingClientRect();
  const sight = sightOf(table);
  if (top >= sight.top && bottom <= sight.bottom) return;
  scrollerOf(table).scrollTop += (top + bottom) / 2 - (sight.top + sight.bottom) / 2;
}
