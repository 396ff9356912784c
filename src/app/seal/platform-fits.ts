import type { PlatformFits } from "../../core/seal/index.ts";

/**
 * Looks at signatures by the browser's own means; `null` where it has none, as outside of secure contexts and in browsers
 * without Ed25519.
 */
export async function platformFits(subtle: SubtleCrypto | undefined): Promise<PlatformFits | null> {
  if (!subtle) return null;
  try {
    await subtle.generateKey("Ed25519", false, ["sign", "verify"]);
  } catch {
    return null;
  }
  const keys = new WeakMap<Uint8Array, Promise<CryptoKey>>();
  return async (signature, signed, key) => {
    const imported = keys.get(key) ?? subtle.importKey("raw", copyOf(key), "Ed25519", false, ["verify"]);
    keys.set(key, imported);
    try {
      return await subtle.verify("Ed25519", await imported, copyOf(signature), copyOf(signed));
    } catch {
      // A key that the browser refuses fits nothing by its account; the one of the core is asked then.
      return false;
    }
  };
}

/** Bytes in a buffer that nobody shares, as the browser asks for. By its constructor, since `from` goes through them one by one. */
const copyOf = (bytes: Uint8Array) => new Uint8Array(bytes);
