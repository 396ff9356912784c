import type { Node } from "jsonc-parser";
import { findNodeAtLocation, getLocation, parseTree } from "jsonc-parser";
import type { PathPart } from "../../core/procedure/index.ts";
import { knownForm, knownKeys } from "../../core/procedure/index.ts";

/** Something that can be put at the cursor. */
export interface Completion {
  /** As it is written in the file, with its quotes. */
  readonly text: string;
  /** What the schema or the file says of it; empty where they say nothing. */
  readonly says: string;
}

/** What can be put at a place of a text. */
export interface CompletionsAt {
  /** From where to where in the text it is put. */
  readonly from: number;
  readonly to: number;
  readonly completions: readonly Completion[];
}

/** The list of the file in which ids of a kind stand, by what the schema calls them. */
const LIST_OF: Readonly<Record<string, string>> = {
  "Id of a crew member": "crew",
  "Id of a place": "places",
  "Id of an item": "items",
  "Id of a window": "windows",
  "Id of a step": "steps",
  "Id of a state": "states",
  "Id of a picture": "pictures",
};

/** What can be put at an offset of a procedure's text ([WRT6]); the text may be wrong elsewhere. `null` where nothing is known. */
export function completionsAt(text: string, offset: number): CompletionsAt | null {
  const { path, previousNode, isAtPropertyKey } = getLocation(text, offset);
  const isIn =
    previousNode && offset >= previousNode.offset && offset <= previousNode.offset + previousNode.length;
  const [from, to] = isIn
    ? [previousNode.offset, previousNode.offset + previousNode.length]
    : [startOfWord(text, offset), offset];
  const completions = isAtPropertyKey
    ? keysFor(text, path.slice(0, -1), isIn ? String(previousNode.value) : null)
    : valuesFor(text, path);
  return completions.length === 0 ? null : { from, to, completions };
}

/** What the schema says of the key or value at an offset; `null` where it says nothing. */
export function explanationAt(text: string, offset: number): string | null {
  const { path } = getLocation(text, offset);
  const { descriptions } = knownForm(path);
  return descriptions.length === 0 ? null : descriptions.join(" · ");
}

const startOfWord = (text: string, offset: number) =>
  offset - (/["\w-]*$/.exec(text.slice(0, offset))?.[0] ?? "").length;

/** The keys that may still be put into an object. */
function keysFor(text: string, path: readonly PathPart[], own: string | null): readonly Completion[] {
  const object = nodeAt(text, path);
  const taken = new Set((object?.children ?? []).map((member) => String(member.children?.[0]?.value)));
  return knownKeys(path)
    .filter((key) => key === own || !taken.has(key))
    .map((key) => ({ text: JSON.stringify(key), says: knownForm([...path, key]).descriptions.join(" · ") }));
}

/** The values that the schema lists, and the ids that the file has for it. */
function valuesFor(text: string, path: readonly PathPart[]): readonly Completion[] {
  const { values, descriptions } = knownForm(path);
  const ids = path.at(-1) === "id" ? [] : descriptions.flatMap((said) => idsIn(text, LIST_OF[said] ?? ""));
  return [...values.map((value) => ({ text: JSON.stringify(value), says: "" })), ...ids];
}

/** The ids of a list of the file, each with its label or title; those of steps from all tasks. */
function idsIn(text: string, list: string): readonly Completion[] {
  const root = parseTree(text);
  if (!root || list === "") return [];
  const members =
    list === "steps"
      ? entriesOf(root, "tasks").flatMap((task) => entriesOf(task, "steps"))
      : entriesOf(root, list);
  return members.flatMap((member) => {
    const id = valueIn(member, "id");
    if (id === null) return [];
    const says = valueIn(member, "label") ?? valueIn(member, "call") ?? valueIn(member, "do") ?? "";
    return [{ text: JSON.stringify(id), says }];
  });
}

const nodeAt = (text: string, path: readonly PathPart[]): Node | null => {
  const root = parseTree(text);
  return (root && findNodeAtLocation(root, [...path])) ?? null;
};

const entriesOf = (node: Node, key: string): readonly Node[] =>
  findNodeAtLocation(node, [key])?.children ?? [];

function valueIn(node: Node, key: string): string | null {
  const value: unknown = findNodeAtLocation(node, [key])?.value;
  return typeof value === "string" ? value : null;
}
