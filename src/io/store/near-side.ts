import type { NearSide } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { WalkStore } from "./walk-store.ts";

/** This device's side of the link of a walk. */
export function nearSideOf(store: WalkStore, walk: WalkId): NearSide {
  const { links } = store;
  return {
    outbox: (limit) => links.outbox(walk, limit),
    unsent: () => links.unsent(walk),
    settle: async (settled) => void (await links.settle(walk, settled)),
    cursor: async () => (await links.get(walk))?.cursor ?? null,
    takeIn: async (entries, cursor) => void (await links.takeIn(walk, entries, cursor)),
    watch: (onChange) => store.watch(walk, onChange),
  };
}
