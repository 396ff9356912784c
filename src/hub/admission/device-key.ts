import { createPublicKey, verify } from "node:crypto";
import { z } from "zod";
import type { Entry } from "../../core/log/index.ts";
import { toBeSealed } from "../../core/seal/index.ts";

const KEY_BYTES = 32;
const SIGNATURE_BYTES = 64;

/** The points of low order (C2SP/CCTV), each as its y alone: a signature under one of them fits texts that nobody signed. */
const LOW_ORDER: ReadonlySet<string> = new Set([
  "00".repeat(32),
  `01${"00".repeat(31)}`,
  "26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05",
  "c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a",
  `ec${"ff".repeat(30)}7f`,
  `ed${"ff".repeat(30)}7f`,
  `ee${"ff".repeat(30)}7f`,
]);

/** The bytes of a text in base64url when there are so many and it is written in the one way that it may be; `null` otherwise. */
function bytesOf(text: string, count: number): Buffer | null {
  const bytes = Buffer.from(text, "base64url");
  return bytes.length === count && bytes.toString("base64url") === text ? bytes : null;
}

function hasLowOrder(key: Buffer): boolean {
  const y = Buffer.from(key);
  // The highest bit is the sign of x.
  y[KEY_BYTES - 1] = (y[KEY_BYTES - 1] ?? 0) & 0x7f;
  return LOW_ORDER.has(y.toString("hex"));
}

/** The public key of a device: Ed25519, 32 raw bytes in base64url, of no low order. */
export const keySchema = z.string().refine((text) => {
  const bytes = bytesOf(text, KEY_BYTES);
  return bytes !== null && !hasLowOrder(bytes);
});

/** Whether a signature (base64url) of bytes, or of a text in UTF-8, was made with a key that fits {@link keySchema}. */
export function isSignedBy(key: string, said: string | Uint8Array, signature: string): boolean {
  const bytes = bytesOf(signature, SIGNATURE_BYTES);
  if (bytes === null) return false;
  try {
    const publicKey = createPublicKey({ key: { kty: "OKP", crv: "Ed25519", x: key }, format: "jwk" });
    return verify(null, Buffer.from(said), publicKey, bytes);
  } catch {
    // Bytes that are no point of the curve.
    return false;
  }
}

/** Whether an entry has a seal that fits it under a key; `null` when it has none. */
export function isSealedBy(key: string, { wire }: Pick<Entry, "wire">): boolean | null {
  const { seal } = wire;
  if (seal === undefined) return null;
  const bytes = toBeSealed(wire);
  return bytes !== null && typeof seal === "string" && isSignedBy(key, bytes, seal);
}
