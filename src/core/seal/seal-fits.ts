import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesOf } from "./base64url.ts";
import { sealedBytes } from "./link-of.ts";

const KEY_BYTES = 32;
const SEAL_BYTES = 64;

/**
 * A public key as it is written, 32 bytes in base64url; `null` for anything else, for what is no point of the curve, and for the points of low order
 * ([SEL2]), under which one seal can fit every entry.
 */
export function sealKeyOf(written: unknown): Uint8Array | null {
  const key = bytesOf(written, KEY_BYTES);
  if (!key) return null;
  try {
    // Lenient about the form, so that other writings of the points of low order are known as well.
    if (ed25519.Point.fromBytes(key, true).isSmallOrder()) return null;
    ed25519.Point.fromBytes(key);
    return key;
  } catch {
    return null;
  }
}

/** Whether a seal fits a link under a key, by the strict reading of RFC 8032. */
export function sealFits(link: Uint8Array, seal: unknown, key: Uint8Array): boolean {
  const bytes = bytesOf(seal, SEAL_BYTES);
  return bytes !== null && ed25519.verify(bytes, sealedBytes(link), key, { zip215: false });
}

/** Whether a text is the key of somebody who seals. */
export const isSealKey = (written: string): boolean => sealKeyOf(written) !== null;
