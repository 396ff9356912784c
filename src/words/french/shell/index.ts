import type { shellWords as english } from "../../english/shell/index.ts";
import type { Translated } from "../../translated.ts";
import { figuresWords } from "./figures.ts";
import { partsWords } from "./parts.ts";
import { shelfWords } from "./shelf.ts";
import { storeWords } from "./store.ts";

/** What the first screen says, and what all screens say alike: the part of French that the first load brings. */
export const shellWords: Translated<typeof english> = {
  ...figuresWords,
  ...partsWords,
  ...shelfWords,
  ...storeWords,
};
