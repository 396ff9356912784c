/** The dash pattern of each look, 1 to 6, as lengths of dashes and gaps in px; `null` is a line without gaps. */
export const LOOK_DASHES: readonly (string | null)[] = [
  null,
  "12 6",
  "3 5",
  "16 8",
  "14 5 3 5",
  "8 4 2 4 2 4",
];

/**
 * The style of the drawing, for whoever shows it: the app, the file of a briefing, a frame of a video. Colours are the
 * variables of the theme (`--sheet`, `--ink`, `--lane-1` and so on), which the surroundings define.
 */
export const WORKSITE_STYLE = String.raw`
.worksite text { font-family: var(--face); fill: var(--ink); unicode-bidi: isolate; }
.worksite .ground { fill: var(--sheet); }
.worksite .by-day .ground { fill: var(--sky-daylight); }
.worksite .at-night .ground { fill: var(--sky-darkness); }
.worksite .label { paint-order: stroke; stroke: var(--sheet); stroke-width: 4; stroke-linejoin: round; }
.worksite .by-day ~ g .label { stroke: var(--sky-daylight); }
.worksite .at-night ~ g .label { stroke: var(--sky-darkness); }
.worksite .part-edge { stroke: var(--rule); stroke-width: 1; }
.worksite .way { stroke: var(--edge); stroke-width: 8; stroke-linecap: round; }
.worksite .way-inner { stroke: var(--wash); stroke-width: 5; stroke-linecap: round; }
.worksite .lead { stroke: var(--soft); stroke-width: 1; }
.worksite .place { fill: var(--sheet); stroke: var(--ink); stroke-width: 2; }
.worksite .refuge { fill: none; stroke: var(--ink); stroke-width: 2; }
.worksite .label-number { fill: var(--ink); }
.worksite text.label-number-text { fill: var(--sheet); font-weight: 700; }
.worksite .count { fill: var(--wash); stroke: var(--ink); stroke-width: 1.5; }
.worksite .home { fill: none; stroke: var(--soft); stroke-width: 3; stroke-dasharray: 1 9; stroke-linecap: round; }
.worksite .line { fill: none; stroke-width: 3.5; stroke-linejoin: round; }
.worksite .line-short { stroke-width: 6; }
.worksite .shared { fill: var(--sheet); stroke: var(--ink); stroke-width: 2; }
.worksite .bead { stroke: var(--sheet); stroke-width: 2; }
.worksite .card { fill: var(--sheet); stroke: var(--edge); stroke-width: 1; }
.worksite .card-slot { transition: transform 0.24s ease-out; }
.worksite .card-lead { fill: none; transition: d 0.24s ease-out; }
@media (prefers-reduced-motion: reduce) { .worksite .card-slot, .worksite .card-lead { transition: none; } }
.worksite .card-strand { fill: none; stroke-width: 4; }
.worksite .card-call { font-weight: 700; }
.worksite .card-wrong { font-weight: 700; text-decoration: underline; }
.worksite .ruler { stroke: var(--ink); stroke-width: 2; fill: none; }
.worksite text.foot { fill: var(--ink); }
.worksite .look-1 { stroke: var(--lane-1); } .worksite .bead.look-1 { fill: var(--lane-1); stroke: var(--sheet); }
.worksite .look-2 { stroke: var(--lane-2); } .worksite .bead.look-2 { fill: var(--lane-2); stroke: var(--sheet); }
.worksite .look-3 { stroke: var(--lane-3); } .worksite .bead.look-3 { fill: var(--lane-3); stroke: var(--sheet); }
.worksite .look-4 { stroke: var(--lane-4); } .worksite .bead.look-4 { fill: var(--lane-4); stroke: var(--sheet); }
.worksite .look-5 { stroke: var(--lane-5); } .worksite .bead.look-5 { fill: var(--lane-5); stroke: var(--sheet); }
.worksite .look-6 { stroke: var(--lane-6); } .worksite .bead.look-6 { fill: var(--lane-6); stroke: var(--sheet); }
.worksite .ghost { opacity: 0.45; }
.worksite .chosen-place { fill: none; stroke: var(--focus); stroke-width: 4; }
`;
