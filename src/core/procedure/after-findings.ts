import { message } from "../../words/index.ts";
import { errorAt } from "./error-at.ts";
import type { Finding } from "./finding.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member, textOf } from "./raw-file.ts";
import type { RawStep } from "./raw-step.ts";
import { namedStep } from "./raw-step.ts";
import type { Resolve } from "./resolve-reference.ts";

/**
 * The errors in the `after` of a step: a step that does not exist, the step itself, a step of another contingency, or
 * a step of another task that is a get-ahead and may be left out ([PRO9]).
 */
export function afterFindings(
  step: RawStep,
  byId: ReadonlyMap<string, RawStep>,
  resolve: Resolve,
): Finding[] {
  return entries(member(step.part, "after")).flatMap((entry) => {
    const target = typeof entry.value === "string" ? entry : member(entry, "step");
    const before = byId.get(textOf(target) ?? "");
    return [...resolve("step", target, step), ...(before ? predecessorFindings(step, before, target) : [])];
  });
}

function predecessorFindings(step: RawStep, before: RawStep, target: RawPart): Finding[] {
  const steps = namedStep(step);
  if (before === step) return [errorAt(target, "order/deadlock", message("order/after-itself"), { steps })];
  if (before.contingency !== null && before.contingency !== step.contingency) {
    const aside = message("order/contingency", { step: String(before.id) });
    return [errorAt(target, "order/contingency", aside, { steps })];
  }
  if (!before.getAhead || before.task === step.task) return [];
  const leftOut = message("order/get-ahead", { step: String(before.id) });
  return [errorAt(target, "order/get-ahead", leftOut, { steps })];
}
