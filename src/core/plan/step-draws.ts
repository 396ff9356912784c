import type { StepId } from "../units/index.ts";
import { QUANTILE_CELLS } from "./pert-quantiles.ts";
import type { RiskModel } from "./risk-model.ts";
import type { Stream } from "./step-stream.ts";
import { streamOf, uniformOf } from "./step-stream.ts";

/** Writes so many draws of the duration of a position, in ms, that is not fixed. */
export function drawDurations(
  { table, tables, low, width, alpha, floor }: RiskModel,
  at: number,
  stream: Stream,
  into: Float64Array,
): void {
  const first = table[at] as number;
  const [least, from, over, shape] = [
    floor[at] as number,
    low[at] as number,
    width[at] as number,
    alpha[at] as number,
  ];
  const cells = QUANTILE_CELLS;
  for (let draw = 0; draw < into.length; draw += 1) {
    const share = least + (1 - least) * uniformOf(stream);
    const cell = share * cells;
    const whole = Math.min(cell | 0, cells - 1);
    const below = tables[first + whole] as number;
    const above = tables[first + whole + 1] as number;
    let quantile = below + (cell - whole) * (above - below);
    // In the first and the last cell the quantile is a power of the probability; linear interpolation would move
    // draws towards the ends.
    if (whole === 0) quantile = above * cell ** (1 / shape);
    else if (whole === cells - 1) quantile = 1 - (1 - below) * (cells - cell) ** (1 / (6 - shape));
    into[draw] = from + over * quantile;
  }
}

/** The most draws that are kept: 32 MB of them. Steps beyond are drawn anew. */
const MOST_KEPT = 4_000_000;

interface Kept {
  /** What the draws hang on, apart from the step. */
  readonly of: string;
  readonly lengths: Float64Array;
}

/**
 * The draws of the last model that was sampled with it, for whoever samples one plan after another. Since they hang on
 * the seed and the step alone, those of a step whose times are as they were are the same.
 */
export class KeptDraws {
  #kept: ReadonlyMap<StepId, Kept> = new Map();

  /** All draws of each position of a model whose duration is not fixed; `null` for those to be drawn by whoever asks. */
  of(model: RiskModel, samples: number, seed: number): readonly (Float64Array | null)[] {
    const kept = new Map<StepId, Kept>();
    const draws = model.steps.map((step, at) => {
      if ((model.table[at] as number) < 0 || !Number.isNaN(model.ended[at])) return null;
      if ((kept.size + 1) * samples > MOST_KEPT) return null;
      const of = [samples, seed, model.low[at], model.width[at], model.alpha[at], model.floor[at]].join();
      const known = this.#kept.get(step);
      const lengths = known?.of === of ? known.lengths : new Float64Array(samples);
      if (known?.of !== of) drawDurations(model, at, streamOf(step, seed), lengths);
      kept.set(step, { of, lengths });
      return lengths;
    });
    this.#kept = kept;
    return draws;
  }
}
