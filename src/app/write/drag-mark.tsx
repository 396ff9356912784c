import { useLayoutEffect, useRef } from "react";
import { inWords } from "../../words/index.ts";
import { HEADS } from "./sheet-rows.ts";
import type { RowDrag } from "./use-row-drag.ts";
import "./drag-mark.css";

/** The line where rows that are dragged would go, with where that is in words, and a shade over these rows ([WRT2]). */
export function DragMark({ drag }: { readonly drag: RowDrag }) {
  const mark = useRef<HTMLDivElement>(null);
  const { rows, place, problem } = drag;
  // The rows are not drawn again while they are dragged over: what stands where is read off the page.
  useLayoutEffect(() => {
    const table = mark.current?.parentElement;
    if (!table || !mark.current) return;
    const { top } = table.getBoundingClientRect();
    const boxOf = (key: string) =>
      table
        .querySelector(key === HEADS ? ".write-heads" : `[data-row="${CSS.escape(key)}"]`)
        ?.getBoundingClientRect();
    const line = place && boxOf(place.under);
    mark.current.style.setProperty("--drag-line", `${(line?.bottom ?? top) - top}px`);
    for (const [index, shade] of [
      ...mark.current.querySelectorAll<HTMLElement>(".write-dragged"),
    ].entries()) {
      const box = boxOf(rows[index] ?? "");
      shade.style.top = `${(box?.top ?? top) - top}px`;
      shade.style.height = `${box?.height ?? 0}px`;
    }
  }, [place, rows]);
  return (
    <div ref={mark} className="write-drag" aria-hidden="true">
      {rows.map((key) => (
        <div key={key} className="write-dragged" />
      ))}
      {place && (
        <div className="write-drop" data-impossible={problem !== null}>
          <span>{problem ? inWords(problem) : place.says}</span>
        </div>
      )}
    </div>
  );
}
