import { hasErrors, readProcedure } from "../core/procedure/index.ts";
import { writeText } from "../io/files/index.ts";
import { words } from "../words/index.ts";
import { findingSentence } from "./read-input.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";

/** Where the text of a procedure is written. */
export interface Destination {
  /** A file. Without one, the text goes to standard output. */
  readonly out?: string | undefined;
  readonly terminal: Terminal;
}

/**
 * Writes the text of a procedure that a command made, and reports the findings of reading it on `err`. A procedure with
 * errors is written all the same, so that they can be mended; the exit status reports them.
 */
export async function writeProcedure(text: string, { out, terminal }: Destination): Promise<ExitStatus> {
  if (out === undefined) terminal.out(text);
  else await writeText(out, text);
  const { findings } = readProcedure(text);
  for (const one of findings) {
    const file = out ?? words("cli/the-result");
    terminal.err(`${words(`cli/of-finding-${one.level}`, { file, finding: findingSentence(one) })}\n`);
  }
  return hasErrors(findings) ? EXIT.findings : EXIT.fine;
}
