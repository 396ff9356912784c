import type { Course } from "../course/index.ts";
import type { Duration } from "../units/index.ts";

/**
 * True when it is night at a PET by the procedure's windows of darkness and daylight, false when it is day, and `null`
 * where none of them is known there.
 */
export function darkAt({ outline, windows }: Course, pet: Duration): boolean | null {
  const spansOf = (kind: "daylight" | "darkness") =>
    outline.procedure.windows.flatMap((window) =>
      window.kind === kind ? (windows.get(window.id) ?? []) : [],
    );
  const isIn = (spans: ReturnType<typeof spansOf>) => spans.some(({ from, to }) => from <= pet && pet < to);
  const [day, night] = [spansOf("daylight"), spansOf("darkness")];
  if (isIn(night)) return true;
  if (isIn(day)) return false;
  // Between two days it is night, and between two nights day; before the first span and after the last one, unknown.
  const isBetween = (spans: ReturnType<typeof spansOf>) =>
    spans.some(({ to }) => to <= pet) && spans.some(({ from }) => from > pet);
  if (isBetween(day)) return true;
  return isBetween(night) ? false : null;
}
