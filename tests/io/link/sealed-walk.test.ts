// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Draft } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { exportWalk, importWalkLog } from "../../../src/io/backup/index.ts";
import { verifiedLines } from "../../hub/sealed-notes.ts";
import { NOON, TestHub, WALK } from "../../hub/test-hub.ts";
import { note, opened } from "../store/stand-ins.ts";
import type { Tablet } from "./tablet.ts";
import { eventually, openTablet, statusWhen } from "./tablet.ts";

const closed: Draft = { name: "walk.closed", data: { end: "complete" }, at: NOON, actor: "iv" };
const HOUR = 3_600_000;

let hub: TestHub;
let origin: string;
let tablets: Tablet[] = [];

async function tablet(now: () => Instant = () => hub.now, of?: Tablet): Promise<Tablet> {
  const made = await openTablet(origin, { now, ...(of ? { of } : {}) });
  tablets.push(made);
  // A closed walk that nobody looks at is followed no further.
  made.links.watch(WALK, () => {});
  return made;
}

const allSent = (one: Tablet) =>
  statusWhen(one.links, WALK, ({ kind, unsent }) => kind === "linked" && unsent === 0);

async function joined(now?: () => Instant): Promise<Tablet> {
  const one = await tablet(now);
  const code = await hub.invite("lead");
  expect(await one.links.join({ code, name: "Somebody" })).toMatchObject({ kind: "joined" });
  await allSent(one);
  return one;
}

/** What the log is worth at the hub, and as each tablet exports it once it has all. */
async function worth(...of: readonly Tablet[]) {
  // Comparing clocks is entered too, whenever it is done.
  await eventually(async () => {
    for (const one of of) await allSent(one);
    await hub.hub.parts.witness?.settle();
    const there = (await hub.log()).trim().split("\n").length;
    const here = await Promise.all(of.map(async (one) => (await one.entries(WALK)).length));
    return here.every((count) => count === there);
  });
  const trust = [hub.hub.parts.key.publicKey];
  const exported = await Promise.all(of.map((one) => exportWalk(one.store.log, WALK)));
  return [await hub.log(), ...exported].map((lines) => verifiedLines(lines, trust));
}

beforeEach(async () => {
  hub = await TestHub.open({ isWitness: true });
  origin = await hub.listen();
});

afterEach(async () => {
  for (const one of tablets) one.close();
  tablets = [];
  await hub.close();
});

describe("a walk on tablets and a hub", () => {
  it("[SEL7] is whole once it is closed, at the hub and on every tablet, with one code for all", async () => {
    const lead = await tablet();
    await lead.append(WALK, opened("Ring exchange"), note("before the hub"));
    await lead.links.share({ walk: WALK, ownerCode: hub.owner, name: "Inside" });
    const other = await joined();
    await Promise.all([lead.append(WALK, note("one")), other.append(WALK, note("two"))]);
    await lead.append(WALK, closed);
    const all = await worth(lead, other);
    expect(all.map(({ verdict, findings }) => [verdict, findings])).toEqual(all.map(() => ["whole", []]));
    expect(new Set(all.map(({ code }) => code)).size).toBe(1);
    expect(all[0]?.sources.map(({ by }) => by?.role ?? "hub").sort()).toEqual(["hub", "lead", "lead"]);
  });

  it("[SEL1] is whole though a tablet's clock was wrong and what it wrote was stamped anew, and its last entry undone", async () => {
    const lead = await joined();
    const wrong = await tablet(() => (hub.now + 5 * HOUR) as Instant);
    await wrong.append(WALK, note("by a clock that is ahead"), note("and another"));
    const [undone] = await wrong.append(WALK, note("a mistake"));
    await wrong.append(WALK, {
      name: "entry.struck",
      data: { source: undone?.wire.source ?? "", id: undone?.wire.id ?? "", undone: true },
      at: NOON,
      actor: "iv",
    });
    expect(await wrong.links.join({ code: await hub.invite("lead"), name: "Ahead" })).toMatchObject({
      kind: "joined",
    });
    await allSent(wrong);
    await lead.append(WALK, closed);
    const all = await worth(lead, wrong);
    expect(all.map(({ verdict, findings }) => [verdict, findings])).toEqual(all.map(() => ["whole", []]));
    expect(await hub.log()).toContain("hlcmade");
  });

  it("[SEL8] is whole after a tablet took the walk off and has it back, and after a file of it was taken in", async () => {
    const one = await joined();
    await one.append(WALK, note("one"), note("two"));
    await allSent(one);
    const file = await exportWalk(one.store.log, WALK);
    await one.links.leave(WALK);
    await one.store.log.removeWalk(WALK);
    await importWalkLog(one.store.log, file);
    expect(await one.links.join({ code: hub.owner, walk: WALK, name: "Again" })).toMatchObject({
      kind: "joined",
    });
    await one.append(WALK, note("three"), closed);
    const all = await worth(one);
    expect(all.map(({ verdict, findings }) => [verdict, findings])).toEqual(all.map(() => ["whole", []]));
  });

  it("[SEL3] is whole though a page was gone before it could seal", async () => {
    const one = await joined();
    one.browser.disconnect();
    // The page is closed as soon as the entry is kept.
    await one.append(WALK, note("the last of this page"));
    one.close();
    one.browser.reconnect();
    const again = await tablet(undefined, one);
    await again.append(WALK, closed);
    const all = await worth(again);
    expect(all.map(({ verdict, findings }) => [verdict, findings])).toEqual(all.map(() => ["whole", []]));
  });

  it("[SEL7] tells what was done to its file afterwards", async () => {
    const one = await joined();
    await one.append(WALK, note("one"), note("two"), note("three"), closed);
    await worth(one);
    const lines = (await hub.log()).trim().split("\n");
    const trust = [hub.hub.parts.key.publicKey];
    const second = lines.findIndex((line) => line.includes('"two"'));
    const verdict = (some: readonly string[]) => verifiedLines(some.join("\n"), trust).verdict;
    expect(verdict(lines)).toBe("whole");
    expect(verdict(lines.toSpliced(second, 1, (lines[second] ?? "").replace('"two"', '"2"')))).toBe("broken");
    expect(verdict(lines.toSpliced(second, 1))).toBe("cut");
    expect(verdict(lines.filter((line) => !line.includes("walk.closed")))).toBe("cut");
    expect(verdict(lines.map((line) => line.replace(/,"seal":"[^"]*"/, "")))).toBe("partly");
  });
});
