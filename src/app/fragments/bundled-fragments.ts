import type { Fragment } from "../../core/fragment/index.ts";
import { readFragment } from "../../core/fragment/index.ts";

/** The texts of the fragments that come with the app: they are short, and come with the panel. */
const texts = import.meta.glob<string>("../../../procedures/*.fragment.json", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** The fragments that come with the app, in the order of their file names. */
export const bundledFragments: readonly Fragment[] = Object.keys(texts)
  .toSorted()
  .flatMap((path) => readFragment(texts[path] ?? "").fragment ?? []);
