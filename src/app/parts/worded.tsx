import type { ReactNode } from "react";
import { Fragment } from "react";
import type { MarkedWords, Message } from "../../words/index.ts";
import { inMarkedWords } from "../../words/index.ts";

/** Draws a marked stretch of a sentence; `inside` is empty for a mark that stands alone. */
type Mark = (inside: ReactNode) => ReactNode;

const MARKS: Readonly<Record<string, Mark>> = { b: (inside) => <b>{inside}</b> };

interface WordedProps {
  readonly message: Message;
  /** How marks beyond `{#b}` are drawn, by name. */
  readonly marks?: Readonly<Record<string, Mark>>;
}

/** A sentence that sets some of its words apart, drawn whole, so that every language may order it in its own way. */
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
