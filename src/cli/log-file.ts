import { appendFileSync, existsSync, writeFileSync } from "node:fs";
import { readLines } from "../core/log/index.ts";
import { readTextFile, whyNot } from "./text-file.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/**
 * Makes a file ready for the log of a rehearsal and returns what appends to it. Another rehearsal's log is replaced;
 * anything else that stands there, above all the log of a live walk, is left alone with an {@link UnusableInputError}.
 */
export async function openLogFile(file: string): Promise<(text: string) => void> {
  if (existsSync(file) && !(await isReplaceable(file))) {
    throw new UnusableInputError(
      `${file} is there already and is not the log of a rehearsal; it was left alone.`,
    );
  }
  try {
    writeFileSync(file, "");
  } catch (error) {
    throw new UnusableInputError(`${file} cannot be written: ${whyNot(error)}.`);
  }
  return (text) => {
    try {
      appendFileSync(file, text);
    } catch (error) {
      throw new UnusableInputError(`${file} cannot be written: ${whyNot(error)}.`);
    }
  };
}

async function isReplaceable(file: string): Promise<boolean> {
  const text = await readTextFile(file);
  if (text.trim() === "") return true;
  const { entries, problems } = readLines(text);
  return (
    problems.length === 0 &&
    entries.some(({ read }) => read.fact?.name === "walk.opened" && read.fact.mode === "rehearsal")
  );
}
