import type { Draft, Entry, EntryPage, TakenIn } from "../../core/log/index.ts";
import { keyOf, likenessOf } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import { FallbackLinkStore } from "./fallback-link-store.ts";
import type { FallbackParts } from "./fallback-parts.ts";
import type { Changed } from "./link-store.ts";
import { NothingReadError, NotLinkedError } from "./link-store.ts";
import { MemoryEntryStore } from "./memory-entry-store.ts";
import { SealingInTurn } from "./sealing-in-turn.ts";
import type { StoreStatus } from "./store-status.ts";
import { DURABLE, inMemory } from "./store-status.ts";
import type { StoreTrouble } from "./store-trouble.ts";
import { troubleOf } from "./store-trouble.ts";
import type { WalkCard } from "./walk-card.ts";
import type { WalkStore } from "./walk-store.ts";
import { byWalk } from "./walk-summary.ts";

/**
 * Offsets in memory start above every offset on disk. A reader that continues after the switch therefore gets the whole
 * walk again and misses nothing; merging by key makes the repeats harmless.
 */
const MEMORY_OFFSETS = 2 ** 40;

/** How long a disk in trouble is left alone before an entry tries it again, in ms. */
const RETRY_AFTER = 20_000;

/** A store that keeps entries on disk while that works, and otherwise in memory, together with everything that was read and entered before. */
export class FallbackEntryStore implements WalkStore {
  readonly #durable: WalkStore | null;
  readonly #memory: MemoryEntryStore;
  /** What passed through, by walk and key: a store that is lost cannot be asked again. */
  readonly #passed = new Map<WalkId, Map<string, Entry>>();
  /** Entries confirmed without being on disk, by key. */
  readonly #unsaved = new Map<string, Entry>();
  readonly #sealing = new SealingInTurn((walk, waiting) => this.#sealNow(walk, waiting));
  /** How far each walk on disk was copied to memory; filled once memory is read from. */
  readonly #copied = new Map<WalkId, number>();
  /** The edition of each walk on disk that passed through. */
  readonly #editions = new Map<WalkId, number>();
  readonly #listeners = new Listeners();
  readonly links: FallbackLinkStore;
  readonly #ticks: () => number;
  readonly #putBack: FallbackParts["putBack"];
  /** Whether the disk has lost what was on it, and did not get it back yet. */
  #isLost = false;
  /** When the disk was last found in trouble or tried again, by a clock that is never set. */
  #triedAt = 0;
  #isRetrying = false;
  /** Whether something came to memory too late for the attempt that is under way. */
  #isLate = false;
  /** Why the disk was last not trusted. */
  #trouble: StoreTrouble;
  #readsMemory: boolean;
  #status: StoreStatus;

  constructor({ durable, reason = "failed", memorySource, now, putBack, ticks, findPen }: FallbackParts) {
    this.#ticks = ticks ?? (() => performance.now());
    this.#putBack = putBack;
    this.#durable = durable;
    this.#memory = new MemoryEntryStore(memorySource, now, MEMORY_OFFSETS, findPen);
    this.#readsMemory = durable === null;
    this.#trouble = reason;
    this.#status = durable ? DURABLE : inMemory(reason, 0);
    this.links = new FallbackLinkStore({
      durable: durable?.links ?? null,
      memory: this.#memory.links,
      isDurable: () => this.#status.kind === "durable",
      attempt: (ask) => this.#attempt(async () => [await ask()] as const),
      copy: (walk) => this.#copy(walk),
      seal: async (walk) => void (await this.seal(walk)),
      note: (walk, changed, where) => this.#noteChange(walk, changed, where),
    });
  }

  /** The source under which the next entry is made. */
  get source(): string {
    return this.#status.kind === "durable" && this.#durable ? this.#durable.source : this.#memory.source;
  }

  /** The same object until it changes. */
  status = (): StoreStatus => this.#status;

  /** Calls back after each change of {@link status}; returns a function that ends it. */
  readonly watchStatus = this.#listeners.add;

  /** Has entries that go to memory made under another source from now on. */
  renameMemory(source: string): void {
    this.#memory.rename(source);
  }

