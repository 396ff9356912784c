import type { Entry } from "../../core/log/index.ts";
import { keyOf } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { pageAtRest } from "../device/index.ts";
import { byWalk } from "./walk-summary.ts";

/** Seals what waits for it in a walk, of which `waiting` was entered in this page; returns what got its seal. */
type Seal = (walk: WalkId, waiting: readonly Entry[]) => Promise<readonly Entry[]>;

/** Has the entries of a page sealed, in each walk one sealing after the other. */
export class SealingInTurn {
  readonly #seal: Seal;
  readonly #atRest: () => Promise<void>;
  readonly #unsealed = new Map<string, Entry>();
  /** The walks that wait for the page to be at rest. */
  readonly #waiting = new Set<WalkId>();
  /** The last sealing of each walk. */
  readonly #last = new Map<WalkId, Promise<readonly Entry[]>>();

  /** `atRest` resolves when there is time for what nobody waits for: the page at rest unless given. */
  constructor(seal: Seal, atRest: () => Promise<void> = pageAtRest) {
    this.#seal = seal;
    this.#atRest = atRest;
  }

  /** What was entered in this page and waits for its seal, by walk. */
  get unsealed(): ReadonlyMap<WalkId, readonly Entry[]> {
    return byWalk([...this.#unsealed.values()]);
  }

  /** Resolves once all that waits in a walk by now is sealed, or will not be. */
  seal(walk: WalkId): Promise<readonly Entry[]> {
    const before = this.#last.get(walk) ?? Promise.resolve([]);
    const sealing = before.catch(() => []).then(() => this.#sealNow(walk));
    this.#last.set(walk, sealing);
    return sealing;
  }

  /**
   * Has entries sealed that were just made, once what was entered is shown; nobody waits for it. A rejection is a mistake of this program and is not
   * hidden.
   */
  sealSoon(walk: WalkId, entries: readonly Entry[]): void {
    const made = entries.filter(({ wire }) => wire["prior"] !== undefined || wire["sealkey"] !== undefined);
    for (const entry of made) this.#unsealed.set(keyOf(entry), entry);
    if (made.length > 0 && !this.#waiting.has(walk)) void this.#sealAtRest(walk);
  }

  /** Has sealed what an earlier page left unsealed in a walk that is opened, and with it what seals loaded. */
  open(walk: WalkId): void {
    if (!this.#last.has(walk)) void this.seal(walk);
  }

  async #sealAtRest(walk: WalkId): Promise<void> {
    this.#waiting.add(walk);
    await this.#atRest();
    this.#waiting.delete(walk);
    // Whoever sent or exported the walk meanwhile had them sealed.
    if (this.unsealed.has(walk)) await this.seal(walk);
  }

  async #sealNow(walk: WalkId): Promise<readonly Entry[]> {
    const waiting = this.unsealed.get(walk) ?? [];
    const sealed = await this.#seal(walk, waiting);
    for (const entry of waiting) this.#unsealed.delete(keyOf(entry));
    return sealed;
  }
}
