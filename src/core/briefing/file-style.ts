import { WORKSITE_STYLE } from "../worksite/index.ts";
import { STRIP_STYLE } from "./strip-drawing.ts";

const DAY = String.raw`--paper:#f3f0e8;--sheet:#fbf9f4;--wash:#ece7da;--ink:#18202b;--soft:#566070;--rule:#d8d2c4;--edge:#7a7f88;
--lane-1:#4a3aa7;--lane-2:#0c6f66;--lane-3:#9a2f78;--lane-4:#6a6456;--lane-5:#4f6a1c;--lane-6:#6b4a3a;
--warning:#b3261e;--caution:#825400;--note:#1d5d9b;--sky-daylight:#fbf6df;--sky-darkness:#cbd0da;color-scheme:light;`;

const NIGHT = String.raw`--paper:#10151c;--sheet:#171e27;--wash:#1d2630;--ink:#eef1f4;--soft:#9aa6b5;--rule:#2b3542;--edge:#748192;
--lane-1:#a99cff;--lane-2:#57cfc0;--lane-3:#f08fd0;--lane-4:#c4bba6;--lane-5:#b3cf72;--lane-6:#d3a68f;
--warning:#ff8a80;--caution:#f6c65b;--note:#8fc2f5;--sky-daylight:#2e3227;--sky-darkness:#0a0d12;color-scheme:dark;`;

const PAPER = String.raw`--paper:#fff;--sheet:#fff;--wash:#eee;--ink:#000;--soft:#000;--rule:#999;--edge:#555;--sky-daylight:#fff;--sky-darkness:#ddd;
--lane-1:#000;--lane-2:#000;--lane-3:#000;--lane-4:#000;--lane-5:#000;--lane-6:#000;--warning:#000;--caution:#000;--note:#000;`;

/** The style of a briefing's file, with the colours of the day or of the night as the device is set. */
export const FILE_STYLE = String.raw`
:root { --face: system-ui, sans-serif; ${DAY} }
@media (prefers-color-scheme: dark) { :root { ${NIGHT} } }
* { box-sizing: border-box; }
body { max-width: 76rem; margin: 0 auto; padding: 1rem; background: var(--paper); color: var(--ink); font: 1.125rem/1.4 var(--face); overflow-wrap: anywhere; }
h1 { margin: 0; font-size: 1.6rem; line-height: 1.2; }
h2 { margin: 0; font-size: 1.25rem; }
p { margin: .3rem 0; }
p, td, th, h1, h2, span, button, figcaption { unicode-bidi: isolate; }
.fact { margin-right: 1.2rem; color: var(--soft); }
.advice { font-size: 1rem; color: var(--soft); }
svg.worksite, svg.strip { display: block; width: 100%; height: auto; }
svg.worksite { border: 1px solid var(--rule); background: var(--sheet); }
svg#map { max-height: min(56vh, 34rem); }
svg.still { position: absolute; width: 0; height: 0; border: 0; }
#player { margin: 1rem 0 2rem; }
#caption { min-height: 6.2rem; padding: .4rem 0; font-size: 1.4rem; line-height: 1.3; }
.controls { display: flex; flex-wrap: wrap; gap: .5rem; align-items: center; }
#clock { min-width: 6.5rem; font-size: 1.6rem; font-variant-numeric: tabular-nums; }
button, select { min-height: 48px; padding: 0 1rem; border: 1.5px solid var(--edge); border-radius: 14px; background: none; color: var(--ink); font: inherit; font-weight: 700; }
select { background: var(--sheet); }
#play { min-width: 7rem; background: var(--ink); color: var(--paper); }
:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
#scrubber { width: 94.2%; height: 48px; margin: 0 0 0 5.6%; accent-color: var(--ink); }
#chapters { display: flex; flex-wrap: wrap; gap: .5rem; margin-top: .8rem; }
#chapters button { font-weight: 400; text-align: left; }
#chapters [aria-current="true"] { border-width: 3px; font-weight: 700; }
.frame { margin: 0 0 2.5rem; padding-top: .6rem; border-top: 3px solid var(--ink); }
.frame .pet { color: var(--soft); font-variant-numeric: tabular-nums; }
.frame .caption { margin-bottom: .5rem; font-size: 1.15rem; line-height: 1.3; }
.alerts { columns: 22rem; column-gap: .6rem; margin-top: .5rem; }
@media (min-width: 900px), print {
  .frame { display: grid; grid-template-columns: 11fr 10fr; gap: 0 1.2rem; align-items: start; }
  .frame > h2, .frame > .pet, .alerts { grid-column: 1 / -1; }
}
table { width: 100%; border-collapse: collapse; table-layout: fixed; font-size: .95rem; }
th:first-child { width: 13%; } th:nth-child(2) { width: 21%; } th:nth-child(3) { width: 20%; } th:nth-child(4) { width: 15%; }
th, td { padding: .25rem .5rem .25rem 0; border-bottom: 1px solid var(--rule); text-align: left; vertical-align: top; }
.alert { margin: 0 0 .3rem; padding: .2rem .6rem; font-size: .95rem; line-height: 1.3; break-inside: avoid; }
.alert.warning { border: 3px solid var(--warning); }
.alert.caution { border: 4px double var(--caution); }
.alert.note { border: 1px solid var(--note); }
.look-1 { color: var(--lane-1); } .look-2 { color: var(--lane-2); } .look-3 { color: var(--lane-3); }
.look-4 { color: var(--lane-4); } .look-5 { color: var(--lane-5); } .look-6 { color: var(--lane-6); }
figure { margin: .6rem 0; } img { max-width: 100%; max-height: 60vh; }
@media print {
  @page { size: landscape; margin: 10mm; }
  :root { ${PAPER} }
  #player { display: none; }
  body { max-width: none; padding: 0; font-size: 9.5pt; }
  header { break-after: avoid; }
  .frame { margin: 0; break-after: page; }
  .frame:last-child { break-after: auto; }
  .alerts { columns: 3; }
}
${WORKSITE_STYLE}${STRIP_STYLE}`;
