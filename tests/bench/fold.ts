import { deepStrictEqual } from "node:assert";
import { applyUpdate, Doc, encodeStateAsUpdate } from "yjs";
import { readLines, writeLines } from "../../src/core/log/index.ts";
import { foldLog } from "../../src/core/walk/index.ts";
import { busyLog } from "./busy-log.ts";
import { plainReduce } from "./plain-reducer.ts";

const ENTRIES = 10_000;
const DEVICES = 8;
const RUNS = 9;

/** The median time of so many runs, in milliseconds, after one to warm up. */
function timed(run: () => unknown): {
  readonly median: number;
  readonly least: number;
  readonly most: number;
} {
  run();
  const times = Array.from({ length: RUNS }, () => {
    const began = performance.now();
    run();
    return performance.now() - began;
  }).sort((a, b) => a - b);
  return {
    median: times[RUNS >> 1] ?? Number.NaN,
    least: times[0] ?? Number.NaN,
    most: times.at(-1) ?? Number.NaN,
  };
}

const entries = busyLog(ENTRIES, DEVICES);
const text = writeLines(entries);

// The reducer is a fair measure only while it comes to the same result.
const folded = foldLog(entries);
deepStrictEqual(
  plainReduce(entries).map(({ status, finish }) => [status, finish]),
  [...(folded.ledger?.steps ?? [])].map(([, { status, finish }]) => [status, finish]),
);

const sources = [...new Set(entries.map(({ wire }) => wire.source))];

/** The same entries as eight devices would have put them into one shared document, each its own, all merged. */
function sharedDocument(): Uint8Array {
  const whole = new Doc();
  for (const source of sources) {
    const device = new Doc();
    const list = device.getArray(source);
    for (const { wire } of entries) if (wire.source === source) device.transact(() => list.push([wire]));
    applyUpdate(whole, encodeStateAsUpdate(device));
  }
  return encodeStateAsUpdate(whole);
}
const update = sharedDocument();
function loadDocument(): number {
  const document = new Doc();
  applyUpdate(document, update);
  return sources.reduce((count, source) => count + document.getArray(source).toJSON().length, 0);
}
deepStrictEqual(loadDocument(), ENTRIES);

const rows = [
  ["fold, entries already read", timed(() => foldLog(entries))],
  ["plain reducer, entries already read", timed(() => plainReduce(entries))],
  ["read JSON Lines and fold", timed(() => foldLog(readLines(text).entries))],
  ["read JSON Lines, plain reducer", timed(() => plainReduce(readLines(text).entries))],
  [
    "JSON.parse of the lines alone",
    timed(() =>
      text
        .trimEnd()
        .split("\n")
        .map((line) => JSON.parse(line) as unknown),
    ),
  ],
  ["Yjs: load the document, read the entries", timed(loadDocument)],
] as const;

console.log(
  `${ENTRIES} entries of ${DEVICES} devices, ${(text.length / 1e6).toFixed(1)} MB of JSON Lines, ${(update.length / 1e6).toFixed(1)} MB as a Yjs update; ` +
    `${folded.ignored.length} without effect, ${folded.struck.size} struck; median of ${RUNS} runs, Node ${process.version}\n`,
);
for (const [name, { median, least, most }] of rows) {
  const speed = Math.round((ENTRIES / median) * 1000).toLocaleString("en");
  console.log(
    `${name.padEnd(42)}${median.toFixed(1).padStart(8)} ms (${least.toFixed(1)} to ${most.toFixed(1)})${speed.padStart(12)} entries/s`,
  );
}
const [fold, reducer, readFold, , , yjs] = rows.map(([, { median }]) => median);
const ratio = (a: number | undefined, b: number | undefined) =>
  ((a ?? Number.NaN) / (b ?? Number.NaN)).toFixed(2);
console.log(`\nTime of the fold over the plain reducer: ${ratio(fold, reducer)}`);
console.log(
  `Time of the fold over Yjs: ${ratio(fold, yjs)}; with reading the lines: ${ratio(readFold, yjs)}`,
);
