import type { Message, MessageKey } from "./argument.ts";
import type { ArgumentsIn } from "./argument-types.ts";
import type { englishWords } from "./english/index.ts";

/** The arguments of a message by its key, as its English text names them. */
export type MessageArguments<Key extends MessageKey> = ArgumentsIn<(typeof englishWords)[Key]>;

/** The arguments as they follow a key in a call: none at all where the message takes none. */
export type ArgumentsAfter<Key extends MessageKey> = [keyof MessageArguments<Key>] extends [never]
  ? readonly []
  : readonly [values: MessageArguments<Key>];

const NONE = Object.freeze({});

/** A message as frozen data. Its words are left to `inWords`, so that this needs no language at hand. */
export function message<Key extends MessageKey>(key: Key, ...[values]: ArgumentsAfter<Key>): Message {
  return Object.freeze({ key, arguments: values === undefined ? NONE : Object.freeze({ ...values }) });
}
