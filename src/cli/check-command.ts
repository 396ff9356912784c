import type { Checked, CheckOptions } from "../core/check/index.ts";
import type { Site } from "../core/light/index.ts";
import { hasErrors, readProcedure } from "../core/procedure/index.ts";
import { readSurprises } from "../core/training/index.ts";
import type { Instant } from "../core/units/index.ts";
import { readText, UnusableFileError, watchFiles } from "../io/files/index.ts";
import { inWords, words } from "../words/index.ts";
import { documentText } from "./document-text.ts";
import { mendOf, patchFor } from "./mend.ts";
import { lightFromFile, tellContact } from "./orbit-file.ts";
import { plainText } from "./plain-text.ts";
import { checkedFile } from "./read-input.ts";
import { surprisesFor } from "./surprises-input.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

interface CheckedFile {
  readonly file: string;
  readonly checked: Checked;
}

/** The options of `check`. */
export interface CheckArguments {
  readonly json?: boolean;
  /** The instant of PET 0, without which windows that are given as instants are not known. */
  readonly start?: Instant;
  /** A file with the orbit's elements, for day and night from `start` on. */
  readonly orbit?: string;
  /** Ground sites for the windows of contact. */
  readonly site: readonly Site[];
  /** Print the mend of this finding, counted from 1, instead of the findings. */
  readonly mend?: number;
  /** Check again whenever a file changes. */
  readonly watch?: boolean;
}

async function printMend(
  files: readonly string[],
  number: number,
  options: CheckOptions,
  terminal: Terminal,
): Promise<ExitStatus> {
  const [file] = files;
  if (file === undefined || files.length > 1) throw new UnusableInputError(words("cli/mend-one-file"));
  const checked = await checkedFile(file, options);
  terminal.out(documentText(() => mendOf(checked, number)));
  return EXIT.fine;
}

/** `check`: lists the findings of each file. A file that cannot be read does not stop the others from being checked. */
export async function checkCommand(
  files: readonly string[],
  { json = false, mend, watch = false, start, orbit, site }: CheckArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const options = { start: start ?? null, light: await lightFromFile(orbit, start, site) };
  if (mend !== undefined) return printMend(files, mend, options, terminal);
  if (watch) {
    const again = {
      json,
      site,
      ...(start === undefined ? {} : { start }),
      ...(orbit === undefined ? {} : { orbit }),
    };
    return watchFiles(files, () => checkCommand(files, again, terminal));
  }
  const checked: CheckedFile[] = [];
  let status: ExitStatus = EXIT.fine;
  for (const file of files) {
    try {
      const one = (await checkedSurprises(file, files)) ?? (await checkedFile(file, options));
      checked.push({ file, checked: one });
      if (one.procedure) tellContact(file, one.procedure, options.light, terminal);
      if (status === EXIT.fine && hasErrors(one.findings)) status = EXIT.findings;
    } catch (error) {
      if (!(error instanceof UnusableFileError)) throw error;
      terminal.err(`${error.message}\n`);
      status = EXIT.unusable;
    }
  }
  if (!json) terminal.out(checked.map(inLines).join("\n"));
  else if (checked.length > 0) terminal.out(documentText(() => ({ files: checked.map(inJson) })));
  return status;
}

/** Surprises checked against their procedure, which is another of the files; `null` for a file of something else. */
async function checkedSurprises(file: string, files: readonly string[]): Promise<Checked | null> {
  const text = await readText(file);
  const wanted = surprisesFor(text);
  if (wanted === null) return null;
  for (const other of files) {
    if (other === file) continue;
    const { procedure } = readProcedure(await readText(other));
    // One procedure beside it is meant, whatever it is called: that the two do not belong together is a finding.
    if (!procedure || (procedure.id !== wanted && files.length > 2)) continue;
    const { findings } = readSurprises(text, procedure);
    return { procedure: null, file: null, outline: null, findings, locate: (found) => [...found] };
  }
  throw new UnusableInputError(words("cli/surprises-alone", { file, procedure: wanted }));
}

function inJson({ file, checked }: CheckedFile): object {
  return {
    file,
    findings: checked.findings.map((finding) => {
      const { level, code, message, pointer, steps, things, position, mendSays } = finding;
      const mend = patchFor(checked, finding);
      return {
        level,
        code,
        message: inWords(message),
        pointer,
        steps,
        things,
        line: position?.line ?? null,
        column: position?.column ?? null,
        ...(finding.follows ? { follows: finding.follows } : {}),
        ...(mend ? { mend, ...(mendSays ? { mendSays: inWords(mendSays) } : {}) } : {}),
      };
    }),
  };
}

const COUNTED = { error: "cli/errors", caution: "cli/cautions", advice: "cli/advice" } as const;

function inLines({ file, checked: { findings } }: CheckedFile): string {
  const lines = findings.map((one, index) => {
    const { level, code, message, pointer, position, mend, mendSays, repair, follows } = one;
    const where = position ? `${position.line}:${position.column}` : pointer || words("cli/the-file");
    // What follows from another finding stands under it, set in.
    const inset = follows ? "    " : "";
    const number = index + 1;
    const proposed = mendSays
      ? words("cli/mend-proposed-says", { number, mend: plainText(inWords(mendSays)) })
      : words("cli/mend-proposed", { number });
    return [
      `${inset}  ${words(`cli/level-${level}`).padEnd(8)}${where.padEnd(9)} ${code}\n`,
      `${inset}            ${plainText(inWords(message))}\n`,
      ...((mend ?? repair) ? [`${inset}            ${proposed}\n`] : []),
    ].join("");
  });
  const counts = (["error", "caution", "advice"] as const).flatMap((level) => {
    const count = findings.filter((one) => one.level === level).length;
    return count === 0 ? [] : words(COUNTED[level], { count });
  });
  return `${file}\n${lines.join("")}  ${counts.join(", ") || words("cli/nothing-to-say")}\n`;
}
