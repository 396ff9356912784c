import type { LinkState, LinkTime } from "../../core/log/index.ts";
import { Link, mayMark, WORTH_TELLING, writeCursor } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { inSeconds } from "../../core/units/index.ts";
import type { DeviceStore, LinkRow } from "../store/index.ts";
import { nearSideOf } from "../store/index.ts";
import { readHubClock } from "./hub-clock.ts";
import { hubFarSide, walkPath } from "./hub-far-side.ts";
import type { HubRequests } from "./hub-requests.ts";
import { ask, posted } from "./hub-requests.ts";

/** How often the hub is told how far this device has read, in ms. */
const PRESENCE_EVERY = 10_000;

/** How often the clocks are held against one another, in ms. */
const CLOCK_EVERY = 300_000;

/** What a running link is made of. */
export interface RunningLinkParts {
  readonly store: DeviceStore;
  readonly hub: HubRequests;
  readonly row: LinkRow;
  readonly now: () => Instant;
  readonly time: LinkTime;
}

/** The link of one walk while it runs: entries both ways, presence and the clock. */
export class RunningLink {
  readonly #parts: RunningLinkParts;
  readonly #link: Link;
  readonly #stop = new AbortController();

  constructor(parts: RunningLinkParts) {
    const { store, hub, row, time } = parts;
    this.#parts = parts;
    this.#link = new Link({
      near: nearSideOf(store.log, row.walk),
      far: hubFarSide(hub, row.walk),
      time,
    });
  }

  readonly status = (): LinkState => this.#link.status();
  readonly watch = (onChange: () => void): (() => void) => this.#link.watch(onChange);

  start(): void {
    this.#link.start();
    void this.#every(PRESENCE_EVERY, () => this.#tellPresence());
    void this.#every(CLOCK_EVERY, () => this.compareClocks());
  }

  wake(): void {
    this.#link.wake();
  }

  async stop(): Promise<void> {
    this.#stop.abort();
    await this.#link.stop();
  }

  /** Holds this device's clock against the hub's, has entries stamped by it, and logs it when it moved ([LOG1]). */
  async compareClocks(): Promise<void> {
    const { store, hub, row, now } = this.#parts;
    const clock = await readHubClock(hub, now);
    if (!clock) return;
    const { walk } = row;
    await store.log.links.setClock(walk, clock, "own");
    const kept = await store.log.links.get(walk);
    if (!kept || !mayMark(kept.role)) return;
    const { loggedOffset } = kept;
    if (loggedOffset !== null && Math.abs(loggedOffset - clock.offset) <= WORTH_TELLING) return;
    await store.log.append(walk, [
      {
        name: "clock.compared",
        data: { hub: kept.hub, offset: inSeconds(clock.offset), error: inSeconds(clock.error) },
        at: now(),
        actor: kept.name,
      },
    ]);
    await store.log.links.change(walk, (before) => ({ ...before, loggedOffset: clock.offset }));
  }

  async #tellPresence(): Promise<void> {
    const { store, hub, row } = this.#parts;
    const kept = await store.log.links.get(row.walk);
    if (!kept?.cursor) return;
    await ask(hub, `${walkPath(row.walk)}/presence`, posted({ cursor: writeCursor(kept.cursor) }));
  }

  /** Does something whenever the link is up and the time has come; what fails is done the next time. */
  async #every(ms: number, work: () => Promise<void>): Promise<void> {
    const { signal } = this.#stop;
    const { time } = this.#parts;
    while (!signal.aborted && this.status().kind !== "ended") {
      const isUp = this.status().kind === "linked";
      let isDone = false;
      if (isUp) {
        try {
          await work();
          isDone = true;
        } catch {
          // The link itself tells what is wrong with the hub or the store.
        }
      }
      await time.wait(isDone ? ms : Math.min(ms, 1000), signal);
    }
  }
}
