import type { Quantity } from "../core/quantity/index.ts";
import type { englishWords } from "./english/index.ts";
import type { QuantityRange } from "./quantity-range.ts";

/** The names of all messages. */
export type MessageKey = keyof typeof englishWords;

/** What a message carries for one of its placeholders: a text, a number, a time, a quantity, another message, or a list of them. */
export type Argument = string | number | Quantity | QuantityRange | Message | readonly Argument[];

/** What is to be said, without the words: data that core, hub and io return, and that a reader's language words. */
export interface Message {
  readonly key: MessageKey;
  readonly arguments: Readonly<Record<string, Argument>>;
}

/** What there is to say: a message, or a text that a person or another program wrote, which is said as it stands. */
export type Said = Message | string;

/** Puts what there is to say in words. */
export type Say = (said: Said) => string;
