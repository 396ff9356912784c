import type { Instant } from "../../core/units/index.ts";
import type { RandomBytes } from "../device/index.ts";
import { newDeviceSource, platformRandomBytes, randomText } from "../device/index.ts";
import type { IndexedDbParts } from "./database.ts";
import { DATABASE_NAME, TetherlineDatabase } from "./database.ts";
import { DexieEntryStore } from "./dexie-entry-store.ts";
import { DexieProcedureShelf } from "./dexie-procedure-shelf.ts";
import { FallbackEntryStore } from "./fallback-entry-store.ts";
import { MemoryProcedureShelf } from "./memory-procedure-shelf.ts";
import type { ProcedureShelf } from "./procedure-shelf.ts";
import type { HeldKey, KeyPlace } from "./signing-key.ts";
import type { StoreTrouble } from "./store-trouble.ts";
import { troubleOnOpening } from "./store-trouble.ts";

/** What opening the store takes. */
export interface OpenStoreParts {
  /** The clock, for the times of entries and imports. */
  readonly now: () => Instant;
  /** The platform's unless given. */
  readonly random?: RandomBytes;
  /** The app's unless given. */
  readonly name?: string;
  /** The global one unless given. */
  readonly indexedDb?: IndexedDbParts;
  /** What makes keys and signs, the platform's unless given; `null` for none, as outside of secure contexts. */
  readonly subtle?: SubtleCrypto | null;
  /** For how long the browser may take to open the database, in ms; 5 s unless given. */
  readonly patience?: number;
}

/** The store of this device. */
export interface DeviceStore {
  readonly log: FallbackEntryStore;
  readonly shelf: ProcedureShelf;
  /** The `source` of this device's entries, `/devices/…`. */
  readonly device: string;
  /** The key that this device proves its source by, made when it is first asked for; never rejects. */
  key(): Promise<HeldKey>;
  /** Closes the database; for tests, and before the app is left. */
  close(): void;
}

const PATIENCE = 5000;
const MEMORY_LETTERS = 6;

class OpeningTimeoutError extends Error {
  override readonly name = "TimeoutError";
}

/**
 * Opens the store of this device, making it when there is none. Never fails for a reason of the browser's: without a
 * usable database everything is kept in memory, and `log.status()` says why.
 */
export async function openStore(parts: OpenStoreParts): Promise<DeviceStore> {
  const { now, random = platformRandomBytes } = parts;
  const fresh = newDeviceSource(random);
  const memorySource = (device: string) => `${device}/memory-${randomText(MEMORY_LETTERS, random)}`;
  const opened = await openDatabase(parts, fresh);
  if ("reason" in opened) {
    return {
      log: new FallbackEntryStore({
        durable: null,
        reason: opened.reason,
        memorySource: memorySource(fresh),
        now,
      }),
      shelf: new MemoryProcedureShelf(now),
      device: fresh,
      key: keyIn(null, parts),
      close: () => {},
    };
  }
  const { database, device } = opened;
  const durable = new DexieEntryStore(database, device, now);
  return {
    log: new FallbackEntryStore({ durable, memorySource: memorySource(device), now }),
    shelf: new DexieProcedureShelf(database, now),
    device,
    key: keyIn(database, parts),
    close: () => database.close(),
  };
}

/** Gives the key of the database, or with `null` of this page. What makes and uses keys is loaded on joining only. */
function keyIn(database: TetherlineDatabase | null, { subtle = globalThis.crypto?.subtle }: OpenStoreParts) {
  let place: KeyPlace | null = null;
  return async (): Promise<HeldKey> => {
    try {
      const { heldKey, keyPlaceInMemory } = await import("./signing-key.ts");
      place ??= database ? keyPlace(database) : keyPlaceInMemory();
      return await heldKey(place, subtle ?? undefined);
    } catch {
      return { key: null, lack: "not-kept" };
    }
  };
}

function keyPlace(database: TetherlineDatabase): KeyPlace {
  const { device } = database;
  const get = async () => {
    const kept = await device.get("signing-key");
    return kept?.key === "signing-key" ? kept.value : null;
  };
  return {
    get,
    // Two tabs that ask at once get the same.
    keep: (value) =>
      database.transaction("rw", device, async () => {
        const kept = await get();
        if (kept) return kept;
        await device.add({ key: "signing-key", value });
        return value;
      }),
  };
}

type OpenedDatabase =
  | { readonly database: TetherlineDatabase; readonly device: string }
  | { readonly reason: StoreTrouble };

async function openDatabase(
  { name = DATABASE_NAME, indexedDb, patience = PATIENCE }: OpenStoreParts,
  freshSource: string,
): Promise<OpenedDatabase> {
  let database: TetherlineDatabase | null = null;
  try {
    database = new TetherlineDatabase(name, indexedDb);
    const device = await inTime(deviceSource(database, freshSource), patience);
    return { database, device };
  } catch (error) {
    database?.close();
    const reason = troubleOnOpening(error);
    if (!reason) throw error;
    return { reason };
  }
}

/** The source that the database has; when it has none, the fresh one is put there. Two tabs that ask at once get the same. */
async function deviceSource(database: TetherlineDatabase, fresh: string): Promise<string> {
  await database.open();
  return database.transaction("rw", database.device, async () => {
    const kept = await database.device.get("source");
    if (kept?.key === "source") return kept.value;
    await database.device.add({ key: "source", value: fresh });
    return fresh;
  });
}

async function inTime<Result>(work: Promise<Result>, patience: number): Promise<Result> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const timeout = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new OpeningTimeoutError("opening took too long")), patience);
  });
  try {
    return await Promise.race([work, timeout]);
  } finally {
    clearTimeout(timer);
  }
}
