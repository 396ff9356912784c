import { clockOffsetOf, Link } from "../../../../src/core/link/index.ts";
import type { Draft, Role } from "../../../../src/core/log/index.ts";
import type { Instant, WalkId } from "../../../../src/core/units/index.ts";
import { WalkFold } from "../../../../src/core/walk/index.ts";
import { MemoryEntryStore, nearSideOf } from "../../../../src/io/store/index.ts";
import type { VirtualTime } from "./virtual-time.ts";
import type { Wire } from "./wire.ts";

/** The walk of every schedule. */
export const WALK = "walk-1" as WalkId;

/** Shorter than usual, so that an hour of a schedule is not mostly waiting. */
export const SETTINGS = {
  silence: 60_000,
  backoff: { first: 1000, longest: 30_000 },
  answer: { first: 10_000, longest: 120_000 },
};

/** A device: a store that outlasts its restarts, a clock that may be wrong, a link, and a screen that follows the log. */
export class SmallDevice {
  readonly source: string;
  readonly store: MemoryEntryStore;
  readonly wire: Wire;
  /** How far its clock is ahead of the time, in ms. */
  skew: number;
  readonly #role: Role;
  readonly #time: VirtualTime;
  #link: Link | null = null;
  #fold = new WalkFold();
  #read = { offset: 0, edition: 0 };

  constructor(
    source: string,
    role: Role,
    { skew, wire, time }: { skew: number; wire: Wire; time: VirtualTime },
  ) {
    this.source = source;
    this.#role = role;
    this.skew = skew;
    this.wire = wire;
    this.#time = time;
    this.store = new MemoryEntryStore(source, () => this.now);
  }

  get now(): Instant {
    return (this.#time.now + this.skew) as Instant;
  }

  /** Joins the walk at the hub and begins to link. */
  async join(hub: string): Promise<void> {
    const joining = {
      walk: WALK,
      origin: hub,
      hub,
      hubName: hub,
      role: this.#role,
      name: "",
      device: this.source,
    };
    await this.store.links.join({ ...joining, joinedAt: this.now });
    this.start();
  }

  start(): void {
    const time = this.#time.of(() => this.skew);
    const far = this.wire.farSide(this.source, this.#role);
    let isCompared = false;
    const link = new Link({
      near: nearSideOf(this.store, WALK),
      far: {
        ...far,
        push: async (entries, signal) => {
          if (!isCompared) await this.#compareClocks(signal);
          isCompared = true;
          const answer = await far.push(entries, signal);
          if (answer.results.some((one) => "reason" in one && one.reason === "ahead")) isCompared = false;
          return answer;
        },
      },
      time,
      settings: SETTINGS,
    });
    this.#link = link;
    link.start();
  }

  /** The page is gone from one moment to the next; what the store holds stays. */
  stop(): void {
    void this.#link?.stop();
    this.#link = null;
  }

  /** Wakes up, and compares its clock while entries may be under way. */
  wake(): void {
    this.#link?.wake();
    const over = new AbortController();
    this.#compareClocks(over.signal).catch(() => over.abort());
  }

  enter(draft: Draft): Promise<unknown> {
    return this.store.append(WALK, [draft]);
  }

  unsent(): Promise<number> {
    return this.store.links.unsent(WALK);
  }

  /** What a screen that was open all along shows: entries read as they came, begun anew with each edition. */
  async look() {
    const page = await this.store.read(WALK, this.#read.offset);
    if (page.edition === this.#read.edition) {
      this.#fold.add(page.entries);
      this.#read = page;
    } else {
      this.#fold = new WalkFold();
      const whole = await this.store.read(WALK, 0);
      this.#fold.add(whole.entries);
      this.#read = whole;
    }
    return this.#fold.folded;
  }

  async #compareClocks(signal: AbortSignal): Promise<void> {
    const sent = this.now;
    const said = await this.wire.clock(signal);
    const clock = clockOffsetOf([{ sent, said, received: this.now }]);
    if (clock) await this.store.links.setClock(WALK, clock, "own");
  }
}
