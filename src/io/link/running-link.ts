import type { FarSide, HubClient, LinkState, LinkTime } from "../../core/link/index.ts";
import { hubFarSide, Link, writeCursor } from "../../core/link/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { LinkRow, WalkStore } from "../store/index.ts";
import { nearSideOf } from "../store/index.ts";
import { LinkClock } from "./link-clock.ts";

/** How often the hub is told how far this device has read, at most, in ms. */
const PRESENCE_SOONEST = 5000;

/** How often the hub is told so even when nothing changed, in ms: it takes a device for away that is silent for about twice as long. */
const PRESENCE_LATEST = 10_000;

/** How many such words may be under way at once, so that they keep their pace over a slow link. */
const MOST_UNDER_WAY = 8;

/** How often the clocks are compared, in ms. */
const CLOCK_EVERY = 300_000;

/** What a running link is made of. */
export interface RunningLinkParts {
  readonly row: LinkRow;
  readonly log: WalkStore;
  readonly hub: HubClient;
  readonly now: () => Instant;
  readonly time: LinkTime;
}

/** The link of one walk while it runs: entries both ways, the clock, and word of how far this device has read. */
export class RunningLink {
  /** The row it was begun with. */
  readonly row: LinkRow;
  readonly #parts: RunningLinkParts;
  readonly #link: Link;
  readonly #clock: LinkClock;
  readonly #stop = new AbortController();
  #kind: LinkState["kind"] = "linking";

  constructor(parts: RunningLinkParts) {
    const { row, log, hub, now, time } = parts;
    const { signal } = this.#stop;
    this.row = row;
    this.#parts = parts;
    this.#clock = new LinkClock({ walk: row.walk, log, hub, now, signal });
    this.#link = new Link({ near: nearSideOf(log, row.walk), far: this.#farSide(), time });
    this.#link.watch(() => this.#follow());
  }

  readonly status = (): LinkState => this.#link.status();

  /** Calls back after each change of {@link status}; returns a function that ends it. */
  readonly watch = (onChange: () => void): (() => void) => this.#link.watch(onChange);

  start(): void {
    this.#link.start();
    void this.#everSoOften(CLOCK_EVERY, () => this.#clock.compare());
    void this.#tellPresence();
  }

  wake(): void {
    this.#link.wake();
    // The device may have slept, or its clock may have been set.
    if (this.#kind === "linked") void this.#clock.compare().catch(() => {});
  }

  /** Ends it for good; resolves once nothing of it is under way. */
  async stop(): Promise<void> {
    this.#stop.abort();
    await this.#link.stop();
  }

  /** The hub as a far side to which nothing is sent before the clocks were compared, so that what it would refuse is stamped anew first. */
  #farSide(): FarSide {
    const { hub, row } = this.#parts;
    const far = hubFarSide(hub, row.walk);
    return {
      ...far,
      ready: () => this.#clock.compared(),
      push: async (entries, signal) => {
        const answer = await far.push(entries, signal);
        const isAhead = answer.results.some((result) => "reason" in result && result.reason === "ahead");
        if (isAhead) this.#clock.doubt();
        return answer;
      },
    };
  }

  #follow(): void {
    const { kind, hello } = this.status();
    const isNew = kind !== this.#kind;
    this.#kind = kind;
    if (!isNew || kind !== "linked") return;
    // If there is no answer, the next push or the next round asks again.
    void this.#clock.compare().catch(() => {});
    const { log, row } = this.#parts;
    if (hello && hello.role !== row.role) {
      log.links.change(row.walk, (kept) => ({ ...kept, role: hello.role })).catch(() => {});
    }
  }

  async #tellPresence(): Promise<void> {
    const { log, hub, row } = this.#parts;
    const { signal } = this.#stop;
    let told = "";
    let since = 0;
    let underWay = 0;
    await this.#everSoOften(PRESENCE_SOONEST, async () => {
      const cursor = (await log.links.get(row.walk))?.cursor;
      const text = cursor ? writeCursor(cursor) : "";
      since += PRESENCE_SOONEST;
      if (!cursor || (text === told && since < PRESENCE_LATEST)) return;
      if (underWay >= MOST_UNDER_WAY) return;
      [told, since] = [text, 0];
      underWay += 1;
      hub
        .present(row.walk, cursor, { signal })
        .catch(() => {
          told = "";
        })
        .finally(() => {
          underWay -= 1;
        });
    });
  }

  /** Does something again and again while linked. What fails is tried again the next time. */
  async #everSoOften(ms: number, work: () => Promise<void>): Promise<void> {
    const { signal } = this.#stop;
    while (!signal.aborted) {
      await this.#parts.time.wait(ms, signal);
      if (signal.aborted || this.#kind !== "linked") continue;
      try {
        await work();
      } catch {
        // The link itself detects and reports any trouble with the hub or the store.
      }
    }
  }
}
