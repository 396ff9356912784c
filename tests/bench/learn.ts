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
const logs = Array.from({ length: WALKS }, (_, walk) =>
  flownIn(
    `w${walk}`,
    Array.from({ length: LONG }, (_, at) => 1.5 + ((walk * 7 + at * 3) % 20) / 10),
    { file },
  ),
);
const folding = performance.now();
const records = walkRecords(logs.map((entries) => foldLog(entries)));
const learning = performance.now();
const before = process.cpuUsage();
learnFrom(records, outlineOf(procedure));
const done = performance.now();
const own = Math.round(process.cpuUsage(before).user / 1000);
console.log(
  `${WALKS} walks of ${LONG} steps: folded in ${Math.round(learning - folding)} ms, learned from in ${Math.round(done - learning)} ms, ${own} ms of it our own (goal: under 500)`,
);
