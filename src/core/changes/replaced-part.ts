/** A part of a text that was replaced by another one. */
export interface Replaced {
  /** Where it began, in UTF-16 units from the beginning of the text. */
  readonly at: number;
  /** How long it was. */
  readonly length: number;
  /** By how much the text grew. */
  readonly growth: number;
}

/** So much is compared at once: two strings are compared much faster than their letters one by one. */
const STRIDE = 1024;

/** The smallest part of a text that must be replaced to make another one of it. */
export function replacedBetween(before: string, after: string): Replaced {
  const most = Math.min(before.length, after.length);
  let at = 0;
  while (at + STRIDE <= most && before.slice(at, at + STRIDE) === after.slice(at, at + STRIDE)) at += STRIDE;
  while (at < most && before.charCodeAt(at) === after.charCodeAt(at)) at += 1;
  const left = most - at;
  let same = 0;
  const [end, newEnd] = [before.length, after.length];
  while (
    same + STRIDE <= left &&
    before.slice(end - same - STRIDE, end - same) === after.slice(newEnd - same - STRIDE, newEnd - same)
  )
    same += STRIDE;
  while (same < left && before.charCodeAt(end - 1 - same) === after.charCodeAt(newEnd - 1 - same)) same += 1;
  return { at, length: end - same - at, growth: newEnd - end };
}
