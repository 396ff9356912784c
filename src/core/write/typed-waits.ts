import type { ProcedureFile } from "../procedure/index.ts";
import { formatDuration } from "../units/index.ts";
import { idOfWait } from "./linked-step.ts";
import { readTime } from "./read-time.ts";
import type { FileStep } from "./sheet.ts";
import { sheetOf } from "./sheet.ts";

type FileWait = NonNullable<FileStep["after"]>[number];

/**
 * What a step comes after, as it is typed in its cell: numbers or ids of steps with commas between, each with the minutes that must pass
 * in between behind a plus, such as `1.3, 2.1 + 5`. What it came after before keeps what is not typed. None for an empty text; `null` for
 * a text that names no step, or the step itself.
 */
export function waitsIn(text: string, file: ProcedureFile, step: FileStep): readonly FileWait[] | null {
  const named = new Map(
    sheetOf(file).flatMap((row) =>
      row.kind === "step"
        ? [
            [row.number.toLowerCase(), row.step.id],
            [row.step.id.toLowerCase(), row.step.id],
          ]
        : [],
    ) as [string, string][],
  );
  const waits = text
    .split(/[,;]/)
    .filter((one) => one.trim() !== "")
    .map((one): FileWait | null => {
      const [name = "", lag] = one.split("+").map((part) => part.trim());
      const id = named.get(name.toLowerCase());
      const time = lag === undefined ? null : readTime(lag, "minutes");
      if (id === undefined || id === step.id || (lag !== undefined && time === null)) return null;
      const before = step.after?.find((wait) => idOfWait(wait) === id);
      const { lag: _, ...kept } = typeof before === "object" ? before : { step: id };
      if (time !== null) return { ...kept, lag: formatDuration(time) };
      return Object.keys(kept).length > 1 ? kept : id;
    });
  return waits.includes(null) ? null : (waits as readonly FileWait[]);
}
