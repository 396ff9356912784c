import { english, englishWords } from "../../src/words/english/index.ts";
import { speak } from "../../src/words/index.ts";

/** Every test hears English, the source of the other languages. */
speak(english, englishWords);
