import { isSealKey } from "../core/seal/index.ts";
import { words } from "../words/index.ts";
import { plainText } from "./plain-text.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The keys of hubs that are trusted, as they were given. Throws an {@link UnusableInputError} for what is no key. */
export function trustedKeys(given: readonly string[]): readonly string[] {
  for (const key of given) {
    if (!isSealKey(key)) throw new UnusableInputError(words("cli/verify-no-key", { key: plainText(key) }));
  }
  return given;
}
