import type { ReactNode } from "react";
import { useCallback, useLayoutEffect, useMemo, useRef, useState } from "react";
import { Braid } from "./braid.tsx";
import "./braid.css";
import type { BraidMarker, BraidRow, BraidScale, PlacedRow } from "./braid-geometry.ts";
import { braidWidth, strandX } from "./braid-geometry.ts";
import type { Strand } from "./strand.ts";

const WIDE: BraidScale = { gap: 40, margin: 26, marker: 15 };
const NARROW: BraidScale = { gap: 21, margin: 14, marker: 12 };
const NARROW_BELOW = 640;

interface BraidedListProps<Row extends BraidRow> {
  readonly label: string;
  readonly strands: readonly Strand[];
  readonly rows: readonly Row[];
  readonly markers: readonly BraidMarker[];
  /** Draws a row; must be stable, so that a row is drawn again only when it changed. */
  readonly children: (row: Row) => ReactNode;
}

/**
 * A list of steps with the braid down its left edge. Each row marks the height of its bead with a `data-bead` element;
 * the braid is drawn from where those stand after layout.
 */
export function BraidedList<Row extends BraidRow>({
  label,
  strands,
  rows,
  markers,
  children,
}: BraidedListProps<Row>) {
  const list = useRef<HTMLOListElement>(null);
  const [beads, setBeads] = useState<{
    readonly ys: readonly number[];
    readonly height: number;
    readonly narrow: boolean;
  }>({
    ys: [],
    height: 0,
    narrow: false,
  });

  const measure = useCallback(() => {
    const element = list.current;
    if (!element) return;
    const top = element.getBoundingClientRect().top;
    const ys = [...element.querySelectorAll<HTMLElement>(":scope > [data-row]")].map((row) => {
      const bead = row.querySelector<HTMLElement>("[data-bead]") ?? row;
      const box = bead.getBoundingClientRect();
      return Math.round(box.top - top + box.height / 2);
    });
    const height = element.scrollHeight;
    const narrow = window.innerWidth < NARROW_BELOW;
    setBeads((before) =>
      before.height === height &&
      before.narrow === narrow &&
      before.ys.length === ys.length &&
      before.ys.every((y, index) => y === ys[index])
        ? before
        : { ys, height, narrow },
    );
  }, []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: rows change what is laid out, though they are not read here.
  useLayoutEffect(measure, [measure, rows]);
  useLayoutEffect(() => {
    const element = list.current;
    if (!element) return;
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [measure]);

  const scale = beads.narrow ? NARROW : WIDE;
  const width = braidWidth(strands.length, scale);
  const placed = useMemo(
    () =>
      rows.map(
        (row, index): PlacedRow => ({
          key: row.key,
          lanes: row.lanes,
          stage: row.stage,
          y: beads.ys[index] ?? 0,
        }),
      ),
    [rows, beads],
  );
  return (
    <div className="braided" style={{ "--braid-width": `${width}px` } as React.CSSProperties}>
      <div className="braid-heads" aria-hidden="true">
        {strands.map((strand) => (
          <span key={strand.lane} style={{ left: strandX(strand.lane, scale), color: strand.colour }}>
            {strand.short}
          </span>
        ))}
      </div>
      <div className="braided-body">
        <Braid
          strands={strands}
          rows={placed}
          markers={markers}
          height={beads.height}
          width={width}
          scale={scale}
        />
        <ol ref={list} aria-label={label}>
          {rows.map(children)}
        </ol>
      </div>
    </div>
  );
}
