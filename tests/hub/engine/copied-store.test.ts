import {
  copyFileSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Engine, openEngine, restoreStore } from "../../../src/hub/engine/index.ts";
import { placeOf, readMarker, writeMarker } from "../../../src/hub/engine/store-marker.ts";
import { NOON, notes, WALK } from "./written-notes.ts";

let folder: string;
const engines: Engine[] = [];
const open = async (data: string): Promise<Engine> => {
  const engine = await openEngine({ data, engine: null, now: () => NOON });
  engines.push(engine);
  return engine;
};
const store = (data: string) => join(data, "walks.sqlite");

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "tetherline-copied-"));
});
afterEach(async () => {
  for (const engine of engines.splice(0)) await engine.close().catch(() => {});
  rmSync(folder, { recursive: true, force: true });
});

/** The data folder of a hub that was killed at this moment: a lock and a clean end are all that it lacks. */
function killed(engine: Engine, data: string): string {
  const left = join(folder, "killed");
  cpSync(data, left, { recursive: true });
  const marker = readMarker(left);
  if (!marker) throw new Error("no marker");
  const { isCopied: _, ...rest } = marker;
  writeMarker(left, { ...rest, epoch: engine.epoch, place: placeOf(store(left)) });
  return left;
}

/** How the hub ended before its backup was brought back; returns the folder that it left. */
const ENDS = {
  SIGTERM: async (engine: Engine, data: string) => {
    await engine.close();
    return data;
  },
  SIGKILL: async (engine: Engine, data: string) => killed(engine, data),
} as const;

/** Ways in which people copy: a backup of a folder in use or at rest, and bringing it back into another. */
const WAYS: Readonly<
  Record<string, { readonly at: "rest" | "work"; back(backup: string, data: string): void | Promise<void> }>
> = {
  "cp -r of the folder at rest": {
    at: "rest",
    back: (backup, data) => cpSync(backup, data, { recursive: true }),
  },
  "cp -r of the folder at work": {
    at: "work",
    back: (backup, data) => cpSync(backup, data, { recursive: true }),
  },
  "cp -a of the folder at rest": {
    at: "rest",
    back: (backup, data) => cpSync(backup, data, { recursive: true, preserveTimestamps: true }),
  },
  "cp of the file alone": { at: "rest", back: (backup, data) => copyFileSync(store(backup), store(data)) },
  "cp of the file and its -wal": {
    at: "work",
    back: (backup, data) => {
      copyFileSync(store(backup), store(data));
      copyFileSync(`${store(backup)}-wal`, `${store(data)}-wal`);
    },
  },
  "hub backup and cp": {
    at: "work",
    back: (backup, data) => copyFileSync(join(backup, "online"), store(data)),
  },
  "hub backup and hub restore": {
    at: "work",
    back: (backup, data) => void restoreStore(data, join(backup, "online")),
  },
};

