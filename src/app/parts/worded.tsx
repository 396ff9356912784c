import type { ReactNode } from "react";
import { Fragment } from "react";
import type { MarkedWords, Message } from "../../words/index.ts";
import { inMarkedWords } from "../../words/index.ts";

/** Draws a marked part of a sentence. `inside` is empty for a mark that encloses nothing. */
type Mark = (inside: ReactNode) => ReactNode;

const MARKS: Readonly<Record<string, Mark>> = { b: (inside) => <b>{inside}</b> };

interface WordedProps {
  readonly message: Message;
  /** How to draw marks other than `{#b}`, by name. */
  readonly marks?: Readonly<Record<string, Mark>>;
}

/**
 * Draws a sentence with some of its words marked. The sentence stays whole, so that each language may order it in its
 * own way.
 */
export function Worded({ message, marks = {} }: WordedProps) {
  const all = { ...MARKS, ...marks };
  const drawn = (words: MarkedWords): ReactNode =>
    words.map((word, index) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: the words of a sentence have no identity but their place.
      <Fragment key={index}>
        {typeof word === "string" ? word : (all[word.mark]?.(drawn(word.inside)) ?? drawn(word.inside))}
      </Fragment>
    ));
  return drawn(inMarkedWords(message));
}
