import type { PathPart } from "./json-pointer.ts";

/** A part of a file that may have any shape, with the path to it: references are checked even where the shape is wrong. */
export interface RawPart {
  readonly value: unknown;
  readonly path: readonly PathPart[];
}

/** The member `key` of an object; a part with the value `undefined` when there is none. */
export function member(part: RawPart, key: string): RawPart {
  const { value } = part;
  const isObject = typeof value === "object" && value !== null && !Array.isArray(value);
  return {
    value: isObject && Object.hasOwn(value, key) ? (value as Record<string, unknown>)[key] : undefined,
    path: [...part.path, key],
  };
}

/** The entries of an array; none when the part is no array. */
export function entries(part: RawPart): RawPart[] {
  return Array.isArray(part.value)
    ? part.value.map((value: unknown, index) => ({ value, path: [...part.path, index] }))
    : [];
}

/** The members of an object as [key, part]; none when the part is no object. */
export function members(part: RawPart): [string, RawPart][] {
  const { value } = part;
  if (typeof value !== "object" || value === null || Array.isArray(value)) return [];
  return Object.entries(value).map(([key, child]: [string, unknown]) => [
    key,
    { value: child, path: [...part.path, key] },
  ]);
}

/** The text of a part, or `null` when it is not text. */
export function textOf(part: RawPart): string | null {
  return typeof part.value === "string" ? part.value : null;
}
