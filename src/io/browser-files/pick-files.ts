import type { GivenBytes, GivenFile } from "./given-file.ts";
import { readGivenBytes, readGivenFiles } from "./given-file.ts";

/** Procedures, logs and backups; types that a tablet's file picker knows, and the endings. */
const READABLE_FILES = ".json,.jsonl,application/json,application/jsonl,text/plain";

/** Lets the reader pick files; empty when none was picked. Call it from a tap or a key, else the browser refuses. */
export async function pickFiles(accept: string = READABLE_FILES): Promise<readonly GivenFile[]> {
  return readGivenFiles(await picked(accept));
}

/** Lets the reader pick pictures; their bytes are in Base64. As {@link pickFiles}. */
export async function pickPictures(limit: number): Promise<readonly GivenBytes[]> {
  return readGivenBytes(await picked("image/png,image/jpeg,image/webp,image/svg+xml"), limit);
}

function picked(accept: string): Promise<readonly File[]> {
  const input = document.createElement("input");
  input.type = "file";
  input.multiple = true;
  input.accept = accept;
  // In the document, though unseen: some tablets drop an input that is not.
  input.hidden = true;
  document.body.append(input);
  return new Promise<readonly File[]>((resolve) => {
    input.addEventListener("change", () => resolve([...(input.files ?? [])]));
    input.addEventListener("cancel", () => resolve([]));
    input.click();
  }).finally(() => input.remove());
}
