import { execFileSync, spawnSync } from "node:child_process";
import {
  copyFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Engine, EngineTroubleError, openEngine } from "../../../src/hub/engine/index.ts";
import { readAll } from "./read-all.ts";
import { NOON, notes, WALK } from "./written-notes.ts";

describe("[HUB] opening the SQLite engine", () => {
  let folder: string;
  let data: string;
  let file: string;
  const engines: Engine[] = [];
  const open = async (at = data): Promise<Engine> => {
    const engine = await openEngine({ data: at, engine: null, now: () => NOON });
    engines.push(engine);
    return engine;
  };
  /** A store with so many entries, closed in order; its epoch. */
  const written = async (count = 5): Promise<string> => {
    const engine = await open();
    await engine.append(WALK, notes(1, count));
    await engine.close();
    return engine.epoch;
  };
  /** Rejects with one sentence (and perhaps a code) for the console. */
  const trouble = async (words: RegExp, at = data): Promise<void> => {
    const failure = await open(at).then(
      () => null,
      (cause: unknown) => cause,
    );
    expect(failure).toBeInstanceOf(EngineTroubleError);
    expect(String(failure)).toMatch(words);
    expect(String(failure)).not.toContain("\n");
  };

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "tetherline-opening-"));
    data = join(folder, "data");
    file = join(data, "walks.sqlite");
  });
  afterEach(async () => {
    for (const engine of engines.splice(0)) await engine.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test("a log whose file vanished is not begun anew, until its owner deletes the marker", async () => {
    const epoch = await written();
    rmSync(file);
    await trouble(/walks\.sqlite is gone or empty: bring it back from a backup, or delete .*hub-store\.json/);
    writeFileSync(file, "");
    await trouble(/gone or empty/);
    expect(statSync(file).size).toBe(0);
    rmSync(join(data, "hub-store.json"));
    const engine = await open();
    expect(engine.epoch).not.toBe(epoch);
    expect(await engine.walks()).toEqual([]);
  });

  test("a write-ahead file that vanished after a sudden end is missed", async () => {
    const engine = await open();
    await engine.append(WALK, notes(1, 5));
    cpSync(data, join(folder, "killed"), { recursive: true });
    rmSync(join(folder, "killed", "walks.sqlite-wal"));
    await trouble(/walks\.sqlite-wal is gone/, join(folder, "killed"));
    rmSync(join(folder, "killed", "hub-store.json"));
    expect((await open(join(folder, "killed"))).epoch).not.toBe(engine.epoch);
  });

  test("a copy has an epoch of its own, and so has a backup that was brought back into the same file", async () => {
    const epoch = await written();
    cpSync(data, join(folder, "copy"), { recursive: true });
    expect((await open(join(folder, "copy"))).epoch).not.toBe(epoch);
    copyFileSync(file, join(folder, "backup"));
    const engine = await open();
    expect(engine.epoch).toBe(epoch);
    await engine.append(WALK, notes(6, 9));
    await engine.close();
    copyFileSync(join(folder, "backup"), file);
    const restored = await open();
    expect(restored.epoch).not.toBe(epoch);
    expect(await restored.head(WALK)).toBe(5);
    await restored.close();
    expect((await open()).epoch).toBe(restored.epoch);
  });

  test("a second hub on the same folder is turned away, also one of another process", {
    timeout: 60_000,
  }, async () => {
    const engine = await open();
    await trouble(/Another hub is using .*walks\.sqlite/);
    const script = `
      import("${new URL("../../machine/speak-english.ts", import.meta.url)}")
        .then(() => import("${new URL("../../../src/hub/engine/index.ts", import.meta.url)}"))
        .then(({ openEngine }) => openEngine({ data: ${JSON.stringify(data)}, engine: null, now: Date.now }))
        .then(() => console.log("opened"), (cause) => console.log(String(cause)));`;
    const { stdout } = spawnSync(process.execPath, ["--import", "tsx", "-e", script], { encoding: "utf8" });
    expect(stdout).toContain("Another hub is using");
    expect(await engine.append(WALK, notes(1, 1))).toHaveLength(1);
  });

  test.each([
    ["cut short", (path: string) => truncateSync(path, 3 * 4096)],
    ["with a hole", (path: string) => scribble(path, 4 * 4096, 8 * 4096)],
    ["with a page of text torn", (path: string) => scribbleText(path)],
    ["with its head torn", (path: string) => scribble(path, 0, 100)],
  ])("a file %s is not used", async (_name, tear) => {
    await written(400);
    tear(file);
    await trouble(/walks\.sqlite is (damaged|not a hub's log): bring it back from a backup/);
    await trouble(/bring it back from a backup/);
  });

  test("what is no log of a hub, or of another version, is left alone", async () => {
    mkdirSync(data);
    writeFileSync(file, "This is a letter, not a database.".repeat(100));
    await trouble(/is not a hub's log/);
    expect(readFileSync(file, "utf8")).toContain("a letter");
    rmSync(file);
    const foreign = new Database(file);
    foreign.exec("CREATE TABLE recipes (name TEXT)");
    foreign.close();
    await trouble(/is not a hub's log/);
    rmSync(file);
    await written();
    const newer = new Database(file);
    newer.pragma("user_version = 4");
    newer.close();
    await trouble(/written by a newer version/);
    await writeFileSync(join(data, "hub-store.json"), "{");
    await trouble(/hub-store\.json is damaged/);
  });

  test("a data folder that is a file, or in one, is said to be none", async () => {
    writeFileSync(data, "");
    await trouble(/is not a folder/);
    await trouble(/is not in a folder/, join(data, "below"));
  });

  test.skipIf(!mayMount())("a read-only data folder is said to be so (root: read-only mount)", async () => {
    await written();
    const view = join(folder, "view");
    mkdirSync(view);
    execFileSync("mount", ["--bind", data, view]);
    try {
      execFileSync("mount", ["-o", "remount,ro,bind", view]);
      await trouble(/may not be (written|opened): give the hub a data folder that it may write/, view);
      await trouble(/give the hub a data folder that it may write/, join(view, "new"));
    } finally {
      execFileSync("umount", [view]);
    }
    expect(await (await open()).head(WALK)).toBe(5);
  });

  test.skipIf(process.getuid?.() !== 0)(
    "a folder of another user is said to be unwritable (root: as nobody)",
    { timeout: 60_000 },
    async () => {
      await written();
      const script = `
      process.setgid(65534); process.setuid(65534);
      import("${new URL("../../machine/speak-english.ts", import.meta.url)}")
        .then(() => import("${new URL("../../../src/hub/engine/index.ts", import.meta.url)}"))
        .then(({ openEngine }) => openEngine({ data: ${JSON.stringify(data)}, engine: null, now: Date.now }))
        .then(() => console.log("opened"), (cause) => console.log(String(cause)));`;
      const { stdout } = spawnSync(process.execPath, ["--import", "tsx", "-e", script], { encoding: "utf8" });
      expect(stdout).toMatch(
        /EngineTroubleError: .* may not be (opened|written): give the hub a data folder/,
      );
    },
  );

  test.skipIf(!mayMount())(
    "a full disk: nothing is confirmed or told that is not kept (root: small tmpfs)",
    { timeout: 60_000 },
    async () => {
      mkdirSync(data);
      execFileSync("mount", ["-t", "tmpfs", "-o", "size=700k", "tmpfs", data]);
      try {
        const engine = await open();
        const told: string[] = [];
        engine.follow((_walk, kept) => told.push(...kept.map(({ id }) => id)));
        const confirmed: string[] = [];
        let failure: unknown = null;
        for (let turn = 0; failure === null && turn < 10_000; turn += 1) {
          const batch = notes(turn * 10 + 1, turn * 10 + 10, { text: "x".repeat(300) });
          await engine.append(WALK, batch).then(
            () => confirmed.push(...batch.map(({ wire }) => wire.id)),
            (cause: unknown) => {
              failure = cause;
            },
          );
        }
        expect(failure).toBeInstanceOf(EngineTroubleError);
        expect(String(failure)).toMatch(/The disk that holds .*walks\.sqlite is full: make room on it/);
        await expect(engine.keep.put("a", "x".repeat(50_000))).rejects.toBeInstanceOf(EngineTroubleError);
        expect(told).toEqual(confirmed);
        expect((await readAll(engine, WALK)).map(({ id }) => id)).toEqual(confirmed);
        writeFileSync(join(folder, "note"), "");
        execFileSync("mount", ["-o", "remount,size=20m", data]);
        const after = notes(1_000_001, 1_000_010);
        expect(await engine.append(WALK, after)).toHaveLength(10);
        await engine.close();
        const again = await open();
        expect(again.epoch).toBe(engine.epoch);
        expect((await readAll(again, WALK)).map(({ id }) => id)).toEqual([
          ...confirmed,
          ...after.map(({ wire }) => wire.id),
        ]);
        await again.close();
      } finally {
        for (const engine of engines.splice(0)) await engine.close().catch(() => {});
        execFileSync("umount", [data]);
      }
    },
  );

  test.skipIf(!mayMount())("a full disk at the start is said to be so (root: small tmpfs)", async () => {
    mkdirSync(data);
    execFileSync("mount", ["-t", "tmpfs", "-o", "size=16k", "tmpfs", data]);
    try {
      await trouble(/is full: make room on it/);
    } finally {
      execFileSync("umount", [data]);
    }
  });

  test("a file that was closed in order leaves nothing beside it but the marker", async () => {
    await written();
    expect(existsSync(`${file}-wal`)).toBe(false);
    expect(statSync(join(data, "hub-store.json")).mode & 0o077).toBe(0);
  });
});

function scribble(path: string, from: number, to: number): void {
  const bytes = readFileSync(path);
  bytes.fill(0x2a, from, to);
  writeFileSync(path, bytes);
}

/** Spoils texts alone, which no check of the tree can find. */
function scribbleText(path: string): void {
  const bytes = readFileSync(path);
  for (let at = bytes.indexOf('"text":"seen"'); at >= 0; at = bytes.indexOf('"text":"seen"', at + 1))
    bytes.fill(0x2a, at, at + 9);
  writeFileSync(path, bytes);
}

/** Whether this is root of a machine that lets it mount. */
function mayMount(): boolean {
  if (process.getuid?.() !== 0) return false;
  const probe = mkdtempSync(join(tmpdir(), "tetherline-mount-"));
  const isMounted = spawnSync("mount", ["-t", "tmpfs", "-o", "size=64k", "tmpfs", probe]).status === 0;
  if (isMounted) spawnSync("umount", [probe]);
  rmSync(probe, { recursive: true, force: true });
  return isMounted;
}
