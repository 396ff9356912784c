import type { ContingencyId, StepId } from "../units/index.ts";
import type { ProcedureFile } from "./schema.ts";

type TaskFile = ProcedureFile["tasks"][number];
/** A step as written in a file. */
export type StepFile = TaskFile["steps"][number];

/** A change to a procedure ([LOG2], `plan.amended`). */
export type ProcedureChange =
  | { readonly add: StepFile; readonly behind: StepId }
  | { readonly drop: StepId }
  | { readonly move: StepId; readonly behind: StepId }
  | { readonly change: StepId; readonly set: Partial<StepFile> }
  | { readonly bring: ContingencyId; readonly behind: StepId };

/** A procedure file after changes, or the first change that names what is not there. The result is not checked. */
export type ChangedFile =
  | { readonly file: ProcedureFile; readonly problem: null }
  | { readonly file: null; readonly problem: string };

/** A file with the given steps in the given tasks left as they are but for one task. */
function withSteps(
  file: ProcedureFile,
  change: (steps: readonly StepFile[], task: TaskFile) => readonly StepFile[],
): ProcedureFile {
  return { ...file, tasks: file.tasks.map((task) => ({ ...task, steps: [...change(task.steps, task)] })) };
}

const find = (file: ProcedureFile, id: StepId): StepFile | null =>
  file.tasks.flatMap(({ steps }) => steps).find((step) => step.id === id) ?? null;

const without = (file: ProcedureFile, id: StepId) =>
  withSteps(file, (steps) => steps.filter((step) => step.id !== id));

const behind = (file: ProcedureFile, place: StepId, added: readonly StepFile[]) =>
  withSteps(file, (steps) => {
    const at = steps.findIndex(({ id }) => id === place);
    return at < 0 ? steps : [...steps.slice(0, at + 1), ...added, ...steps.slice(at + 1)];
  });

const named = (entry: NonNullable<StepFile["after"]>[number]): string =>
  typeof entry === "string" ? entry : entry.step;

/** No step may come after one that is gone; what came after it is let go, as with a step that is not performed ([PRO4]). */
function withoutReferences(file: ProcedureFile, gone: StepId): ProcedureFile {
  const freed = (tasks: readonly TaskFile[]): TaskFile[] =>
    tasks.map((task) => ({
      ...task,
      steps: task.steps.map((step) =>
        step.after?.some((entry) => named(entry) === gone)
          ? { ...step, after: step.after.filter((entry) => named(entry) !== gone) }
          : step,
      ),
    }));
  const contingencies = file.contingencies?.map((one) => ({ ...one, tasks: freed(one.tasks) }));
  return { ...file, tasks: freed(file.tasks), ...(contingencies ? { contingencies } : {}) };
}

function applied(file: ProcedureFile, change: ProcedureChange): ChangedFile {
  const done = (next: ProcedureFile): ChangedFile => ({ file: next, problem: null });
  const missing = (id: string): ChangedFile => ({ file: null, problem: `there is no step "${id}"` });
  if ("behind" in change && !find(file, change.behind)) return missing(change.behind);
  if ("add" in change) return done(behind(file, change.behind, [change.add]));
  if ("drop" in change) {
    if (!find(file, change.drop)) return missing(change.drop);
    return done(withoutReferences(without(file, change.drop), change.drop));
  }
  if ("move" in change) {
    const step = find(file, change.move);
    if (!step) return missing(change.move);
    if (change.move === change.behind) return { file: null, problem: "a step cannot stand behind itself" };
    return done(behind(without(file, change.move), change.behind, [step]));
  }
  if ("change" in change) {
    if (!find(file, change.change)) return missing(change.change);
    return done(
      withSteps(file, (steps) =>
        steps.map((step) => (step.id === change.change ? { ...step, ...change.set, id: step.id } : step)),
      ),
    );
  }
  const contingency = file.contingencies?.find(({ id }) => id === change.bring);
  if (!contingency) return { file: null, problem: `there is no contingency "${change.bring}"` };
  // What is brought in is no contingency any more: its steps stand in the tasks, under ids of their own.
  const brought = behind(
    file,
    change.behind,
    contingency.tasks.flatMap(({ steps }) => steps),
  );
  return done({ ...brought, contingencies: file.contingencies?.filter(({ id }) => id !== change.bring) });
}

/** A procedure file after changes, one after the other. Nothing of the file given is changed in place. */
export function changedFile(file: ProcedureFile, changes: readonly ProcedureChange[]): ChangedFile {
  let current: ChangedFile = { file, problem: null };
  for (const change of changes) {
    if (current.file === null) break;
    current = applied(current.file, change);
  }
  return current;
}
