import { checkOutline } from "../check/index.ts";
import type { Plan } from "../plan/index.ts";
import { planOf } from "../plan/index.ts";
import type { Finding, Outline, ProcedureFile } from "../procedure/index.ts";
import { outlineOf, parseProcedure } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import type { Layout, Split } from "./layout.ts";
import { rearrangedFile } from "./rearranged-file.ts";
import type { SplitCase } from "./split-case.ts";
import type { SplitModel } from "./split-model.ts";

/** A split that may be offered: its procedure was planned and checked like any other. */
export interface Offered {
  readonly split: Split;
  readonly file: ProcedureFile;
  readonly outline: Outline;
  readonly plan: Plan;
  /** PET, as {@link planOf} has it. */
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
  const { procedure } = file ? parseProcedure(file) : { procedure: null };
  if (!file || !procedure) return null;
  const outline = outlineOf(procedure);
  const plan = planOf(outline, splitCase.options);
  const finish = plan.timeline?.course.finish;
  if (finish === undefined) return null;
  const known = new Set(splitCase.findings.map(keyOf));
  const isNew = (one: Finding) => one.level !== "advice" && !known.has(keyOf(one));
  if (plan.findings.some(isNew) || checkOutline(outline, splitCase.options).some(isNew)) return null;
  return {
    split: { order: split.order.slice(), choice: split.choice.slice() },
    file,
    outline,
    plan,
    finish,
    isExact: cost === finish,
  };
}

/** What makes a finding the same before and after: what it is of, wherever it stands and whatever its figures are. */
const keyOf = ({ code, things, steps }: Finding) =>
  code === "time/over-limit" ? code : JSON.stringify([code, things, steps[0] ?? null]);
