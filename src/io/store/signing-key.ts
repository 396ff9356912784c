import type { SigningKey } from "../../core/link/index.ts";

/**
 * Why a device has no key. `insecure`: the page came over no secure context, where browsers give no keys. `unsupported`:
 * the browser has no Ed25519. `not-kept`: the key could not be kept for the next visit.
 */
export type KeyLack = "insecure" | "unsupported" | "not-kept";

/** The key of this device, or why it has none. */
export type HeldKey =
  | { readonly key: SigningKey; readonly lack: null }
  | { readonly key: null; readonly lack: KeyLack };

/** A key as it is kept: the browser signs with it, and gives its secret to nobody. */
export interface KeptKey {
  readonly pair: CryptoKeyPair;
  /** 32 raw bytes in base64url. */
  readonly publicKey: string;
}

/** Where a key is kept. */
export interface KeyPlace {
  get(): Promise<KeptKey | null>;
  /** Keeps a key unless there is one; resolves with the one that is there then. */
  keep(key: KeptKey): Promise<KeptKey>;
}

/** A place that lasts as long as the page: for a device whose source lasts no longer. */
export function keyPlaceInMemory(): KeyPlace {
  let kept: KeptKey | null = null;
  return {
    get: async () => kept,
    keep: async (key) => {
      kept ??= key;
      return kept;
    },
  };
}

/** The key that a place has, made there when it has none. `subtle` is the platform's, missing outside of secure contexts. */
export async function heldKey(place: KeyPlace, subtle: SubtleCrypto | undefined): Promise<HeldKey> {
  if (!subtle) return { key: null, lack: "insecure" };
  try {
    const kept = await place.get();
    if (kept) return { key: signingKey(kept, subtle), lack: null };
  } catch {
    return { key: null, lack: "not-kept" };
  }
  const made = await newKey(subtle);
  if (!made) return { key: null, lack: "unsupported" };
  try {
    return { key: signingKey(await place.keep(made), subtle), lack: null };
  } catch {
    // A name that is tied to a key which is gone at the next visit would be lost for good.
    return { key: null, lack: "not-kept" };
  }
}

async function newKey(subtle: SubtleCrypto): Promise<KeptKey | null> {
  try {
    const pair = (await subtle.generateKey("Ed25519", false, ["sign", "verify"])) as CryptoKeyPair;
    return { pair, publicKey: base64url(await subtle.exportKey("raw", pair.publicKey)) };
  } catch {
    return null;
  }
}

function signingKey({ pair, publicKey }: KeptKey, subtle: SubtleCrypto): SigningKey {
  return {
    publicKey,
    sign: async (said) => {
      const bytes = typeof said === "string" ? new TextEncoder().encode(said) : Uint8Array.from(said);
      return base64url(await subtle.sign("Ed25519", pair.privateKey, bytes));
    },
  };
}

function base64url(bytes: ArrayBuffer): string {
  return btoa(String.fromCharCode(...new Uint8Array(bytes)))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}
