import { message } from "../../words/index.ts";
import type { Finding, PathPart, ProcedureFile } from "../procedure/index.ts";
import { finding, jsonPointer } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";
import type { FoldedRemarks } from "./fold-remarks.ts";

/** The open comments as findings of level advice, each at its step, or at the whole file where its step is gone ([WRT10]). */
export function remarkFindings({ comments }: FoldedRemarks, file: ProcedureFile): readonly Finding[] {
  const paths = stepPaths(file);
  return comments
    .filter(({ resolvedBy }) => resolvedBy.length === 0)
    .map(({ comment }) => {
      const { step, by, says, revision } = comment;
      const path = step === null ? undefined : paths.get(step);
      const told = { name: by.name, role: by.role, says };
      const said =
        step !== null && !path
          ? message("remarks/open-of-gone-step", { ...told, step })
          : revision === (file.revision ?? null)
            ? message("remarks/open", told)
            : message("remarks/open-before", { ...told, revision: revision ?? "–" });
      return finding("advice", "remarks/open", path ? jsonPointer(path) : "", said, {
        steps: path ? [step as StepId] : [],
      });
    });
}

/** Where each step stands in the file, those of contingencies included. */
function stepPaths(file: ProcedureFile): ReadonlyMap<string, readonly PathPart[]> {
  const paths = new Map<string, readonly PathPart[]>();
  const take = (tasks: ProcedureFile["tasks"], head: readonly PathPart[]) => {
    for (const [taskIndex, { steps }] of tasks.entries())
      for (const [index, { id }] of steps.entries())
        paths.set(id, [...head, "tasks", taskIndex, "steps", index]);
  };
  take(file.tasks, []);
  for (const [index, { tasks }] of (file.contingencies ?? []).entries())
    take(tasks, ["contingencies", index]);
  return paths;
}
