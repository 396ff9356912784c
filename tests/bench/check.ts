import { readFileSync } from "node:fs";
import { checkOutline, checkProcedureText } from "../../src/core/check/index.ts";
import { outlineOf, readProcedure, scenariosOf } from "../../src/core/procedure/index.ts";
import { largeProcedure } from "./large-procedure.ts";

const RUNS = 5;

/** The median time of so many runs, in milliseconds, after two to warm up. */
function timed(run: () => unknown): number {
  run();
  run();
  const times = Array.from({ length: RUNS }, () => {
    const began = performance.now();
    run();
    return performance.now() - began;
  }).sort((a, b) => a - b);
  return times[RUNS >> 1] ?? Number.NaN;
}

const row = (...cells: readonly (string | number)[]) =>
  console.log(cells.map((cell, index) => String(cell).padStart(index === 0 ? 26 : 14)).join(""));

/** Prints one line; gives the cost of a step in a scenario, in microseconds. */
function measure(name: string, text: string): number {
  const { procedure } = readProcedure(text);
  if (!procedure) throw new Error(`${name} cannot be read`);
  // Laid out anew each time, so that nothing found before is at hand.
  const check = timed(() => checkOutline(outlineOf(structuredClone(procedure))));
  const whole = timed(() => checkProcedureText(text));
  const outline = outlineOf(procedure);
  const steps = outline.steps.length;
  const scenarios =
    scenariosOf(outline).outcomes.length * (outline.steps.some(({ getAhead }) => getAhead) ? 2 : 1);
  const cost = (check * 1000) / (steps * scenarios);
  row(name, steps, scenarios, check.toFixed(1), whole.toFixed(1), cost.toFixed(2));
  return cost;
}

// So that the first lines are not those of cold code.
timed(() => checkProcedureText(JSON.stringify(largeProcedure(1000, 2))));
row("procedure", "steps", "scenarios", "check ms", "with file ms", "µs/step·sc.");
for (const name of [
  "osier-ranging-head",
  "osier-pool-rehearsal",
  "sorrel-ridge-traverse",
  "osier-bring-in",
]) {
  measure(name, readFileSync(`procedures/${name}.procedure.json`, "utf8"));
}
const costs: number[] = [];
for (const decisions of [0, 2, 4]) {
  for (const steps of [100, 1000, 5000]) {
    costs.push(measure(`made, ${decisions} decisions`, JSON.stringify(largeProcedure(steps, decisions))));
  }
}
console.log(
  `\nDearest step in a scenario / cheapest: ${(Math.max(...costs) / Math.min(...costs)).toFixed(1)} (1 would be a cost exactly linear in steps × scenarios)`,
);
