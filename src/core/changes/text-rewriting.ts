import type { Node } from "jsonc-parser";
import type { Fields, ListName } from "../procedure/index.ts";
import type { Part } from "./container-parts.ts";
import { assembled, partsOf } from "./container-parts.ts";
import { entryKeys } from "./entry-keys.ts";
import { FILE_LISTS, heldBy, idOf, keyFor } from "./list-table.ts";
import { isFields } from "./members.ts";
import { sameJson } from "./same-json.ts";
import type { TextStyle } from "./text-style.ts";
import { onOneLine, textStyleOf } from "./text-style.ts";

/** What a JSON value is a part of: the file itself, a member of a list, or nothing that changes know. */
type Context = "file" | ListName | null;

/** The list that stands under a key of the file or of a member; `null` for any other value. */
function listUnder(context: Context, key: string): ListName | null {
  if (context === "file") return FILE_LISTS.find((list) => list === key) ?? null;
  const held = context === null ? null : heldBy(context);
  return held === key ? held : null;
}

/** A member where it stands in the text. */
interface Standing {
  readonly node: Node;
  readonly value: unknown;
}

const memberKey = (list: ListName, value: unknown): string | null => {
  const id = idOf(list, value as Fields);
  return id === null ? null : `${list} ${keyFor(list, id)}`;
};

/** What tells the members of a list apart; in other arrays it is their own ids. */
const keyIn = (list: ListName | null) =>
  list === null ? undefined : (entry: unknown) => memberKey(list, entry);

/** Writes a value over a JSON text, with as much of the text as it can keep. */
export class TextRewriting {
  readonly #text: string;
  readonly #root: Standing;
  #knownStyle: TextStyle | null = null;
  #known: Map<string, Standing> | null = null;

  constructor(text: string, root: Node, value: unknown) {
    this.#text = text;
    this.#root = { node: root, value };
  }

