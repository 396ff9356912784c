/** Letters and digits that are not taken for one another; 32 of them, so that each is worth five bits. */
const ALPHABET = "abcdefghjkmnpqrstuvwxyz023456789";
const LENGTH = 9;
const LONGEST_ENTERED = 100;
const CODE_PATTERN = new RegExp(`^[${ALPHABET}]{${LENGTH}}$`);

/** A new code of nine letters and digits, in lower case: 45 bits. */
export function newCode(randomBytes: (count: number) => Uint8Array): string {
  return Array.from(randomBytes(LENGTH), (byte) => ALPHABET[byte % ALPHABET.length]).join("");
}

/** A code as people read it: `ABC-DEF-GHJ`. */
export function shownCode(code: string): string {
  return (code.match(/.{3}/g) ?? []).join("-").toUpperCase();
}

/** A code as people enter it: blanks, hyphens and case do not count, and the letter O is a zero. `null` when it is none. */
export function readCode(entered: string): string | null {
  // A token comes here with every request: it is far longer than any way to write a code.
  if (entered.length > LONGEST_ENTERED) return null;
  const code = entered.replaceAll(/[\s-]/g, "").toLowerCase().replaceAll("o", "0");
  return CODE_PATTERN.test(code) ? code : null;
}
