import { parseTree } from "jsonc-parser";
import type { Change, ProcedureFile } from "../procedure/index.ts";
import { applyChanges } from "./apply-changes.ts";
import type { ChangeProblem } from "./change-problem.ts";
import { TextRewriting } from "./text-rewriting.ts";

const BYTE_ORDER_MARK = "\uFEFF";

/** Thrown when the text to be edited is not JSON. */
export class UneditableTextError extends Error {
  override readonly name = "UneditableTextError";
}

/**
 * The text of a procedure file, written over so that it reads as `file` ([CHG6]): only the lines whose content differs are
 * changed, and a member that moves keeps its text. Layout, key order, line ends, a byte order mark and final blanks stay.
 * Throws {@link UneditableTextError} when the text is not JSON.
 */
export function writtenOver(text: string, file: ProcedureFile): string {
  const mark = text.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK : "";
  const json = text.slice(mark.length);
  const root = parseTree(json);
  if (!root) throw new UneditableTextError("the text is not JSON");
  const value: unknown = JSON.parse(json);
  const body = new TextRewriting(json, root, value).over(root, value, file, "file");
  return mark + json.slice(0, root.offset) + body + json.slice(root.offset + root.length);
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
