import type { FarHub } from "../../core/link/index.ts";
import { formatInstant, Listeners, type WalkId } from "../../core/units/index.ts";

/** What is known of the hubs beyond this one, for each walk. The links with them write it; the streams of events tell it. */
export class BeyondBoard {
  readonly #hubs = new Map<WalkId, readonly FarHub[]>();
  readonly #listeners = new Listeners<[walk: WalkId]>();

  /** The hubs that this one is linked with for a walk, or would be. */
  of(walk: WalkId): readonly FarHub[] {
    return this.#hubs.get(walk) ?? [];
  }

  /** All hubs of all walks. */
  all(): readonly FarHub[] {
    return [...this.#hubs.values()].flat();
  }

  put(walk: WalkId, hubs: readonly FarHub[]): void {
    this.#hubs.set(walk, hubs);
    this.#listeners.tell(walk);
  }

  /** Calls back after each change of a walk; returns a function that ends it. */
  readonly listen = this.#listeners.add;
}

/** The hubs beyond as sent in event `beyond`: instants as text. */
export function beyondDocument(hubs: readonly FarHub[]) {
  return {
    hubs: hubs.map((hub) => ({
      ...hub,
      sentUpTo: hub.sentUpTo === null ? null : formatInstant(hub.sentUpTo),
      heardAt: hub.heardAt === null ? null : formatInstant(hub.heardAt),
    })),
  };
}
