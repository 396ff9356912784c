import { MessageFormat } from "messageformat";
import type { Message, MessageKey, Said } from "./argument.ts";
import type { Language } from "./language.ts";
import { languageInUse } from "./language-in-use.ts";
import type { ArgumentsAfter } from "./message.ts";
import { message } from "./message.ts";
import { wordFunctions } from "./word-functions.ts";

/** A message that cannot be put in words, since its text or an argument is wrong: a mistake of ours. */
export class UnspeakableError extends Error {
  override readonly name = "UnspeakableError";
}

/** Messages that were compiled, by language and key. */
const compiled = new WeakMap<Language, Map<MessageKey, MessageFormat<string>>>();

function compiledFor(key: MessageKey): MessageFormat<string> {
  const { language, catalogue } = languageInUse();
  const kept = compiled.get(language) ?? new Map<MessageKey, MessageFormat<string>>();
  compiled.set(language, kept);
  const known = kept.get(key);
  if (known) return known;
  const text = catalogue[key];
  if (text === undefined) throw new UnspeakableError(`${key} is not loaded in ${language.tag}`);
  const made = new MessageFormat<string>(language.tag, text, {
    // In text from left to right every argument of ours stands as it is; the other direction isolates them.
    bidiIsolation: language.direction === "ltr" ? "none" : "default",
    functions: wordFunctions(language, inWords),
  });
  kept.set(key, made);
  return made;
}

/** What is left of an argument without text, so that a text is empty in every language or in none. */
const NOTHING_ISOLATED = "\u2068\u2069";
/** Tells whatever finds the direction of a text by its first letter that a sentence of ours runs from right to left, though it begin with `PET`. */
const RIGHT_TO_LEFT_MARK = "\u200f";

/** A whole text of the language in use: as it stands from left to right, with its direction in front in the other. */
function directed(text: string): string {
  if (languageInUse().language.direction === "ltr") return text;
  const shown = text.replaceAll(NOTHING_ISOLATED, "");
  return shown === "" ? "" : RIGHT_TO_LEFT_MARK + shown;
}

const fail = (key: MessageKey) => (cause: unknown) => {
  throw new UnspeakableError(`${key} could not be put in words`, { cause });
};

/**
 * A message in the words of the language in use; a text that somebody wrote, as it stands. Throws {@link UnspeakableError}
 * when the message's text or an argument is wrong.
 */
export function inWords(said: Said): string {
  if (typeof said === "string") return said;
  const { key, arguments: values } = said;
  return directed(compiledFor(key).format(values, fail(key)));
}

/** The words of a message at once, for screens and the command line: `words("read/steps", { count: 3 })`. */
export function words<Key extends MessageKey>(key: Key, ...values: ArgumentsAfter<Key>): string {
  return inWords(message(key, ...values));
}

/** Words in a row, and marked stretches of them: `{#b}…{/b}`, or `{#blank/}` with nothing inside. */
export type MarkedWords = readonly (string | { readonly mark: string; readonly inside: MarkedWords })[];

/** The same as {@link inWords}, with the marks of its text kept, for a screen that sets part of a sentence apart. */
export function inMarkedWords({ key, arguments: values }: Message): MarkedWords {
  const open: { mark: string; inside: (string | MarkedWords[number])[] }[] = [{ mark: "", inside: [] }];
  for (const part of compiledFor(key).formatToParts(values, fail(key))) {
    const last = open.at(-1);
    if (part.type === "markup" && "kind" in part) {
      const mark = { mark: part.name, inside: [] };
      if (part.kind === "close") open.pop();
      else last?.inside.push(mark);
      if (part.kind === "open") open.push(mark);
    } else if ("value" in part) last?.inside.push(String(part.value));
  }
  const row = open[0]?.inside ?? [];
  return languageInUse().language.direction === "ltr" ? row : [RIGHT_TO_LEFT_MARK, ...row];
}
