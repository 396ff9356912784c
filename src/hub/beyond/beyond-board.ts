import type { FarHub } from "../../core/link/index.ts";
import { formatInstant, type WalkId } from "../../core/units/index.ts";

/** What is known of the hubs beyond this one, per walk; whoever links with them writes it, streams tell it. */
export class BeyondBoard {
  readonly #hubs = new Map<WalkId, readonly FarHub[]>();
  readonly #listeners = new Set<(walk: WalkId) => void>();

  /** The hubs that this one is linked with for a walk, or would be. */
  of(walk: WalkId): readonly FarHub[] {
    return this.#hubs.get(walk) ?? [];
  }

  put(walk: WalkId, hubs: readonly FarHub[]): void {
    this.#hubs.set(walk, hubs);
    for (const changed of [...this.#listeners]) changed(walk);
  }

  /** Calls back for each change from now on; returns the end of it. */
  listen(changed: (walk: WalkId) => void): () => void {
    this.#listeners.add(changed);
    return () => void this.#listeners.delete(changed);
  }
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
