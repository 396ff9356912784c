import type { PathPart } from "./json-pointer.ts";

/** A part of a file, of any shape, with the path to it. It lets references be checked even where the shape is wrong. */
export interface RawPart {
  readonly value: unknown;
  readonly path: readonly PathPart[];
}

/** The member `key` of an object. Returns a part with the value `undefined` when there is no such member. */
export function member(part: RawPart, key: string): RawPart {
  const { value } = part;
  const isObject = typeof value === "object" && value !== null && !Array.isArray(value);
  return {
    value: isObject && Object.hasOwn(value, key) ? (value as Record<string, unknown>)[key] : undefined,
    path: [...part.path, key],
  };
}

/** The entries of an array; empty when the part is not an array. */
export function entries(part: RawPart): RawPart[] {
  return Array.isArray(part.value)
    ? part.value.map((value: unknown, index) => ({ value, path: [...part.path, index] }))
    : [];
}

/** The members of an object as [key, part]; empty when the part is not an object. */
export function members(part: RawPart): [string, RawPart][] {
  const { value } = part;
  if (typeof value !== "object" || value === null || Array.isArray(value)) return [];
  return Object.entries(value).map(([key, child]: [string, unknown]) => [
    key,
    { value: child, path: [...part.path, key] },
  ]);
}

/** The text of a part; `null` when the part is not text. */
export function textOf(part: RawPart): string | null {
  return typeof part.value === "string" ? part.value : null;
}
