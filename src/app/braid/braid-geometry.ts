/**
 * How a step's bead or knot is drawn. `maybe` is a step that depends on a decision not yet taken, `gone` one that was
 * taken out of the plan: strands pass by its crosses and are tied by nothing.
 */
export type BeadStage = "done" | "skipped" | "working" | "waiting" | "later" | "maybe" | "gone";

/** A row of the list as the braid needs it: a step, or a heading that strands only pass. */
export interface BraidRow {
  readonly key: string;
  /** Lanes that take part; empty for a heading. */
  readonly lanes: readonly number[];
  readonly stage: BeadStage;
}

/** Where a crew member is on its strand. */
export interface BraidMarker {
  readonly lane: number;
  /** The row that it has reached, in work or waiting; `null` when its lane is finished. */
  readonly at: string | null;
  /** True while it waits. Its strand is then drawn loose down to `at`. */
  readonly waiting: boolean;
}

/** A row with its measured position: the height of its bead in px from the top of the list. */
export interface PlacedRow extends BraidRow {
  readonly y: number;
}

/** Distances between strands, in px. */
export interface BraidScale {
  readonly gap: number;
  readonly margin: number;
  readonly marker: number;
}

/** The x of a lane's strand. */
export function strandX(lane: number, { gap, margin }: BraidScale): number {
  return margin + lane * gap;
}

/** The width of a braid with the given number of lanes. */
export function braidWidth(lanes: number, { gap, margin }: BraidScale): number {
  return margin * 2 + Math.max(0, lanes - 1) * gap;
}

/**
 * The x of a knot. It lies between two strands, as near as possible to the middle of the strands it ties, so that it
 * never covers the strand of somebody who takes no part.
 */
export function knotX(lanes: readonly number[], scale: BraidScale): number {
  const middle = lanes.reduce((sum, lane) => sum + lane, 0) / Math.max(1, lanes.length);
  const first = Math.min(...lanes);
  const last = Math.max(...lanes);
  const gap = Math.min(Math.max(Math.floor(middle), first), last - 1);
  return strandX(gap + 0.5, scale);
}

/** The x at which a lane passes through a row: on its own strand, or at its place in the knot. */
export function throughX(row: BraidRow, lane: number, scale: BraidScale): number {
  if (row.lanes.length < 2) return strandX(lane, scale);
  const place = [...row.lanes].sort((a, b) => a - b).indexOf(lane);
  return knotX(row.lanes, scale) + (place - (row.lanes.length - 1) / 2) * 5;
}

/** How far above and below its bead a strand leaves its line for a knot, in px. */
export const BEND = 22;
const WAVE = 44;

/** The course of one strand. Heights are in px. */
interface StrandCourse {
  readonly lane: number;
  readonly rows: readonly PlacedRow[];
  /** The height at which the strand begins; 0 when it is left out. */
  readonly from?: number;
  /** The height at which the strand ends. */
  readonly end: number;
  readonly scale: BraidScale;
  /**
   * The strand hangs loose from the height `from` down to the row with the key `to`; `null` when it is tight
   * throughout.
   */
  readonly hang: { readonly from: number; readonly to: string } | null;
}

/**
 * A loose strand from (x, from) to (x, to): half waves that are wide in the middle and narrow to nothing at both ends.
 */
function loose(x: number, from: number, to: number): string {
  const halves = Math.max(2, Math.round((to - from) / (WAVE / 2)));
  const height = (to - from) / halves;
  let path = "";
  for (let half = 0; half < halves; half += 1) {
    const swing = half === 0 || half === halves - 1 ? 7 : 11;
    path += ` q${half % 2 ? -swing : swing} ${height / 2} 0 ${height}`;
  }
  return `${path} L${x} ${to}`;
}

/** The strand of a lane through its rows, in order, as an SVG path. */
export function strandPath({ lane, rows, from = 0, end, scale, hang }: StrandCourse): string {
  const x = strandX(lane, scale);
  let path = `M${x} ${from}`;
  let at = from;
  for (const row of rows) {
    if (!row.lanes.includes(lane)) continue;
    const through = throughX(row, lane, scale);
    const bend = through === x ? 0 : BEND;
    const until = Math.max(at, row.y - bend);
    if (hang && row.key === hang.to && until - hang.from > 24) {
      path += ` L${x} ${hang.from}${loose(x, hang.from, until)}`;
    } else path += ` L${x} ${until}`;
    if (bend) {
      path += ` C${x} ${row.y - bend / 2} ${through} ${row.y - bend / 2} ${through} ${row.y}`;
      path += ` C${through} ${row.y + bend / 2} ${x} ${row.y + bend / 2} ${x} ${row.y + bend}`;
      at = row.y + bend;
    } else at = row.y;
  }
  return end > at ? `${path} L${x} ${end}` : path;
}
