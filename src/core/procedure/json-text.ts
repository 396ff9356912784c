import { bisectRight } from "d3-array";
import type { Node, ParseError } from "jsonc-parser";
import { parseTree, printParseErrorCode } from "jsonc-parser";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { FilePosition, Finding } from "./finding.ts";
import { finding } from "./finding.ts";
import type { PathPart } from "./json-pointer.ts";
import { jsonPointer, pointerParts } from "./json-pointer.ts";

/** A JSON text that has been read: its value, and where each part is in the text. */
export interface JsonText {
  readonly value: unknown;
  /** The errors of the text as JSON, including doubled keys. */
  readonly findings: readonly Finding[];
  /**
   * The line and column of the part that a JSON Pointer names, or of its nearest ancestor in the text. Returns `null`
   * when nothing could be read.
   */
  positionOf(pointer: string): FilePosition | null;
}

const STRICT = { disallowComments: true, allowTrailingComma: false, allowEmptyContent: false } as const;

/** The message for each kind of mistake that the parser distinguishes. */
const MISTAKES: Readonly<Record<string, Message>> = {
  InvalidSymbol: message("file/syntax-invalid-symbol"),
  InvalidNumberFormat: message("file/syntax-invalid-number-format"),
  PropertyNameExpected: message("file/syntax-property-name-expected"),
  ValueExpected: message("file/syntax-value-expected"),
  ColonExpected: message("file/syntax-colon-expected"),
  CommaExpected: message("file/syntax-comma-expected"),
  CloseBraceExpected: message("file/syntax-close-brace-expected"),
  CloseBracketExpected: message("file/syntax-close-bracket-expected"),
  EndOfFileExpected: message("file/syntax-end-of-file-expected"),
  InvalidCommentToken: message("file/syntax-comment"),
  UnexpectedEndOfComment: message("file/syntax-comment"),
  UnexpectedEndOfString: message("file/syntax-unexpected-end-of-string"),
  UnexpectedEndOfNumber: message("file/syntax-unexpected-end-of-number"),
  InvalidUnicode: message("file/syntax-invalid-unicode"),
  InvalidEscapeCharacter: message("file/syntax-invalid-escape-character"),
  InvalidCharacter: message("file/syntax-invalid-character"),
};

type PositionAt = (offset: number) => FilePosition;

/**
 * Returns a function that converts an offset into line and column. The text is split into lines once, since a file may
 * have thousands of findings.
 */
