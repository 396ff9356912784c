import type { Node } from "jsonc-parser";
import type { Change, ProcedureFile } from "../procedure/index.ts";
import { applyChanges } from "./apply-changes.ts";
import type { ChangeProblem } from "./change-problem.ts";
import { TextRewriting } from "./text-rewriting.ts";
import { treeAfter, treeOf } from "./tree-after.ts";

const BYTE_ORDER_MARK = "\uFEFF";

/** Thrown when the text to be edited is not JSON. */
export class UneditableTextError extends Error {
  override readonly name = "UneditableTextError";
}

/**
 * Remembers the tree of the text that was written last, for whoever writes over one text again and again: only what differs is read
 * anew.
 */
export class TextMemory {
  #json = "";
  #root: Node | null = null;
  /** What the text holds, where that is known without reading it. */
  #held: unknown;

  /** The tree of a text, and what it holds; `null` for a text that is not JSON. */
  read(json: string): { readonly root: Node; readonly value: unknown } | null {
    const isSame = this.#root !== null && this.#json === json;
    if (!isSame) {
      this.#root = (this.#root && treeAfter(this.#root, this.#json, json)) ?? treeOf(json);
      this.#json = json;
      this.#held = undefined;
    }
    if (!this.#root) return null;
    this.#held ??= JSON.parse(json);
    return { root: this.#root, value: this.#held };
  }

  /** Notes a text that was written so that it reads as `value`. */
  note(json: string, value: unknown): void {
    if (this.read(json)) this.#held = value;
  }
}

/**
 * The text of a procedure file, written over so that it reads as `file` ([CHG6]): only the lines whose content differs are
 * changed, and a member that moves keeps its text. Layout, key order, line ends, a byte order mark and final blanks stay. `memory`
 * spares reading what is as it was when it last wrote. Throws {@link UneditableTextError} when the text is not JSON.
 */
export function writtenOver(
  text: string,
  file: ProcedureFile,
  memory: TextMemory = new TextMemory(),
): string {
  const mark = text.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK : "";
  const json = text.slice(mark.length);
  const read = memory.read(json);
  if (!read) throw new UneditableTextError("the text is not JSON");
  const { root, value } = read;
  const body = new TextRewriting(json, root, value).over(root, value, file, "file");
  const written = json.slice(0, root.offset) + body + json.slice(root.offset + root.length);
  memory.note(written, file);
  return mark + written;
}

/** The text of a procedure file after changes, or the first change that cannot be applied. */
export type EditedText =
  | { readonly text: string; readonly file: ProcedureFile; readonly problem: null }
  | {
      readonly text: null;
      readonly file: null;
      readonly problem: ChangeProblem;
      /** Which change it is, from 0. */
      readonly index: number;
    };

/** Edits the text of the procedure `file` by changes, and leaves the rest of its bytes alone ([CHG6]). */
export function editText(text: string, file: ProcedureFile, changes: readonly Change[]): EditedText {
  const applied = applyChanges(file, changes);
  if (applied.problem) return { ...applied, text: null };
  return { text: writtenOver(text, applied.file), file: applied.file, problem: null };
}
