import { readFileSync } from "node:fs";
import { amendmentEffect } from "../../src/core/effect/index.ts";
import { fitOf, walkCase } from "../../src/core/fit/index.ts";
import { readLines } from "../../src/core/log/index.ts";
import type { Change, ProcedureFile } from "../../src/core/procedure/index.ts";
import type { Duration, Instant } from "../../src/core/units/index.ts";
import { later } from "../../src/core/units/index.ts";
import type { WalkState } from "../../src/core/walk/index.ts";
import { foldLog, walkStateAt } from "../../src/core/walk/index.ts";
import { playedLog } from "../browser/written-walk.ts";
import { timed } from "./timed.ts";

/** What one amendment would come to, and what still fits, from the middle of the walk that comes with the app. */
const START = Date.UTC(2031, 3, 2, 9) as Instant;
const AT = later(START, (130 * 60_000) as Duration);

const file = JSON.parse(
  readFileSync("procedures/osier-ranging-head.procedure.json", "utf8"),
) as ProcedureFile;
const { ledger } = foldLog(readLines(playedLog(file, { seed: 39, start: START, until: AT }).text).entries);
if (!ledger) throw new Error("the walk was not opened");

const last = ledger.inForce.outline.steps.findLast(({ step }) => step.time !== undefined);
if (!last) throw new Error("the procedure has no step with a time");

let seconds = 180;
/** The last step takes another second each time, so that nothing found before is at hand. */
function retimed(): readonly Change[] {
  seconds += 1;
  return [{ change: last?.step.id ?? "", set: { time: `PT${seconds}S` } }];
}

const state = (): WalkState => walkStateAt({ ...ledger }, AT);
const bare = timed(() => state().forecast);
const quick = timed(() => amendmentEffect(state(), retimed(), { thorough: false }));
const thorough = timed(() => amendmentEffect(state(), retimed(), { thorough: true }));
const limit = ledger.inForce.outline.procedure.limits.elapsed ?? null;
const fits = timed(() =>
  fitOf(walkCase(ledger, AT), { limit, chance: 0.9, samples: 1000, seed: 1, tries: 1000 }),
);

const row = (what: string, ms: number) =>
  console.log(`${what.padEnd(44)}${ms.toFixed(1).padStart(9)} ms${(ms / bare).toFixed(1).padStart(9)} x`);
console.log(
  `${ledger.inForce.outline.steps.length} steps, median, Node ${process.version}; x: times a forecast of the walk\n`,
);
row("forecast of the walk", bare);
row("effect of an amendment, likely times", quick);
row("effect with samples and every return", thorough);
row("what still fits, nine in ten of 1,000 samples", fits);
