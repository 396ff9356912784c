import { cpSync, mkdtempSync, readFileSync, renameSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Instant } from "../../src/core/units/index.ts";
import { type Journal, openJournal } from "../../src/hub/journal/index.ts";
import { startHub } from "../../src/hub/start-hub.ts";
import { NOON, TestHub, WALK } from "./test-hub.ts";
import { written } from "./written-entry.ts";

let folder: string;
let path: string;
let journal: Journal;
const told: string[] = [];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "tetherline-journal-"));
  path = join(folder, "journal.jsonl");
  told.length = 0;
  journal = openJournal(
    path,
    () => NOON,
    (words) => told.push(words),
  );
});
afterEach(() => {
  journal.close();
  rmSync(folder, { recursive: true, force: true });
});
const lines = (at = path) =>
  readFileSync(at, "utf8")
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as { event: string });

describe("[HUB] the journal", () => {
  it("says who came in, who was turned away and what was refused, and neither codes nor tokens nor what entries say", async () => {
    const hub = await TestHub.open({ journal, names: new Set(["localhost"]) });
    const token = await hub.join("/devices/d", "marker");
    await hub.ask("POST", "/api/join", { body: { code: "ABC-DEF-GHJ", device: "/devices/x" } });
    await hub.ask("GET", "/api/walks", { token: "abcdefghj" });
    await hub.push(token, [
      written("/devices/d", 1, { data: { text: "private" } }),
      written("/devices/x", 1),
      {},
    ]);
    await hub.ask("GET", "/", { headers: { host: "rebound.example" } });
    await hub.engine.beginEpoch();
    await hub.ask("POST", `/api/walks/${WALK}/leave`, { token, body: {} });
    const [owner, { epoch }] = [hub.owner, hub.engine];
    await hub.close();
    const at = { time: "2031-04-02T12:00:00.000Z" };
    expect(lines()).toEqual([
      { ...at, event: "started", epoch: expect.any(String) },
      { ...at, event: "joined", walk: WALK, device: "/devices/d", role: "marker", address: "127.0.0.1" },
      { ...at, event: "wrong-code", address: "127.0.0.1" },
      { ...at, event: "wrong-code", address: "127.0.0.1" },
      {
        ...at,
        event: "refused",
        walk: WALK,
        device: "/devices/d",
        reasons: { "other-source": 1, "not-an-entry": 1 },
      },
      { ...at, event: "unsealed", walk: WALK, device: "/devices/d", entries: 1 },
      { ...at, event: "other-name", address: "127.0.0.1" },
      { ...at, event: "another-epoch", epoch },
      { ...at, event: "token-ended", walk: WALK, device: "/devices/d" },
      { ...at, event: "ended", epoch },
    ]);
    const text = readFileSync(path, "utf8").toLowerCase();
    for (const secret of [owner, token, "private", "abc-def-ghj", "abcdefghj"]) {
      expect(text).not.toContain(secret.toLowerCase());
    }
    expect(statSync(path).mode & 0o077).toBe(0);
  });

  it("says who asked for what they may not, once a minute each, and who let in and put out whom", async () => {
    const hub = await TestHub.open({ journal });
    const lead = await hub.join("/devices/lead");
    const marker = await hub.join("/devices/d", "marker");
    const walk = `/api/walks/${WALK}`;
    const invite = { body: { role: "marker", devices: 2 } };
    for (let times = 0; times < 3; times += 1) {
      await hub.ask("POST", `${walk}/invitations`, { ...invite, token: marker });
      await hub.ask("GET", "/api/walks/another/entries", { token: marker });
    }
    hub.now = (hub.now + 60_000) as Instant;
    await hub.ask("GET", "/api/walks/another/entries", { token: marker });
    await hub.ask("POST", "/api/join", { body: {}, headers: { "sec-fetch-site": "cross-site" } });
    const made = await hub.ask("POST", `${walk}/invitations`, { ...invite, token: lead });
    const { invitations } = (await hub.ask("GET", `${walk}/invitations`, { token: lead })).json();
    await hub.ask("DELETE", `${walk}/invitations/${invitations[0].name}`, { token: hub.owner });
    await hub.ask("DELETE", `${walk}/followers/${encodeURIComponent("/devices/d")}`, { token: lead });
    await hub.ask("DELETE", `${walk}/followers`, { token: lead });
    await hub.close();
    const from = { walk: WALK, address: "127.0.0.1" };
    const by = { ...from, by: "/devices/lead" };
    expect(lines().filter(({ event }) => !/^(started|joined|ended)$/.test(event))).toMatchObject([
      { event: "forbidden", ...from, device: "/devices/d", why: "role" },
      { event: "forbidden", ...from, device: "/devices/d", why: "other-walk" },
      { event: "forbidden", ...from, device: "/devices/d", why: "other-walk" },
      { event: "forbidden", walk: null, device: null, why: "cross-site" },
      { event: "invited", ...by, role: "marker", devices: 2 },
      { event: "invitation-ended", ...from, by: null },
      { event: "token-ended", device: "/devices/d" },
      { event: "withdrawn", ...by, device: "/devices/d" },
      { event: "withdrawn", ...by, device: null },
    ]);
    expect(readFileSync(path, "utf8").toUpperCase()).not.toContain(made.json<{ code: string }>().code);
  });

  it("goes on in a file of its name once it was moved away and opened anew", () => {
    journal.note({ event: "started", epoch: "one" });
    renameSync(path, `${path}.1`);
    journal.note({ event: "another-epoch", epoch: "two" });
    journal.reopen();
    journal.note({ event: "ended", epoch: "two" });
    expect([lines(`${path}.1`).map(({ event }) => event), lines().map(({ event }) => event)]).toEqual([
      ["started", "another-epoch"],
      ["ended"],
    ]);
  });

  it("is apart from what the console was told, which has a file of its own; SIGHUP opens both anew", async () => {
    const [log, data] = [join(folder, "log.jsonl"), join(folder, "data")];
    const console = { out: () => {}, err: (text: string) => void told.push(text.trimEnd()) };
    const begin = (at: string) =>
      startHub(
        {
          ...{ port: 0, host: "127.0.0.1", data: at, certificate: null, key: null, engine: null, name: "H" },
          ...{ plain: false, newOwnerCode: false, upstream: null, upstreamCode: null, app: folder },
          ...{ journal: path, log },
        },
        console,
      );
    await (await begin(data)).close();
    cpSync(data, `${data}-copied`, { recursive: true });
    const copied = await begin(`${data}-copied`);
    renameSync(log, `${log}.1`);
    renameSync(path, `${path}.1`);
    process.emit("SIGHUP");
    await copied.close();
    const before = lines(`${log}.1`);
    expect(before.map(({ event }) => event)).toEqual(["started", "ended", "started", "told"]);
    expect(before.at(-1)).toMatchObject({ words: told[0] });
    expect([lines(log), lines()].map((some) => some.map(({ event }) => event))).toEqual([
      ["ended"],
      ["ended"],
    ]);
    expect(statSync(log).mode & 0o077).toBe(0);
  });

  it("that cannot be written stops nothing, says so once, and goes on when it can", () => {
    renameSync(folder, `${folder}-away`);
    journal.reopen();
    journal.note({ event: "started", epoch: "one" });
    expect(told).toEqual([expect.stringMatching(/^The journal .* cannot be written: /)]);
    renameSync(`${folder}-away`, folder);
    journal.note({ event: "ended", epoch: "one" });
    expect(lines().map(({ event }) => event)).toEqual(["ended"]);
    expect(() =>
      openJournal(
        join(folder, "none", "x"),
        () => NOON,
        () => {},
      ),
    ).toThrow(/cannot be written/);
  });
});
