import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** Every file under a folder, as paths from the checkout, sorted; empty when there is no such folder. */
export function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).replaceAll("\\", "/"))
    .sort();
}

/** The TypeScript files of the shipped source, with their text. */
export function sourceFiles(): readonly { readonly path: string; readonly text: string }[] {
  return filesUnder("src")
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => ({ path, text: readFileSync(path, "utf8") }));
}
