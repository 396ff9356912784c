/** Returns the length of the longest common subsequence of two lists (Cormen et al., Introduction to Algorithms, 15.4). */
export function commonLength<Value>(a: readonly Value[], b: readonly Value[]): number {
  let row = new Uint32Array(b.length + 1);
  for (const one of a) {
    const next = new Uint32Array(b.length + 1);
    for (const [at, other] of b.entries())
      next[at + 1] =
        one === other ? (row[at] as number) + 1 : Math.max(row[at + 1] as number, next[at] as number);
    row = next;
  }
  return row[b.length] ?? 0;
}
