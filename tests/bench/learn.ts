import { learnFrom, walkRecords } from "../../src/core/learn/index.ts";
import { outlineOf, parseProcedure } from "../../src/core/procedure/index.ts";
import { mean } from "../../src/core/statistics/index.ts";
import { foldLog } from "../../src/core/walk/index.ts";
import { bandsOf, isHeld, madeUpSteps } from "../core/learn/made-up-steps.ts";
import { flownIn } from "../core/learn/observed-walks.ts";
import { fileWith, step } from "../core/procedure-builder.ts";

const STEPS = 1000;

for (const walks of [0, 1, 2, 3, 5, 8, 20]) {
  const steps = madeUpSteps(STEPS, walks, 7).map((one) => ({ one, bands: bandsOf(one) }));
  const figures = (by: "learned" | "planned" | "average") => {
    const held = steps.filter(({ one, bands }) => isHeld(one, bands[by])).length / STEPS;
    const off = mean(steps.map(({ one, bands }) => Math.abs(Math.log(one.next / bands[by].p50))));
    return `${by} holds ${(100 * held).toFixed(1)} %, off by a factor of ${Math.exp(off).toFixed(3)}`;
  };
  console.log(`${walks} walks: ${figures("learned")}; ${figures("planned")}; ${figures("average")}`);
}

const WALKS = 100;
const LONG = 300;
const file = fileWith(
  Array.from({ length: LONG }, (_, at) =>
    step(`s${at}`, "ev1", null, { time: { low: "PT1M", likely: "PT2M", high: "PT5M" } }),
  ),
);
const { procedure } = parseProcedure(file);
if (!procedure) throw new RangeError("the procedure is not sound");
const outline = outlineOf(procedure);

/** What some work takes of our own processor time, in ms, with what it gives. */
function timed<Result>(work: () => Result): { readonly result: Result; readonly own: number } {
  const before = process.cpuUsage();
  const result = work();
  return { result, own: process.cpuUsage(before).user / 1000 };
}

// Rehearsals have a learning curve as well, over all pairs of walks.
for (const mode of ["live", "rehearsal"] as const) {
  const logs = Array.from({ length: WALKS }, (_, walk) =>
    flownIn(
      `w${walk}`,
      Array.from({ length: LONG }, (_, at) => 1.5 + ((walk * 7 + at * 3) % 20) / 10),
      { file, mode },
    ),
  );
  const folding = timed(() => logs.map((entries) => foldLog(entries)));
  const records = walkRecords(folding.result);
  const learning = timed(() => learnFrom(records, outline));
  console.log(
    `${WALKS} walks (${mode}) of ${LONG} steps: folded in ${Math.round(folding.own)} ms, learned from in ${Math.round(learning.own)} ms of our own (goal: under 500 live); learning takes ${(learning.own / folding.own).toFixed(2)} of the folding`,
  );
}
