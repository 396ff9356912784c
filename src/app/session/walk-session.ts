import type { Draft, Entry, EntryStore } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import type { Folded } from "../../core/walk/index.ts";
import { WalkFold } from "../../core/walk/index.ts";
import { nextFrame } from "./next-frame.ts";

/** A walk as a screen has it open: its log, folded, kept up to date with what this and other tabs enter. */
export class WalkSession {
  readonly walk: WalkId;
  readonly #store: EntryStore;
  #fold = new WalkFold();
  readonly #listeners = new Listeners();
  #folded: Folded;
  #offset = 0;
  /** The edition of the log that was read; `null` before anything was. */
  #edition: number | null = null;
  #reading: Promise<void> | null = null;
  #stale = false;
  /** How many entries of our own are under way. */
  #entering = 0;
  #hasNews = false;

  constructor(store: EntryStore, walk: WalkId) {
    this.#store = store;
    this.walk = walk;
    this.#folded = this.#fold.folded;
  }

  /** Reads the log and follows it from then on; returns a function that ends that. Rejects when the log cannot be read. */
  async follow(): Promise<() => void> {
    await this.#readOn();
    return this.#store.watch(this.walk, () => {
      // Word of an entry of our own comes back while it is being shown: reading it again can wait.
      this.#hasNews = true;
      this.#readNews();
    });
  }

  /** The log as folded so far; the same object until something changes. */
  readonly folded = (): Folded => this.#folded;

  /** Calls back after each change; returns a function that ends it. */
  readonly subscribe = this.#listeners.add;

  /**
   * Enters what happened; resolves once it is kept ([LOG5]), and only then shows it. `onKept` is called as soon as it is
   * kept: what it draws is on the screen before everything that follows from the entry is worked out.
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
      // When entries were changed in place meanwhile, the store may hold these in another form: what it gives back counts.
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

  /** Reads what came since; a call while reading has it read once more, so that nothing is missed. */
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
      // In the same turn as the last look whether there is more: word that comes later begins anew.
      this.#reading = null;
    }
  }

  /** Entries were changed in place: what was folded of them counts no more, once all there is now can take its place. */
  async #readAnew(): Promise<void> {
    const { entries, offset, edition } = await this.#store.read(this.walk, 0);
    this.#fold = new WalkFold();
    this.#offset = offset;
    this.#edition = edition;
    this.#fold.add(entries);
    this.#show();
  }
}
