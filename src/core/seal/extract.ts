import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Entry, LineProblem } from "../log/index.ts";
import { jsonOf, readEntry } from "../log/index.ts";
import { base64urlOf, bytesOf } from "./base64url.ts";

const FORMAT = "tetherline.extract/1";

/** More hashes than a tree of any log asks for. */
const LONGEST_PATH = 64;

/** An entry that an extract has in full. */
export interface ExtractedEntry {
  readonly entry: Entry;
  /** What leads from its link to the root of the checkpoint (RFC 9162 §2.1.3), each 32 bytes; `null` for an entry that the checkpoint did not hold. */
  readonly path: readonly Uint8Array[] | null;
}

/** Some entries of a log in full, each with its proof that a hub's checkpoint held it. What was left out is told by the checkpoint, as numbers. */
export interface Extract {
  readonly walk: string;
  /** The entry of the checkpoint. */
  readonly checkpoint: { readonly source: string; readonly number: number };
  readonly entries: readonly ExtractedEntry[];
}

/** What was read from a file that begins as an extract does. */
export interface ReadExtract {
  /** `null` where the first line does not say what it is of. */
  readonly extract: Extract | null;
  readonly problems: readonly LineProblem[];
}

/** Writes an extract as JSON Lines: what it is of, then an entry a line. */
export function writeExtract({ walk, checkpoint, entries }: Extract): string {
  return [
    { format: FORMAT, walk, checkpoint },
    ...entries.map(({ entry, path }) => ({
      entry: entry.wire,
      ...(path && { path: path.map(base64urlOf) }),
    })),
  ]
    .map((line) => `${JSON.stringify(line)}\n`)
    .join("");
}

/** Reads an extract; lines that are no entry with a proof are reported, and the others are read. `null` for a text that is no extract, such as a log. */
export function readExtract(text: string): ReadExtract | null {
  const [first = "", ...rest] = (text.startsWith("\uFEFF") ? text.slice(1) : text).split("\n");
  const head = objectIn(first);
  if (head?.["format"] !== FORMAT) return null;
  const { walk, checkpoint } = head;
  const { source, number } = (checkpoint ?? {}) as Readonly<Record<string, unknown>>;
  if (typeof walk !== "string" || typeof source !== "string" || typeof number !== "number") {
    return { extract: null, problems: [{ line: 1, problem: message("seal/extract-no-head") }] };
  }
  const entries: ExtractedEntry[] = [];
  const problems: LineProblem[] = [];
  for (const [index, line] of rest.entries()) {
    if (line.trim() === "") continue;
    const read = lineIn(line);
    if ("problem" in read) problems.push({ line: index + 2, problem: read.problem });
    else entries.push(read);
  }
  return { extract: { walk, checkpoint: { source, number }, entries }, problems };
}

function lineIn(line: string): ExtractedEntry | { readonly problem: Message } {
  const value = objectIn(line);
  if (!value) return { problem: message("log/not-json") };
  const { entry, problem } = readEntry(value["entry"]);
  if (!entry) return { problem };
  const written = value["path"];
  if (written === undefined) return { entry, path: null };
  const path = Array.isArray(written) ? written.map((hash) => bytesOf(hash, 32)) : [null];
  const isPath = path.length <= LONGEST_PATH && path.every((hash) => hash !== null);
  return isPath ? { entry, path } : { problem: message("seal/extract-no-path") };
}

function objectIn(line: string): Readonly<Record<string, unknown>> | null {
  const value = jsonOf(line);
  return typeof value === "object" && value !== null && !Array.isArray(value)
    ? (value as Readonly<Record<string, unknown>>)
    : null;
}
