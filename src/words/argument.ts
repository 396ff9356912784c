import type { englishWords } from "./english/index.ts";

/** The names of all messages. */
export type MessageKey = keyof typeof englishWords;

/** What a message carries for one of its placeholders: a text, a number, a time, another message, or a list of them. */
export type Argument = string | number | Message | readonly Argument[];

/** What is to be said, without the words: data that core, hub and io return, and that a reader's language words. */
export interface Message {
  readonly key: MessageKey;
  readonly arguments: Readonly<Record<string, Argument>>;
}
