import type { Procedure, ProcedureFile } from "../core/procedure/index.ts";
import type { SurprisesFile } from "../core/training/index.ts";
import { areSurprises, readSurprises } from "../core/training/index.ts";
import { readText } from "../io/files/index.ts";
import { words } from "../words/index.ts";
import { findingSentence, UnusableProcedureError } from "./read-input.ts";
import { EXIT } from "./terminal.ts";

/** The surprises in a file, for a procedure. Rejects with what is wrong with them first. */
export async function surprisesFile(file: string, procedure: Procedure): Promise<SurprisesFile> {
  const { surprises, findings } = readSurprises(await readText(file), procedure);
  if (surprises) return surprises;
  const errors = findings.filter(({ level }) => level === "error");
  const [first] = errors;
  throw new UnusableProcedureError(
    words("cli/procedure-errors", {
      file,
      count: errors.length,
      first: first ? findingSentence(first) : words("cli/first-unknown"),
    }),
    EXIT.findings,
  );
}

/** The id of the procedure that a text of surprises is for; `null` for a text of something else. */
export function surprisesFor(text: string): ProcedureFile["id"] | null {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return null;
  }
  if (!areSurprises(value)) return null;
  const { procedure } = value as { readonly procedure?: unknown };
  return typeof procedure === "string" ? procedure : "";
}
