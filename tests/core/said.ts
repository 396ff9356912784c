import type { Message } from "../../src/words/index.ts";
import { inWords } from "../../src/words/index.ts";

/** What a finding says in English; `undefined` for none. */
export const said = (finding: { readonly message: Message } | undefined): string | undefined =>
  finding && inWords(finding.message);
