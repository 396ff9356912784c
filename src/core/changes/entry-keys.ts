import { isFields } from "./members.ts";

/** A member's own id, where it is an object with one. */
const plainId = (entry: unknown): string | null =>
  isFields(entry) && typeof entry["id"] === "string" ? `#${entry["id"]}` : null;

/**
 * Keys by which the entries of an array are told apart: the result of `idOf`, or else the whole value. A second entry with the
 * same key gets a different one.
 */
export function entryKeys(
  entries: readonly unknown[],
  idOf: (entry: unknown) => string | null = plainId,
): string[] {
  const seen = new Map<string, number>();
  return entries.map((entry) => {
    const key = idOf(entry) ?? JSON.stringify(entry);
    const times = (seen.get(key) ?? 0) + 1;
    seen.set(key, times);
    return `${times} ${key}`;
  });
}
