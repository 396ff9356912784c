import canonicalize from "canonicalize";

/**
 * The canonical JSON of a value (RFC 8785): keys in the order of their UTF-16 code units, no blanks. `null` for a value that has no such form: a half of
 * a character in a text or key, a number that is not finite.
 */
export function canonicalText(value: unknown): string | null {
  try {
    return canonicalize(value) ?? null;
  } catch {
    return null;
  }
}

/** Halves of characters, and the character that stands for them below. */
const HALF_OR_STANDIN = /[\p{Cs}\uFFFD]/gu;

/**
 * A text by which JSON values are told apart and put in an order that every device finds: two values have one text when they are the same but for the
 * order of their keys. The canonical JSON where there is any. Entries of earlier versions may have none: their halves of characters are written out, and a blank
 * behind tells that they were, so that no other value has the same text.
 */
export function comparedText(value: unknown): string {
  // Through JSON, which has a form for every number.
  return canonicalText(value) ?? `${canonicalize(writtenOut(JSON.parse(JSON.stringify(value))))} `;
}

function writtenOut(value: unknown): unknown {
  if (typeof value === "string") return writtenOutText(value);
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(writtenOut);
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => [writtenOutText(key), writtenOut(part)]),
  );
}

const writtenOutText = (text: string): string =>
  text.replace(HALF_OR_STANDIN, (half) => `\uFFFD${half.charCodeAt(0).toString(16)}`);
