import type { Model } from "messageformat";
import { parseMessage } from "messageformat";
import { describe, expect, it } from "vitest";
import { arabicWords } from "../../src/words/arabic/index.ts";
import { englishWords } from "../../src/words/english/index.ts";
import { frenchWords } from "../../src/words/french/index.ts";
import { germanWords } from "../../src/words/german/index.ts";
import type { Catalogue } from "../../src/words/index.ts";
import { languageOf } from "../../src/words/index.ts";
import { japaneseWords } from "../../src/words/japanese/index.ts";

const LANGUAGES: readonly (readonly [tag: string, words: Catalogue])[] = [
  ["fr", frenchWords],
  ["de", germanWords],
  ["ja", japaneseWords],
  ["ar", arabicWords],
];

interface Facts {
  /** Its variables, each with the function that shows it, `""` for none. */
  readonly shown: Readonly<Record<string, string>>;
  readonly marks: readonly string[];
  /** For each count that is selected by, the keys of its variants. */
  readonly counts: readonly ReadonlySet<string>[];
  readonly hasLast: boolean;
}

const COUNTED: ReadonlySet<string> = new Set(["integer", "number"]);

/** What of a message every language has to have alike. */
function factsOf(text: string): Facts {
  const model: Model.Message = parseMessage(text);
  const shown: Record<string, string> = {};
  const marks = new Set<string>();
  const note = ({ arg, functionRef }: Model.Expression) => {
    if (arg?.type === "variable") shown[arg.name] = functionRef?.name ?? shown[arg.name] ?? "";
  };
  for (const { value } of model.declarations) note(value);
  const patterns = model.type === "select" ? model.variants.map(({ value }) => value) : [model.pattern];
  for (const part of patterns.flat()) {
    if (typeof part === "string") continue;
    if (part.type === "markup") marks.add(`${part.kind} ${part.name}`);
    else note(part);
  }
  const keysOf = ({ keys }: Model.Variant) => keys.map((key) => (key.type === "*" ? "*" : key.value));
  const variants = model.type === "select" ? model.variants.map(keysOf) : [];
  const selectors = model.type === "select" ? model.selectors : [];
  return {
    shown,
    marks: [...marks].sort(),
    counts: selectors.flatMap(({ name }, index) =>
      COUNTED.has(shown[name] ?? "") ? [new Set(variants.flatMap((keys) => keys[index] ?? []))] : [],
    ),
    hasLast: variants.length === 0 || variants.some((keys) => keys.every((key) => key === "*")),
  };
}

describe.each(LANGUAGES)("[WRD2] the words of %s", (tag, words) => {
  const keys = Object.keys(englishWords) as (keyof typeof englishWords)[];
  // French has a form for millions: `*` says it, and no count here comes to one.
  const forms = new Intl.PluralRules(tag)
    .resolvedOptions()
    .pluralCategories.filter((form) => form !== "other" && !(tag === "fr" && form === "many"));

  it("have every key, and none that English has not got", () => {
    expect(Object.keys(words).sort()).toEqual([...keys].sort());
  });

  it("take the same arguments by the same functions, and set the same stretches apart", () => {
    for (const key of keys) {
      const [english, own] = [factsOf(englishWords[key]), factsOf(words[key] ?? "")];
      expect({ key, shown: own.shown, marks: own.marks }).toEqual({
        key,
        shown: english.shown,
        marks: english.marks,
      });
    }
  });

  it("have every plural form of the language wherever a count is told apart, and a last one for the rest", () => {
    for (const key of keys) {
      const { counts, hasLast } = factsOf(words[key] ?? "");
      expect(hasLast, key).toBe(true);
      for (const count of counts)
        if (count.size > 1) expect([...count], key).toEqual(expect.arrayContaining(forms));
    }
  });

  it("are a language that can be chosen", () => {
    expect(languageOf(tag)?.tag.split("-")[0]).toBe(tag);
  });
});

it("[WRD3] Japanese says from … to with the wave dash, which its face has, and never with the full-width tilde, which it lacks", () => {
  const lacking = Object.entries(japaneseWords).filter(([, text]) => text.includes("\uff5e"));
  expect(lacking.map(([key]) => key)).toEqual([]);
});
