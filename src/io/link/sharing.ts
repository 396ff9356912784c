import type { BatchLimits, HubClient, LinkTime, Settled } from "../../core/link/index.ts";
import { firstBatch, pairedWith, timeLimit } from "../../core/link/index.ts";
import { deviceOf } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { DeviceStore } from "../store/index.ts";
import { compareClocks } from "./compare-clocks.ts";
import type { Sharing } from "./link-keeper.ts";

const LIMITS: BatchLimits = { batch: 500, batchLength: 1_000_000 };

/** What handing over the entries of others takes. */
interface HandOverParts {
  readonly store: DeviceStore;
  readonly hub: HubClient;
  readonly now: () => Instant;
  readonly wait: LinkTime["wait"];
}

/** How long the answer to a batch may take, in ms. */
const PATIENCE = 120_000;

/**
 * Hands a walk's entries that were not made on this device over to a hub, as only its owner may, before the walk is
 * joined: nothing of its history is missing there then. Entries that the hub would refuse as ahead of its clock are
 * stamped anew first, all together, so that their order stays. Returns those that the hub refused all the same.
 */
export async function handOver(
  { walk, ownerCode }: Sharing,
  { store, hub, now, wait }: HandOverParts,
): Promise<readonly Settled[]> {
  const { log, device } = store;
  await log.links.setClock(walk, await compareClocks(() => hub.clock(), now), "every");
  const { entries } = await log.read(walk, 0);
  const refused: Settled[] = [];
  const foreign = entries.filter(({ wire }) => deviceOf(wire.source) !== deviceOf(device));
  for (let sent = 0; sent < foreign.length; ) {
    const batch = firstBatch(foreign.slice(sent, sent + LIMITS.batch), LIMITS);
    sent += batch.length;
    const { signal, end } = timeLimit(PATIENCE, { wait });
    const answer = await hub.push(walk, batch, { signal, credential: ownerCode }).finally(end);
    refused.push(...pairedWith(batch, answer).filter(({ result }) => result.outcome === "refused"));
  }
  return refused;
}
