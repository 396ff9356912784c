import type { PushResult, RefusalReason, Settled } from "../../../src/core/link/index.ts";
import type { Entry, HybridTime } from "../../../src/core/log/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import type { NewLink } from "../../../src/io/store/index.ts";
import { entryFrom, source, start, walk } from "./stand-ins.ts";

/** Another device. */
export const ground = "/devices/ground";

/** A walk joined as its lead. */
export const joining: NewLink = {
  walk,
  origin: "https://hub.example",
  hub: "hub-1",
  hubName: "Hub",
  role: "lead",
  name: "Inside",
  device: source,
  joinedAt: start,
};

/** A place in a hub's log. */
export const at = (offset: number, epoch = "one") => ({ epoch, offset });
/** What comparing clocks came to, in ms. */
export const clock = (offset: number, error = 10) => ({
  offset: offset as Duration,
  error: error as Duration,
});

/** An entry that a hub has by now, under `hlc` where that is another than it was offered with. */
export const accepted = (
  entry: Entry,
  outcome: "accepted" | "known" = "accepted",
  hlc?: HybridTime,
): Settled => ({
  entry,
  result: {
    source: entry.wire.source,
    id: entry.wire.id,
    outcome,
    ...(hlc === undefined ? {} : { hlc }),
  },
});
/** An entry that a hub would not have. */
export const refused = (entry: Entry, reason: RefusalReason): Settled => {
  const { source: of, id } = entry.wire;
  const result: PushResult = { source: of, id, outcome: "refused", reason, words: "no" };
  return { entry, result };
};
/** The same entry as a hub has it that got it under another hybrid time. */
export const restamped = (entry: Entry, wall: number): Entry => {
  const hlc = `${String(wall).padStart(15, "0")}-0000`;
  return entryFrom(entry.wire.source, Number(entry.wire.id), { ...entry.wire, hlc });
};
