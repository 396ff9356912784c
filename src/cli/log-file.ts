import { readLines } from "../core/log/index.ts";
import { appendText, readText, UnusableFileError, writeText } from "../io/files/index.ts";
import { words } from "../words/index.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/**
 * Prepares a file for the log of a rehearsal and returns a function that appends to it. The log of an earlier rehearsal
 * is replaced. Any other file, above all the log of a live walk, is left alone, and the function rejects with an {@link
 * UnusableInputError}.
 */
export async function openLogFile(file: string): Promise<(text: string) => Promise<void>> {
  if (!(await isReplaceable(file))) {
    throw new UnusableInputError(words("cli/no-rehearsal-log", { file }));
  }
  await writeText(file, "");
  return (text) => appendText(file, text);
}

async function isReplaceable(file: string): Promise<boolean> {
  try {
    const text = await readText(file);
    const { entries, problems } = readLines(text);
    const isRehearsal = entries.some(
      ({ read }) => read.fact?.name === "walk.opened" && read.fact.mode === "rehearsal",
    );
    return text.trim() === "" || (problems.length === 0 && isRehearsal);
  } catch (error) {
    if (error instanceof UnusableFileError && error.trouble === "not-found") return true;
    if (error instanceof UnusableFileError && error.trouble === "not-text") return false;
    throw error;
  }
}
