import { afterEach, describe, expect, it } from "vitest";
import type { WireEntry } from "../../src/core/log/index.ts";
import { readLines } from "../../src/core/log/index.ts";
import type { JournalEvent } from "../../src/hub/journal/index.ts";
import { NO_JOURNAL } from "../../src/hub/journal/index.ts";
import { joinWith, newKey } from "./keyed-device.ts";
import { SealingDevice, verifiedLines } from "./sealed-notes.ts";
import { NOON, TestHub, WALK } from "./test-hub.ts";
import { written } from "./written-entry.ts";

const IV = "/devices/iv";
const GROUND = "/devices/ground";
const CLOSED = { type: "tetherline.walk.closed", data: { end: "complete" } } as const;

let open: TestHub[] = [];
const noted: JournalEvent[] = [];

async function newHub(shared: TestHub | null = null): Promise<TestHub> {
  const journal = { ...NO_JOURNAL, note: (event: JournalEvent) => noted.push(event) };
  const hub = await TestHub.open({ isWitness: true, journal }, shared?.engine ?? null);
  open.push(hub);
  return hub;
}

afterEach(async () => {
  for (const hub of open) await hub.close();
  open = [];
  noted.length = 0;
});

/** A device of a key of its own that has joined; with its token. */
async function joined(hub: TestHub, source: string, key = newKey()) {
  const answer = await joinWith(hub, { code: hub.owner, device: source, key, walk: WALK });
  if (answer.statusCode !== 201) throw new Error(answer.body);
  return { device: new SealingDevice(source, key), token: answer.json<{ token: string }>().token };
}

const settle = (hub: TestHub) => hub.hub.parts.witness?.settle();
const keyOf = (hub: TestHub) => hub.hub.parts.key.publicKey;
/** What the hub wrote of itself, as type and data. */
const ofHub = async (hub: TestHub) =>
  readLines(await hub.log())
    .entries.filter(({ wire }) => wire.source.startsWith("/hubs/"))
    .map(({ wire }) => ({ type: wire.type.replace("tetherline.", ""), data: wire.data }));

