import { Braid } from "./braid.tsx";
import type { BeadStage, BraidMarker } from "./braid-geometry.ts";
import type { Strand } from "./strand.ts";
import "./braid.css";

/** A mark of the braid that help draws beside its explanation. */
export type BraidSampleName = "strand" | "bead" | "knot" | "perhaps" | "marker" | "slack";

const WIDTH = 56;
/** A little below the last bead, in px. */
const BELOW = 6;

const strand = (lane: number): Strand => ({
  lane,
  call: "",
  short: "",
  colour: `var(--lane-${lane + 1})`,
  dash: `var(--lane-${lane + 1}-dash)`,
});

const row = (y: number, stage: BeadStage, ...lanes: readonly number[]) => ({
  key: `at-${y}`,
  y,
  stage,
  lanes,
});

/** A short braid: how many strands it has, how far they are apart in px, the steps and where crew members are. */
interface Sample {
  readonly strands: number;
  readonly gap: number;
  readonly rows: readonly ReturnType<typeof row>[];
  readonly markers: readonly BraidMarker[];
}

const SAMPLES: Readonly<Record<BraidSampleName, Sample>> = {
  strand: { strands: 4, gap: 12, rows: [], markers: [] },
  bead: { strands: 1, gap: 12, rows: [row(16, "done", 0), row(40, "later", 0)], markers: [] },
  knot: { strands: 2, gap: 28, rows: [row(28, "later", 0, 1)], markers: [] },
  perhaps: { strands: 1, gap: 12, rows: [row(28, "maybe", 0)], markers: [] },
  marker: {
    strands: 2,
    gap: 24,
    rows: [row(10, "done", 1), row(24, "working", 0), row(90, "later", 1)],
    markers: [
      { lane: 0, at: "at-24", waiting: false },
      { lane: 1, at: "at-90", waiting: true },
    ],
  },
  slack: {
    strands: 1,
    gap: 12,
    rows: [row(6, "done", 0), row(90, "waiting", 0)],
    markers: [{ lane: 0, at: "at-90", waiting: true }],
  },
};

/** A mark of the braid, drawn by the braid itself. The text beside it says what it is, so that it is not read out. */
export function BraidSample({ name }: { readonly name: BraidSampleName }) {
  const { strands, gap, rows, markers } = SAMPLES[name];
  const height = Math.max(WIDTH, (rows.at(-1)?.y ?? 0) + BELOW);
  return (
    <div className="braid-sample" style={{ blockSize: height }}>
      <Braid
        strands={Array.from({ length: strands }, (_, lane) => strand(lane))}
        rows={[{ key: "top", y: 0, stage: "later", lanes: [] }, ...rows]}
        markers={markers}
        width={WIDTH}
        height={height}
        scale={{ gap, margin: (WIDTH - (strands - 1) * gap) / 2, marker: 9 }}
      />
    </div>
  );
}
