import { memo } from "react";
import type { BraidMarker, BraidScale, PlacedRow } from "./braid-geometry.ts";
import { knotX, strandPath, strandX } from "./braid-geometry.ts";
import type { Strand } from "./strand.ts";

interface BraidProps {
  readonly strands: readonly Strand[];
  readonly rows: readonly PlacedRow[];
  readonly markers: readonly BraidMarker[];
  readonly height: number;
  readonly width: number;
  readonly scale: BraidScale;
}

/** The braid beside a list of steps: strands, beads, knots and markers. The list says the same in words, so it is hidden from screen readers. */
export const Braid = memo(function Braid({ strands, rows, markers, height, width, scale }: BraidProps) {
  const places = markers.map((marker) => ({ ...marker, y: markerY(marker, rows) }));
  return (
    <svg
      className="braid"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      aria-hidden="true"
    >
      {strands.map((strand) => {
        const place = places.find(({ lane }) => lane === strand.lane);
        const hang =
          place?.waiting && place.at !== null ? { from: place.y + scale.marker, to: place.at } : null;
        const last = rows.findLast(({ lanes }) => lanes.includes(strand.lane));
        return (
          <path
            key={strand.lane}
            className="braid-strand"
            style={{ stroke: strand.colour, strokeDasharray: strand.dash }}
            d={strandPath(strand.lane, rows, endOf(place, last) ?? height, scale, hang)}
          />
        );
      })}
      {rows.map((row) => (
        <Bead key={row.key} row={row} strands={strands} scale={scale} />
      ))}
      {places.map((place) => {
        const strand = strands[place.lane];
        return strand ? (
          <Marker key={place.lane} strand={strand} place={place} rows={rows} scale={scale} />
        ) : null;
      })}
    </svg>
  );
});

/** Where a strand ends: at its last bead, or at the marker below it. */
function endOf(place: { readonly y: number } | undefined, last: PlacedRow | undefined): number | undefined {
  return last && place ? Math.max(last.y, place.y) : last?.y;
}

/** A marker stands on the bead of a step in work, above a knot, or, while waiting, below the last step it is through with. */
function markerY(marker: BraidMarker, rows: readonly PlacedRow[]): number {
  const target = rows.findIndex(({ key }) => key === marker.at);
  const row = rows[target];
  if (row && !marker.waiting) return row.lanes.length > 1 ? row.y - 36 : row.y;
  const behind = rows
    .slice(0, row ? target : rows.length)
    .findLast(({ lanes }) => lanes.includes(marker.lane));
  if (!behind) return 22;
  const below = behind.y + (behind.lanes.length > 1 ? 34 : 26);
  return row ? Math.min(below, row.y - 36) : below;
}

function Bead({
  row,
  strands,
  scale,
}: {
  readonly row: PlacedRow;
  readonly strands: readonly Strand[];
  readonly scale: BraidScale;
}) {
  const [first] = row.lanes;
  if (first === undefined) return null;
  if (row.lanes.length > 1) {
    const width = Math.min(scale.gap - 6, row.lanes.length * 5 + 14);
    const x = knotX(row.lanes, scale);
    return (
      <rect
        className="braid-knot"
        data-stage={row.stage}
        x={x - width / 2}
        y={row.y - 8}
        width={width}
        height={16}
        rx={8}
      />
    );
  }
  const colour = strands[first]?.colour;
  return (
    <circle
      className="braid-bead"
      data-stage={row.stage}
      style={{ stroke: colour, color: colour }}
      cx={strandX(first, scale)}
      cy={row.y}
      r={row.stage === "working" ? 8 : 5}
    />
  );
}

interface MarkerProps {
  readonly strand: Strand;
  readonly place: BraidMarker & { readonly y: number };
  readonly rows: readonly PlacedRow[];
  readonly scale: BraidScale;
}

/** The marker, and for a waiting crew member the ring of the same mark at the step it waits for. */
function Marker({ strand, place, rows, scale }: MarkerProps) {
  const x = strandX(strand.lane, scale);
  const target = place.waiting ? rows.find(({ key }) => key === place.at) : undefined;
  return (
    <>
      {target && target.y - place.y > 40 && (
        <circle className="braid-mark" cx={x} cy={target.y - 20} r={5} style={{ stroke: strand.colour }} />
      )}
      <g transform={`translate(${x} ${place.y})`} className="braid-marker">
        <circle r={scale.marker} style={{ fill: strand.colour }} />
        <text textAnchor="middle" dy="0.36em" fontSize={scale.marker * 0.74}>
          {strand.short}
        </text>
      </g>
    </>
  );
}
