import { watch } from "node:fs/promises";
import { basename, dirname } from "node:path";

/** Editors write a file in several steps; so long after the first of them it is taken as written, in ms. */
const SETTLED = 150;

/**
 * Does something now and whenever one of the files has changed, until the process is stopped: the promise never resolves
 * by itself. Folders are watched, since editors put a new file in the place of the old one.
 */
export async function watchFiles<Result>(
  files: readonly string[],
  act: () => Promise<Result>,
): Promise<never> {
  await act();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const changed = () => {
    clearTimeout(timer);
    timer = setTimeout(() => void act(), SETTLED);
  };
  const folders = new Set(files.map((file) => dirname(file)));
  const watched = [...folders].map(async (folder) => {
    for await (const { filename } of watch(folder)) {
      if (files.some((file) => dirname(file) === folder && basename(file) === filename)) changed();
    }
  });
  await Promise.all(watched);
  return new Promise<never>(() => {});
}
