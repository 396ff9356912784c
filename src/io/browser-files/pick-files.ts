import type { GivenFile } from "./given-file.ts";
import { readGivenFiles } from "./given-file.ts";

/** Procedures, logs and backups; types that a tablet's file picker knows, and the endings. */
const READABLE_FILES = ".json,.jsonl,application/json,application/jsonl,text/plain";

/** Lets the reader pick files; empty when none was picked. Call it from a tap or a key, else the browser refuses. */
export function pickFiles(accept: string = READABLE_FILES): Promise<readonly GivenFile[]> {
  const input = document.createElement("input");
  input.type = "file";
  input.multiple = true;
  input.accept = accept;
  // In the document, though unseen: some tablets drop an input that is not.
  input.hidden = true;
  document.body.append(input);
  return new Promise<readonly GivenFile[]>((resolve, reject) => {
    input.addEventListener("change", () => readGivenFiles(input.files ?? []).then(resolve, reject));
    input.addEventListener("cancel", () => resolve([]));
    input.click();
  }).finally(() => input.remove());
}
