import type { Learned, LearnedStep } from "../../../src/core/learn/index.ts";
import { learnFrom, walkRecords } from "../../../src/core/learn/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { foldLog } from "../../../src/core/walk/index.ts";
import { LogWriter } from "../log-writer.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";

/** Low, likely and high in minutes, as a file has them. */
export const timeOf = (low: number, likely: number, high: number) => ({
  time: { low: `PT${60 * low}S`, likely: `PT${60 * likely}S`, high: `PT${60 * high}S` },
});

/** One step of EV1 planned for 2, 3 and 6 min, and one behind it for 10. */
export const twoSteps = (): ProcedureFile =>
  fileWith([step("turn", "ev1", null, timeOf(2, 3, 6)), step("stow", "ev1", null, timeOf(5, 10, 20))]);

/** A walk of a file whose clock runs. */
export const walkOf = (
  id: string,
  file: ProcedureFile = twoSteps(),
  mode: "live" | "rehearsal" = "live",
): LogWriter =>
  new LogWriter(id).enter("walk.opened", { procedure: file, mode }, 0).enter("clock.started", {}, 0);

/** A walk closed after its steps were done one after another, each in so many minutes. */
export function flownIn(
  id: string,
  minutes: readonly number[],
  { file = twoSteps(), mode = "live" as "live" | "rehearsal" } = {},
): readonly Entry[] {
  const log = walkOf(id, file, mode);
  let at = 0;
  const steps = file.tasks.flatMap((task) => task.steps);
  for (const [index, time] of minutes.entries()) {
    at += time;
    log.enter("step.done", { step: steps[index]?.id ?? "" }, at);
  }
  return log.enter("walk.closed", { end: "complete" }, at + 1).entries;
}

/** What some logs tell of a file. */
export const learned = (logs: readonly (readonly Entry[])[], file: ProcedureFile = twoSteps()): Learned =>
  learnFrom(walkRecords(logs.map((entries) => foldLog(entries))), outlineOf(procedureOf(file)));

/** What is learned of one step. */
export function ofStep({ steps }: Learned, id: string): LearnedStep {
  const found = steps.find(({ entry }) => entry.step.id === id);
  if (!found) throw new RangeError(`no step ${id}`);
  return found;
}
