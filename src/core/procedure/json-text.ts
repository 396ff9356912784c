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
  } catch (error) {
    // The parser is recursive and runs out of stack on a document nested many thousands deep.
    if (error instanceof RangeError) return unreadable(message("file/nested-too-deeply"));
    if (error instanceof SyntaxError) return unreadable(message("file/not-json"));
    throw error;
  }
}
