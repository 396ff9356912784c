import type { Finding } from "../procedure/index.ts";

/** What becomes of the findings when one procedure takes the place of another. */
export interface FindingsEffect {
  /** Only the procedure after has them. */
  readonly new: readonly Finding[];
  /** Only the procedure before had them. */
  readonly gone: readonly Finding[];
  /** Both have them, as they stand in the procedure after. */
  readonly same: readonly Finding[];
}

/** What makes a finding the same in two procedures: what it says, wherever in the file it stands. */
const keyOf = ({ code, message }: Finding) => `${code} ${JSON.stringify(message)}`;

/** Compares the findings of two procedures. */
export function findingsEffect(before: readonly Finding[], after: readonly Finding[]): FindingsEffect {
  const [old, next] = [new Set(before.map(keyOf)), new Set(after.map(keyOf))];
  return {
    new: after.filter((one) => !old.has(keyOf(one))),
    gone: before.filter((one) => !next.has(keyOf(one))),
    same: after.filter((one) => old.has(keyOf(one))),
  };
}