  // Both take a look at the whole text, which most edits do without.
  get #style(): TextStyle {
    this.#knownStyle ??= textStyleOf(this.#text);
    return this.#knownStyle;
  }

  get #standing(): Map<string, Standing> {
    if (!this.#known) {
      this.#known = new Map();
      this.#note(this.#known, this.#root.node, this.#root.value, "file");
    }
    return this.#known;
  }

  /** Notes where each member stands, so that one that goes elsewhere takes its text with it. */
  #note(standing: Map<string, Standing>, node: Node, value: unknown, context: Context): void {
    if (!isFields(value)) return;
    for (const property of node.children ?? []) {
      const [key, entries] = property.children ?? [];
      const list = key ? listUnder(context, String(key.value)) : null;
      const members = key ? value[String(key.value)] : null;
      if (list === null || !Array.isArray(members)) continue;
      for (const [index, member] of members.entries()) {
        const child = entries?.children?.[index];
        const name = memberKey(list, member);
        if (!child || name === null) continue;
        standing.set(name, { node: child, value: member });
        this.#note(standing, child, member, list);
      }
    }
  }

  #slice = ({ offset, length }: Node): string => this.#text.slice(offset, offset + length);

  /** The blanks that the line of an offset begins with. */
  #indentAt(offset: number): string {
    const start = this.#text.lastIndexOf("\n", offset - 1) + 1;
    return /^[ \t]*/.exec(this.#text.slice(start, offset))?.[0] ?? "";
  }

  /** The text of `value` in place of a node that holds `old`. */
  over(
    node: Node,
    old: unknown,
    value: unknown,
    context: Context | { readonly list: ListName | null },
  ): string {
    if (sameJson(old, value)) return this.#slice(node);
    const indent = this.#indentAt(node.offset);
    if (Array.isArray(old) && Array.isArray(value)) {
      const list = isFields(context) ? context.list : null;
      if (old.length > 0 && value.length > 0) return this.#array(node, old, value, list);
      return this.#fresh(value, indent, node.offset - this.#text.lastIndexOf("\n", node.offset), { list });
    }
    const of = isFields(context) ? null : (context as Context);
    if (isFields(old) && isFields(value) && Object.keys(old).length > 0 && Object.keys(value).length > 0)
      return this.#object(node, old, value, of);
    const column = node.offset - this.#text.lastIndexOf("\n", node.offset);
    return this.#fresh(value, indent, column, { context: of });
  }

  #assembled(node: Node, parts: readonly Part[]): string {
    const isOld = parts.every(({ was }) => was !== "new");
    return assembled(this.#text, node, parts, isOld ? "" : this.#style.comma);
  }

  #object(node: Node, old: Fields, value: Fields, context: Context): string {
    const parts = partsOf(this.#text, node);
    const seen = new Set<string>();
    const kept = parts.flatMap(({ child, ...part }): Part[] => {
      const [key, held] = child.children ?? [];
      const name = String(key?.value);
      seen.add(name);
      if (!held || !Object.hasOwn(value, name)) return [];
      const list = listUnder(context, name);
      const body = this.over(held, old[name], value[name], { list });
      return [{ ...part, body: this.#text.slice(child.offset, held.offset) + body }];
    });
    const { indent, isSpread } = this.#layoutOf(node, parts);
    const added = Object.entries(value).flatMap(([key, child]): Part[] => {
      if (seen.has(key)) return [];
      const head = `${JSON.stringify(key)}:${this.#style.colon}`;
      const list = listUnder(context, key);
      const body = isSpread
        ? this.#fresh(child, indent, indent.length + head.length, { list })
        : onOneLine(child, this.#style);
      return [{ lead: "", body: head + body, trail: "", was: "new" }];
    });
    return this.#assembled(node, [...kept, ...added]);
  }

  #array(node: Node, old: readonly unknown[], value: readonly unknown[], list: ListName | null): string {
    const parts = partsOf(this.#text, node);
    const places = new Map(entryKeys(old, keyIn(list)).map((key, index) => [key, index]));
    const { indent, isSpread } = this.#layoutOf(node, parts);
    const objects = parts.filter(({ child }) => child.type === "object");
    const areAllSpread =
      objects.length > 0 && objects.every(({ child }) => this.#slice(child).includes("\n"));
    const next = entryKeys(value, keyIn(list)).map((key, index): Part => {
      const entry = value[index];
      const place = places.get(key);
      const part = place === undefined ? undefined : parts[place];
      if (place !== undefined && part) {
        const { child, ...blanks } = part;
        return { ...blanks, body: this.over(child, old[place], entry, list) };
      }
      const body = isSpread ? this.#member(entry, indent, list, areAllSpread) : onOneLine(entry, this.#style);
      return { lead: "", body, trail: "", was: "new" };
    });
    return this.#assembled(node, next);
  }

  /** A member that is new to its array: with its own text where it stood elsewhere before. */
  #member(value: unknown, indent: string, list: ListName | null, isSpread: boolean): string {
    const name = list === null ? null : memberKey(list, value);
    const standing = name === null ? undefined : this.#standing.get(name);
    if (!standing) return this.#fresh(value, indent, indent.length, { context: list, isSpread });
    const { node } = standing;
    const [first = "", ...rest] = this.over(node, standing.value, value, list).split("\n");
    const from = this.#indentAt(node.offset);
    const moved = rest.map((line) => (line.startsWith(from) ? indent + line.slice(from.length) : line));
    return [first, ...moved].join("\n");
  }

  /** The text of a value that has no text in the file yet. */
  #fresh(
    value: unknown,
    indent: string,
    column: number,
    parts: {
      readonly list?: ListName | null;
      readonly context?: Context;
      readonly isSpread?: boolean;
    },
  ): string {
    if (typeof value !== "object" || value === null) return JSON.stringify(value);
    const { width, isOneLine, lineEnd, colon, indent: level } = this.#style;
    const { list = null, context = null, isSpread = false } = parts;
    const inline = onOneLine(value, this.#style);
    const isEmpty = Object.keys(value).length === 0;
    // Tasks and steps stand on lines of their own however short they are.
    const isWide = isSpread || (list !== null && (heldBy(list) !== null || list === "steps"));
    if (isEmpty || isOneLine || (!isWide && width !== null && column + inline.length < width)) return inline;
    const inner = indent + level;
    const [open, close] = Array.isArray(value) ? ["[", "]"] : ["{", "}"];
    const bodies = Array.isArray(value)
      ? value.map((entry) => this.#member(entry, inner, list, false))
      : Object.entries(value).map(([key, child]) => {
          const head = `${JSON.stringify(key)}:${colon}`;
          return (
            head + this.#fresh(child, inner, inner.length + head.length, { list: listUnder(context, key) })
          );
        });
    return `${open}${lineEnd}${inner}${bodies.join(`,${lineEnd}${inner}`)}${lineEnd}${indent}${close}`;
  }

  /** How deep the parts of a container stand, and whether they are spread over lines. */
  #layoutOf(node: Node, parts: readonly { readonly lead: string }[]) {
    const lead = parts[0]?.lead ?? "";
    const isSpread = this.#slice(node).includes("\n");
    const indent = lead.includes("\n") ? lead.slice(lead.lastIndexOf("\n") + 1) : this.#indentAt(node.offset);
    return { indent, isSpread };
  }
}
