import { englishWords } from "./english/index.ts";
import type { Language } from "./language.ts";

/** English, the source of all other languages. */
export const english: Language = { tag: "en-GB", direction: "ltr", catalogue: englishWords };
