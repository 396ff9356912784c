import {
  changeProblemMessage,
  editText,
  readChanges,
  unreadableChangesMessage,
} from "../core/changes/index.ts";
import type { Change } from "../core/procedure/index.ts";
import { readText } from "../io/files/index.ts";
import { inWords, words } from "../words/index.ts";
import { plainText } from "./plain-text.ts";
import { changeableProcedure } from "./procedure-text.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";
import { writeProcedure } from "./written-procedure.ts";

/** `change`: applies changes to a procedure. The rest of its text stays as it is. */
export async function changeCommand(
  file: string,
  changesFile: string,
  { out }: { readonly out?: string },
  terminal: Terminal,
): Promise<ExitStatus> {
  const before = await changeableProcedure(file);
  const changes = await changesIn(changesFile);
  const edited = editText(before.text, before.file, changes);
  if (edited.problem) {
    const why = plainText(inWords(changeProblemMessage(edited.problem)));
    const number = edited.index + 1;
    terminal.err(`${words("cli/change-not-made", { number, file: changesFile, why })}\n`);
    return EXIT.findings;
  }
  return writeProcedure(edited.text, { out, terminal });
}

async function changesIn(file: string): Promise<readonly Change[]> {
  const { changes, problem } = readChanges(jsonIn(file, await readText(file)));
  if (changes) return changes;
  throw new UnusableInputError(
    words("cli/changes-of-no-use", { file, why: plainText(inWords(unreadableChangesMessage(problem))) }),
  );
}

function jsonIn(file: string, text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    throw new UnusableInputError(words("cli/changes-not-json", { file }));
  }
}
