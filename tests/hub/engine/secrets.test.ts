import {
  chmodSync,
  copyFileSync,
  mkdirSync,
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
import { type Engine, openEngine } from "../../../src/hub/engine/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { NOON, notes, WALK } from "./written-notes.ts";

let folder: string;
let data: string;
const engines: Engine[] = [];
const open = async (at = data): Promise<Engine> => {
  const engine = await openEngine({ data: at, engine: null, now: () => NOON });
  engines.push(engine);
  return engine;
};
const rights = (path: string) => statSync(path).mode & 0o777;
const told = ({ findings }: Engine) => findings.map(inWords).join("\n");

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "tetherline-secrets-"));
  data = join(folder, "data");
});
afterEach(async () => {
  for (const engine of engines.splice(0)) await engine.close().catch(() => {});
  rmSync(folder, { recursive: true, force: true });
});

describe("[HUB] the files of a hub", () => {
  test("are for its user alone from the first moment on, whatever the user's habits are", async () => {
    const engine = await open();
    await engine.append(WALK, notes(1, 5));
    await engine.keep.put("admission.owner", "abcdefghj");
    expect(rights(data)).toBe(0o700);
    for (const name of readdirSync(data)) expect([name, rights(join(data, name))]).toEqual([name, 0o600]);
  });

  test("that others may read are closed to them at the start, which is said", async () => {
    await (await open()).close();
    chmodSync(data, 0o755);
    for (const name of readdirSync(data)) chmodSync(join(data, name), 0o644);
    const engine = await open();
    expect(told(engine)).toMatch(/Others could read or write in .*: its files are for this user alone again/);
    expect(rights(data)).toBe(0o700);
    for (const name of readdirSync(data)) expect([name, rights(join(data, name))]).toEqual([name, 0o600]);
    await engine.close();
    expect(told(await open())).toBe("");
  });

  test("are closed in a folder of other things too, which is left as it is unless others may write in it", async () => {
    mkdirSync(data);
    writeFileSync(join(data, "letter"), "Dear");
    chmodSync(join(data, "letter"), 0o644);
    chmodSync(data, 0o755);
    const engine = await open();
    expect([rights(data), rights(join(data, "letter")), rights(join(data, "walks.sqlite"))]).toEqual([
      0o755, 0o644, 0o600,
    ]);
    await engine.close();
    chmodSync(data, 0o777);
    await expect(open()).rejects.toThrow(/Others may write in .*: give the hub a data folder of its own/);
  });
});

describe("[HUB] secrets", () => {
  const SECRETS = ["admission.owner", "admission.signing", "cursor.key", "upstream.ticket https://far walk"];

  test("are in a file of their own, neither in the log nor in its backups, and all else is in the log", async () => {
    const engine = await open();
    for (const key of SECRETS) await engine.keep.put(key, `secret of ${key}`);
    await engine.keep.put("member.x", "a member");
    await engine.backup(join(folder, "backup"));
    await engine.close();
    for (const file of [join(data, "walks.sqlite"), join(folder, "backup")]) {
      const text = readFileSync(file, "latin1");
      expect([text.includes("secret of"), text.includes("a member")]).toEqual([false, true]);
    }
    const again = await open();
    for (const key of SECRETS) expect(await again.keep.get(key)).toBe(`secret of ${key}`);
    expect([...(await again.keep.list("upstream."))]).toEqual([[SECRETS[3], `secret of ${SECRETS[3]}`]]);
  });

  test("are put once, changed, removed and told of as all that is kept", async () => {
    const { keep } = await open();
    const changes: [string, string | null][] = [];
    const stop = keep.watch("admission.", (key, value) => changes.push([key, value]));
    expect([await keep.create("admission.owner", "a"), await keep.create("admission.owner", "b")]).toEqual([
      true,
      false,
    ]);
    await keep.put("admission.owner", "c");
    await keep.remove("admission.owner");
    await keep.remove("admission.owner");
    stop();
    await keep.put("admission.owner", "d");
    expect(changes).toEqual([
      ["admission.owner", "a"],
      ["admission.owner", "c"],
      ["admission.owner", null],
    ]);
  });

  test("that an earlier version kept in the log are moved, and nothing of them is left in its file", async () => {
    await (await open()).close();
    rmSync(join(data, "hub-secrets.json"));
    const database = new Database(join(data, "walks.sqlite"));
    const put = database.prepare("INSERT INTO keep VALUES (?, ?)");
    for (const key of SECRETS) put.run(key, `secret of ${key}`);
    database.close();
    const engine = await open();
    expect(await engine.keep.get("admission.owner")).toBe("secret of admission.owner");
    expect(told(engine)).not.toMatch(/hub-secrets/);
    await engine.close();
    expect(readFileSync(join(data, "walks.sqlite"), "latin1")).not.toContain("secret of");
    expect(await (await open()).keep.get("cursor.key")).toBe("secret of cursor.key");
  });

  test("that are lost are missed in words; a file of them that is damaged is not replaced", async () => {
    await (await open()).close();
    copyFileSync(join(data, "hub-secrets.json"), join(folder, "kept"));
    rmSync(join(data, "hub-secrets.json"));
    const engine = await open();
    expect(told(engine)).toMatch(
      /hub-secrets\.json\) is not here: the owner's code is another one, and all have to join/,
    );
    await engine.close();
    writeFileSync(join(data, "hub-secrets.json"), "{");
    await expect(open()).rejects.toThrow(
      /hub-secrets\.json is damaged: bring it back from a backup, or delete it/,
    );
    expect(readFileSync(join(data, "hub-secrets.json"), "utf8")).toBe("{");
  });
});
