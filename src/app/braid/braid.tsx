import { memo, useRef } from "react";
import type { BraidMarker, BraidScale, PlacedRow } from "./braid-geometry.ts";
import { knotX, strandX } from "./braid-geometry.ts";
import type { BraidSegment, PlacedMarker } from "./braid-segments.ts";
import { keepSegments, segmentsOf } from "./braid-segments.ts";
import type { Strand } from "./strand.ts";

interface BraidProps {
  readonly strands: readonly Strand[];
  readonly rows: readonly PlacedRow[];
  readonly markers: readonly BraidMarker[];
  readonly height: number;
  readonly width: number;
  readonly scale: BraidScale;
}

/**
 * The braid beside a list of steps: strands, beads, knots and markers. It is hidden from screen readers, since the list
 * says the same in words.
 */
export const Braid = memo(function Braid({ strands, rows, markers, height, width, scale }: BraidProps) {
  const before = useRef<readonly BraidSegment[]>([]);
  const segments = keepSegments(
    before.current,
    segmentsOf({ rows, markers, lanes: strands.length, height, scale }),
  );
  before.current = segments;
  return (
    <div className="braid" aria-hidden="true" style={{ width }}>
      {segments.map((segment) => (
        <Segment key={segment.key} segment={segment} strands={strands} width={width} scale={scale} />
      ))}
    </div>
  );
});

interface SegmentProps {
  readonly segment: BraidSegment;
  readonly strands: readonly Strand[];
  readonly width: number;
  readonly scale: BraidScale;
}

const Segment = memo(function Segment({ segment, strands, width, scale }: SegmentProps) {
  const { height, paths, rows, markers } = segment;
  return (
    <div className="braid-segment" style={{ height }}>
      <svg aria-hidden="true" width={width} height={height}>
        {paths.map(({ lane, from, d }) => (
          <path
            key={lane}
            className="braid-strand"
            style={{
              stroke: strands[lane]?.colour,
              strokeDasharray: strands[lane]?.dash,
              strokeDashoffset: from,
            }}
            d={d}
          />
        ))}
        {rows.map((row) => (
          <Bead key={row.key} row={row} strands={strands} scale={scale} />
        ))}
        {markers.map((marker) => {
          const strand = strands[marker.lane];
          return strand ? <Marker key={marker.lane} strand={strand} place={marker} scale={scale} /> : null;
        })}
      </svg>
    </div>
  );
});

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
  if (row.stage === "gone") {
    const cross = (lane: number) => `M${strandX(lane, scale) - 5} ${row.y - 5}l10 10m-10 0l10 -10`;
    return <path className="braid-gone" d={row.lanes.map(cross).join("")} />;
  }
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
  readonly place: PlacedMarker;
  readonly scale: BraidScale;
}

/** The marker of a crew member and, while it waits, a ring with the same mark at the step it waits for. */
function Marker({ strand, place, scale }: MarkerProps) {
  const x = strandX(strand.lane, scale);
  return (
    <>
      {place.ring !== null && (
        <circle className="braid-mark" cx={x} cy={place.ring} r={5} style={{ stroke: strand.colour }} />
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
