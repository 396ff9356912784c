import type { Message, Said } from "../../words/index.ts";
import { message } from "../../words/index.ts";

/** A text that the reader gave to the app, or why it cannot be used. */
export type GivenFile =
  | { readonly name: Said; readonly text: string; readonly problem: null }
  | { readonly name: Said; readonly text: null; readonly problem: Message };

/** The most bytes of one file that are read unless said otherwise; a full backup may be large. */
const MOST_BYTES = 256 * 1024 * 1024;

/** What a text that was pasted is called, there being no file name. */
const PASTED = message("given/pasted");

/** Reads files that were picked, dropped or pasted, in their order: UTF-8 text up to `limit` bytes. */
export async function readGivenFiles(
  files: Iterable<File>,
  limit: number = MOST_BYTES,
): Promise<readonly GivenFile[]> {
  return Promise.all(Array.from(files, (file) => readOne(file, limit)));
}

async function readOne(file: File, limit: number): Promise<GivenFile> {
  const { name } = file;
  const { bytes, problem } = await bytesOf(file, limit);
  if (!bytes) return { name, text: null, problem };
  try {
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
    return { name, text, problem: null };
  } catch {
    return { name, text: null, problem: message("given/not-text") };
  }
}

type ReadBytes =
  | { readonly bytes: ArrayBuffer; readonly problem: null }
  | { readonly bytes: null; readonly problem: Message };

async function bytesOf(file: File, limit: number): Promise<ReadBytes> {
  if (file.size > limit) {
    const most = Number((limit / 1024 / 1024).toFixed(1));
    return { bytes: null, problem: message("given/too-large", { most }) };
  }
  try {
    return { bytes: await file.arrayBuffer(), problem: null };
  } catch {
    // A folder, or a file that was moved or locked after it was chosen.
    return { bytes: null, problem: message("given/unreadable") };
  }
}

/** Bytes that the reader gave to the app, in Base64 (RFC 4648), or why they cannot be used. */
export type GivenBytes =
  | { readonly name: string; readonly data: string; readonly problem: null }
  | { readonly name: string; readonly data: null; readonly problem: Message };

/** Reads files whatever is in them, up to `limit` bytes each, in their order. */
export async function readGivenBytes(files: Iterable<File>, limit: number): Promise<readonly GivenBytes[]> {
  return Promise.all(
    Array.from(files, async (file): Promise<GivenBytes> => {
      const { bytes, problem } = await bytesOf(file, limit);
      if (!bytes) return { name: file.name, data: null, problem };
      // A letter for each byte, joined in the end: a call with as many arguments would be too much for some browsers.
      const letters = Array.from(new Uint8Array(bytes), (byte) => String.fromCharCode(byte));
      return { name: file.name, data: btoa(letters.join("")), problem: null };
    }),
  );
}

/** What was dropped on the app or pasted into it: its files, or else its text; nothing when it holds neither. */
export async function readTransfer(
  transfer: Pick<DataTransfer, "files" | "getData"> | null,
): Promise<readonly GivenFile[]> {
  if (!transfer) return [];
  // What a transfer holds is gone once its event is over, hence nothing is awaited before this.
  const [files, text] = [[...transfer.files], transfer.getData("text/plain")];
  if (files.length > 0) return readGivenFiles(files);
  return text.trim() === "" ? [] : [{ name: PASTED, text, problem: null }];
}
