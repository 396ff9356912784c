import { figuresWords } from "./figures.ts";
import { partsWords } from "./parts.ts";
import { shelfWords } from "./shelf.ts";
import { storeWords } from "./store.ts";

/** What the first screen says, and what all screens say alike: the part of English that the first load brings. */
export const shellWords = { ...figuresWords, ...partsWords, ...shelfWords, ...storeWords } as const;

/** English as numbers, lists and plural forms follow it. */
export const english = { tag: "en-GB", direction: "ltr" } as const;
