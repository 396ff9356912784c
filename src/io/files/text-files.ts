import { createReadStream } from "node:fs";
import { appendFile, mkdir, writeFile } from "node:fs/promises";
import type { Said } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { fileErrorOf, UnusableFileError } from "./unusable-file-error.ts";
import { utf8Text } from "./utf8-text.ts";

/** Stands for standard input where a file is named. */
const STANDARD_INPUT = "-";

/** The most bytes of one file that are read unless said otherwise: far above any log of a walk. */
const MOST_BYTES = 256 * 1024 * 1024;

/** What reading a file may be told. */
export interface ReadTextParts {
  /** The most bytes that are read; 256 MiB unless given. */
  readonly limit?: number;
  /** What `-` stands for; the program's standard input unless given. */
  readonly input?: AsyncIterable<Uint8Array | string>;
}

/**
 * The text of a file in UTF-8, exactly as it stands there; `-` reads standard input. Rejects with
 * {@link UnusableFileError}: not there, a directory, not allowed, larger than the limit, not UTF-8.
 */
export async function readText(path: string, parts: ReadTextParts = {}): Promise<string> {
  const { limit = MOST_BYTES, input = process.stdin } = parts;
  const name = path === STANDARD_INPUT ? message("file/standard-input") : path;
  const source = path === STANDARD_INPUT ? input : createReadStream(path);
  const chunks: Uint8Array[] = [];
  let size = 0;
  try {
    for await (const chunk of source as AsyncIterable<Uint8Array | string>) {
      const bytes = typeof chunk === "string" ? new TextEncoder().encode(chunk) : chunk;
      size += bytes.length;
      // Leaving the loop closes the file: what is beyond the limit is never in memory.
      if (size > limit) throw tooLarge(name, limit);
      chunks.push(bytes);
    }
  } catch (error) {
    throw error instanceof UnusableFileError ? error : fileErrorOf(name, "read", error);
  }
  const text = utf8Text(Buffer.concat(chunks));
  if (text === null) {
    const why = message("file/not-utf-8");
    throw new UnusableFileError(name, "not-text", message("file/not-read", { file: name, why }));
  }
  return text;
}

/** Writes a text to a file in UTF-8, over what was there. Rejects with {@link UnusableFileError}. */
export async function writeText(path: string, text: string): Promise<void> {
  try {
    await writeFile(path, text, "utf8");
  } catch (error) {
    throw fileErrorOf(path, "written", error);
  }
}

/** Writes bytes to a file, over what was there. Rejects with {@link UnusableFileError}. */
export async function writeBytes(path: string, bytes: Uint8Array): Promise<void> {
  try {
    await writeFile(path, bytes);
  } catch (error) {
    throw fileErrorOf(path, "written", error);
  }
}

/** Writes a text behind what is in a file, which is made if it is not there. Rejects with {@link UnusableFileError}. */
export async function appendText(path: string, text: string): Promise<void> {
  try {
    await appendFile(path, text, "utf8");
  } catch (error) {
    throw fileErrorOf(path, "written", error);
  }
}

/** Makes a folder, and those that it lies in, where they are not there. Rejects with {@link UnusableFileError}. */
export async function makeFolder(path: string): Promise<void> {
  try {
    await mkdir(path, { recursive: true });
  } catch (error) {
    throw fileErrorOf(path, "written", error);
  }
}

function tooLarge(file: Said, limit: number): UnusableFileError {
  const mebibytes = Number((limit / 1024 / 1024).toFixed(1));
  const why =
    mebibytes >= 1
      ? message("file/larger-than-mebibytes", { most: mebibytes })
      : message("file/larger-than-bytes", { most: limit });
  return new UnusableFileError(file, "too-large", message("file/not-read", { file, why }));
}
