import type { BatchLimits, Settled } from "../../core/log/index.ts";
import { deviceOf, firstBatch, UnreachableError } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { DeviceStore } from "../store/index.ts";
import { compareClocks } from "./compare-clocks.ts";
import type { HubClient } from "./hub-client.ts";
import type { Sharing } from "./link-keeper.ts";

const LIMITS: BatchLimits = { batch: 500, batchLength: 1_000_000 };

/** What handing over the entries of others takes. */
interface HandOverParts {
  readonly store: DeviceStore;
  readonly hub: HubClient;
  readonly now: () => Instant;
}

/**
 * Hands a walk's entries that were not made on this device over to a hub, as only its owner may, before the walk is
 * joined: nothing of its history is missing there then. Entries that the hub would refuse as ahead of its clock are
 * stamped anew first, all together, so that their order stays. Returns those that the hub refused all the same.
 */
export async function handOver(
  { walk, ownerCode }: Sharing,
  { store, hub, now }: HandOverParts,
): Promise<readonly Settled[]> {
  const { log, device } = store;
  await log.links.setClock(walk, await compareClocks(() => hub.clock(), now), "every");
  const { entries } = await log.read(walk, 0);
  const refused: Settled[] = [];
  const foreign = entries.filter(({ wire }) => deviceOf(wire.source) !== deviceOf(device));
  for (let sent = 0; sent < foreign.length; ) {
    const batch = firstBatch(foreign.slice(sent, sent + LIMITS.batch), LIMITS);
    sent += batch.length;
    const { results } = await hub.push(walk, batch, new AbortController().signal, ownerCode);
    if (results.length !== batch.length) throw new UnreachableError("The hub's answer could not be read.");
    for (const [index, entry] of batch.entries()) {
      const result = results[index];
      if (result?.outcome === "refused") refused.push({ entry, result });
    }
  }
  return refused;
}
