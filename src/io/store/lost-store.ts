import { appliedOffset, deviceOf } from "../../core/log/index.ts";
import type { DexieEntryStore } from "./dexie-entry-store.ts";
import { ReplacedDatabaseError } from "./dexie-rows.ts";
import type { FallbackEntryStore } from "./fallback-entry-store.ts";
import type { KnownOfStore } from "./fallback-parts.ts";
import { nextRound } from "./link-row.ts";
import type { KeptKey } from "./signing-key.ts";
import { byWalk } from "./walk-summary.ts";

/** A name of a source below a device that was never given before. */
export type NewSource = (kind: "memory" | "store", device: string) => string;

/** What a store that was deleted gets beside what was known of it. */
interface PutBackParts {
  readonly newSource: NewSource;
  /** The key that this page holds; `null` for none. */
  readonly key: KeptKey | null;
}

/**
 * Puts back into a database that was deleted while it was in use what a page knows of it. It goes on under a new source of the same
 * device, since numbers may have been given that this page has not heard of. Links are read and sent from the beginning once
 * more. Rejects when the place was taken by another device.
 */
export async function putBack(
  store: DexieEntryStore,
  { entries, links }: KnownOfStore,
  { newSource, key }: PutBackParts,
): Promise<void> {
  const { rows } = store;
  const { database } = rows;
  const source = await database.transaction("rw!", database.device, async () => {
    const kept = await database.device.get("source");
    if (kept?.key === "source") return kept.value;
    const fresh = newSource("store", rows.source);
    await database.device.add({ key: "source", value: fresh });
    if (key) await database.device.put({ key: "signing-key", value: key });
    return fresh;
  });
  const device = deviceOf(rows.source);
  const isBegun = links.length > 0 || entries.some(({ wire }) => deviceOf(wire.source) === device);
  if (deviceOf(source) !== device && isBegun) {
    throw new ReplacedDatabaseError("another device has its data here now");
  }
  rows.source = source;
  for (const some of byWalk(entries).values()) await store.takeIn(some);
  await rows.write(["links", "walks"], async () => {
    for (const row of links) {
      if (await rows.linkOf(row.walk)) continue;
      await rows.putTied({ ...row, cursor: null, pushed: 0, round: nextRound(row) });
      if (!row.clock) continue;
      await rows.putSummary({ ...(await rows.summaryOf(row.walk)), clockOffset: appliedOffset(row.clock) });
    }
  });
}

/** The stores of a device that is to go on as another one. */
interface BecomeParts {
  readonly log: FallbackEntryStore;
  /** `null` without one on disk. */
  readonly durable: DexieEntryStore | null;
  readonly newSource: NewSource;
}

/** See `DeviceStore.become`. */
export async function become(device: string, { log, durable, newSource }: BecomeParts): Promise<boolean> {
  if (deviceOf(log.source) === device) return true;
  if ((await log.links.all()).length > 0) return false;
  for (const { walk } of await log.walks()) {
    const { entries } = await log.read(walk, 0);
    if (entries.some(({ wire }) => deviceOf(wire.source) === deviceOf(log.source))) return false;
  }
  if (durable) {
    const { rows } = durable;
    const { database } = rows;
    rows.source = await database.transaction("rw!", database.device, async () => {
      const kept = await database.device.get("source");
      // Another page of this device was first.
      if (kept?.key === "source" && deviceOf(kept.value) === device) return kept.value;
      const fresh = newSource("store", device);
      await database.device.put({ key: "source", value: fresh });
      return fresh;
    });
  }
  log.renameMemory(newSource("memory", device));
  return true;
}
