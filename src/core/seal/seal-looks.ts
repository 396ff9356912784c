import type { Entry, WireEntry } from "../log/index.ts";
import { bytesOf } from "./base64url.ts";
import { linkOf, sealedBytes } from "./link-of.ts";
import type { FitsEd25519 } from "./seal-fits.ts";
import { SEAL_BYTES, sealFits, sealKeyOf } from "./seal-fits.ts";

/** Whether a signature fits, by the platform: many are asked of it at once. */
export type PlatformFits = (...of: Parameters<FitsEd25519>) => Promise<boolean>;

/** From so many on that the platform was asked and did not answer yet, whoever adds entries waits. */
const MOST_OPEN = 5000;

/** What is known of one seal. */
export interface Look {
  readonly seal: unknown;
  readonly key: Uint8Array;
  /** `null` until the platform has answered. */
  fits: boolean | null;
}

/**
 * Looks at the seals of a log by the platform, which does so many times as fast as can be done here, and beside what is done here. What it does not find to
 * fit is looked at once more here, since the two differ in signatures made to be borderline. Each seal is asked about once.
 */
export class SealLooks {
  readonly #platform: PlatformFits;
  readonly #links = new WeakMap<WireEntry, Uint8Array | null>();
  /** By link, which each entry has its own of. */
  readonly #looks = new Map<Uint8Array, Look[]>();
  /** The key that each source named first among the entries that were added; `null` for one that is refused. */
  readonly #named = new Map<string, Uint8Array | null>();
  #open: Promise<void>[] = [];
  #asked = 0;
  #done = 0;
  #onDone: ((done: number, of: number) => void) | null = null;

  constructor(platform: PlatformFits) {
    this.#platform = platform;
  }

  /** The link of an entry, worked out once. */
  readonly linkOf = (wire: WireEntry): Uint8Array | null => {
    const known = this.#links.get(wire);
    if (known !== undefined) return known;
    const link = linkOf(wire);
    this.#links.set(wire, link);
    return link;
  };

  /**
   * Has the seals of entries looked at, as far as their sources have named their keys by now, while others are read. Resolves when there is room for
   * more. The others are looked at when they are asked for.
   */
  async add(entries: readonly Entry[]): Promise<void> {
    for (const { wire } of entries) {
      const { source, sealkey, seal } = wire;
      if (sealkey !== undefined && !this.#named.has(source)) this.#named.set(source, sealKeyOf(sealkey));
      const key = this.#named.get(source);
      const link = key && seal !== undefined ? this.linkOf(wire) : null;
      if (key && link) this.look(link, seal, key);
    }
    if (this.#asked - this.#done >= MOST_OPEN) await this.settled();
  }

  /** What is known of a seal over a link under a key; the platform is asked when nobody has before. `link` must be of {@link linkOf}. */
  look(link: Uint8Array, seal: unknown, key: Uint8Array): Look {
    const looks = this.#looks.get(link) ?? [];
    this.#looks.set(link, looks);
    const known = looks.find((one) => one.seal === seal && isSame(one.key, key));
    if (known) return known;
    const look: Look = { seal, key, fits: null };
    looks.push(look);
    const signature = bytesOf(seal, SEAL_BYTES);
    if (signature) this.#ask(look, link, signature);
    else look.fits = false;
    return look;
  }

  /** Resolves once the platform has answered all that it was asked, and tells how far it is meanwhile. Rejects when it does. */
  async settled(onDone?: (done: number, of: number) => void): Promise<void> {
    this.#onDone = onDone ?? null;
    while (this.#open.length > 0) {
      const open = this.#open;
      this.#open = [];
      await Promise.all(open);
    }
  }

  #ask(look: Look, link: Uint8Array, signature: Uint8Array): void {
    this.#asked += 1;
    const answered = this.#platform(signature, sealedBytes(link), look.key).then((isFitting) => {
      look.fits = isFitting || sealFits(link, look.seal, look.key);
      this.#done += 1;
      this.#onDone?.(this.#done, this.#asked);
    });
    // Whoever waits for all of them is told; nobody may be waiting yet.
    answered.catch(() => {});
    this.#open.push(answered);
  }
}

const isSame = (a: Uint8Array, b: Uint8Array): boolean =>
  a === b || a.every((byte, index) => byte === b[index]);
