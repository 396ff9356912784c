import { readFileSync } from "node:fs";
import type { Orbit } from "../../src/core/light/index.ts";
import {
  lightFor,
  lightSpansOf,
  orbitOf,
  readOrbit,
  shadowDepth,
  sunAt,
} from "../../src/core/light/index.ts";
import { scanStarts } from "../../src/core/plan/index.ts";
import { outlineOf, readProcedure } from "../../src/core/procedure/index.ts";
import type { Duration, Instant } from "../../src/core/units/index.ts";
import { later } from "../../src/core/units/index.ts";
import { timed } from "./timed.ts";

const HOUR = 3_600_000 as Duration;
const DAY = (24 * HOUR) as Duration;
const MINUTE = 60_000 as Duration;

// Two low orbits of the verification sets of AIAA 2006-6753.
const SETS = [
  "1 06251U 62025E   06176.82412014  .00008885  00000-0  12808-3 0  3985\n2 06251  58.0579  54.0425 0030035 139.1568 221.1854 15.56387291  6774",
  "1 28057U 03049A   06177.78615833  .00000060  00000-0  35940-4 0  1836\n2 28057  98.4283 247.6961 0000884  88.1964 271.9322 14.35478080140550",
];

const row = (...cells: readonly (string | number)[]) =>
  console.log(cells.map((cell, index) => String(cell).padStart(index === 0 ? 36 : 14)).join(""));

/** An orbit that counts how often it is asked. */
function counting(orbit: Orbit): Orbit & { asked: number } {
  const counted = {
    ...orbit,
    asked: 0,
    at: (instant: Instant) => {
      counted.asked += 1;
      return orbit.at(instant);
    },
  };
  return counted;
}

/** What a scan by the second does: a position, the Sun between two whole hours, a depth, at every one. */
function scan(orbit: Orbit, from: Instant, to: Instant): number {
  let edges = 0;
  let wasDark: boolean | null = null;
  let [hour, sun, next] = [Number.NaN, sunAt(from), sunAt(from)];
  for (let at = from as number; at <= to; at += 1000) {
    const position = orbit.at(at as Instant);
    if (!position) throw new Error("the orbit decays");
    const whole = Math.floor(at / HOUR);
    if (whole !== hour) {
      [hour, sun, next] = [whole, sunAt((whole * HOUR) as Instant), sunAt(((whole + 1) * HOUR) as Instant)];
    }
    const share = at / HOUR - whole;
    const between = {
      x: sun.x + (next.x - sun.x) * share,
      y: sun.y + (next.y - sun.y) * share,
      z: sun.z + (next.z - sun.z) * share,
    };
    const isDark = shadowDepth(position, between).umbra < 0;
    if (wasDark !== null && isDark !== wasDark) edges += 1;
    wasDark = isDark;
  }
  return edges;
}

console.log(`Daylight, penumbra and darkness over 24 h; median of 9 runs, Node ${process.version}\n`);
row("orbit", "edges ms", "scan ms", "scan/edges", "positions", "scanned", "fewer by");
for (const text of SETS) {
  const { elements } = readOrbit(text);
  if (!elements) throw new Error("the set is sound");
  const [from, to] = [elements.epoch, later(elements.epoch, DAY)];
  const orbit = counting(orbitOf(elements));
  const spans = lightSpansOf(orbit, from, to);
  const asked = orbit.asked;
  orbit.asked = 0;
  const edges = scan(orbit, from, to);
  const scanned = orbit.asked;
  const found = (spans?.darkness ?? []).flatMap(({ start, end }) => [start, end]);
  // The scan is a fair measure only while it finds as many edges.
  const inside = found.filter((at) => at !== from && at !== to).length;
  if (inside !== edges) throw new Error(`${inside} edges, but the scan finds ${edges}`);
  const plain = orbitOf(elements);
  const ms = timed(() => lightSpansOf(plain, from, to));
  const scanMs = timed(() => scan(plain, from, to), 3);
  row(
    `object ${elements.object}, ${(spans?.darkness ?? []).length} nights`,
    ms.toFixed(1),
    scanMs.toFixed(0),
    (scanMs / ms).toFixed(1),
    asked,
    scanned,
    (scanned / asked).toFixed(1),
  );
}

const { procedure } = readProcedure(readFileSync("procedures/osier-ranging-head.procedure.json", "utf8"));
const { elements } = readOrbit(SETS[0] ?? "");
if (!procedure || !elements) throw new Error("both can be read");
const outline = outlineOf(procedure);
const from = elements.epoch;
const source = { kind: "orbit" as const, elements };
const whole = timed(
  () => scanStarts(outline, lightFor(source, from, (2 * DAY) as Duration), from, DAY / MINUTE, MINUTE),
  5,
);
const light = lightFor(source, from, (2 * DAY) as Duration);
const alone = timed(() => scanStarts(outline, light, from, DAY / MINUTE, MINUTE), 5);
const windowed = outline.steps.filter(({ step }) => step.within.length > 0).length;
console.log(
  `\nA day of starts, ${DAY / MINUTE} of them a minute apart, ${outline.steps.length} steps, ${windowed} in windows: ${whole.toFixed(0)} ms with its light, ${alone.toFixed(0)} ms without`,
);
