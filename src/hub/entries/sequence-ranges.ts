/** Which numbers of a sequence are there, as ranges without overlap, in order. Numbers count from 1. */
export class SequenceRanges {
  readonly #ranges: { from: bigint; to: bigint }[] = [];

  add(number: bigint): void {
    if (number < 1n) return;
    const at = this.#firstBehind(number);
    const before = this.#ranges[at - 1];
    const behind = this.#ranges[at];
    if (before && number <= before.to) return;
    const joinsBefore = before?.to === number - 1n;
    const joinsBehind = behind?.from === number + 1n;
    if (before && behind && joinsBefore && joinsBehind) {
      before.to = behind.to;
      this.#ranges.splice(at, 1);
    } else if (before && joinsBefore) before.to = number;
    else if (behind && joinsBehind) behind.from = number;
    else this.#ranges.splice(at, 0, { from: number, to: number });
  }

  /** The ranges missing below the highest number, in order, ends included. */
  missing(): readonly { readonly from: bigint; readonly to: bigint }[] {
    let next = 1n;
    return this.#ranges.flatMap(({ from, to }) => {
      const gap = from > next ? [{ from: next, to: from - 1n }] : [];
      next = to + 1n;
      return gap;
    });
  }

  /** Index of the first range that begins behind a number. */
  #firstBehind(number: bigint): number {
    let low = 0;
    let high = this.#ranges.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if ((this.#ranges[middle]?.from ?? 0n) > number) high = middle;
      else low = middle + 1;
    }
    return low;
  }
}
