import type { Entry } from "../log/index.ts";

/** How much is offered at once, at most. */
export interface BatchLimits {
  /** How many entries. */
  readonly batch: number;
  /** How many characters of JSON; a single entry that is longer is sent alone. */
  readonly batchLength: number;
}

/** The entries at the beginning of a list that are offered together; empty only when the list is. */
export function firstBatch(entries: readonly Entry[], { batch, batchLength }: BatchLimits): readonly Entry[] {
  let length = 0;
  const end = entries.findIndex(({ wire }, index) => {
    length += JSON.stringify(wire).length + 1;
    return index >= batch || (index > 0 && length > batchLength);
  });
  return end < 0 ? entries : entries.slice(0, end);
}
