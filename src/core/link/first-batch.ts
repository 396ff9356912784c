import type { Entry } from "../log/index.ts";

/** How much is offered at once. */
export interface BatchLimits {
  /** Entries, at most. */
  readonly batch: number;
  /** Characters of JSON, at most; a longer entry goes alone. */
  readonly batchLength: number;
}

/** The entries at the beginning that go together; empty only for none. */
export function firstBatch(entries: readonly Entry[], { batch, batchLength }: BatchLimits): readonly Entry[] {
  let length = 0;
  const end = entries.findIndex(({ wire }, index) => {
    length += JSON.stringify(wire).length + 1;
    return index >= batch || (index > 0 && length > batchLength);
  });
  return end < 0 ? entries : entries.slice(0, end);
}
