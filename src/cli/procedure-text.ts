import type { Outline, ProcedureFile } from "../core/procedure/index.ts";
import { outlineOf, procedureFileOf, readProcedure } from "../core/procedure/index.ts";
import { readText } from "../io/files/index.ts";
import { words } from "../words/index.ts";
import { findingSentence } from "./read-input.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** A procedure and the text it was read from, for commands that write procedures. */
export interface ProcedureText {
  readonly name: string;
  readonly text: string;
  readonly file: ProcedureFile;
}

function unusable(name: string, findings: ReturnType<typeof readProcedure>["findings"]): UnusableInputError {
  const errors = findings.filter(({ level }) => level === "error");
  const [first] = errors;
  return new UnusableInputError(
    words("cli/has-errors", { file: name, count: errors.length, first: first ? findingSentence(first) : "" }),
  );
}

/** Reads a procedure and its text from a file. Rejects with one sentence when the procedure has errors. */
export async function soundProcedure(name: string): Promise<ProcedureText & { readonly outline: Outline }> {
  const text = await readText(name);
  const { file, procedure, findings } = readProcedure(text);
  if (!file || !procedure) throw unusable(name, findings);
  return { name, text, file, outline: outlineOf(procedure) };
}

/**
 * Reads a procedure and its text from a file, even if it refers to things that do not exist. Rejects with one sentence
 * when its shape is wrong.
 */
export async function changeableProcedure(name: string): Promise<ProcedureText> {
  const text = await readText(name);
  const { file, findings } = readProcedure(text);
  if (file) return { name, text, file };
  if (findings.some(({ code }) => /^file\/(not-json|too-large|doubled-key)$/.test(code)))
    throw unusable(name, findings);
  const shaped = procedureFileOf(JSON.parse(text.replace(/^\uFEFF/, "")));
  if (!shaped) throw unusable(name, findings);
  return { name, text, file: shaped };
}
