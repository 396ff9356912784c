import { afterEach, expect, it } from "vitest";
import { english, englishWords } from "../../src/words/english/index.ts";
import { speak, words } from "../../src/words/index.ts";
import { inPseudoLanguage, PSEUDO_LANGUAGE } from "../../src/words/pseudo-language.ts";

afterEach(() => speak(english, englishWords));

it("[WRD2] the pseudo-language has every message, and what it says is longer by two fifths", () => {
  const pseudo = inPseudoLanguage(englishWords);
  expect(Object.keys(pseudo)).toEqual(Object.keys(englishWords));
  const lengths = (catalogue: object) => Object.values(catalogue).join("").length;
  expect(lengths(pseudo) / lengths(englishWords)).toBeGreaterThan(1.2);
  speak(PSEUDO_LANGUAGE, pseudo);
  expect(words("shelf/errors", { count: 1 })).toBe("1 éerróor");
  expect(words("shelf/errors", { count: 2 })).toBe("2 éerróors");
});
