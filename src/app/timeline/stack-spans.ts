/** Something with a start and an end. */
export interface Lasting {
  readonly from: number;
  readonly to: number;
}

/**
 * Arranges spans in as few rows as possible without overlap, in order of their start. Spans that only touch may share a
 * row. Each span is returned with its row, counted from 0.
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

/** How many rows spans take. */
export const rowsOf = (spans: readonly { readonly row: number }[]): number =>
  spans.reduce((most, { row }) => Math.max(most, row + 1), 0);
