import { words } from "../../words/index.ts";

/** The text of an error in a form that can end a sentence, whether or not it is a sentence itself. */
export function errorWords(error: unknown): string {
  const said = error instanceof Error && error.message !== "" ? error.message : words("parts/unknown-error");
  return /[.!?]$/.test(said) ? said : `${said}.`;
}
