import { replacedBetween } from "../changes/index.ts";

/** A part of a text that became another one. */
export interface TextSplice {
  /** Where it begins, in UTF-16 units from the beginning of the text. */
  readonly at: number;
  readonly was: string;
  readonly is: string;
}

/** The smallest part of a text that must be replaced to make another text of it. */
export function spliceBetween(before: string, after: string): TextSplice {
  const { at, length, growth } = replacedBetween(before, after);
  return { at, was: before.slice(at, at + length), is: after.slice(at, at + length + growth) };
}

/** The text after a splice. */
export const spliced = (text: string, { at, was, is }: TextSplice): string =>
  text.slice(0, at) + is + text.slice(at + was.length);

/** The splice that takes another one back. */
export const turnedBack = ({ at, was, is }: TextSplice): TextSplice => ({ at, was: is, is: was });
