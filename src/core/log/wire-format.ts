import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Entry } from "./entry.ts";
import { readEntry } from "./entry.ts";
import { jsonOf } from "./json-of.ts";

/** A line of a log that could not be read as an entry. */
export interface LineProblem {
  /** From 1. */
  readonly line: number;
  readonly problem: Message;
}

/** What was read from a log in JSON Lines. */
export interface ReadLines {
  readonly entries: readonly Entry[];
  readonly problems: readonly LineProblem[];
}

/** Reads a log in JSON Lines, one entry a line. Empty lines are skipped; a line that is no entry is reported and the others are read. */
export function readLines(text: string): ReadLines {
  const entries: Entry[] = [];
  const problems: LineProblem[] = [];
  const lines = (text.startsWith("\uFEFF") ? text.slice(1) : text).split("\n");
  for (let index = 0; index < lines.length; index += 1) {
    const line = lines[index] ?? "";
    const value = line === "" ? undefined : jsonOf(line);
    if (value === undefined && line.trim() === "") continue;
    const read = readEntry(value);
    if (read.entry) entries.push(read.entry);
    else
      problems.push({
        line: index + 1,
        problem: value === undefined ? message("log/not-json") : read.problem,
      });
  }
  return { entries, problems };
}

/** Writes entries as JSON Lines, in the order given, each line ended. */
export function writeLines(entries: readonly Entry[]): string {
  return entries.map(({ wire }) => `${JSON.stringify(wire)}\n`).join("");
}
