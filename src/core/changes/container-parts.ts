import type { Node } from "jsonc-parser";

/** A part of an object or a list with the blanks before it and behind it, up to the comma. */
export interface Part {
  readonly lead: string;
  readonly body: string;
  readonly trail: string;
  /** Whether it stood in the container before, and there as the first. */
  readonly was: "first" | "later" | "new";
}

/** The parts of an object or list as they stand in a text, each with its node. */
export function partsOf(text: string, node: Node): (Omit<Part, "body"> & { readonly child: Node })[] {
  let from = node.offset + 1;
  return (node.children ?? []).map((child, index, all) => {
    const lead = text.slice(from, child.offset);
    const end = child.offset + child.length;
    const comma = index < all.length - 1 ? text.indexOf(",", end) : end;
    from = comma + 1;
    return { lead, child, trail: text.slice(end, comma), was: index === 0 ? "first" : "later" };
  });
}

/**
 * The text of an object or list of other parts, each with its own blanks unless it is or was the first. `comma` is the
 * text after a comma, used when the existing parts do not show it.
 */
export function assembled(text: string, node: Node, parts: readonly Part[], comma: string): string {
  const before = partsOf(text, node);
  const first = before[0]?.lead ?? "";
  const second = before[1]?.lead ?? (first.includes("\n") ? first : comma);
  // A line left blank between two members belongs to these.
  const later = second.includes("\n") ? second.replace(/^[\s\S]*?(\r?\n[ \t]*)$/, "$1") : second;
  const bodies = parts.map(({ lead, body, trail, was }, index) => {
    if (index === 0) return (was === "first" ? lead : first) + body + trail;
    return (was === "later" ? lead : later) + body + trail;
  });
  const last = before.at(-1)?.child;
  const end = node.offset + node.length;
  const tail = text.slice(last ? last.offset + last.length : node.offset + 1, end - 1);
  return text.charAt(node.offset) + bodies.join(",") + tail + text.charAt(end - 1);
}
