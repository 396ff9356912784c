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
  const keys = new Map<string, Promise<CryptoKey>>();
  return async (signature, signed, key) => {
    const name = key.join();
    const imported =
      keys.get(name) ?? subtle.importKey("raw", Uint8Array.from(key), "Ed25519", false, ["verify"]);
    keys.set(name, imported);
    try {
      return await subtle.verify(
        "Ed25519",
        await imported,
        Uint8Array.from(signature),
        Uint8Array.from(signed),
      );
    } catch {
      // A key that the browser refuses fits nothing by its account; the one of the core is asked then.
      return false;
    }
  };
}
