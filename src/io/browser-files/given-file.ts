/** A text that the reader gave to the app, or why it cannot be used. */
export type GivenFile =
  | { readonly name: string; readonly text: string; readonly problem: null }
  | { readonly name: string; readonly text: null; readonly problem: string };

/** The most bytes of one file that are read unless said otherwise; a full backup may be large. */
const MOST_BYTES = 256 * 1024 * 1024;

/** What a text that was pasted is called, there being no file name. */
const PASTED = "pasted text";

/** Reads files that were picked, dropped or pasted, in their order: UTF-8 text up to `limit` bytes. */
export async function readGivenFiles(
  files: Iterable<File>,
  limit: number = MOST_BYTES,
): Promise<readonly GivenFile[]> {
  return Promise.all(Array.from(files, (file) => readOne(file, limit)));
}

async function readOne(file: File, limit: number): Promise<GivenFile> {
  const { name } = file;
  const refused = (problem: string): GivenFile => ({ name, text: null, problem });
  if (file.size > limit) {
    return refused(`The file is larger than ${Number((limit / 1024 / 1024).toFixed(1))} MiB.`);
  }
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch {
    // A folder, or a file that was moved or locked after it was chosen.
    return refused("The file cannot be read; it may be a folder, or have been moved.");
  }
  try {
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
    return { name, text, problem: null };
  } catch {
    return refused("The file is not text in UTF-8.");
  }
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
