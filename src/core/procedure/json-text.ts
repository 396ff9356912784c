import type { Node, ParseError } from "jsonc-parser";
import { parseTree, printParseErrorCode } from "jsonc-parser";
import type { FilePosition, Finding } from "./finding.ts";
import { finding } from "./finding.ts";
import type { PathPart } from "./json-pointer.ts";
import { jsonPointer, pointerParts } from "./json-pointer.ts";

/** A JSON text that has been read: its value, and where in the text each part stands. */
export interface JsonText {
  readonly value: unknown;
  /** What is wrong with the text as JSON, doubled keys included. */
  readonly findings: readonly Finding[];
  /** Line and column of what a JSON Pointer names, or of the nearest part above it that is in the text; `null` when nothing could be read. */
  positionOf(pointer: string): FilePosition | null;
}

const STRICT = { disallowComments: true, allowTrailingComma: false, allowEmptyContent: false } as const;

const IN_WORDS: Readonly<Record<string, string>> = {
  InvalidSymbol: "there is a word here that JSON does not know",
  InvalidNumberFormat: "this is not a number as JSON writes it",
  PropertyNameExpected: "a key in double quotes is expected here",
  ValueExpected: "a value is expected here",
  ColonExpected: "a colon is missing here",
  CommaExpected: "a comma is missing here",
  CloseBraceExpected: "a closing brace } is missing here",
  CloseBracketExpected: "a closing bracket ] is missing here",
  EndOfFileExpected: "the JSON ends here, but more text follows",
  InvalidCommentToken: "JSON has no comments",
  UnexpectedEndOfComment: "JSON has no comments",
  UnexpectedEndOfString: "a string is not closed",
  UnexpectedEndOfNumber: "a number is cut short",
  InvalidUnicode: "this is not a Unicode escape",
  InvalidEscapeCharacter: "this escape is not one of JSON's",
  InvalidCharacter: "a control character stands inside a string",
};

function positionAt(text: string, offset: number): FilePosition {
  const before = text.slice(0, offset);
  const lineStart = before.lastIndexOf("\n") + 1;
  return { line: before.split("\n").length, column: offset - lineStart + 1 };
}

function syntaxFinding(text: string, { error, offset }: ParseError): Finding {
  const words = IN_WORDS[printParseErrorCode(error)] ?? "this is not JSON";
  return {
    ...finding("error", "file/not-json", "", `Not valid JSON: ${words}.`),
    position: positionAt(text, offset),
  };
}

/** Where the part named stands, or the deepest part above it that exists; a member of an object starts at its key. */
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

function doubledKeys(text: string, root: Node): Finding[] {
  const found: Finding[] = [];
  const visit = (node: Node, path: readonly PathPart[]): void => {
    const seen = new Set<string>();
    for (const [index, child] of (node.children ?? []).entries()) {
      const [key, value] = node.type === "object" ? (child.children ?? []) : [undefined, child];
      const name: PathPart = node.type === "object" ? String(key?.value) : index;
      const childPath = [...path, name];
      if (typeof name === "string") {
        if (seen.has(name)) {
          const message = `The key "${name}" stands twice in one object; only one can count.`;
          found.push({
            ...finding("error", "file/doubled-key", jsonPointer(childPath), message),
            position: positionAt(text, child.offset),
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

const unreadable = (message: string): JsonText => ({
  value: undefined,
  findings: [finding("error", "file/not-json", "", message)],
  positionOf: () => null,
});

/** Reads a JSON text strictly (RFC 8259, a leading byte order mark let pass) and keeps where everything stands. Never throws. */
export function readJsonText(source: string): JsonText {
  const text = source.startsWith("\uFEFF") ? source.slice(1) : source;
  if (text.trim() === "") return unreadable("The file is empty.");
  try {
    const errors: ParseError[] = [];
    const root = parseTree(text, errors, STRICT);
    const [first] = errors;
    if (!root || first) {
      const findings = first ? [syntaxFinding(text, first)] : unreadable("Not valid JSON.").findings;
      return { value: undefined, findings, positionOf: () => null };
    }
    return {
      value: JSON.parse(text) as unknown,
      findings: doubledKeys(text, root),
      positionOf: (pointer) => positionAt(text, offsetOf(root, pointerParts(pointer))),
    };
  } catch (error) {
    // The parser recurses: a document nested many thousand deep ends here.
    if (error instanceof RangeError) return unreadable("The JSON is nested too deeply to be a procedure.");
    if (error instanceof SyntaxError) return unreadable("Not valid JSON.");
    throw error;
  }
}
