import { closeSync, fsyncSync, openSync, renameSync, writeSync } from "node:fs";
import { dirname } from "node:path";

/**
 * Writes a file for this user alone so that either the old or the new one is there whatever happens, durably. `write` is
 * given the open draft. Throws as the file system does.
 */
export function writeWhole(path: string, write: (file: number) => void): void {
  const draft = `${path}.new`;
  const file = openSync(draft, "w", 0o600);
  try {
    write(file);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  renameSync(draft, path);
  const folder = openSync(dirname(path), "r");
  try {
    fsyncSync(folder);
  } finally {
    closeSync(folder);
  }
}

/** Writes a text whole, see {@link writeWhole}. */
export function writeTextWhole(path: string, text: string): void {
  writeWhole(path, (file) => void writeSync(file, text));
}
