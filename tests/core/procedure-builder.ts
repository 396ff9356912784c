import type { Outline, Procedure, ProcedureFile } from "../../src/core/procedure/index.ts";
import { outlineOf, parseProcedure } from "../../src/core/procedure/index.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

/** A step of a test's procedure: who, how many minutes (a whole time may be given in `more`), and what else. */
export function step(
  id: string,
  by: string | readonly string[],
  minutes: number | null,
  more: Partial<FileStep> = {},
): FileStep {
  return {
    id,
    by: typeof by === "string" ? [by] : [...by],
    do: `Do ${id}`,
    ...(minutes === null ? {} : { time: `PT${minutes}M` }),
    ...more,
  };
}

/** A task of a test's procedure. */
export function task(id: string, steps: FileStep[], more: object = {}): ProcedureFile["tasks"][number] {
  return { id, title: `Task ${id}`, steps, ...more };
}

/** A procedure file with EV1, EV2 and IV, and what a test adds or replaces. */
export function fileWith(
  tasks: ProcedureFile["tasks"] | FileStep[],
  more: Partial<ProcedureFile> = {},
): ProcedureFile {
  const isSteps = (list: typeof tasks): list is FileStep[] => list.every((one) => "by" in one);
  return {
    format: "tetherline.procedure/1",
    id: "trial",
    title: "Trial",
    crew: [
      { id: "ev1", call: "EV1", station: "inside" },
      { id: "ev2", call: "EV2", station: "inside" },
      { id: "iv", call: "IV", station: "inside" },
    ],
    tasks: isSteps(tasks) ? [task("all", tasks)] : tasks,
    ...more,
  };
}

/** The procedure of a file that must be sound. */
export function procedureOf(file: unknown): Procedure {
  const { procedure, findings } = parseProcedure(file);
  if (!procedure)
    throw new Error(`the test's procedure is not sound: ${findings.map(({ code }) => code).join(" ")}`);
  return procedure;
}

/** The outline of a file that must be sound. */
export function outlineFrom(...file: Parameters<typeof fileWith>): Outline {
  return outlineOf(procedureOf(fileWith(...file)));
}
