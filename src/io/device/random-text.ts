/** Gives so many random bytes. Injected, so that tests can repeat a run. */
export type RandomBytes = (count: number) => Uint8Array;

/** Random bytes from the platform's cryptographic source (Web Cryptography API); also there without a secure context. */
export const platformRandomBytes: RandomBytes = (count) => crypto.getRandomValues(new Uint8Array(count));

/** Lower-case letters and digits without the pairs that people mix up when reading aloud: 32 of them, so a byte cuts evenly. */
const LETTERS = "abcdefghjkmnpqrstuvwxyz023456789";

/** A text of so many letters and digits, five bits of chance each. */
export function randomText(length: number, random: RandomBytes): string {
  return Array.from(random(length), (byte) => LETTERS.charAt(byte % LETTERS.length)).join("");
}
