import { readFileSync } from "node:fs";
import type { Trial } from "../../src/app/what-if/trial.ts";
import { NO_TRIAL, tried } from "../../src/app/what-if/trial.ts";
import { planOf } from "../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../src/core/procedure/index.ts";
import { outlineOf, parseProcedure } from "../../src/core/procedure/index.ts";
import type { Duration, StepId } from "../../src/core/units/index.ts";
import { largeProcedure } from "./large-procedure.ts";
import { timed } from "./timed.ts";

function read(file: ProcedureFile) {
  const { procedure } = parseProcedure(file);
  if (!procedure) throw new Error(`${file.id} cannot be read`);
  return procedure;
}

const row = (...cells: readonly (string | number)[]) =>
  console.log(cells.map((cell, index) => String(cell).padStart(index === 0 ? 30 : 14)).join(""));

console.log(`Plans with windows, median of 9 runs, Node ${process.version}\n`);
row("procedure", "steps", "plan ms", "µs/step", "what if ms");

/** Prints one line; gives the cost of a step in microseconds. */
function measure(name: string, file: ProcedureFile): number {
  const procedure = read(file);
  // Laid out anew each time, so that nothing found before is at hand.
  const plan = timed(() => planOf(outlineOf(procedure)));
  const outline = outlineOf(procedure);
  const steps = outline.steps.length;
  const middle = outline.steps[steps >> 1]?.step.id as StepId;
  let minutes = 0;
  // From a finger that moved to the plan that the screen shows: change, read again, lay out, plan.
  const whatIf = timed(() => {
    minutes += 1;
    const trial: Trial = { ...NO_TRIAL, times: new Map([[middle, (minutes * 60_000) as Duration]]) };
    return tried(file, outline, trial, {});
  });
  row(name, steps, plan.toFixed(2), ((plan * 1000) / steps).toFixed(2), whatIf.toFixed(1));
  return (plan * 1000) / steps;
}

timed(() => planOf(outlineOf(read(largeProcedure(1000, 2)))));
measure(
  "osier-ranging-head",
  JSON.parse(readFileSync("procedures/osier-ranging-head.procedure.json", "utf8")) as ProcedureFile,
);
const costs = [100, 1000, 5000].map((steps) => measure(`made, 8 lanes, ${steps}`, largeProcedure(steps, 0)));
console.log(
  `\nDearest step / cheapest: ${(Math.max(...costs) / Math.min(...costs)).toFixed(1)} (1 would be a cost exactly linear in steps)`,
);
