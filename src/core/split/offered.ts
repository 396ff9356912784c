import type { ProcedureFile } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import type { Layout, Split } from "./layout.ts";
import { rearrangedFile } from "./rearranged-file.ts";
import type { Laid, SplitCase } from "./split-case.ts";
import type { SplitModel } from "./split-model.ts";

/** A split that may be offered: its procedure was planned and checked like any other. */
export interface Offered {
  readonly split: Split;
  readonly file: ProcedureFile;
  readonly laid: Laid;
  /** PET, as the plan or the forecast has it. */
  readonly finish: Duration;
  /** True when the layout of the search has the same finish, so that what was proven of it holds of the plan. */
  readonly isExact: boolean;
}

/**
 * The procedure of a split, planned and checked; `null` when it cannot be planned, or when the checker has an error or a
 * caution of it that it has not of the file as it is ([FIT3]).
 */
export function offered(
  splitCase: SplitCase,
  model: SplitModel,
  split: Split,
  layout: Layout,
): Offered | null {
  const cost = layout.costOf(split);
  const file = rearrangedFile(splitCase, model, split, layout);
  const laid = file && splitCase.judge(file);
  if (!file || !laid) return null;
  const { finish } = laid.course;
  return {
    split: { order: split.order.slice(), choice: split.choice.slice() },
    file,
    laid,
    finish,
    isExact: cost === finish,
  };
}
