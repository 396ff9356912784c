// Control characters in a file must not reach the terminal, where they could move the cursor or hide text.
const CONTROL = /[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]+/gu;

/** A text from a file on one line, without control characters. */
export function plainText(text: string): string {
  return text.replace(CONTROL, " ").trim();
}

/** A text as {@link plainText} gives it, cut to at most `width` characters with an ellipsis. */
export function shortText(text: string, width: number): string {
  const characters = [...plainText(text)];
  return characters.length <= width ? characters.join("") : `${characters.slice(0, width - 1).join("")}…`;
}