function positionsIn(text: string): PositionAt {
  const starts = [0];
  for (let end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n", end + 1)) starts.push(end + 1);
  return (offset) => {
    const line = bisectRight(starts, offset);
    return { line, column: offset - (starts[line - 1] ?? 0) + 1 };
  };
}

function syntaxFinding(positionAt: PositionAt, { error, offset }: ParseError): Finding {
  const mistake = MISTAKES[printParseErrorCode(error)] ?? message("file/syntax-other");
  return {
    ...finding("error", "file/not-json", "", mistake),
    position: positionAt(offset),
  };
}

/** The offset of the named part, or of its deepest ancestor that exists. A member of an object starts at its key. */
function offsetOf(root: Node, parts: readonly string[]): number {
  let node = root;
  let offset = root.offset;
  for (const part of parts) {
    const child =
      node.type === "array"
        ? node.children?.[Number(part)]
        : node.children?.find((member) => member.children?.[0]?.value === part);
    if (!child) break;
    offset = child.offset;
    node = node.type === "array" ? child : (child.children?.[1] ?? child);
  }
  return offset;
}

function doubledKeys(positionAt: PositionAt, root: Node): Finding[] {
  const found: Finding[] = [];
  const visit = (node: Node, path: readonly PathPart[]): void => {
    const seen = new Set<string>();
    for (const [index, child] of (node.children ?? []).entries()) {
      const [key, value] = node.type === "object" ? (child.children ?? []) : [undefined, child];
      const name: PathPart = node.type === "object" ? String(key?.value) : index;
      const childPath = [...path, name];
      if (typeof name === "string") {
        if (seen.has(name)) {
          const doubled = message("file/doubled-key", { key: name });
          found.push({
            ...finding("error", "file/doubled-key", jsonPointer(childPath), doubled),
            position: positionAt(child.offset),
          });
        }
        seen.add(name);
      }
      if (value?.children) visit(value, childPath);
    }
  };
  visit(root, []);
  return found;
}

const unreadable = (why: Message): JsonText => ({
  value: undefined,
  findings: [finding("error", "file/not-json", "", why)],
  positionOf: () => null,
});

/**
 * Reads a JSON text strictly (RFC 8259, except that a leading byte order mark is allowed) and records where everything
 * is. Never throws.
 */
export function readJsonText(source: string): JsonText {
  const text = source.startsWith("\uFEFF") ? source.slice(1) : source;
  if (text.trim() === "") return unreadable(message("file/empty"));
  try {
    const sound = soundValue(text);
    return sound === null ? readByTree(text) : { value: sound.value, findings: [], positionOf: lazily(text) };
  } catch (error) {
    // The parser is recursive and runs out of stack on a document nested many thousands deep.
    if (error instanceof RangeError) return unreadable(message("file/nested-too-deeply"));
    if (error instanceof SyntaxError) return unreadable(message("file/not-json"));
    throw error;
  }
}

/** The value of a text in which nothing is wrong, without a tree of its places; `null` for any other text. */
function soundValue(text: string): { readonly value: unknown } | null {
  try {
    const value: unknown = JSON.parse(text);
    return keysIn(value) === keysWritten(text) ? { value } : null;
  } catch (error) {
    // Where the stack is too small, reading by the tree has the last word.
    if (error instanceof SyntaxError || error instanceof RangeError) return null;
    throw error;
  }
}

/** Matches every string of a sound text, with the colon behind a key. Strings are pictures too, of megabytes. */
const STRINGS = /"[^"\\]*(?:\\.[^"\\]*)*"(\s*:)?/g;

/** How many keys stand in a sound text. */
function keysWritten(text: string): number {
  let keys = 0;
  for (const [, colon] of text.matchAll(STRINGS)) if (colon !== undefined) keys += 1;
  return keys;
}

/** How many keys a value has, at any depth: fewer than were written where one stands twice. */
function keysIn(value: unknown): number {
  if (typeof value !== "object" || value === null) return 0;
  if (Array.isArray(value)) return value.reduce<number>((sum, one) => sum + keysIn(one), 0);
  return Object.values(value).reduce<number>((sum, one) => sum + 1 + keysIn(one), 0);
}

/** Finds positions in a sound text, which is parsed when the first one is asked for. */
function lazily(text: string): JsonText["positionOf"] {
  let find: JsonText["positionOf"] | null = null;
  return (pointer) => {
    find ??= positionsByTree(text);
    return find(pointer);
  };
}

function positionsByTree(text: string): JsonText["positionOf"] {
  try {
    const root = parseTree(text, [], STRICT);
    const positionAt = positionsIn(text);
    return root ? (pointer) => positionAt(offsetOf(root, pointerParts(pointer))) : () => null;
  } catch (error) {
    // The parser is recursive, and may run out of stack where the value could still be read.
    if (error instanceof RangeError) return () => null;
    throw error;
  }
}

function readByTree(text: string): JsonText {
  const errors: ParseError[] = [];
  const root = parseTree(text, errors, STRICT);
  const [first] = errors;
  const positionAt = positionsIn(text);
  if (!root || first) {
    const findings = first
      ? [syntaxFinding(positionAt, first)]
      : unreadable(message("file/not-json")).findings;
    return { value: undefined, findings, positionOf: () => null };
  }
  return {
    value: JSON.parse(text) as unknown,
    findings: doubledKeys(positionAt, root),
    positionOf: (pointer) => positionAt(offsetOf(root, pointerParts(pointer))),
  };
}
