import type { MessageKey } from "../../words/index.ts";
import { words } from "../../words/index.ts";

/** The heads of a review table's columns, in the order of their keys. */
export const columns = (
  ...keys: readonly Extract<MessageKey, `review/column-${string}`>[]
): readonly string[] => keys.map((key) => words(key));
