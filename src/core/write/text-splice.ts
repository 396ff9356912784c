/** A part of a text that became another one. */
export interface TextSplice {
  /** Where it begins, in UTF-16 units from the beginning of the text. */
  readonly at: number;
  readonly was: string;
  readonly is: string;
}

/** The smallest part of a text that must be replaced to make another text of it. */
export function spliceBetween(before: string, after: string): TextSplice {
  const most = Math.min(before.length, after.length);
  let at = 0;
  while (at < most && before.charCodeAt(at) === after.charCodeAt(at)) at += 1;
  let same = 0;
  while (
    same < most - at &&
    before.charCodeAt(before.length - 1 - same) === after.charCodeAt(after.length - 1 - same)
  )
    same += 1;
  return { at, was: before.slice(at, before.length - same), is: after.slice(at, after.length - same) };
}

/** The text after a splice. */
export const spliced = (text: string, { at, was, is }: TextSplice): string =>
  text.slice(0, at) + is + text.slice(at + was.length);

/** The splice that takes another one back. */
export const turnedBack = ({ at, was, is }: TextSplice): TextSplice => ({ at, was: is, is: was });
