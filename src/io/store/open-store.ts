import { deviceOf } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { Keystore, RandomBytes } from "../device/index.ts";
import { isNativeShell, newDeviceSource, platformRandomBytes, randomText } from "../device/index.ts";
import type { IndexedDbParts } from "./database.ts";
import { DATABASE_NAME, TetherlineDatabase } from "./database.ts";
import { DexieEntryStore } from "./dexie-entry-store.ts";
import { DexieProcedureShelf } from "./dexie-procedure-shelf.ts";
import { DexieRemarkStore } from "./dexie-remark-store.ts";
import { FallbackEntryStore } from "./fallback-entry-store.ts";
import type { FindPen } from "./find-pen.ts";
import type { NewSource } from "./lost-store.ts";
import type { ManuscriptShelf } from "./manuscript-shelf.ts";
import { MemoryProcedureShelf } from "./memory-procedure-shelf.ts";
import { MemoryRemarkStore } from "./memory-remark-store.ts";
import type { ProcedureShelf } from "./procedure-shelf.ts";
import type { RemarkStore } from "./remark-store.ts";
import type { SealPen } from "./seal-pen.ts";
import type { HeldKey, KeptKey, KeyPlace } from "./signing-key.ts";
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
  /** The platform's keystore, that of the native shell unless given. */
  readonly keystore?: () => Promise<Keystore | null>;
  /** For how long the browser may take to open the database, in ms; 5 s unless given. */
  readonly patience?: number;
}

/** The store of this device. */
export interface DeviceStore {
  readonly log: FallbackEntryStore;
  readonly shelf: ProcedureShelf;
  /** What readers remark of the procedures of the shelf. */
  readonly remarks: RemarkStore;
  /** What is being written on this device; loaded when it is first asked for. */
  manuscripts(): Promise<ManuscriptShelf>;
  /** Whether there may be any, so that nothing of writing is loaded where there is none. */
  hasManuscripts(): Promise<boolean>;
  /** The `source` of this device's entries, `/devices/…`. */
  readonly device: string;
  /**
   * Goes on as a device of which this one lost its store, under a source of that device with numbers of its own. False, without
   * effect, when something was made or joined here under another device.
   */
  become(device: string): Promise<boolean>;
  /** The key that this device proves its source by, made when it is first asked for; never rejects. */
  key(): Promise<HeldKey>;
  /** Closes the database; for tests, and before the app is left. */
  close(): void;
}

const PATIENCE = 5000;
/** For how long the first entry of a page waits for what seals it, in ms. */
const PEN_PATIENCE = 1000;
const LETTERS = 6;

class NotLoadedError extends Error {
  override readonly name = "NotLoadedError";
}

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
  const opened = await openDatabase(parts, fresh);
  const isOpen = "database" in opened;
  const source = isOpen ? opened.source : fresh;
  const place = isOpen ? keyPlace(opened.database, opened.key) : null;
  const { key, findPen } = keyIn(place, parts);
  const durable = isOpen ? new DexieEntryStore(opened.database, source, now, findPen) : null;
  const newSource: NewSource = (kind, device) => `${deviceOf(device)}/${kind}-${randomText(LETTERS, random)}`;
  const log: FallbackEntryStore = new FallbackEntryStore({
    durable,
    ...(isOpen ? {} : { reason: opened.reason }),
    memorySource: newSource("memory", source),
    now,
    findPen,
    putBack: async (known) => {
      if (durable)
        await (await lostStore()).putBack(durable, known, { newSource, key: place?.held() ?? null });
    },
  });
  return {
    log,
    shelf: isOpen ? new DexieProcedureShelf(opened.database, now) : new MemoryProcedureShelf(now),
    remarks: isOpen ? new DexieRemarkStore(opened.database) : new MemoryRemarkStore(),
    ...manuscriptsIn(isOpen ? opened.database : null, now),
    get device() {
      return deviceOf(log.source);
    },
    become: async (device) => (await lostStore()).become(device, { log, durable, newSource }),
    key,
    close: () => {
      if (isOpen) opened.database.close();
    },
  };
}