  /** Whether an entry is kept in memory only at this moment. */
  isUnsaved(entry: Entry): boolean {
    return this.#unsaved.has(keyOf(entry));
  }

  async append(walk: WalkId, drafts: readonly Draft[]): Promise<readonly Entry[]> {
    const entries = await this.#onDisk((durable) => durable.append(walk, drafts));
    if (entries) {
      await this.#note(entries);
      this.#sealing.sealSoon(walk, entries);
      return entries;
    }
    await this.#copy(walk);
    const kept = await this.#memory.append(walk, drafts);
    this.#countUnsaved(kept);
    this.#sealing.sealSoon(walk, kept);
    this.#retryNowAndThen();
    return kept;
  }

  seal(walk: WalkId): Promise<readonly Entry[]> {
    return this.#sealing.seal(walk);
  }

  async awaitSeals(walk: WalkId, entries: readonly Entry[]): Promise<void> {
    if (await this.#onDisk(async (durable) => [await durable.awaitSeals(walk, entries)])) return;
    await this.#memory.awaitSeals(walk, entries);
  }

  async adoptSeals(walk: WalkId, entries: readonly Entry[]): Promise<void> {
    const isOnDisk = await this.#onDisk(async (durable) => [await durable.adoptSeals(walk, entries)]);
    if (!isOnDisk || this.#readsMemory) await this.#memory.adoptSeals(walk, entries);
    this.#noteSeals(walk, entries);
  }

  async takeIn(entries: readonly Entry[]): Promise<TakenIn> {
    const taken = await this.#onDisk((durable) => durable.takeIn(entries));
    if (taken) {
      const left = new Set(taken.conflicting);
      await this.#note(entries.filter((entry) => !left.has(entry)));
      return taken;
    }
    for (const walk of new Set(entries.map((entry) => entry.walk))) await this.#copy(walk);
    const fresh = entries.filter((entry) => !this.#passed.get(entry.walk)?.has(keyOf(entry)));
    const kept = await this.#memory.takeIn(entries);
    const left = new Set(kept.conflicting);
    this.#countUnsaved(fresh.filter((entry) => !left.has(entry)));
    return kept;
  }

  async read(walk: WalkId, offset: number, most?: number): Promise<EntryPage> {
    if (offset === 0) this.#sealing.open(walk);
    if (!this.#readsMemory) {
      const page = await this.#attempt((durable) => durable.read(walk, offset, most));
      if (page) {
        await this.#note(page.entries);
        await this.#followEdition(walk, page.edition);
        return page;
      }
    }
    await this.#copy(walk);
    return this.#memory.read(walk, offset, most);
  }

  watch(walk: WalkId, onChange: () => void): () => void {
    return bothOf(this.#memory.watch(walk, onChange), this.#durable?.watch(walk, onChange));
  }

  async walks(): Promise<readonly WalkCard[]> {
    const onDisk = (await this.#attempt((durable) => durable.walks())) ?? [];
    if (!this.#readsMemory) return onDisk;
    const here = await this.#memory.walks();
    const known = new Set(here.map(({ walk }) => walk));
    return [...here, ...onDisk.filter(({ walk }) => !known.has(walk))];
  }

  watchWalks(onChange: () => void): () => void {
    return bothOf(this.#memory.watchWalks(onChange), this.#durable?.watchWalks(onChange));
  }

  async removeWalk(walk: WalkId): Promise<boolean> {
    const isGone = this.#durable === null || (await this.#attempt((durable) => durable.removeWalk(walk)));
    await this.#memory.removeWalk(walk);
    await this.links.leave(walk);
    this.#passed.delete(walk);
    for (const [key, entry] of this.#unsaved) if (entry.walk === walk) this.#unsaved.delete(key);
    this.#countUnsaved([]);
    return isGone ?? false;
  }

  /**
   * Tries to bring what is in memory to disk, for instance after the reader made room. Once it succeeds, entries go to
   * disk again. A store that was not there from the start stays away until the page is loaded anew.
   */
  async retry(): Promise<StoreStatus> {
    const durable = this.#durable;
    if (this.#status.kind === "durable" || !durable) return this.#status;
    try {
      if (this.#isLost && this.#putBack) {
        const entries = [...this.#passed.values()].flatMap((passed) => [...passed.values()]);
        await this.#putBack({ entries, links: await this.links.all() });
      }
      for (const walk of new Set([...this.#unsaved.values()].map((entry) => entry.walk)))
        await this.seal(walk);
      do {
        const entries = [...this.#unsaved.values()];
        const { restamped, conflicting } = await durable.takeIn(entries);
        await this.#replaceStamps(durable, [...restamped, ...conflicting]);
        for (const [walk, some] of this.#sealing.unsealed) await durable.awaitSeals(walk, some);
        // Some of these entries came from the hub, and only the links in memory know which.
        for (const { walk, onlyHere = [] } of await this.#memory.links.all()) {
          await durable.links.change(walk, (row) => ({ ...row, onlyHere }));
        }
        for (const entry of entries) this.#unsaved.delete(keyOf(entry));
      } while (this.#unsaved.size > 0);
      this.#isLost = false;
      this.#setStatus(DURABLE);
      for (const walk of this.#sealing.unsealed.keys()) void this.seal(walk);
    } catch (error) {
      const trouble = troubleOf(error);
      if (!trouble) throw error;
      this.#setStatus(inMemory(trouble, this.#unsaved.size));
    }
    return this.#status;
  }

  /** Tries to go back to disk when the last attempt is long enough ago. What was kept meanwhile is written then. */
  #retryNowAndThen(): void {
    if (this.#ticks() - this.#triedAt >= RETRY_AFTER) this.#retryOnce();
  }

  #retryOnce(): void {
    if (this.#durable === null) return;
    if (this.#isRetrying) {
      this.#isLate = true;
      return;
    }
    this.#isRetrying = true;
    this.#isLate = false;
    this.#triedAt = this.#ticks();
    // Trouble with the disk is told by the status; a rejection is a mistake of this program and is not hidden.
    void this.retry().finally(() => {
      this.#isRetrying = false;
      if (this.#isLate && this.#unsaved.size > 0) this.#retryOnce();
    });
  }

  /** Puts entries that were stamped anew in memory in the place of the forms that the disk still has of them. */
  async #replaceStamps(durable: WalkStore, entries: readonly Entry[]): Promise<void> {
    for (const [walk, some] of byWalk(entries)) {
      const link = await durable.links.get(walk);
      const cursor = link && (link.cursor ?? (await this.#memory.links.get(walk))?.cursor);
      if (!cursor) continue;
      const onDisk = new Map((await durable.read(walk, 0)).entries.map((entry) => [keyOf(entry), entry]));
      const restamped = some.filter((entry) => {
        const old = onDisk.get(keyOf(entry));
        return old !== undefined && likenessOf(old, entry) !== "different";
      });
      await durable.links.takeIn(walk, restamped, cursor);
    }
  }

  /** The answer of the disk; `null` once there was trouble with it. */
  async #onDisk<Answer>(ask: (durable: WalkStore) => Promise<Answer>): Promise<Answer | null> {
    return this.#status.kind === "durable" ? this.#attempt(ask) : null;
  }

  /** The answer of the disk; `null` when it is in trouble, after which memory is read and written. */
  async #attempt<Answer>(ask: (durable: WalkStore) => Promise<Answer>): Promise<Answer | null> {
    if (!this.#durable) return null;
    try {
      return await ask(this.#durable);
    } catch (error) {
      const trouble = troubleOf(error);
      // If the walk was left in the meantime, the disk is not at fault.
      if (!trouble || error instanceof NotLinkedError || error instanceof NothingReadError) throw error;
      this.#readsMemory = true;
      const wasDurable = this.#status.kind === "durable";
      if (wasDurable) this.#triedAt = this.#ticks();
      this.#setStatus(inMemory(trouble, this.#unsaved.size));
      if (trouble === "lost") this.#isLost = true;
      // What was deleted can be written at once, if by nothing but this.
      if (trouble === "lost" && wasDurable && this.#putBack) this.#retryOnce();
      return null;
    }
  }

  /** Seals what waits for it on disk, or in memory, where what was left unsealed on the disk is sealed too. */
  async #sealNow(walk: WalkId, waiting: readonly Entry[]): Promise<readonly Entry[]> {
    let sealed = await this.#onDisk((durable) => durable.seal(walk));
    if (sealed && this.#readsMemory) await this.#memory.adoptSeals(walk, sealed);
    if (!sealed) {
      await this.#memory.awaitSeals(walk, waiting);
      sealed = await this.#memory.seal(walk);
    }
    this.#noteSeals(walk, sealed);
    return sealed;
  }

  /** Has seals also in what is to be put on a disk that comes back. */
  #noteSeals(walk: WalkId, sealed: readonly Entry[]): void {
    for (const entry of sealed) {
      const key = keyOf(entry);
      for (const kept of [this.#passed.get(walk), this.#unsaved]) if (kept?.has(key)) kept.set(key, entry);
    }
  }

  /** Copies everything that is known of a walk to memory: what passed through this store, and what came to the disk since. */
  async #copy(walk: WalkId): Promise<void> {
    if (!this.#copied.has(walk)) {
      this.#copied.set(walk, 0);
      await this.#memory.takeIn([...(this.#passed.get(walk)?.values() ?? [])]);
    }
    const page = await this.#attempt((durable) => durable.read(walk, this.#copied.get(walk) ?? 0));
    if (!page) return;
    this.#copied.set(walk, page.offset);
    await this.#note(page.entries);
    await this.#followEdition(walk, page.edition);
  }

  /** Follows a change of edition: entries on disk were replaced or taken out, so that what passed through before has to be read again. */
  async #followEdition(walk: WalkId, edition: number): Promise<void> {
    const known = this.#editions.get(walk);
    this.#editions.set(walk, edition);
    if (known === undefined || known === edition) return;
    const page = await this.#attempt((durable) => durable.read(walk, 0));
    if (!page) return;
    const old = [...(this.#passed.get(walk)?.values() ?? [])].filter((entry) => !this.isUnsaved(entry));
    const fresh = page.entries.filter((entry) => !this.isUnsaved(entry));
    this.#passed.set(
      walk,
      new Map(
        [...fresh, ...[...this.#unsaved.values()].filter((entry) => entry.walk === walk)].map((entry) => [
          keyOf(entry),
          entry,
        ]),
      ),
    );
    if (this.#readsMemory) this.#memory.adopt(walk, old, fresh);
  }

  async #noteChange(walk: WalkId, { added, removed }: Changed, where: "disk" | "memory"): Promise<void> {
    if (where === "disk") return this.#note(added);
    const passed = this.#passed.get(walk) ?? new Map<string, Entry>();
    this.#passed.set(walk, passed);
    for (const entry of removed) {
      passed.delete(keyOf(entry));
      this.#unsaved.delete(keyOf(entry));
    }
    for (const entry of added) passed.set(keyOf(entry), entry);
    this.#countUnsaved(added);
    this.#retryNowAndThen();
  }

  async #note(entries: readonly Entry[]): Promise<void> {
    for (const entry of entries) {
      const passed = this.#passed.get(entry.walk) ?? new Map<string, Entry>();
      this.#passed.set(entry.walk, passed);
      passed.set(keyOf(entry), entry);
    }
    if (this.#readsMemory) await this.#memory.takeIn(entries);
  }

  #countUnsaved(entries: readonly Entry[]): void {
    for (const entry of entries) this.#unsaved.set(keyOf(entry), entry);
    if (this.#status.kind === "memory") this.#setStatus(inMemory(this.#status.reason, this.#unsaved.size));
    else if (entries.length > 0) {
      // The disk came back while these were on their way to memory.
      this.#setStatus(inMemory(this.#trouble, this.#unsaved.size));
      this.#retryOnce();
    }
  }

  #setStatus(status: StoreStatus): void {
    const same = JSON.stringify(status) === JSON.stringify(this.#status);
    if (same) return;
    if (status.kind === "memory") this.#trouble = status.reason;
    this.#status = status;
    this.#listeners.tellSoon();
  }
}

function bothOf(...ends: readonly ((() => void) | undefined)[]): () => void {
  return () => {
    for (const end of ends) end?.();
  };
}
