import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesOf } from "./base64url.ts";
import { sealedBytes } from "./link-of.ts";

const KEY_BYTES = 32;
/** The length of a seal. */
export const SEAL_BYTES = 64;

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

/** Whether a signature of Ed25519 (64 bytes) fits what was signed under a key (32 bytes). */
export type FitsEd25519 = (signature: Uint8Array, signed: Uint8Array, key: Uint8Array) => boolean;

/** By the strict reading of RFC 8032. */
const fitsStrictly: FitsEd25519 = (signature, signed, key) =>
  ed25519.verify(signature, signed, key, { zip215: false });

/** Whether a seal, as it is written, fits a link under a key. */
export type SealFits = (link: Uint8Array, seal: unknown, key: Uint8Array) => boolean;

/**
 * Looks at seals by a faster account of signatures than the one here, such as the machine's. What that does not find to fit is looked at once more by the one here, since they
 * differ in signatures made to be borderline.
 */
export const sealFitsBy =
  (fits: FitsEd25519): SealFits =>
  (link, seal, key) => {
    const signature = bytesOf(seal, SEAL_BYTES);
    if (!signature) return false;
    const signed = sealedBytes(link);
    return fits(signature, signed, key) || (fits !== fitsStrictly && fitsStrictly(signature, signed, key));
  };

/** Looks at seals here. */
export const sealFits: SealFits = sealFitsBy(fitsStrictly);

/** Whether a text is the key of somebody who seals. */
export const isSealKey = (written: string): boolean => sealKeyOf(written) !== null;
