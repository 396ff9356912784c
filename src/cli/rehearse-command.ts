import { setTimeout as pause } from "node:timers/promises";
import { marginOf } from "../core/course/index.ts";
import { writeLines } from "../core/log/index.ts";
import type { Instant } from "../core/units/index.ts";
import { between } from "../core/units/index.ts";
import { forecastOf } from "../core/walk/index.ts";
import { words } from "../words/index.ts";
import { openLogFile } from "./log-file.ts";
import { plainText } from "./plain-text.ts";
import type { PlayedEntries } from "./played-walk.ts";
import { playedWalk } from "./played-walk.ts";
import { procedureFile } from "./read-input.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";

/** The options of `rehearse`. */
export interface RehearseArguments {
  readonly seed: number;
  readonly start: Instant;
  readonly out?: string;
  readonly pace?: number;
}

/**
 * `rehearse`: plays a procedure and writes the log. With `pace` it plays that many times faster than real time,
 * otherwise at once.
 */
export async function rehearseCommand(
  file: string,
  { seed, start, out, pace }: RehearseArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const { read } = await procedureFile(file);
  if (!read.file) return EXIT.unusable;
  const write = out === undefined ? async (text: string) => terminal.out(text) : await openLogFile(out);
  let last: PlayedEntries | null = null;
  let count = 0;
  for (const played of playedWalk(read.file, seed, start)) {
    if (pace !== undefined && last) await pause(between(last.at, played.at) / pace);
    await write(writeLines(played.entries));
    last = played;
    count += played.entries.length;
  }
  if (!last) return EXIT.unusable;
  if (out !== undefined)
    terminal.err(`${words("cli/rehearsed", { log: plainText(out), count, ending: ending(last) })}\n`);
  if (last.ledger.closed?.end === "complete") return EXIT.fine;
  terminal.err(`${words("cli/rehearsal-stopped", { file })}\n`);
  return EXIT.findings;
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