describe("what a hub writes of itself", () => {
  it("[SEL4] says what it is called and whom it let in with which key, once each", async () => {
    const hub = await newHub();
    const { device } = await joined(hub, IV);
    await joinWith(hub, { code: hub.owner, device: IV, key: device.key, walk: WALK });
    await hub.join(GROUND, "watcher");
    await settle(hub);
    expect(await ofHub(hub)).toEqual([
      { type: "hub.named", data: { name: "Test hub" } },
      { type: "device.admitted", data: { source: IV, key: device.key.publicKey, role: "lead", name: "iv" } },
      { type: "device.admitted", data: { source: GROUND, key: null, role: "watcher", name: "ground" } },
    ]);
  });

  it("[SEL5] makes a log whole that is closed, and whole again after what comes late", async () => {
    const hub = await newHub();
    const { device, token } = await joined(hub, IV);
    await hub.push(token, [await device.write({ type: "tetherline.walk.opened", data: OPENED })]);
    await hub.push(token, await device.notes(5));
    await settle(hub);
    const before = verifiedLines(await hub.log(), [keyOf(hub)]);
    expect([before.verdict, before.checkpoints.length]).toEqual(["intact", 0]);
    await hub.push(token, [await device.write(CLOSED)]);
    await settle(hub);
    expect(verifiedLines(await hub.log(), [keyOf(hub)])).toMatchObject({ verdict: "whole", findings: [] });
    const late = await joined(hub, GROUND);
    await hub.push(late.token, await late.device.notes(2));
    await settle(hub);
    const after = verifiedLines(await hub.log(), [keyOf(hub)]);
    expect([after.verdict, after.findings]).toEqual(["whole", []]);
    expect(after.sources.map(({ by }) => by?.name ?? "")).toEqual(["ground", "iv", ""]);
    expect(verifiedLines(await hub.log(), []).verdict).toBe("partly");
  });

  it("[SEL5] makes a checkpoint after 200 entries, and none for its own", async () => {
    const hub = await newHub();
    const { device, token } = await joined(hub, IV);
    await hub.push(token, await device.notes(150));
    await settle(hub);
    expect((await ofHub(hub)).filter(({ type }) => type === "checkpoint.made")).toHaveLength(0);
    await hub.push(token, await device.notes(60));
    await settle(hub);
    await settle(hub);
    const made = (await ofHub(hub)).filter(({ type }) => type === "checkpoint.made");
    expect(made.map(({ data }) => (data as { entries: number }).entries)).toEqual([212]);
  });

  it("[SEL5] makes a checkpoint after something came that belongs before the last one", async () => {
    const hub = await newHub();
    const { device, token } = await joined(hub, IV);
    await hub.push(token, await device.notes(210));
    await settle(hub);
    const earlier = `${String(NOON - 60_000).padStart(15, "0")}-0000`;
    await hub.push(token, [await device.write({ hlc: earlier })]);
    await settle(hub);
    const { checkpoints, findings, verdict } = verifiedLines(await hub.log(), [keyOf(hub)]);
    expect(checkpoints.map(({ state }) => state)).toEqual(["fits", "fits"]);
    expect([verdict, findings]).toEqual(["intact", []]);
  });

  it("[SEL4] is one chain for all processes on one engine", async () => {
    const one = await newHub();
    const two = await newHub(one);
    const { device, token } = await joined(one, IV);
    for (let round = 0; round < 6; round += 1) {
      await Promise.all([
        one.push(token, await device.notes(40)),
        joined(two, `/devices/of-two-${round}`),
        joined(one, `/devices/of-one-${round}`),
      ]);
    }
    await one.push(token, [await device.write(CLOSED)]);
    await Promise.all([settle(one), settle(two)]);
    const found = verifiedLines(await one.log(), [keyOf(one)]);
    expect([found.verdict, found.findings]).toEqual(["whole", []]);
    expect((await ofHub(one)).filter(({ type }) => type === "hub.named")).toHaveLength(1);
    open = [two];
    await two.hub.parts.witness?.close();
    await one.close();
    open = [];
  });

  it("[SEL4] goes on under another source once its store was another one, with no number twice", async () => {
    const hub = await newHub();
    const { device, token } = await joined(hub, IV);
    await hub.push(token, await device.notes(3));
    await settle(hub);
    await hub.engine.beginEpoch();
    await joined(hub, GROUND);
    await hub.push(token, [await device.write(CLOSED)]);
    await settle(hub);
    const found = verifiedLines(await hub.log(), [keyOf(hub)]);
    expect([found.verdict, found.findings]).toEqual(["whole", []]);
    expect(found.sources.filter(({ source }) => source.startsWith("/hubs/"))).toHaveLength(2);
  });

  it("[SEL5] makes the checkpoint at its next start that it did not come to", async () => {
    const hub = await newHub();
    const { device, token } = await joined(hub, IV);
    await settle(hub);
    // Nothing is heard any more, as after SIGKILL.
    const { witness } = hub.hub.parts;
    const kept = await device.notes(3);
    const closing = await device.write(CLOSED);
    const silent = await TestHub.open({}, hub.engine);
    await witness?.close();
    await silent.push(token, [...kept, closing]);
    expect(verifiedLines(await hub.log(), [keyOf(hub)]).verdict).toBe("intact");
    const again = await newHub(hub);
    await settle(again);
    expect(verifiedLines(await again.log(), [keyOf(again)]).verdict).toBe("whole");
    open = [];
    await hub.close();
  });

  it("[SEL4] is told of on the console when it cannot be written, and stops nobody from coming in", async () => {
    const hub = await newHub();
    hub.engine.append = async () => {
      throw new Error("no room");
    };
    await joined(hub, IV);
    await settle(hub);
    expect(hub.told.filter((words) => /of itself/.test(words))).toHaveLength(1);
  });

  it("[SEL4] gives its key code to whoever asks for its health", async () => {
    const hub = await newHub();
    const health = await hub.ask("GET", "/api/health");
    expect(health.json<{ key: string }>().key).toBe(keyOf(hub));
  });
});

