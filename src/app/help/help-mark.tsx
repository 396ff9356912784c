import type { ReactNode } from "react";
// The marks are drawn by the rules of the braid itself, so that they look like what they explain.
import "../braid/index.ts";

/** A mark of the braid that help draws beside its explanation. */
export type HelpMarkName = "strand" | "bead" | "knot" | "perhaps" | "marker" | "slack";

const strand = (look: number, d: string) => (
  <path
    className="braid-strand"
    style={{ stroke: `var(--lane-${look})`, strokeDasharray: `var(--lane-${look}-dash)` }}
    d={d}
  />
);

const bead = (x: number, stage: string, y = 28) => (
  <circle
    className="braid-bead"
    data-stage={stage}
    style={{ stroke: "var(--lane-1)", color: "var(--lane-1)" }}
    cx={x}
    cy={y}
    r={5}
  />
);

const DRAWN: Readonly<Record<HelpMarkName, ReactNode>> = {
  strand: [1, 2, 3, 4].map((look) => <g key={look}>{strand(look, `M${look * 12 - 2} 2V54`)}</g>),
  bead: (
    <>
      {strand(1, "M28 2V54")}
      {bead(28, "done", 16)}
      {bead(28, "later", 40)}
    </>
  ),
  knot: (
    <>
      {strand(1, "M14 2V10C14 20 28 18 28 28S14 36 14 46V54")}
      {strand(2, "M42 2V10C42 20 28 18 28 28S42 36 42 46V54")}
      <rect className="braid-knot" data-stage="later" x={16} y={20} width={24} height={16} rx={8} />
    </>
  ),
  perhaps: (
    <>
      {strand(1, "M28 2V54")}
      {bead(28, "maybe")}
    </>
  ),
  marker: (
    <>
      {strand(1, "M18 2V54")}
      {strand(2, "M42 2V54")}
      <circle r={10} cx={18} cy={18} style={{ fill: "var(--lane-1)" }} />
      <circle className="braid-mark" cx={42} cy={42} r={5} style={{ stroke: "var(--lane-1)" }} />
    </>
  ),
  slack: strand(1, "M28 2V10C28 18 10 20 16 28S40 36 28 44V54"),
};

/** A mark of the braid, drawn alone. The text beside it says what it is, so that it is not read out. */
export function HelpMark({ name }: { readonly name: HelpMarkName }) {
  return (
    <svg className="help-mark" width="56" height="56" viewBox="0 0 56 56" aria-hidden="true">
      {DRAWN[name]}
    </svg>
  );
}
