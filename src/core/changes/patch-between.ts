import type { PatchOperation, PathPart } from "../procedure/index.ts";
import { jsonPointer } from "../procedure/index.ts";
import { entryKeys } from "./entry-keys.ts";
import { keptInOrder } from "./kept-order.ts";
import { isFields } from "./members.ts";
import { sameJson } from "./same-json.ts";

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
  if (!isFields(before) || !isFields(after))
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
