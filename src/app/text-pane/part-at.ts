import { findNodeAtLocation, parseTree } from "jsonc-parser";
import { pointerParts } from "../../core/procedure/index.ts";

/** From where to where a part of a text stands. */
export interface TextPart {
  readonly from: number;
  readonly to: number;
}

/**
 * Returns a function that finds the part of a JSON text that a JSON Pointer names, or its nearest ancestor in the text; the beginning
 * of the text where nothing could be read. A member of an object is its key and its value.
 */
export function partsOf(text: string): (pointer: string) => TextPart {
  const root = parseTree(text);
  return (pointer) => {
    if (!root) return { from: 0, to: Math.min(1, text.length) };
    let node = root;
    for (const part of pointerParts(pointer)) {
      const next = findNodeAtLocation(node, [node.type === "array" ? Number(part) : part]);
      if (!next) break;
      node = next;
    }
    const { offset, length } = node.parent?.type === "property" ? node.parent : node;
    return { from: offset, to: offset + length };
  };
}

/** The one stretch in which two texts differ: what of the first is to be replaced, and by what. */
export function differingStretch(before: string, after: string): TextPart & { readonly insert: string } {
  const most = Math.min(before.length, after.length);
  let from = 0;
  while (from < most && before[from] === after[from]) from += 1;
  let same = 0;
  while (same < most - from && before[before.length - 1 - same] === after[after.length - 1 - same]) same += 1;
  return { from, to: before.length - same, insert: after.slice(from, after.length - same) };
}
