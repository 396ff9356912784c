import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { pertSampler, planOf, riskModelOf, sampleRisk, seededSource } from "../../src/core/plan/index.ts";
import type { Procedure, ProcedureFile } from "../../src/core/procedure/index.ts";
import { outlineOf, parseProcedure } from "../../src/core/procedure/index.ts";
import type { Duration } from "../../src/core/units/index.ts";
import { largeProcedure } from "./large-procedure.ts";
import { timed } from "./timed.ts";

const STEPS = 300;
const LANES = 4;
const SAMPLES = 10_000;
/** The plain implementation is sampled so often only, and its time taken in proportion. */
const PLAIN_SAMPLES = 500;

/** The made procedure with its eight crew members put together in pairs. */
function fourLanes(): Procedure {
  const { crew, items, ...file } = largeProcedure(STEPS, 0);
  const pair = (id: string) => `c${Number(id.slice(1)) % LANES}`;
  const paired: ProcedureFile = {
    ...file,
    crew: crew.slice(0, LANES),
    items: [],
    tasks: file.tasks.map((task) => ({
      ...task,
      steps: task.steps.map(({ moves: _moves, to, anchor: _anchor, ...one }) => ({
        ...one,
        by: [...new Set(one.by.map(pair))],
        ...(to === undefined ? {} : { time: { low: "PT40S", likely: "PT1M", high: "PT2M" } }),
      })),
    })),
  };
  const { procedure, findings } = parseProcedure(paired);
  if (!procedure) throw new Error(`it cannot be read: ${findings[0]?.code}`);
  return procedure;
}

const outline = outlineOf(fourLanes());
const plan = planOf(outline);
if (!plan.timeline) throw new Error("there is no plan");
const { course } = plan.timeline;
const { network, whereabouts, windows } = course;
const limit = course.finish;
// The limit is the plan's own finish, so that about half of the samples keep it.
const model = { ...riskModelOf(course), limit };

interface PlainSample {
  readonly finish: number;
  readonly path: readonly string[];
}

/** The same rule written plainly: objects by id, a library's sampler, a new record of every step in every sample. */
function plainSamples(count: number, seed: number): PlainSample[] {
  const sample = pertSampler(seededSource(seed));
  const steps = network.order.map((index) => {
    const entry = outline.steps[index];
    if (!entry) throw new Error("a step of the network is one of the outline");
    return {
      id: entry.step.id as string,
      time: whereabouts.times[index] ?? { low: 0 as Duration, likely: 0 as Duration, high: 0 as Duration },
      within: entry.step.within,
      before: (network.before[index] ?? []).map(({ from, lag }) => ({
        id: outline.steps[from]?.step.id as string,
        lag,
      })),
    };
  });
  return Array.from({ length: count }, () => {
    const done = new Map<string, { finish: number; binding: string | null }>();
    for (const { id, time, within, before } of steps) {
      const length = sample(time);
      let start = 0;
      let binding: string | null = null;
      for (const link of before) {
        const lets = (done.get(link.id)?.finish ?? 0) + link.lag;
        if (lets > start) [start, binding] = [lets, link.id];
      }
      for (let moved = true; moved; ) {
        moved = false;
        for (const window of within) {
          const fits = (windows.get(window) ?? [])
            .map(({ from, to }) => ({ at: Math.max(from, start), to }))
            .filter(({ at, to }) => at + length <= to)
            .map(({ at }) => at);
          const best = Math.min(...fits);
          if (best > start) [start, binding, moved] = [best, null, true];
        }
      }
      done.set(id, { finish: start + length, binding });
    }
    const [last] = [...done].sort(([, a], [, b]) => b.finish - a.finish);
    const path: string[] = [];
    for (let at = last?.[0] ?? null; at !== null; at = done.get(at)?.binding ?? null) path.push(at);
    return { finish: last?.[1].finish ?? 0, path };
  });
}

// The plain one is a fair measure only while it comes to the same.
const plain = plainSamples(2000, 9);
const risk = sampleRisk(model, SAMPLES, 1);
const plainMean = plain.reduce((sum, { finish }) => sum + finish, 0) / plain.length;
const off = Math.abs((risk.mean ?? Number.NaN) - plainMean);
const error = (risk.sd ?? 0) * Math.sqrt(1 / plain.length + 1 / SAMPLES);
if (!(off <= 5 * error + 0.001 * plainMean)) throw new Error(`the means are ${off} ms apart`);

function bareDraws(): number {
  const generator = xoroshiro128plus(1);
  let sum = 0;
  for (let draw = 0; draw < STEPS * SAMPLES; draw += 1) sum += (generator.next() >>> 0) * 2 ** -32;
  return sum;
}

const count = network.order.length;
const make = timed(() => riskModelOf(course));
const sampled = timed(() => sampleRisk(model, SAMPLES, 1));
const plainly = (timed(() => plainSamples(PLAIN_SAMPLES, 1), 5) * SAMPLES) / PLAIN_SAMPLES;
const drawn = timed(bareDraws);
const perStep = (ms: number) => ((ms * 1e6) / (count * SAMPLES)).toFixed(1);
const row = (...cells: readonly (string | number)[]) =>
  console.log(cells.map((cell, index) => String(cell).padStart(index === 0 ? 44 : 16)).join(""));

console.log(
  `${SAMPLES} samples of ${count} steps in ${LANES} lanes, ${outline.steps.filter(({ step }) => step.within.length > 0).length} of them in windows; median of 9 runs, Node ${process.version}\n`,
);
row("", "ms", "ns/step·sample");
row("risk: model ready for sampling", make.toFixed(2), "");
row("risk: sampling and figures", sampled.toFixed(1), perStep(sampled));
row(`plain objects (from ${PLAIN_SAMPLES} samples)`, plainly.toFixed(0), perStep(plainly));
row("the random numbers alone", drawn.toFixed(1), perStep(drawn));
console.log(
  `\nPlain objects over risk: ${(plainly / sampled).toFixed(1)}; risk over the random numbers alone: ${(sampled / drawn).toFixed(1)}`,
);
