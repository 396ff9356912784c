import type { Message } from "../../src/words/index.ts";
import { inWords } from "../../src/words/index.ts";

/** What a finding says in English; `undefined` for none. */
export const said = (finding: { readonly message: Message } | undefined): string | undefined =>
  finding && inWords(finding.message);

const isMessage = (value: object): value is Message =>
  "key" in value && "arguments" in value && Object.keys(value).length === 2;

/** The same plain value with every message in it put in words. */
export function worded(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(worded);
  if (isMessage(value)) return inWords(value);
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, worded(inner)]));
}
