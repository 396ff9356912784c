import type { Fields, PatchOperation, PathPart } from "../procedure/index.ts";
import { jsonPointer } from "../procedure/index.ts";
import { keptInOrder } from "./kept-order.ts";
import { sameJson } from "./same-json.ts";

const isObject = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** What tells the entries of an array apart: an id, else the whole value; the second of the same has another key. */
function entryKeys(entries: readonly unknown[]): string[] {
  const seen = new Map<string, number>();
  return entries.map((entry) => {
    const key =
      isObject(entry) && typeof entry["id"] === "string" ? `#${entry["id"]}` : JSON.stringify(entry);
    const times = (seen.get(key) ?? 0) + 1;
    seen.set(key, times);
    return `${times} ${key}`;
  });
}

function ofArrays(before: readonly unknown[], after: readonly unknown[], path: readonly PathPart[]) {
  const [oldKeys, newKeys] = [entryKeys(before), entryKeys(after)];
  const kept = keptInOrder(oldKeys, newKeys);
  const oldEntries = new Map(oldKeys.map((key, index) => [key, before[index]]));
  const operations: PatchOperation[] = [];
  for (const [index, key] of [...oldKeys.entries()].toReversed())
    if (!kept.has(key)) operations.push({ op: "remove", path: jsonPointer([...path, index]) });
  let length = kept.size;
  for (const [index, key] of newKeys.entries()) {
    const value = after[index];
    if (kept.has(key)) continue;
    operations.push({ op: "add", path: jsonPointer([...path, index === length ? "-" : index]), value });
    length += 1;
  }
  for (const [index, key] of newKeys.entries())
    if (kept.has(key))
      operations.push(...operationsBetween(oldEntries.get(key), after[index], [...path, index]));
  return operations;
}

function operationsBetween(before: unknown, after: unknown, path: readonly PathPart[]): PatchOperation[] {
  if (sameJson(before, after)) return [];
  if (Array.isArray(before) && Array.isArray(after)) return ofArrays(before, after, path);
  if (!isObject(before) || !isObject(after))
    return [{ op: "replace", path: jsonPointer(path), value: after }];
  return [
    ...Object.keys(before).flatMap((key): PatchOperation[] =>
      Object.hasOwn(after, key) ? [] : [{ op: "remove", path: jsonPointer([...path, key]) }],
    ),
    ...Object.entries(after).flatMap(([key, value]): PatchOperation[] =>
      Object.hasOwn(before, key)
        ? operationsBetween(before[key], value, [...path, key])
        : [{ op: "add", path: jsonPointer([...path, key]), value }],
    ),
  ];
}

/**
 * The JSON Patch (RFC 6902) that makes one JSON value of another, for programs that know nothing of procedures. Entries of arrays are
 * told apart by id where they have one, so that what is put in between two leaves those behind it alone.
 */
export function patchBetween(before: unknown, after: unknown): PatchOperation[] {
  return operationsBetween(before, after, []);
}
