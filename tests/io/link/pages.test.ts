// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Instant } from "../../../src/core/units/index.ts";
import type { Channel } from "../../../src/io/link/status-channel.ts";
import { TestHub, WALK } from "../../hub/test-hub.ts";
import { note, opened } from "../store/stand-ins.ts";
import { StandInLocks } from "./stand-in-locks.ts";
import type { Tablet } from "./tablet.ts";
import { eventually, openTablet, statusWhen } from "./tablet.ts";

let hub: TestHub;
let origin: string;
let locks: StandInLocks;
const pages: Tablet[] = [];
const now = () => hub.now;

/** A page of one device: it shares its locks and its channel with the others. */
async function page(of?: Tablet): Promise<Tablet> {
  // Node's own is the platform's.
  const channel = new BroadcastChannel("tetherline-test") as unknown as Channel;
  const made = await openTablet(origin, { now, locks, channel, ...(of ? { of } : {}) });
  pages.push(made);
  return made;
}

async function twoPages() {
  const first = await page();
  await first.append(WALK, opened("Ring exchange"));
  await first.links.share({ walk: WALK, ownerCode: hub.owner, name: "Inside" });
  await statusWhen(first.links, WALK, ({ kind, unsent }) => kind === "linked" && unsent === 0);
  const second = await page(first);
  return { first, second };
}

const streamsOf = (one: Tablet) => one.browser.asked.filter((what) => what.startsWith("GET /api/walks/"));

beforeEach(async () => {
  hub = await TestHub.open();
  origin = await hub.listen();
  locks = new StandInLocks();
});

afterEach(async () => {
  for (const one of pages.splice(0)) one.close();
  await hub.close();
});

describe("[LINK] two pages of a tablet", () => {
  it("hold one link between them, and both show how it stands", async () => {
    const { first, second } = await twoPages();
    const before = streamsOf(first).length;
    const shown = await statusWhen(second.links, WALK, ({ kind }) => kind === "linked");
    expect(shown).toMatchObject({ role: "lead", hubName: "Test hub", unsent: 0 });
    await second.append(WALK, note("from the second page"));
    await eventually(async () => (await hub.log()).includes("from the second page"));
    await statusWhen(second.links, WALK, ({ kind, unsent }) => kind === "linked" && unsent === 0);
    expect(streamsOf(first)).toHaveLength(before);
  });

  it("go on when the one that held the link is closed", async () => {
    const { first, second } = await twoPages();
    await statusWhen(second.links, WALK, ({ kind }) => kind === "linked");
    const before = streamsOf(second).length;
    first.links.close();
    await eventually(() => streamsOf(second).length > before);
    await second.append(WALK, note("after the first page"));
    await eventually(async () => (await hub.log()).includes("after the first page"));
    await statusWhen(second.links, WALK, ({ kind, unsent }) => kind === "linked" && unsent === 0);
  });

  it("both go on when the device was taken off and one of them joins again", async () => {
    const { first, second } = await twoPages();
    const { code } = await first.links.invite(WALK, "marker", 15);
    await first.links.withdraw(WALK, first.store.device);
    await statusWhen(second.links, WALK, ({ kind }) => kind === "ended");
    await statusWhen(first.links, WALK, ({ kind }) => kind === "ended");
    hub.now = (hub.now + 1000) as Instant;
    expect(await second.links.join({ code, name: "Inside" })).toMatchObject({ kind: "joined" });
    for (const one of [first, second]) {
      await statusWhen(one.links, WALK, ({ kind, role }) => kind === "linked" && role === "marker");
    }
  });

  it("both know when the walk is left on one of them", async () => {
    const { first, second } = await twoPages();
    await statusWhen(second.links, WALK, ({ kind }) => kind === "linked");
    await second.links.leave(WALK);
    await statusWhen(first.links, WALK, ({ kind }) => kind === "alone");
    await statusWhen(second.links, WALK, ({ kind }) => kind === "alone");
  });
});
