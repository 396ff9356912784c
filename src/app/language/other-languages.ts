import type { Catalogue, LanguageTag } from "../../words/index.ts";

/** Where the words of a language are: of the first screen, and of all others. */
export interface LanguageParts {
  readonly shell: () => Promise<Catalogue>;
  readonly screens: () => Promise<Catalogue>;
}

const shellOf = async (part: Promise<{ readonly shellWords: Catalogue }>) => (await part).shellWords;
const screensOf = async (part: Promise<{ readonly screenWords: Catalogue }>) => (await part).screenWords;

/** The parts of each language, loaded when they are asked for. */
export const LANGUAGE_PARTS: Readonly<Record<LanguageTag, LanguageParts>> = {
  "en-GB": {
    shell: () => shellOf(import("../../words/english/shell/index.ts")),
    screens: () => screensOf(import("../../words/english/screens/index.ts")),
  },
  fr: {
    shell: () => shellOf(import("../../words/french/shell/index.ts")),
    screens: () => screensOf(import("../../words/french/screens/index.ts")),
  },
  de: {
    shell: () => shellOf(import("../../words/german/shell/index.ts")),
    screens: () => screensOf(import("../../words/german/screens/index.ts")),
  },
  ja: {
    shell: () => shellOf(import("../../words/japanese/shell/index.ts")),
    screens: () => screensOf(import("../../words/japanese/screens/index.ts")),
  },
  "ar-u-nu-latn": {
    shell: () => shellOf(import("../../words/arabic/shell/index.ts")),
    screens: () => screensOf(import("../../words/arabic/screens/index.ts")),
  },
};
