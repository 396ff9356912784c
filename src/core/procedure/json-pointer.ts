/** One part of a path into a JSON document: a key of an object or an index of an array. */
export type PathPart = string | number;

/** The JSON Pointer (RFC 6901) of a path; the empty path gives `""`, the whole document. */
export function jsonPointer(path: readonly PropertyKey[]): string {
  return path.map((part) => `/${String(part).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}

/** The parts of a JSON Pointer, unescaped; array indices stay text. */
export function pointerParts(pointer: string): string[] {
  return pointer
    .split("/")
    .slice(1)
    .map((part) => part.replaceAll("~1", "/").replaceAll("~0", "~"));
}
