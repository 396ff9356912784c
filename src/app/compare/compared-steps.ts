import { changesBetween } from "../../core/changes/index.ts";
import type { Change, ProcedureFile } from "../../core/procedure/index.ts";
import type { StepId } from "../../core/units/index.ts";
import type { AmendedHow } from "../../core/walk/index.ts";
import { amendedSteps } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";

/** What changed from one procedure file to another. */
export interface Difference {
  readonly before: ProcedureFile;
  readonly after: ProcedureFile;
  readonly changes: readonly Change[];
  /** How each step that is touched differs, those of contingencies included. */
  readonly steps: ReadonlyMap<StepId, AmendedHow>;
}

/** The tasks that stand in contingencies. */
export const inContingencies = <Tasks>({
  contingencies = [],
}: {
  readonly contingencies?: readonly { readonly tasks: readonly Tasks[] }[] | undefined;
}): Tasks[] => contingencies.flatMap(({ tasks }) => tasks);

/** The difference of two procedure files. */
export function differenceOf(before: ProcedureFile, after: ProcedureFile): Difference {
  const changes = changesBetween(before, after);
  const contingent = amendedSteps(
    { ...before, tasks: inContingencies(before), contingencies: [] },
    { ...after, tasks: inContingencies(after), contingencies: [] },
    changes,
  );
  const planned = amendedSteps(before, after, changes);
  // A step that a contingency lost to the plan is told by how it came there.
  const steps = new Map([...contingent, ...planned].map(({ step, how }) => [step, how]));
  return { before, after, changes, steps };
}

/** How steps differ, in words, but for those that are not there any more. */
export function changedInWords({ steps }: Difference): ReadonlyMap<StepId, string> {
  return new Map(
    [...steps].flatMap(([step, how]) =>
      how === "dropped" ? [] : [[step, words(`amending/how-${how}`)] as const],
    ),
  );
}

/** The steps that are not there any more, in words. */
export function droppedInWords({ steps }: Difference): ReadonlyMap<StepId, string> {
  return new Map(
    [...steps].flatMap(([step, how]) =>
      how === "dropped" ? [[step, words("amending/how-dropped")] as const] : [],
    ),
  );
}
