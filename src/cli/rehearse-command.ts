import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { marginOf } from "../core/course/index.ts";
import { writeLines } from "../core/log/index.ts";
import type { ProcedureFile } from "../core/procedure/index.ts";
import type { SurprisesFile } from "../core/training/index.ts";
import { drawnSurprises } from "../core/training/index.ts";
import type { Instant } from "../core/units/index.ts";
import { between } from "../core/units/index.ts";
import { forecastOf } from "../core/walk/index.ts";
import { makeFolder } from "../io/files/index.ts";
import { words } from "../words/index.ts";
import { openLogFile } from "./log-file.ts";
import { plainText } from "./plain-text.ts";
import type { PlayedEntries } from "./played-walk.ts";
import { playedWalk } from "./played-walk.ts";
import { procedureFile } from "./read-input.ts";
import { surprisesFile } from "./surprises-input.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The options of `rehearse`. */
export interface RehearseArguments {
  readonly seed: number;
  readonly start: Instant;
  readonly out?: string;
  readonly pace?: number;
  /** So many rehearsals, each with the next seed; `out` is then a folder. */
  readonly count?: number;
  /** A file of surprises, of which the seed of each rehearsal draws those that come. */
  readonly surprises?: string;
}

/**
 * `rehearse`: plays a procedure and writes the log. With `pace` it plays that many times faster than real time,
 * otherwise at once.
 */
export async function rehearseCommand(
  file: string,
  said: RehearseArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const { read, outline } = await procedureFile(file);
  if (!read.file) return EXIT.unusable;
  const surprises =
    said.surprises === undefined ? null : await surprisesFile(said.surprises, outline.procedure);
  if (said.count !== undefined) return await rehearseMany(read.file, said.count, surprises, said, terminal);
  const { seed, start, out, pace } = said;
  const write = out === undefined ? async (text: string) => terminal.out(text) : await openLogFile(out);
  let last: PlayedEntries | null = null;
  let count = 0;
  const drawn = surprises ? drawnSurprises(surprises, seed) : [];
  for (const played of playedWalk(read.file, seed, start, drawn)) {
    if (pace !== undefined && last) await pause(between(last.at, played.at) / pace);
    await write(writeLines(played.entries));
    last = played;
    count += played.entries.length;
  }
  if (!last) return EXIT.unusable;
  if (surprises)
    terminal.err(`${words("cli/surprises-laid", { count: drawn.length, of: surprises.surprises.length })}\n`);
  if (out !== undefined)
    terminal.err(`${words("cli/rehearsed", { log: plainText(out), count, ending: ending(last) })}\n`);
  if (last.ledger.closed?.end === "complete") return EXIT.fine;
  terminal.err(`${words("cli/rehearsal-stopped", { file })}\n`);
  return EXIT.findings;
}

/** Plays a procedure several times and writes a log for each, named after the procedure and the seed. */
async function rehearseMany(
  file: ProcedureFile,
  count: number,
  surprises: SurprisesFile | null,
  { seed, start, out, pace }: RehearseArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  if (out === undefined) throw new UnusableInputError(words("cli/out-folder"));
  if (pace !== undefined) throw new UnusableInputError(words("cli/many-have-no-pace"));
  await makeFolder(out);
  let complete = 0;
  for (let at = 0; at < count; at += 1) {
    const drawn = surprises ? drawnSurprises(surprises, seed + at) : [];
    const played = [...playedWalk(file, seed + at, start, drawn)];
    const write = await openLogFile(join(out, `${file.id}-${seed + at}.walk.jsonl`));
    await write(writeLines(played.flatMap(({ entries }) => entries)));
    if (played.at(-1)?.ledger.closed?.end === "complete") complete += 1;
  }
  terminal.err(`${words("cli/rehearsed-many", { folder: plainText(out), count, complete })}\n`);
  return complete === count ? EXIT.fine : EXIT.findings;
}

function ending({ ledger, at }: PlayedEntries): string {
  const forecast = forecastOf(ledger, at);
  const end = words(`cli/end-${ledger.closed?.end ?? "open"}`);
  if (!forecast) return end;
  const { finish: pet } = forecast;
  const margin = marginOf(forecast);
  if (margin === null) return words("cli/ended-at", { end, pet });
  return words(margin < 0 ? "cli/ended-at-over" : "cli/ended-at-within", { end, pet, margin });
}
