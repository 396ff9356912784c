import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { LIBRARY, libraryOf, revisionHash } from "../../../src/core/library/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import { laterOf, readEntry, stamp } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { readAll } from "../engine/read-all.ts";
import type { LiveHub } from "./live-hub.ts";
import { HERE, THERE, TwoHubs } from "./two-hubs.ts";

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

describe("[LINK] a library over two linked hubs", { timeout: 60_000 }, () => {
  let hubs: TwoHubs;
  beforeEach(async () => {
    hubs = await TwoHubs.open();
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
});
