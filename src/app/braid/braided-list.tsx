import type { ReactNode } from "react";
import { memo, useMemo, useRef } from "react";
import { Braid } from "./braid.tsx";
import "./braid.css";
import type { BraidMarker, BraidRow, BraidScale, PlacedRow } from "./braid-geometry.ts";
import { braidWidth, strandX } from "./braid-geometry.ts";
import type { Strand } from "./strand.ts";
import { useRowPlaces } from "./use-row-places.ts";

const WIDE: BraidScale = { gap: 40, margin: 26, marker: 15 };
const NARROW: BraidScale = { gap: 21, margin: 14, marker: 12 };

/** Where strands are tapped they stand further apart: 48 px, and on a narrow screen well over the 24 px of WCAG 2.5.8. */
const WIDE_APART: BraidScale = { gap: 48, margin: 26, marker: 15 };
const NARROW_APART: BraidScale = { gap: 32, margin: 18, marker: 12 };

/** Where the strands and the rows of a list are, for what is laid over them. In px from the upper left of the list. */
export interface BraidPlaces {
  readonly rows: readonly PlacedRow[];
  readonly width: number;
  /** How far the strands are apart. */
  readonly gap: number;
  readonly strandX: (lane: number) => number;
}

interface BraidedListProps<Row extends BraidRow> {
  readonly label: string;
  readonly strands: readonly Strand[];
  readonly rows: readonly Row[];
  /** A stable list; absent for none. */
  readonly markers?: readonly BraidMarker[];
  /** What the list is to a screen reader, where it is more than a list. */
  readonly role?: "treegrid";
  /** What is laid over the braid to be tapped, a stable function; the strands stand further apart for it. */
  readonly over?: ((places: BraidPlaces) => ReactNode) | null;
  /** Draws a row. It must be a stable function, so that a row is drawn again only when it changes. */
  readonly children: (row: Row) => ReactNode;
}

const NO_MARKERS: readonly BraidMarker[] = [];

function List<Row extends BraidRow>(props: BraidedListProps<Row>) {
  const { label, strands, rows, markers = NO_MARKERS, role, over = null, children } = props;
  const list = useRef<HTMLOListElement>(null);
  const { placed, maySkip } = useRowPlaces(list, rows, markers);
  const [wide, narrow] = over ? [WIDE_APART, NARROW_APART] : [WIDE, NARROW];
  const scale = placed.isNarrow ? narrow : wide;
  const width = braidWidth(strands.length, scale);
  // The element stays the same as long as no row changes, so that drawing the braid does not go through the rows.
  const items = useMemo(
    () => (
      <ol ref={list} aria-label={label} {...(role ? { role, "aria-multiselectable": true } : {})}>
        {rows.map(children)}
      </ol>
    ),
    [label, rows, role, children],
  );
  return (
    <div
      className="braided"
      data-drawn={maySkip || undefined}
      style={{ "--braid-width": `${width}px` } as React.CSSProperties}
    >
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
          rows={placed.rows}
          markers={placed.markers}
          height={placed.height}
          width={width}
          scale={scale}
        />
        {items}
        {over?.({ rows: placed.rows, width, gap: scale.gap, strandX: (lane) => strandX(lane, scale) })}
      </div>
    </div>
  );
}

/**
 * A list of steps with the braid along its left edge. Each row marks the height of its bead with a `data-bead` element.
 * The braid is drawn from the positions of those elements after layout.
 */
export const BraidedList = memo(List) as typeof List;
