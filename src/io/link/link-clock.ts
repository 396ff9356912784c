import type { HubClient } from "../../core/link/index.ts";
import type { ClockOffset } from "../../core/log/index.ts";
import { mayMark, WORTH_TELLING } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { inSeconds } from "../../core/units/index.ts";
import type { WalkStore } from "../store/index.ts";
import { betterOf, compareClocks } from "./compare-clocks.ts";

/** What the clock of a link is made of. */
interface LinkClockParts {
  readonly walk: WalkId;
  readonly log: WalkStore;
  readonly hub: HubClient;
  readonly now: () => Instant;
  readonly signal: AbortSignal;
}

/** Compares this device's clock with the hub's, makes hybrid times follow the hub's, and logs each result of note. */
export class LinkClock {
  readonly #parts: LinkClockParts;
  #isCompared = false;
  /** How long the shortest question of the last comparison took, in ms. */
  #trip = 0;
  #work: Promise<void> | null = null;

  constructor(parts: LinkClockParts) {
    this.#parts = parts;
  }

  /**
   * Resolves once the clocks were compared since the link began: nothing may be sent before that. Resolves with how long a
   * question to the hub took, in ms. Rejects as the hub's answers do.
   */
  async compared(): Promise<number> {
    if (!this.#isCompared) await this.compare();
    return this.#trip;
  }

  /** Notes that the hub found entries ahead of its clock, so that the last comparison is out of date. */
  doubt(): void {
    this.#isCompared = false;
  }

  /** Compares the clocks. Calls while a comparison is under way wait for that one. */
  compare(): Promise<void> {
    this.#work ??= this.#compare().finally(() => {
      this.#work = null;
    });
    return this.#work;
  }

  async #compare(): Promise<void> {
    const { walk, log, hub, now, signal } = this.#parts;
    const found = await compareClocks(() => hub.clock({ signal }), now);
    this.#trip = 2 * found.error;
    const row = await log.links.get(walk);
    if (!row || signal.aborted) return;
    const clock = betterOf(row.clock, found);
    await log.links.setClock(walk, clock, "own");
    this.#isCompared = true;
    if (mayMark(row.role) && isNews(clock, row.loggedOffset)) {
      await log.append(walk, [
        {
          name: "clock.compared",
          data: { hub: row.hub, offset: inSeconds(clock.offset), error: inSeconds(clock.error) },
          at: now(),
          actor: row.name,
        },
      ]);
      await log.links.change(walk, (kept) => ({ ...kept, loggedOffset: clock.offset }));
    }
  }
}

/** Whether a comparison is worth an entry: it is not when it differs from the last one by no more than its error. */
function isNews({ offset, error }: ClockOffset, logged: number | null): boolean {
  return logged === null || Math.abs(offset - logged) > Math.max(WORTH_TELLING, error);
}
