import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { LIBRARY, libraryOf, revisionHash } from "../../../src/core/library/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import { laterOf, readEntry, stamp } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { type NatsServers, startNats, whyNoNats } from "../../machine/nats-server.ts";
import { readAll } from "../engine/read-all.ts";
import type { LiveHub } from "./live-hub.ts";
import { HERE, PATIENT, THERE, TwoHubs } from "./two-hubs.ts";

const text = (revision: string, more: object = {}) =>
  JSON.stringify({ id: "ring", title: "Ring exchange", revision, ...more });
const A = text("A");

/** The entries of the library that a hub has. */
async function entriesOf(hub: LiveHub): Promise<readonly Entry[]> {
  const kept = await readAll(hub.parts.engine, LIBRARY);
  return kept.flatMap(({ text: written }) => readEntry(JSON.parse(written)).entry ?? []);
}

const ringOf = async (hub: LiveHub) => libraryOf(await entriesOf(hub)).procedures[0] ?? null;

/** Keeps a revision at a hub, as a device would that has read what is there. */
async function keep(hub: LiveHub, source: string, revision: string, bases: readonly string[]): Promise<void> {
  const there = await entriesOf(hub);
  const seen = there.reduce<Entry["hlc"] | null>((latest, { hlc }) => laterOf(latest, hlc), null);
  const at = (Date.UTC(2021, 3, 2, 9) + there.length * 1000) as Instant;
  const data = { text: revision, bases: bases.map(revisionHash), why: "" };
  const made = there.filter(({ wire }) => wire.source === source).length;
  await hub.write(
    [stamp({ name: "revision.kept", data, at, actor: source.slice(9) }, LIBRARY, { source, made, seen }, at)],
    LIBRARY,
  );
}

/** The engines of the two, by which of them keep their entries in JetStream. */
const ENGINES = [
  { engines: "in a folder each", jetstream: [] },
  { engines: "the ground on JetStream", jetstream: ["ground"] },
  { engines: "the vehicle on JetStream", jetstream: ["vehicle"] },
  { engines: "both on JetStream", jetstream: ["ground", "vehicle"] },
] as const;

for (const { engines, jetstream } of ENGINES) {
  const skipped = jetstream.length > 0 ? whyNoNats() : null;
  const title = `[LINK] a library over two linked hubs, ${engines} ${skipped ?? ""}`;
  describe.skipIf(skipped !== null)(title, { timeout: 60_000 }, () => libraryOver(jetstream));
}

function libraryOver(jetstream: readonly string[]): void {
  let hubs: TwoHubs;
  let nats: NatsServers | null = null;
  let stores = 0;
  beforeAll(async () => {
    if (jetstream.length > 0) nats = await startNats({ count: 1 });
  });
  afterAll(() => nats?.stop());
  beforeEach(async () => {
    stores += 1;
    const urls = jetstream.map((hub) => [hub, `${nats?.url}?name=${hub}${stores}`]);
    hubs = await TwoHubs.open({ engines: Object.fromEntries(urls) });
  });
  afterEach(() => hubs.end());

  test("[WRT7] a revision that is kept at one is at the other", async () => {
    const { ground, vehicle } = hubs;
    await keep(vehicle, HERE, A, []);
    hubs.link();
    await hubs.agree(1, LIBRARY);
    expect((await ringOf(ground))?.heads).toMatchObject([{ text: A, by: "vehicle" }]);
  });

  test("[CHG5] two that went on from one while apart are told at both, and are one again by a third", async () => {
    const { ground, vehicle, proxy } = hubs;
    await keep(vehicle, HERE, A, []);
    hubs.link();
    await hubs.agree(1, LIBRARY);
    proxy.set("closed");
    proxy.cut();
    const [here, there] = [text("B", { summary: "here" }), text("B", { summary: "there" })];
    await keep(vehicle, HERE, here, [A]);
    await keep(ground, THERE, there, [A]);
    proxy.set("open");
    await hubs.agree(3, LIBRARY);
    for (const hub of [ground, vehicle]) {
      const ring = await ringOf(hub);
      expect(new Set(ring?.heads.map((one) => one.text))).toEqual(new Set([here, there]));
      expect(ring?.apart?.base?.text).toBe(A);
    }
    const both = text("C");
    await keep(ground, THERE, both, [here, there]);
    await hubs.agree(4, LIBRARY);
    for (const hub of [ground, vehicle]) {
      expect(await ringOf(hub)).toMatchObject({ apart: null, heads: [{ text: both }] });
    }
  });

  test("[WRT7] what was kept stays when a hub is closed and opened again", async () => {
    const { ground, vehicle } = hubs;
    await keep(ground, THERE, A, []);
    await ground.close();
    await ground.open();
    await keep(ground, THERE, text("B"), [A]);
    hubs.link();
    await hubs.agree(2, LIBRARY);
    expect(await ringOf(vehicle)).toMatchObject({ apart: null, heads: [{ text: text("B") }] });
  });

  test("[WRT7] a revision with pictures is kept and passed on, or refused with its reason and nothing else lost", async () => {
    const { ground, vehicle } = hubs;
    const long = text("B", { summary: "x".repeat(3_000_000) });
    hubs.link();
    await keep(vehicle, HERE, A, []);
    const failure = await keep(vehicle, HERE, long, [A]).then(
      () => null,
      (cause: unknown) => (cause as Error).message,
    );
    const isTaken = (hub: "ground" | "vehicle") => !jetstream.some((one) => one === hub);
    if (!isTaken("vehicle")) expect(failure).toMatch(/an entry of its kind may have 347477 here: shorten it/);
    else {
      expect(failure).toBeNull();
      expect((await ringOf(vehicle))?.heads[0]?.text).toBe(long);
      const refused = () => vehicle.beyond(LIBRARY)?.words;
      if (!isTaken("ground")) await expect.poll(refused, PATIENT).toContain("shorten it");
    }
    const kept = isTaken("vehicle") && isTaken("ground") ? long : A;
    await expect
      .poll(async () => (await ringOf(ground))?.heads.map((one) => one.text), PATIENT)
      .toEqual([kept]);
    await keep(ground, THERE, text("C"), [A]);
    await expect
      .poll(async () => (await ringOf(vehicle))?.heads.map((one) => one.text), PATIENT)
      .toContain(text("C"));
  });
}
