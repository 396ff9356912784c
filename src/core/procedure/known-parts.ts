import type { Fields } from "./change.ts";
import type { ProcedureFile } from "./schema.ts";

const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** The entries of a list that are not known; one stays where all are, for a list that may not be empty. */
function unknownOf(list: unknown, known: ReadonlySet<unknown>): unknown {
  if (!Array.isArray(list)) return list;
  const rest = list.filter((one) => !known.has(one));
  return rest.length > 0 ? rest : list.slice(0, 1);
}

/**
 * A file without the entries of lists, the tasks and the steps that it shares with one whose shape is right, to be looked at instead of
 * the whole: the schema looks at each entry by itself, so that one has the shape of a procedure when the other has. Values are never
 * changed in place: what is the same object is as it was.
 */
export function withoutKnown(value: unknown, known: ProcedureFile): unknown {
  if (!isFields(value)) return value;
  const steps = new Set<unknown>(known.tasks.flatMap((task) => task.steps));
  const tasks = unknownOf(value["tasks"], new Set<unknown>(known.tasks));
  const rest = Object.entries(value).flatMap(([key, one]) => {
    const old = (known as Fields)[key];
    // The texts in other languages may be left out as a whole.
    if (key === "words" && one === old) return [];
    return [[key, Array.isArray(old) ? unknownOf(one, new Set<unknown>(old)) : one]];
  });
  return {
    ...Object.fromEntries(rest),
    ...(Array.isArray(tasks)
      ? {
          tasks: tasks.map((task: unknown) =>
            isFields(task) ? { ...task, steps: unknownOf(task["steps"], steps) } : task,
          ),
        }
      : {}),
  };
}
