import { open } from "node:fs/promises";
import { UnusableInputError } from "./unusable-input-error.ts";

/** Files above this are refused before they fill the memory. */
const LARGEST = 256 * 1024 * 1024;

const IN_WORDS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  EISDIR: "it is a directory",
  ENOTDIR: "a part of its path is not a directory",
  EACCES: "it may not be opened",
  EPERM: "it may not be opened",
  EROFS: "the disk is read-only",
  ENOSPC: "the disk is full",
  ENAMETOOLONG: "its name is too long",
  ELOOP: "its links lead in a circle",
};

/** Why a file operation failed, as the end of a sentence. */
export function whyNot(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  return IN_WORDS[code] ?? (code || "unknown trouble");
}

/** The text of a UTF-8 file (or pipe); throws {@link UnusableInputError} when there is none to be had. */
export async function readTextFile(file: string): Promise<string> {
  const chunks: Buffer[] = [];
  let size = 0;
  try {
    await using handle = await open(file);
    for await (const chunk of handle.createReadStream() as AsyncIterable<Buffer>) {
      size += chunk.length;
      if (size > LARGEST) break;
      chunks.push(chunk);
    }
  } catch (error) {
    throw new UnusableInputError(`${file} cannot be read: ${whyNot(error)}.`);
  }
  if (size > LARGEST) throw new UnusableInputError(`${file} is larger than ${LARGEST / 1024 / 1024} MiB.`);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(Buffer.concat(chunks));
  } catch {
    throw new UnusableInputError(`${file} is not text in UTF-8.`);
  }
}
