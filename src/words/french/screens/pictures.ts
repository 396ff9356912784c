import type { picturesWords as english } from "../../english/screens/pictures.ts";
import type { Translated } from "../../translated.ts";

/** Pictures at steps. */
export const picturesWords: Translated<typeof english> = {
  "pictures/enlarge": "Agrandir {$name}",
};
