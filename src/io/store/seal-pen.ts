import type { Entry } from "../../core/log/index.ts";
import type { ChainEnd } from "../../core/seal/index.ts";
import { chainEndOf, chainedTo, isChained, sealed } from "../../core/seal/index.ts";
import type { KeyParts, KeyPlace } from "./signing-key.ts";
import { heldKey } from "./signing-key.ts";

export { heldKey, keyPlaceInMemory } from "./signing-key.ts";

/** What chains and seals the entries of this device ([SEL2]). It is loaded with the first walk that is read or written. */
export interface SealPen {
  readonly publicKey: string;
  chainEndOf(entry: Entry): ChainEnd;
  /** An entry that was just made, behind the end of its source's chain. Takes no turn, so that it may be done within a transaction. */
  chained(entry: Entry, end: ChainEnd | null): Entry;
  isChained(entry: Entry): boolean;
  /** The entry with its seal; `null` for one that cannot be sealed. Never rejects. */
  sealed(entry: Entry): Promise<Entry | null>;
}

/** The pen of the key that a place has, made there when it has none; `null` where this device can have no key. */
export async function sealPen(place: KeyPlace, parts: KeyParts): Promise<SealPen | null> {
  const { key } = await heldKey(place, parts);
  if (!key) return null;
  return {
    publicKey: key.publicKey,
    chainEndOf,
    isChained,
    chained: (entry, end) => chainedTo(entry, end, key.publicKey),
    // A browser that fails once is asked once more; then the entry goes as it is.
    sealed: async (entry) => {
      try {
        return await sealed(entry, key);
      } catch {
        return sealed(entry, key).catch(() => null);
      }
    },
  };
}
