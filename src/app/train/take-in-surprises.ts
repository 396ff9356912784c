import { areSurprises } from "../../core/training/index.ts";
import { words } from "../../words/index.ts";
import { givenSurprises } from "./surprises-choice.ts";

/**
 * Keeps a file of surprises for the rehearsals of its procedure on this device, and returns sentences on what it is and where it
 * belongs. Whether it fits that procedure is told where it is used.
 */
export function takeInSurprises(text: string): readonly string[] {
  const file: unknown = JSON.parse(text);
  const { procedure } = (file ?? {}) as { readonly procedure?: unknown };
  if (!areSurprises(file) || typeof procedure !== "string") return [words("train/file-for-none")];
  givenSurprises.choose({ ...givenSurprises.current(), [procedure]: text });
  return [words("train/file-given", { procedure })];
}
