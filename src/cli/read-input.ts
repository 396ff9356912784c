import type { Checked, CheckOptions } from "../core/check/index.ts";
import { checkProcedureText } from "../core/check/index.ts";
import type { Entry, LineProblem } from "../core/log/index.ts";
import { keyOf, readLines } from "../core/log/index.ts";
import type { Finding, Outline, ReadProcedure } from "../core/procedure/index.ts";
import { outlineOf, readProcedure } from "../core/procedure/index.ts";
import type { Instant } from "../core/units/index.ts";
import type { Folded, Ledger } from "../core/walk/index.ts";
import { foldLog } from "../core/walk/index.ts";
import { readText } from "../io/files/index.ts";
import { inWords, words } from "../words/index.ts";
import { plainText } from "./plain-text.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** Codes of findings that make a file unusable, as opposed to a procedure with errors in it. */
const NO_PROCEDURE = /^file\/(not-json|other-format|newer-version|too-large)$/;

/** Checks the procedure in a file. Rejects with {@link UnusableFileError} when there is no text to check. */
export async function checkedFile(file: string, options: CheckOptions = {}): Promise<Checked> {
  return checkProcedureText(await readText(file), options);
}

/** The outline of the procedure in a file, or the error findings that prevent it. */
export async function procedureFile(
  file: string,
): Promise<{ readonly outline: Outline; readonly read: ReadProcedure }> {
  const read = readProcedure(await readText(file));
  if (read.procedure) return { outline: outlineOf(read.procedure), read };
  const errors = read.findings.filter(({ level }) => level === "error");
  const [first] = errors;
  throw new UnusableProcedureError(
    words("cli/procedure-errors", {
      file,
      count: errors.length,
      first: first ? findingSentence(first) : words("cli/first-unknown"),
    }),
    errors.some(({ code }) => NO_PROCEDURE.test(code)) ? EXIT.unusable : EXIT.findings,
  );
}

/** A procedure that cannot be planned, with the exit status of the program. */
export class UnusableProcedureError extends UnusableInputError {
  readonly status: ExitStatus;

  constructor(message: string, status: ExitStatus) {
    super(message);
    this.status = status;
  }
}

/** A finding as one sentence with its position: `at line 12, column 5: …`. */
export function findingSentence({ message, position, pointer }: Finding): string {
  const said = plainText(inWords(message));
  if (position) {
    const { line, column } = position;
    return words("cli/finding-at-line", { line, column, finding: said });
  }
  return pointer ? words("cli/finding-at", { pointer, finding: said }) : said;
}

/** A log that was read and folded. */
export interface FoldedFile {
  readonly folded: Folded;
  readonly ledger: Ledger;
  /** Every entry of the file, those that the fold passes by included. */
  readonly entries: readonly Entry[];
  readonly problems: readonly LineProblem[];
}

/** Reads the log in a file and folds the entries that had happened by an instant, or all of them when none is given. */
export async function foldedFile(file: string, until?: Instant): Promise<FoldedFile> {
  const { entries, problems } = readLines(await readText(file));
  if (entries.length === 0) {
    const [first] = problems;
    throw new UnusableInputError(
      first
        ? words("cli/not-a-log", { file, line: first.line, why: inWords(first.problem) })
        : words("cli/no-entries", { file }),
    );
  }
  const folded = foldLog(until === undefined ? entries : hadHappened(entries, until));
  const { ledger } = folded;
  if (!ledger) throw new UnusableInputError(whyNotOpened(file, entries, folded));
  return { folded, ledger, entries, problems };
}

/**
 * The entries of what had happened by an instant. Entries about clocks, and the strikes of such entries, count no matter
 * when they were made.
 */
function hadHappened(entries: readonly Entry[], until: Instant): readonly Entry[] {
  const { timeOf } = foldLog(entries);
  const isOnClocks = ({ read: { fact } }: Entry) =>
    fact?.name === "clock.compared" || fact?.name === "clock.jumped";
  const onClocks = new Set(entries.filter(isOnClocks).map(keyOf));
  const isStrikeOfThose = ({ read: { fact } }: Entry) =>
    fact?.name === "entry.struck" && onClocks.has(keyOf({ wire: fact }));
  return entries.filter((entry) => isOnClocks(entry) || isStrikeOfThose(entry) || timeOf(entry) <= until);
}

function whyNotOpened(file: string, entries: readonly Entry[], folded: Folded): string {
  const openings = entries.filter(({ wire }) => wire.type === "tetherline.walk.opened");
  if (openings.length === 0) return words("cli/no-opening", { file });
  const refused = folded.ignored.find(({ source, id }) =>
    openings.some(({ wire }) => wire.source === source && wire.id === id),
  );
  return refused
    ? words("cli/not-opened", { file, why: plainText(inWords(refused.reason)) })
    : words("cli/not-open-then", { file });
}

/** A sentence with a full stop, unless it already ends in a punctuation mark. */
const ended = (sentence: string) => (/[.?!]$/.test(sentence) ? sentence : `${sentence}.`);

/**
 * Reports on `err` the entries of a log that had no effect or could not be read, and returns the exit status for them.
 */
export function reportUncleanLog(
  file: string,
  { folded, problems }: FoldedFile,
  terminal: Terminal,
): ExitStatus {
  const [line] = problems;
  if (line) {
    terminal.err(
      `${words("cli/lines-not-read", { file, count: problems.length, line: line.line, why: ended(inWords(line.problem)) })}\n`,
    );
  }
  const [entry] = folded.ignored;
  if (entry) {
    terminal.err(
      `${words("cli/entries-ignored", {
        file,
        count: folded.ignored.length,
        entry: `${plainText(entry.source)} ${plainText(entry.id)}`,
        why: ended(plainText(inWords(entry.reason))),
      })}\n`,
    );
  }
  return line || entry ? EXIT.findings : EXIT.fine;
}
