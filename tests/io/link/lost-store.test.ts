// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { deviceOf, mergeEntries } from "../../../src/core/log/index.ts";
import type { WalkId } from "../../../src/core/units/index.ts";
import { TetherlineDatabase } from "../../../src/io/store/index.ts";
import { TestHub, WALK } from "../../hub/test-hub.ts";
import { freshIndexedDb, note, opened, textsOf } from "../store/stand-ins.ts";
import type { Tablet } from "./tablet.ts";
import { eventually, openTablet, statusWhen } from "./tablet.ts";

let hub: TestHub;
let origin: string;
const tablets: Tablet[] = [];
const now = () => hub.now;

async function tablet(parts: Partial<Parameters<typeof openTablet>[1]> = {}): Promise<Tablet> {
  const made = await openTablet(origin, { now, ...parts });
  tablets.push(made);
  return made;
}

const allSent = (one: Tablet) =>
  statusWhen(one.links, WALK, ({ kind, unsent }) => kind === "linked" && unsent === 0);

const texts = async (one: Tablet) =>
  textsOf(mergeEntries(await one.entries(WALK)).ordered).filter((text) => text !== undefined);

/** A tablet that shares a walk and one that marks it, each with an entry of its own. */
async function twoTablets() {
  const lead = await tablet();
  await lead.append(WALK, opened("Ring exchange"), note("from the lead"));
  await lead.links.share({ walk: WALK, ownerCode: hub.owner, name: "Inside" });
  await allSent(lead);
  const marker = await tablet();
  await marker.links.join({ code: await hub.invite("marker"), name: "Ground" });
  await eventually(async () => (await texts(marker)).length === 1);
  await marker.append(WALK, note("before"));
  await eventually(async () => (await hub.log()).includes("before"));
  return { lead, marker };
}

/** Deletes the database of a tablet as its browser does, whatever has it open. */
const wipe = ({ indexedDb }: Tablet) =>
  new TetherlineDatabase("tetherline", indexedDb).delete({ disableAutoOpen: false });

const onDisk = async ({ indexedDb }: Tablet) => {
  const database = new TetherlineDatabase("tetherline", indexedDb);
  const [device, links, entries] = await Promise.all([
    database.device.toArray(),
    database.links.toArray(),
    database.entries.toArray(),
  ]);
  database.close();
  return {
    source: device.find(({ key }) => key === "source")?.value,
    hasKey: device.some(({ key }) => key === "signing-key"),
    links,
    texts: entries.map(({ wire }) => (wire.data as { text?: string }).text).filter(Boolean),
  };
};

beforeEach(async () => {
  hub = await TestHub.open();
  origin = await hub.listen();
});

afterEach(async () => {
  for (const one of tablets.splice(0)) one.close();
  await hub.close();
});

