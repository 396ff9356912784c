/** Pictures at steps. */
export const picturesWords = {
  "pictures/enlarge": "Enlarge {$name}",
} as const;
