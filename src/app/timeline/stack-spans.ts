/** Something that lasts from one time to another. */
export interface Lasting {
  readonly from: number;
  readonly to: number;
}

/**
 * Puts spans into as few rows as keep them from lying on one another, in order of their start; spans that only touch may
 * share a row. Each comes back with its row, from 0.
 */
export function stackSpans<S extends Lasting>(spans: readonly S[]): (S & { readonly row: number })[] {
  const ends: number[] = [];
  return spans
    .toSorted((a, b) => a.from - b.from || b.to - a.to)
    .map((span) => {
      const free = ends.findIndex((end) => end <= span.from);
      const row = free === -1 ? ends.length : free;
      ends[row] = span.to;
      return { ...span, row };
    });
}
