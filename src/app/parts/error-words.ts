import { words } from "../../words/index.ts";

/** What an error says, as the end of a sentence, whether or not it is one itself. */
export function errorWords(error: unknown): string {
  const said = error instanceof Error && error.message !== "" ? error.message : words("parts/unknown-error");
  return /[.!?]$/.test(said) ? said : `${said}.`;
}
