import type { SigningKey } from "../../core/link/index.ts";
import type { Keystore, RandomBytes } from "../device/index.ts";
import { shellKeystore } from "../device/index.ts";

/**
 * Why a device has no key. `insecure`: the page came over no secure context, where browsers give no keys. `unsupported`:
 * the browser had no Ed25519, by an earlier version. `not-kept`: the key could not be kept for the next visit.
 */
export type KeyLack = "insecure" | "unsupported" | "not-kept";

/** The key of this device, or why it has none. */
export type HeldKey =
  | {
      readonly key: SigningKey;
      readonly lack: null;
      /** Whether somebody who gets at what the device keeps can copy it ([SEL3]). */
      readonly isCopyable: boolean;
    }
  | { readonly key: null; readonly lack: KeyLack };

/**
 * A key as it is kept: one that the browser signs with and gives to nobody, or the seed of one where it has no such keys or
 * cannot keep them. `keystore`: the seed lies in the platform's keystore under the public key, and only that is kept here.
 */
export type KeptKey = {
  /** 32 raw bytes in base64url. */
  readonly publicKey: string;
} & ({ readonly pair: CryptoKeyPair } | { readonly seed: Uint8Array } | { readonly in: "keystore" });

/** What making and using keys takes of the platform. */
export interface KeyParts {
  /** Missing outside of secure contexts. */
  readonly subtle: SubtleCrypto | undefined;
  readonly random: RandomBytes;
  /** In a native shell, whose pages came with the app, a key may be made where the web view gives no secure context. */
  readonly isShell: boolean;
  /** Gives the platform's keystore, `null` where there is none, as in every browser; that of the native shell unless given. */
  readonly keystore?: () => Promise<Keystore | null>;
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

/** The key that a place has, made there when it has none. */
export async function heldKey(place: KeyPlace, parts: KeyParts): Promise<HeldKey> {
  const { subtle, isShell } = parts;
  if (!subtle && !isShell) return { key: null, lack: "insecure" };
  try {
    const kept = await place.get();
    if (kept) return await held(kept, parts);
  } catch {
    return { key: null, lack: "not-kept" };
  }
  const made = subtle ? await newKey(subtle) : null;
  if (made) {
    try {
      return await held(await place.keep(made), parts);
    } catch {
      // Some browsers make such keys and cannot keep them; a seed they can.
    }
  }
  try {
    return await held(await place.keep(await newSeed(parts)), parts);
  } catch {
    // A name that is tied to a key which is gone at the next visit would be lost for good.
    return { key: null, lack: "not-kept" };
  }
}

/** A kept key, ready to sign. Rejects where the keystore does not give what was kept in it. */
async function held(kept: KeptKey, { subtle, keystore = shellKeystore }: KeyParts): Promise<HeldKey> {
  if ("in" in kept) {
    const seed = await (await keystore())?.get(kept.publicKey);
    if (!seed) throw new GoneFromKeystoreError("the keystore does not have the key of this device");
    return { key: await seedKey(kept.publicKey, seed), lack: null, isCopyable: false };
  }
  if ("seed" in kept) return { key: await seedKey(kept.publicKey, kept.seed), lack: null, isCopyable: true };
  if (!subtle) return { key: null, lack: "insecure" };
  return { key: signingKey(kept, subtle), lack: null, isCopyable: false };
}

/** The keystore lost a key or keeps it back, as after the data of the app was copied to another device. */
class GoneFromKeystoreError extends Error {
  override readonly name = "GoneFromKeystoreError";
}

const SEED_LENGTH = 32;

/** A new seed, in the keystore where there is one that takes it. */
async function newSeed({ random, keystore = shellKeystore }: KeyParts): Promise<KeptKey> {
  const { ed25519 } = await import("@noble/curves/ed25519.js");
  const seed = Uint8Array.from(random(SEED_LENGTH));
  const publicKey = base64url(ed25519.getPublicKey(seed));
  const isTaken = (await (await keystore())?.keep(publicKey, seed)) ?? false;
  return isTaken ? { publicKey, in: "keystore" } : { publicKey, seed };
}

async function seedKey(publicKey: string, seed: Uint8Array): Promise<SigningKey> {
  const { ed25519 } = await import("@noble/curves/ed25519.js");
  return { publicKey, sign: async (said) => base64url(ed25519.sign(bytesOf(said), seed)) };
}

async function newKey(subtle: SubtleCrypto): Promise<KeptKey | null> {
  try {
    const pair = (await subtle.generateKey("Ed25519", false, ["sign", "verify"])) as CryptoKeyPair;
    const raw = await subtle.exportKey("raw", pair.publicKey);
    return { pair, publicKey: base64url(new Uint8Array(raw)) };
  } catch {
    return null;
  }
}

function signingKey(
  { pair, publicKey }: Extract<KeptKey, { readonly pair: unknown }>,
  subtle: SubtleCrypto,
): SigningKey {
  return {
    publicKey,
    sign: async (said) =>
      base64url(new Uint8Array(await subtle.sign("Ed25519", pair.privateKey, bytesOf(said)))),
  };
}

const bytesOf = (said: string | Uint8Array) =>
  typeof said === "string" ? new TextEncoder().encode(said) : Uint8Array.from(said);

function base64url(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}
