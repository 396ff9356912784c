import type { Cursor, NearSide } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import type { WalkStore } from "./walk-store.ts";

/** This device's side of the link of a walk. */
export function nearSideOf(store: WalkStore, walk: WalkId): NearSide {
  const { links } = store;
  const resent = new Listeners();
  let round = 0;
  /** How far the log was read; `null` for from its beginning. */
  let read: Cursor | null = null;
  return {
    outbox: async (limit) => {
      const outbox = await links.outbox(walk, limit);
      round = outbox.round;
      return outbox.entries;
    },
    unsent: () => links.unsent(walk),
    settle: async (settled) => void (await links.settle(walk, settled, round)),
    cursor: async () => {
      read = (await links.get(walk))?.cursor ?? null;
      return read;
    },
    takeIn: async (entries, cursor) => {
      const { isResent } = await links.takeIn(walk, entries, cursor, read);
      read = cursor;
      // The walk itself did not change, so no other notification would be sent.
      if (isResent) resent.tell();
    },
    watch: (onChange) => {
      const ends = [resent.add(onChange), store.watch(walk, onChange)];
      return () => {
        for (const end of ends) end();
      };
    },
  };
}