/** What is seldom needed, and so loaded only then. */
async function lostStore() {
  try {
    return await import("./lost-store.ts");
  } catch {
    throw new NotLoadedError("a part of the app could not be loaded");
  }
}

/** Gives the manuscripts of the database, or with `null` of this page. Where they are kept is told by a part that only writing needs. */
function manuscriptsIn(
  database: TetherlineDatabase | null,
  now: () => Instant,
): Pick<DeviceStore, "manuscripts" | "hasManuscripts"> {
  let shelf: ManuscriptShelf | null = null;
  return {
    manuscripts: async () => {
      const { openManuscripts } = await import("./open-manuscripts.ts");
      shelf ??= openManuscripts(database, now);
      return shelf;
    },
    hasManuscripts: async () => shelf !== null || ((await database?.manuscripts.count()) ?? 0) > 0,
  };
}

/**
 * Gives the key of the database, or with `null` of this page, and what seals with it. What makes and uses keys is loaded with the first walk that is
 * read, written or joined; what is entered before it is there waits for a moment and then goes unsealed.
 */
function keyIn(
  place: KeyPlace | null,
  { subtle = globalThis.crypto?.subtle, random = platformRandomBytes, keystore }: OpenStoreParts,
): Pick<DeviceStore, "key"> & { readonly findPen: FindPen } {
  let held = place;
  const keyPlaced = async () => {
    const { heldKey, keyPlaceInMemory, sealPen } = await import("./seal-pen.ts");
    held ??= keyPlaceInMemory();
    const parts = {
      subtle: subtle ?? undefined,
      random,
      isShell: isNativeShell(),
      ...(keystore && { keystore }),
    };
    return { heldKey, sealPen, place: held, parts };
  };
  let pen: SealPen | null = null;
  let found: Promise<void> | null = null;
  return {
    key: async () => {
      try {
        const { heldKey, place, parts } = await keyPlaced();
        return await heldKey(place, parts);
      } catch {
        return { key: null, lack: "not-kept" };
      }
    },
    findPen: async () => {
      const find = async () => {
        const { sealPen, place, parts } = await keyPlaced();
        pen = await sealPen(place, parts);
      };
      found ??= inTime(find(), PEN_PATIENCE).catch(() => {});
      await found;
      return pen;
    },
  };
}

/** The place of the key in the database. The page holds the key besides, so that it can be put back. */
function keyPlace(database: TetherlineDatabase, first: KeptKey | null) {
  const { device } = database;
  let held = first;
  const get = async () => {
    const kept = await device.get("signing-key");
    return kept?.key === "signing-key" ? kept.value : null;
  };
  return {
    held: () => held,
    get,
    // Two tabs that ask at once get the same.
    keep: async (value: KeptKey) => {
      held = await database.transaction("rw", device, async () => {
        const kept = await get();
        if (kept) return kept;
        await device.add({ key: "signing-key", value });
        return value;
      });
      return held;
    },
  };
}

type OpenedDatabase =
  | { readonly database: TetherlineDatabase; readonly source: string; readonly key: KeptKey | null }
  | { readonly reason: StoreTrouble };

async function openDatabase(
  { name = DATABASE_NAME, indexedDb, patience = PATIENCE }: OpenStoreParts,
  freshSource: string,
): Promise<OpenedDatabase> {
  let database: TetherlineDatabase | null = null;
  try {
    database = new TetherlineDatabase(name, indexedDb);
    return { database, ...(await inTime(deviceIn(database, freshSource), patience)) };
  } catch (error) {
    database?.close();
    const reason = troubleOnOpening(error);
    if (!reason) throw error;
    return { reason };
  }
}

/** The source and the key that the database has; when it has no source, the fresh one is put there. Two tabs that ask at once get the same. */
async function deviceIn(database: TetherlineDatabase, fresh: string) {
  await database.open();
  return database.transaction("rw", database.device, async () => {
    const kept = new Map((await database.device.toArray()).map(({ key, value }) => [key, value]));
    if (!kept.has("source")) await database.device.add({ key: "source", value: fresh });
    return {
      source: (kept.get("source") ?? fresh) as string,
      key: (kept.get("signing-key") ?? null) as KeptKey | null,
    };
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