describe("[HUB] a log that was brought back from a copy", () => {
  const cases = Object.keys(WAYS).flatMap((way) =>
    (["SIGTERM", "SIGKILL"] as const).map((end) => [way, end] as const),
  );

  test.each(cases)("by %s after %s is what was copied, under an epoch of its own", async (way, end) => {
    const chosen = WAYS[way];
    if (!chosen) throw new Error(way);
    const [data, backup] = [join(folder, "data"), join(folder, "backup")];
    let engine = await open(data);
    await engine.append(WALK, notes(1, 30));
    if (chosen.at === "rest") await engine.close();
    cpSync(data, backup, { recursive: true });
    if (chosen.at === "rest") engine = await open(data);
    else await engine.backup(join(backup, "online"));
    await engine.append(WALK, notes(31, 80));
    const left = await ENDS[end](engine, data);
    await chosen.back(backup, left);
    const restored = await open(left);
    expect(restored.epoch).not.toBe(engine.epoch);
    const kept = await restored.read(WALK, 0, 1000);
    expect(kept.map(({ id }) => Number(id))).toEqual(notes(1, 30).map(({ wire }) => Number(wire.id)));
    // It goes on as any other: it takes entries, and is itself after the next start.
    await restored.append(WALK, notes(31, 40));
    await restored.close();
    const again = await open(left);
    expect([again.epoch, await again.head(WALK)]).toEqual([restored.epoch, 40]);
    expect(again.findings).toEqual([]);
  });

  test("that lacks its write-ahead file is refused, whatever file of that name was left", async () => {
    const [data, backup] = [join(folder, "data"), join(folder, "backup")];
    const engine = await open(data);
    await engine.append(WALK, notes(1, 30));
    cpSync(data, backup, { recursive: true });
    await engine.append(WALK, notes(31, 80));
    const left = killed(engine, data);
    copyFileSync(store(backup), store(left));
    await expect(open(left)).rejects.toThrow(/walks\.sqlite-wal is gone/);
    expect(readdirSync(left)).toContain("walks.sqlite-wal.left");
  });

  test("whose entries were changed within is refused", async () => {
    const [data, copy] = [join(folder, "data"), join(folder, "copy")];
    const engine = await open(data);
    await engine.append(WALK, notes(1, 30));
    await engine.close();
    cpSync(data, copy, { recursive: true });
    const database = new Database(store(copy));
    database.exec(`UPDATE entries SET text = replace(text, 'seen', 'said') WHERE "offset" = 7`);
    database.close();
    await expect(open(copy)).rejects.toThrow(/is damaged: bring it back from a backup\. \(1:7/);
  });
});

describe("[HUB] a log that was not touched", () => {
  test.each(["SIGTERM", "SIGKILL"] as const)("keeps its epoch over %s", async (end) => {
    const data = join(folder, "data");
    const engine = await open(data);
    await engine.append(WALK, notes(1, 30));
    // Enough that the write-ahead file is brought into the main file in between.
    await engine.append(WALK, notes(31, 60, { text: "x".repeat(200_000) }));
    await engine.append(WALK, notes(61, 80));
    const again = await open(await ENDS[end](engine, data));
    expect([again.epoch, await again.head(WALK), again.findings]).toEqual([engine.epoch, 80, []]);
  });

  test("keeps the epoch that it took while it ran", async () => {
    const data = join(folder, "data");
    const engine = await open(data);
    const before = engine.epoch;
    let told = 0;
    engine.onEpoch(() => {
      told += 1;
    });
    await engine.beginEpoch();
    expect([engine.epoch === before, told]).toEqual([false, 1]);
    await engine.close();
    expect((await open(data)).epoch).toBe(engine.epoch);
  });

  test("of format 1 is brought to the present one, with checks that follow one another", async () => {
    const data = join(folder, "data");
    const engine = await open(data);
    await engine.append(WALK, notes(1, 1_200));
    const length = await engine.lengthOf(WALK, null);
    const checks = (await engine.read(WALK, 0, 2_000)).map(({ check }) => check);
    await engine.close();
    const database = new Database(store(data));
    database.exec(
      'ALTER TABLE entries DROP COLUMN "check"; DROP INDEX entries_by_sequence; DROP TABLE sources',
    );
    database.pragma("user_version = 1");
    database.close();
    const again = await open(data);
    expect((await again.read(WALK, 0, 2_000)).map(({ check }) => check)).toEqual(checks);
    expect([await again.lengthOf(WALK, null), await again.lengthOf(WALK, "/devices/one")]).toEqual([
      length,
      length,
    ]);
    expect(new Set(checks).size).toBe(1_200);
  });
});

describe("[HUB] backups", () => {
  test("are one file of the user's own, are never written over another, and leave nothing of an attempt", async () => {
    const data = join(folder, "data");
    const engine = await open(data);
    await engine.append(WALK, notes(1, 5));
    const file = join(folder, "log.backup");
    await engine.backup(file);
    expect(statSync(file).mode & 0o077).toBe(0);
    await expect(engine.backup(file)).rejects.toThrow(/is there already/);
    await expect(engine.backup(join(folder, "nowhere", "x"))).rejects.toThrow();
    expect(readdirSync(folder).sort()).toEqual(["data", "log.backup"]);
  });

  test("are not brought back where a hub runs, nor from what is none; the log there stays", async () => {
    const [data, letter] = [join(folder, "data"), join(folder, "letter")];
    const engine = await open(data);
    await engine.append(WALK, notes(1, 5));
    const file = join(folder, "log.backup");
    await engine.backup(file);
    writeFileSync(letter, "This is a letter, not a database.".repeat(100));
    for (const [from, words] of [
      [file, /Another hub is using/],
      [letter, /is not a hub's log/],
      [join(folder, "none"), /cannot be made|may not be opened|none/],
    ] as const) {
      expect(() => restoreStore(data, from)).toThrow(words);
    }
    expect(await engine.append(WALK, notes(6, 6))).toHaveLength(1);
    await engine.close();
    const before = readFileSync(store(data));
    expect(() => restoreStore(data, letter)).toThrow();
    expect([readFileSync(store(data)).equals(before), readdirSync(data).sort()]).toEqual([
      true,
      ["hub-secrets.json", "hub-store.json", "walks.sqlite"],
    ]);
    expect(restoreStore(data, file)).toEqual({ walks: 1, entries: 5, aside: join(data, "before-restore") });
    expect(existsSync(join(data, "before-restore", "walks.sqlite"))).toBe(true);
    expect(restoreStore(data, file).aside).toBe(join(data, "before-restore-2"));
    expect(restoreStore(join(folder, "new"), file)).toMatchObject({ entries: 5, aside: null });
  });
});
