import type { Checked } from "../core/check/index.ts";
import { checkProcedureText } from "../core/check/index.ts";
import type { Entry, LineProblem } from "../core/log/index.ts";
import { readLines } from "../core/log/index.ts";
import type { Finding, Outline, ReadProcedure } from "../core/procedure/index.ts";
import { outlineOf, readProcedure } from "../core/procedure/index.ts";
import type { Instant } from "../core/units/index.ts";
import type { Folded, Ledger } from "../core/walk/index.ts";
import { corrected, deviceClocks, foldLog } from "../core/walk/index.ts";
import { readText } from "../io/files/index.ts";
import { counted, plainText } from "./plain-text.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** Codes of findings after which a file is of no use at all, rather than a procedure with errors in it. */
const NO_PROCEDURE = /^file\/(not-json|other-format|newer-version|too-large)$/;

/** Checks the procedure in a file; rejects with {@link UnusableFileError} when there is no text to check. */
export async function checkedFile(file: string): Promise<Checked> {
  return checkProcedureText(await readText(file));
}

/** The procedure in a file laid out, or the error findings why it cannot be. */
export async function procedureFile(
  file: string,
): Promise<{ readonly outline: Outline; readonly read: ReadProcedure }> {
  const read = readProcedure(await readText(file));
  if (read.procedure) return { outline: outlineOf(read.procedure), read };
  const errors = read.findings.filter(({ level }) => level === "error");
  const [first] = errors;
  throw new UnusableProcedureError(
    `${file} has ${counted(errors.length, "error")}, first ${first ? findingSentence(first) : "unknown"}`,
    errors.some(({ code }) => NO_PROCEDURE.test(code)) ? EXIT.unusable : EXIT.findings,
  );
}

/** A procedure that cannot be planned, and how the program ends because of it. */
export class UnusableProcedureError extends UnusableInputError {
  readonly status: ExitStatus;

  constructor(message: string, status: ExitStatus) {
    super(message);
    this.status = status;
  }
}

/** A finding as one sentence with its place: `at line 12, column 5: …`. */
export function findingSentence({ message, position, pointer }: Finding): string {
  const where = position
    ? `at line ${position.line}, column ${position.column}: `
    : pointer && `at ${pointer}: `;
  return where + plainText(message);
}

/** A log that was read and folded. */
export interface FoldedFile {
  readonly folded: Folded;
  readonly ledger: Ledger;
  readonly problems: readonly LineProblem[];
}

/** Reads the log in a file and folds what had happened by an instant, or all of it. */
export async function foldedFile(file: string, until?: Instant): Promise<FoldedFile> {
  const { entries, problems } = readLines(await readText(file));
  if (entries.length === 0) {
    const [first] = problems;
    throw new UnusableInputError(
      first ? `${file} is not a log: line ${first.line}: ${first.problem}.` : `${file} holds no entries.`,
    );
  }
  const folded = foldLog(until === undefined ? entries : hadHappened(entries, until));
  const { ledger } = folded;
  if (!ledger) throw new UnusableInputError(`${file}: ${whyNotOpened(entries, folded)}.`);
  return { folded, ledger, problems };
}

/** The entries of what had happened by an instant; what is known of clocks counts whenever it was found out. */
function hadHappened(entries: readonly Entry[], until: Instant): readonly Entry[] {
  const clocks = deviceClocks(entries);
  return entries.filter(
    (entry) => entry.read.fact?.name === "clock.compared" || corrected(entry, clocks).at <= until,
  );
}

function whyNotOpened(entries: readonly Entry[], folded: Folded): string {
  const openings = entries.filter(({ wire }) => wire.type === "tetherline.walk.opened");
  if (openings.length === 0) return "no entry opens a walk, so there is no state to show";
  const refused = folded.ignored.find(({ source, id }) =>
    openings.some(({ wire }) => wire.source === source && wire.id === id),
  );
  return refused
    ? `the walk could not be opened: ${plainText(refused.reason)}`
    : "the walk was not open at that instant";
}

/** A sentence with its full stop, unless it ends in a mark already. */
const ended = (sentence: string) => (/[.?!]$/.test(sentence) ? sentence : `${sentence}.`);

/** Says on `err` what of a log had no effect or could not be read, and how the program ends because of it. */
export function reportUncleanLog(
  file: string,
  { folded, problems }: FoldedFile,
  terminal: Terminal,
): ExitStatus {
  const [line] = problems;
  if (line) {
    terminal.err(
      `${file}: ${counted(problems.length, "line")} could not be read, first line ${line.line}: ${ended(line.problem)}\n`,
    );
  }
  const [entry] = folded.ignored;
  if (entry) {
    terminal.err(
      `${file}: ${folded.ignored.length === 1 ? "1 entry" : `${folded.ignored.length} entries`} had no effect, first ${plainText(entry.source)} ${plainText(entry.id)}: ${ended(plainText(entry.reason))}\n`,
    );
  }
  return line || entry ? EXIT.findings : EXIT.fine;
}
