import type { Conflict } from "../core/changes/index.ts";
import { conflictMessage, mergeChanges, writtenOver } from "../core/changes/index.ts";
import { inWords, words } from "../words/index.ts";
import { documentText } from "./document-text.ts";
import { plainText, shortText } from "./plain-text.ts";
import { soundProcedure } from "./procedure-text.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { writeProcedure } from "./written-procedure.ts";

/** The names of the three files of a merge. */
export interface MergeFiles {
  /** The file that both revisions were made from. */
  readonly base: string;
  /** The revision whose text is kept where nothing changes. */
  readonly ours: string;
  readonly theirs: string;
}

/** `merge`: combines the changes that two revisions made to one base, or lists the conflicts between them. */
export async function mergeCommand(
  files: MergeFiles,
  { out, json = false }: { readonly out?: string; readonly json?: boolean },
  terminal: Terminal,
): Promise<ExitStatus> {
  const base = await soundProcedure(files.base);
  const ours = await soundProcedure(files.ours);
  const theirs = await soundProcedure(files.theirs);
  const { file, conflicts } = mergeChanges(base.file, ours.file, theirs.file);
  if (!file) {
    if (json) terminal.out(documentText(() => ({ conflicts })));
    else terminal.err(conflictsText(conflicts));
    return EXIT.findings;
  }
  const status = await writeProcedure(writtenOver(ours.text, file), { out, terminal });
  // With --json there is exactly one document on standard output, even when the file is written elsewhere.
  if (json && out !== undefined) terminal.out(documentText(() => ({ conflicts })));
  return status;
}

const WIDTH = 60;

function conflictsText(conflicts: readonly Conflict[]): string {
  const lines = conflicts.map((conflict) => {
    const { base, ours, theirs } = conflict;
    const side = (name: string, value: unknown) =>
      `    ${name.padEnd(6)} ${value === null ? "–" : shortText(JSON.stringify(value), WIDTH)}\n`;
    return `  ${plainText(inWords(conflictMessage(conflict)))}\n${side(words("cli/merge-base"), base)}${side(words("cli/merge-ours"), ours)}${side(words("cli/merge-theirs"), theirs)}`;
  });
  return `${words("cli/conflicts", { count: conflicts.length })}\n${lines.join("")}`;
}
