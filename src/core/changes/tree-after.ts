import type { Node, ParseError } from "jsonc-parser";
import { parseTree } from "jsonc-parser";
import type { Replaced } from "./replaced-part.ts";
import { replacedBetween } from "./replaced-part.ts";

/** The tree of a JSON text; `null` for a text that is none. */
export function treeOf(text: string): Node | null {
  const errors: ParseError[] = [];
  const root = parseTree(text, errors);
  return root && errors.length === 0 ? root : null;
}

/** A node of a tree that nobody else holds, so that it may be moved. */
type OwnNode = { -readonly [Key in "offset" | "length"]: number } & { readonly children?: OwnNode[] };

/** Moves a node and all in it on by as many characters. A long text has tens of thousands of them, so that none is made anew. */
function shift(node: OwnNode, by: number): void {
  node.offset += by;
  for (const child of node.children ?? []) shift(child, by);
}

/** Whether what was replaced lies between the brackets of a list or object, so that these still stand where they stood. */
const holds = ({ type, offset, length }: Node, { at, length: replaced }: Replaced) =>
  (type === "object" || type === "array") && at > offset && at + replaced < offset + length;

/** Whether what was replaced lies within a list or object, or within that which a property has for its value. */
const isWithin = (node: Node, replaced: Replaced): boolean => {
  const value = node.type === "property" ? node.children?.[1] : node;
  return value !== undefined && holds(value, replaced);
};

/** The way from the root to the smallest list or object around what was replaced; properties stand on it too. */
function wayTo(root: Node, replaced: Replaced): Node[] {
  const way: Node[] = [];
  let node: Node | undefined = holds(root, replaced) ? root : undefined;
  while (node) {
    way.push(node);
    node = node.children?.find((child) =>
      child.type === "property" ? isWithin(child, replaced) : holds(child, replaced),
    );
  }
  return way;
}

/** The node that stands now where a list or object stood; `null` where its text can no longer be read by itself. */
function readAnew({ type, offset, length }: Node, { growth }: Replaced, text: string): Node | null {
  const fresh = treeOf(text.slice(offset, offset + length + growth));
  if (fresh?.type !== type || fresh.offset !== 0 || fresh.length !== length + growth) return null;
  shift(fresh as OwnNode, offset);
  return fresh;
}

/**
 * The tree of a text, made of that of another one, which is used up, by reading anew the smallest list or object around what differs. It
 * is the tree that reading the whole would give: what stands before and behind those brackets is the same, and what stands between them
 * reads by itself. `null` where nothing of it can be kept.
 */
export function treeAfter(root: Node, before: string, after: string): Node | null {
  const replaced = replacedBetween(before, after);
  const way = wayTo(root, replaced);
  for (let depth = way.length - 1; depth >= 0; depth -= 1) {
    const old = way[depth];
    const fresh = old && old.type !== "property" ? readAnew(old, replaced, after) : null;
    if (!fresh) continue;
    if (depth === 0) return fresh;
    for (let above = depth - 1; above >= 0; above -= 1) {
      const holder = way[above] as OwnNode;
      const at = holder.children?.indexOf(way[above + 1] as OwnNode) ?? -1;
      holder.length += replaced.growth;
      if (above === depth - 1) holder.children?.splice(at, 1, fresh as OwnNode);
      if (replaced.growth !== 0)
        for (const later of holder.children?.slice(at + 1) ?? []) shift(later, replaced.growth);
    }
    return root;
  }
  return null;
}
