import { describe, expect, it } from "vitest";
import { arabicWords } from "../../src/words/arabic/index.ts";
import { englishWords } from "../../src/words/english/index.ts";
import { frenchWords } from "../../src/words/french/index.ts";
import { germanWords } from "../../src/words/german/index.ts";
import { japaneseWords } from "../../src/words/japanese/index.ts";

const LANGUAGES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  english: englishWords,
  french: frenchWords,
  german: germanWords,
  japanese: japaneseWords,
  arabic: arabicWords,
};

/** What a message stands behind where it is a text of its own: a colon, a bracket, the end of a sentence, another message. */
const BEFORE = /(^|[.:;(?!。：；（！？؛؟]|:message\})[\s\u00a0\u2066-\u2069]*$/u;
/** And what stands behind it. */
const AFTER = /^[\s\u00a0\u2066-\u2069]*($|[.:;)。：；）؛(（])/u;
/** A label in front of what is said of it: a message, and with it the id or the name that it is a label of. */
const LABEL = /^[\s\u00a0]*[«“„「"]?[\s\u00a0]*\{\$id\}[\s\u00a0]*[»”“」"]?[\s\u00a0]*[:：]/u;

/** Names that the program gives, which stand in a sentence as any name does. */
const NAMES: Readonly<Record<string, string>> = {
  file: "the name of a file; “pasted text” where it has none",
  part: "a part of a file, named as the file writes it, in quotes or by its number",
  name: "a revision by its number and its author",
  one: "a revision by its number and its author",
  other: "a revision by its number and its author",
  base: "a revision by its number and its author",
  object: "an object in orbit by its number",
  size: "a figure with its unit",
};

/** Messages in which another one stands inside a sentence all the same, each with its reason. */
const EXCEPTIONS: Readonly<Record<string, string>> = {
  "file/wrong-kind": "kinds of JSON are terms of a file, told to whoever writes one",
  "file/must-be": "the form of a value of a file, told to whoever writes one",
  "file/must-be-says": "the form of a value of a file, told to whoever writes one",
};

/** Whether an argument of an English text is a sentence: another one, which begins with a capital letter or is an argument too, follows it. */
const isSentence = (name: string, english: string): boolean =>
  new RegExp(`\\{\\$${name} :message\\} (\\p{Lu}|\\{\\$)`, "u").test(english);

/** The arguments of a text that are messages and stand inside a sentence; `english` is the same text in English. */
function insideSentences(text: string, english = text): string[] {
  const variants = text.includes(".match")
    ? text.split(/\}\}/u).map((one) => one.split("{{").at(-1) ?? "")
    : [text];
  return variants.flatMap((variant) =>
    [...variant.matchAll(/\{\$([A-Za-z]+) :message\}/g)].flatMap((found) => {
      const [whole, name = ""] = found;
      const after = variant.slice(found.index + whole.length);
      const standsAlone =
        BEFORE.test(variant.slice(0, found.index)) &&
        (AFTER.test(after) || LABEL.test(after) || isSentence(name, english));
      return standsAlone || name in NAMES ? [] : [name];
    }),
  );
}

describe("a message in another one", () => {
  it.each(Object.entries(LANGUAGES))(
    "[WRD1] stands by itself, never inside a sentence: %s",
    (_, catalogue) => {
      const found = Object.entries(catalogue).flatMap(([key, text]) =>
        insideSentences(text, (englishWords as Record<string, string>)[key]).map(
          (name) => `${key} {$${name}}`,
        ),
      );
      expect(found.filter((one) => !((one.split(" ")[0] as string) in EXCEPTIONS))).toEqual([]);
    },
  );

  it("[WRD1] inside a sentence is found, and one by itself is not", () => {
    for (const text of [
      "It is {$where :message}.",
      "{$who :message} waits.",
      "It cannot be moved: it is {$where :message}",
      "there is no {$kind :message} {$id}",
      ".input {$n :integer} .match $n one {{One, because {$why :message}.}} * {{Refused: {$why :message}}}",
    ])
      expect(insideSentences(text), text).toHaveLength(1);
    for (const text of [
      "{$what :message}",
      "It cannot be kept: {$why :message}.",
      "{$kind :message} “{$id}”: dropped",
      "Left outside ({$where :message}). Bring it in.",
      "{$trouble :message} The walk goes on.",
      "Struck: {$what :message}. Reason: {$why :message}",
    ])
      expect(insideSentences(text), text).toEqual([]);
  });

  it("[WRD1] is an exception by a key that is still there and still needs it", () => {
    expect(
      Object.keys(EXCEPTIONS).filter(
        (key) => insideSentences((englishWords as Record<string, string>)[key] ?? "").length === 0,
      ),
    ).toEqual([]);
  });
});