describe("a store that is deleted under a linked walk", () => {
  it("[LINK] the link goes on, and what is marked then reaches the hub and the others", async () => {
    const { lead, marker } = await twoTablets();
    await wipe(marker);
    await marker.append(WALK, note("after"));
    await eventually(async () => (await texts(lead)).includes("after"));
    expect((await allSent(marker)).role).toBe("marker");
    await lead.append(WALK, note("and back"));
    await eventually(async () => (await texts(marker)).includes("and back"));
    expect(await texts(marker)).toEqual(["from the lead", "before", "after", "and back"]);
  });

  it("[LINK] all that the page knew is put back, under a source of the same device whose numbers are new", async () => {
    const { marker } = await twoTablets();
    const { device } = marker.store;
    await wipe(marker);
    await marker.append(WALK, note("after"));
    await eventually(() => marker.store.log.status().kind === "durable");
    await allSent(marker);
    const kept = await onDisk(marker);
    expect(kept).toMatchObject({ hasKey: true, links: [{ walk: WALK, role: "marker", device }] });
    expect([...kept.texts].sort()).toEqual(["after", "before", "from the lead"]);
    expect(kept.source).not.toBe(device);
    expect(deviceOf(String(kept.source))).toBe(device);
    const [next] = await marker.append(WALK, note("next"));
    expect(next?.wire).toMatchObject({ source: kept.source });
    marker.close();
    const tomorrow = await tablet({ of: marker });
    expect(tomorrow.store.device).toBe(device);
    expect(await texts(tomorrow)).toEqual(["from the lead", "before", "after", "next"]);
    expect((await allSent(tomorrow)).key).toBe("tied");
  });

  it("[LINK] a tablet that only looks on is put back too, and reads on", async () => {
    const { lead, marker } = await twoTablets();
    await wipe(marker);
    await lead.append(WALK, note("news"));
    await eventually(async () => (await texts(marker)).includes("news"));
    await eventually(async () => (await onDisk(marker)).texts.includes("news"));
    expect((await allSent(marker)).kind).toBe("linked");
  });

  it("[LINK] a walk that the page had not read itself is read from the hub once more", async () => {
    const { lead, marker } = await twoTablets();
    marker.close();
    const again = await tablet({ of: marker });
    await again.links.watch(WALK, () => {});
    await allSent(again);
    await wipe(again);
    await lead.append(WALK, note("news"));
    await eventually(async () => (await onDisk(again)).texts.length === 3);
    expect([...(await onDisk(again)).texts].sort()).toEqual(["before", "from the lead", "news"]);
  });

  it("[LINK] so is one of which no news comes, once another walk brought the store back", async () => {
    const { lead, marker } = await twoTablets();
    const other = "walk-2" as WalkId;
    await lead.append(other, opened("Another ring"), note("of the other walk"));
    await lead.links.share({ walk: other, ownerCode: hub.owner, name: "Inside" });
    await statusWhen(lead.links, other, ({ kind, unsent }) => kind === "linked" && unsent === 0);
    lead.close();
    const again = await tablet({ of: lead });
    for (const walk of [WALK, other]) again.links.watch(walk, () => {});
    await allSent(again);
    await statusWhen(again.links, other, ({ kind }) => kind === "linked");
    await wipe(again);
    await marker.append(WALK, note("news"));
    await eventually(async () => (await onDisk(again)).texts.includes("of the other walk"));
    expect((await onDisk(again)).links.map(({ walk }) => walk).sort()).toEqual([WALK, other].sort());
  });

  it("[LINK] two pages of one device put back what either knew, under one source", async () => {
    const { lead, marker } = await twoTablets();
    const second = await tablet({ of: marker });
    await texts(second);
    await wipe(marker);
    await marker.append(WALK, note("by the first page"));
    await second.append(WALK, note("by the second page"));
    await marker.append(WALK, note("by the first again"));
    await eventually(async () => (await texts(lead)).length === 5);
    for (const { store } of [marker, second]) await eventually(() => store.log.status().kind === "durable");
    expect(second.store.log.source).toBe(marker.store.log.source);
    expect(marker.store.log.source).not.toBe(marker.store.device);
  });

  it("[LINK] stays in memory where another device's data took the place, with the link going on", async () => {
    const { lead, marker } = await twoTablets();
    await wipe(marker);
    const database = new TetherlineDatabase("tetherline", marker.indexedDb);
    await database.device.put({ key: "source", value: "/devices/zzzzzzzzzz" });
    database.close();
    await marker.append(WALK, note("after"));
    await eventually(async () => (await texts(lead)).includes("after"));
    expect(marker.store.log.status()).toMatchObject({ kind: "memory", reason: "lost" });
    expect((await allSent(marker)).role).toBe("marker");
    expect((await onDisk(marker)).texts).toEqual([]);
  });
});

describe("a disk that fills up under a linked walk", () => {
  it("[LINK] the link goes on from memory", async () => {
    const { lead, marker } = await twoTablets();
    const begin = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = () => {
      throw new DOMException("no room", "QuotaExceededError");
    };
    try {
      await marker.append(WALK, note("after"));
      await eventually(async () => (await hub.log()).includes("after"));
    } finally {
      IDBObjectStore.prototype.add = begin;
    }
    await eventually(async () => (await texts(lead)).includes("after"));
    expect((await allSent(marker)).role).toBe("marker");
  });
});

describe("a walk that is opened where the store was deleted", () => {
  /** The same browser with an empty store, as after a reload. */
  const reloaded = async ({ browser, close }: Tablet) => {
    close();
    return tablet({ of: { browser, indexedDb: freshIndexedDb() } as Tablet });
  };

  it("[LINK] comes back from the hub while the browser has its membership, and is marked under the same device", async () => {
    const { lead, marker } = await twoTablets();
    const again = await reloaded(marker);
    expect(await again.links.recover(WALK)).toBe("back");
    expect(again.store.device).toBe(marker.store.device);
    const status = await allSent(again);
    expect(status).toMatchObject({ role: "marker", hubName: "Test hub", key: "tied" });
    await eventually(async () => (await texts(again)).length === 2);
    await again.append(WALK, note("after"));
    await eventually(async () => (await texts(lead)).includes("after"));
    expect(await texts(again)).toEqual(["from the lead", "before", "after"]);
    expect(await again.links.recover(WALK)).toBe("back");
  });

  it("[LINK] is asked for with a code where the membership is gone too, and where the device has begun something else", async () => {
    const { marker } = await twoTablets();
    const busy = await reloaded(marker);
    await busy.append("walk-2" as typeof WALK, opened("Other"));
    expect(await busy.links.recover(WALK)).toBe("other-device");
    expect(busy.store.device).not.toBe(marker.store.device);
    marker.browser.forgetCookies();
    const stranger = await reloaded(marker);
    expect(await stranger.links.recover(WALK)).toBe("not-a-member");
    expect(stranger.links.status(WALK).kind).toBe("alone");
  });

  it("[LINK] says that the hub does not answer", async () => {
    const { marker } = await twoTablets();
    const again = await reloaded(marker);
    again.browser.disconnect();
    expect(await again.links.recover(WALK)).toBe("unreachable");
  });
});