describe("entries under seal", () => {
  it("[SEL4] are refused when the seal does not fit the key that the device joined with", async () => {
    const hub = await newHub();
    const { device, token } = await joined(hub, IV);
    const good = await device.write();
    const forged: WireEntry = { ...(await device.write()), data: { text: "something else" } };
    const other = await new SealingDevice(IV, newKey()).write({ id: "0000000009", sequence: "0000000009" });
    const halved: WireEntry = { ...(await device.write()), seal: "abc" };
    const answer = await hub.push(token, [good, forged, other, halved]);
    const { results } = answer.json<{ results: { outcome: string; reason?: string }[] }>();
    expect(results.map(({ outcome, reason }) => reason ?? outcome)).toEqual([
      "accepted",
      "other-source",
      "other-source",
      "other-source",
    ]);
    expect(readLines(await hub.log()).entries.filter(({ wire }) => wire.source === IV)).toHaveLength(1);
  });

  it("[SEL4] are taken under another stamp, and known when they are kept already", async () => {
    const hub = await newHub();
    const { device, token } = await joined(hub, IV);
    const entry = await device.write();
    await hub.push(token, [{ ...entry, hlcmade: entry.hlc, hlc: entry.hlc.replace("-0000", "-0001") }]);
    const answer = await hub.push(token, [entry]);
    expect(answer.json<{ results: { outcome: string }[] }>().results[0]?.outcome).toBe("known");
  });

  it("[SEL3] are not asked of a device without a key, nor of one with a key: what has none is taken and said so", async () => {
    const hub = await newHub();
    const keyed = await joined(hub, IV);
    const token = await hub.join(GROUND);
    await hub.push(token, [written(GROUND, 1), written(GROUND, 2)]);
    await hub.push(keyed.token, [written(IV, 1), written(`${IV}/store-x`, 1)]);
    await hub.push(keyed.token, [written(IV, 1)]);
    await settle(hub);
    expect(noted.filter(({ event }) => event === "unsealed")).toEqual([
      { event: "unsealed", walk: WALK, device: GROUND, entries: 2 },
      { event: "unsealed", walk: WALK, device: IV, entries: 2 },
    ]);
    // Nobody can say later that they were taken off.
    const { verdict, findings } = verifiedLines(await hub.log(), [keyOf(hub)]);
    expect([verdict, new Set(findings.map(({ kind }) => kind))]).toEqual([
      "partly",
      new Set(["unsealed", "nobody-vouches"]),
    ]);
  });

  it("[SEL4] are written by hubs alone where they are a hub's word", async () => {
    const hub = await newHub();
    const { device, token } = await joined(hub, IV);
    const said = await device.write({ type: "tetherline.hub.named", data: { name: "Me" } });
    const answer = await hub.push(token, [said]);
    expect(answer.json<{ results: { reason: string }[] }>().results[0]?.reason).toBe("role");
    const relay = await joinWith(hub, {
      code: hub.owner,
      device: "/hubs/far",
      key: newKey(),
      walk: WALK,
      role: "relay",
    });
    const source = hub.hub.parts.witness?.source ?? "";
    const forged = written(source, 99, { type: "tetherline.hub.named", data: { name: "Not me" } });
    const relayed = await hub.push(relay.json<{ token: string }>().token, [forged]);
    expect(relayed.json<{ results: { reason: string }[] }>().results[0]?.reason).toBe("other-source");
  });
});

const OPENED = { procedure: { id: "p", title: "P" }, mode: "live" };
