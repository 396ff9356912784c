import type { Draft, Entry, EntryStore } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import type { Folded } from "../../core/walk/index.ts";
import { WalkFold } from "../../core/walk/index.ts";
import { nextFrame } from "./next-frame.ts";

/** A walk that is open on a screen: its folded log, kept up to date with the entries of this tab and of others. */
export class WalkSession {
  readonly walk: WalkId;
  readonly #store: EntryStore;
  #fold = new WalkFold();
  readonly #listeners = new Listeners();
  #folded: Folded;
  #offset = 0;
  /** The edition of the log that was read; `null` before the first reading. */
  #edition: number | null = null;
  #reading: Promise<void> | null = null;
  #stale = false;
  /** The number of our own entries that are being kept. */
  #entering = 0;
  #hasNews = false;

  constructor(store: EntryStore, walk: WalkId) {
    this.#store = store;
    this.walk = walk;
    this.#folded = this.#fold.folded;
  }

  /**
   * Reads the log and follows it from then on. Returns a function that stops following. Rejects when the log cannot be
   * read.
   */
  async follow(): Promise<() => void> {
    await this.#readOn();
    return this.#store.watch(this.walk, () => {
      // News of our own entry arrives while that entry is being shown; reading it again can wait.
      this.#hasNews = true;
      this.#readNews();
    });
  }

  /** The log as folded so far. It is the same object until something changes. */
  readonly folded = (): Folded => this.#folded;

  /** Calls back after each change; returns a function that ends the subscription. */
  readonly subscribe = this.#listeners.add;

  /**
   * Enters what happened. Resolves once it is kept ([LOG5]), and only then shows it. `onKept` is called as soon as it
   * is kept, so that what it draws is on the screen before the consequences of the entry are computed.
   */
  async enter(drafts: readonly Draft[], onKept?: () => void): Promise<readonly Entry[]> {
    this.#entering += 1;
    const edition = this.#edition;
    try {
      const entries = await this.#store.append(this.walk, drafts);
      if (onKept) {
        onKept();
        await nextFrame();
      }
      // When entries were changed in place meanwhile, the store may hold these in another form, and its version counts.
      if (this.#edition === edition) this.#take(entries);
      else this.#hasNews = true;
      return entries;
    } finally {
      this.#entering -= 1;
      this.#readNews();
    }
  }

  /** Takes back entries that were just made, the undo of the follow screen. */
  undo(entries: readonly Entry[], at: Instant, actor: string): Promise<readonly Entry[]> {
    return this.enter(
      entries.map(({ wire }) => ({
        name: "entry.struck",
        data: { source: wire.source, id: wire.id, undone: true },
        at,
        actor,
      })),
    );
  }

  #take(entries: readonly Entry[]): void {
    if (this.#fold.add(entries) > 0) this.#show();
  }

  #show(): void {
    this.#folded = this.#fold.folded;
    this.#listeners.tell();
  }

  #readNews(): void {
    if (!this.#hasNews || this.#entering > 0) return;
    this.#hasNews = false;
    void this.#readOn();
  }

  /** Reads the entries that were added. A call during a reading causes another reading, so that nothing is missed. */
  #readOn(): Promise<void> {
    if (this.#reading) this.#stale = true;
    else this.#reading = this.#readPages();
    return this.#reading;
  }

  async #readPages(): Promise<void> {
    try {
      do {
        this.#stale = false;
        const page = await this.#store.read(this.walk, this.#offset);
        if (this.#edition === null || page.edition === this.#edition) {
          this.#edition = page.edition;
          this.#offset = page.offset;
          this.#take(page.entries);
        } else await this.#readAnew();
      } while (this.#stale);
    } finally {
      // This runs in the same turn as the last check for news, so that later news starts another reading.
      this.#reading = null;
    }
  }

  /**
   * Reads the whole log again after entries were changed in place. The earlier fold is replaced only once all entries
   * are read.
   */
  async #readAnew(): Promise<void> {
    const { entries, offset, edition } = await this.#store.read(this.walk, 0);
    this.#fold = new WalkFold();
    this.#offset = offset;
    this.#edition = edition;
    this.#fold.add(entries);
    this.#show();
  }
}
