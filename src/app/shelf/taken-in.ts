import type { GivenFile } from "../../io/browser-files/index.ts";
import type { DeviceStore } from "../../io/store/index.ts";

/**
 * Takes in what the reader gave, and returns a sentence for each of it. What reads files is loaded only then; rejects when it cannot be
 * loaded, or when a file cannot be opened. `open` goes to the page of what is only looked at.
 */
export async function takenIn(
  store: DeviceStore,
  given: readonly GivenFile[] | Promise<readonly GivenFile[]>,
  open: (path: string) => void,
): Promise<readonly string[]> {
  const [{ takeIn }, files] = await Promise.all([import("./take-in.ts"), given]);
  return takeIn(store, files, open);
}
