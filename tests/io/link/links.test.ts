// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { mergeEntries } from "../../../src/core/log/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import { worded } from "../../core/said.ts";
import { joinWith, newKey } from "../../hub/keyed-device.ts";
import { TestHub, WALK } from "../../hub/test-hub.ts";
import { entryFrom, note, opened, textsOf } from "../store/stand-ins.ts";
import type { Tablet } from "./tablet.ts";
import { eventually, openTablet, statusWhen } from "./tablet.ts";

const DAY = 86_400_000;

let hub: TestHub;
let origin: string;
const tablets: Tablet[] = [];
const now = () => hub.now;

async function tablet(parts: Parameters<typeof openTablet>[1] = { now }): Promise<Tablet> {
  const made = await openTablet(origin, parts);
  tablets.push(made);
  return made;
}

/** A tablet that shares a walk, and another one that joined it. */
async function twoTablets(first: () => Instant = now, second: () => Instant = now) {
  const lead = await tablet({ now: first });
  await lead.append(WALK, opened("Ring exchange"));
  const shared = await lead.links.share({ walk: WALK, ownerCode: hub.owner, name: "Inside" });
  expect(shared).toEqual({ kind: "joined", walk: WALK, role: "lead" });
  await statusWhen(lead.links, WALK, ({ kind, unsent }) => kind === "linked" && unsent === 0);
  const { code } = await lead.links.invite(WALK, "marker", 15);
  const marker = await tablet({ now: second });
  expect(await marker.links.join({ code, name: "Ground" })).toEqual({
    kind: "joined",
    walk: WALK,
    role: "marker",
  });
  await statusWhen(marker.links, WALK, ({ kind, unsent }) => kind === "linked" && unsent === 0);
  return { lead, marker };
}

const orderedTexts = async (one: Tablet, walk: WalkId = WALK) =>
  textsOf(mergeEntries(await one.entries(walk)).ordered).filter((text) => text !== undefined);

const allSent = (one: Tablet) =>
  statusWhen(one.links, WALK, ({ kind, unsent }) => kind === "linked" && unsent === 0);

beforeEach(async () => {
  hub = await TestHub.open();
  origin = await hub.listen();
});

afterEach(async () => {
  for (const one of tablets.splice(0)) one.close();
  await hub.close();
});

describe("[LINK] a tablet with a native shell", () => {
  const shell = () => tablet({ now, home: null });

  it("joins the hub that it names with a token of its own, and goes on after a restart", async () => {
    const lead = await shell();
    await lead.append(WALK, opened("Ring exchange"));
    const sharing = { walk: WALK, ownerCode: hub.owner, name: "Inside" };
    expect(await lead.links.share({ ...sharing, hub: origin })).toEqual({
      kind: "joined",
      walk: WALK,
      role: "lead",
    });
    await allSent(lead);
    const { code } = await lead.links.invite(WALK, "marker", 15);
    const marker = await shell();
    expect((await marker.links.join({ hub: origin, code, name: "Ground" })).kind).toBe("joined");
    await allSent(marker);
    await marker.append(WALK, note("from the shell"));
    await eventually(async () => (await orderedTexts(lead)).length === 1);
    for (const one of [lead, marker]) {
      one.browser.forgetCookies();
      expect((await one.store.log.links.get(WALK))?.token).toMatch(/^\S{20,}$/);
    }
    marker.close();
    const again = await tablet({ now, home: null, of: marker });
    await again.append(WALK, note("after a restart"));
    await eventually(async () => (await orderedTexts(lead)).length === 2);
    expect(await lead.links.withdrawAll(WALK)).toBe(1);
    await statusWhen(again.links, WALK, ({ kind }) => kind === "ended");
    await lead.links.leave(WALK);
    expect(await lead.store.log.links.get(WALK)).toBeNull();
  });

  it("asks nobody before it was told which hub", async () => {
    const alone = await shell();
    const joined = await alone.links.join({ code: hub.owner, name: "Inside", walk: WALK });
    expect(worded(joined)).toMatchObject({ kind: "refused", words: "Say first where the hub is." });
    expect(await alone.links.recover(WALK)).toBe("not-a-member");
    await expect(alone.links.invite(WALK, "marker", 15)).rejects.toThrow(
      "This walk is not linked with a hub.",
    );
    expect(alone.browser.asked).toEqual([]);
  });

  it("keeps walks of several hubs linked at once", async () => {
    const other = await TestHub.open();
    const elsewhere = await other.listen();
    const one = await shell();
    for (const [walk, at, ownerCode] of [
      [WALK, origin, hub.owner],
      ["walk-2" as WalkId, elsewhere, other.owner],
    ] as const) {
      await one.append(walk, opened("Ring exchange"));
      expect((await one.links.share({ hub: at, walk, ownerCode, name: "Inside" })).kind).toBe("joined");
    }
    for (const walk of [WALK, "walk-2" as WalkId]) {
      await statusWhen(one.links, walk, ({ kind, unsent }) => kind === "linked" && unsent === 0);
    }
    await other.close();
  });
});

describe("[LINK] a walk on two tablets", () => {
  it("has what either enters on both, and in the hub's log", async () => {
    const { lead, marker } = await twoTablets();
    await lead.append(WALK, note("from the lead"));
    await marker.append(WALK, note("from the marker"));
    await eventually(async () => (await orderedTexts(lead)).length === 2);
    await eventually(async () => (await orderedTexts(marker)).length === 2);
    expect(await orderedTexts(lead)).toEqual(await orderedTexts(marker));
    await allSent(lead);
    expect(await hub.log()).toContain("from the marker");
  });

  it("[SEL4] is joined under the tablet's own key, and what its name belongs to is said in words for a tablet", async () => {
    const { lead, marker } = await twoTablets();
    expect(lead.links.status(WALK).key).toBe("tied");
    const [held] = [await marker.store.key()];
    expect(hub.hub.parts.admission.keyOf(WALK, marker.store.device)).toBe(held.key?.publicKey);
    const [copied, taken] = [await tablet(), await tablet()];
    const code = () => hub.invite("marker");
    await joinWith(hub, { code: await code(), device: copied.store.device, key: newKey() });
    await joinWith(hub, { code: await code(), device: taken.store.device });
    const said = async (one: Tablet) => {
      const outcome = await one.links.join({ code: await code(), name: "Ground" });
      return outcome.kind === "refused" ? worded(outcome.words) : outcome.kind;
    };
    expect(await said(copied)).toMatch(/belongs to another key in this walk, .* clear the data of this site/);
    expect(await said(taken)).toMatch(/in the walk already, without a key, .* Have the lead take it off/);
    const second = await tablet();
    const used = await code();
    await joinWith(hub, { code: used, device: "/devices/other" });
    const outcome = await second.links.join({ code: used, name: "Ground" });
    expect(outcome.kind === "refused" && worded(outcome.words)).toMatch(/let in as many devices as it may/);
  });

  it("is chosen among all of the hub's with the owner's code, and led from then on", async () => {
    const { lead } = await twoTablets();
    const owner = await tablet();
    const asked = await owner.links.join({ code: ` ${hub.owner} `, name: "Far lead" });
    expect(asked).toMatchObject({ kind: "which", walks: [{ walk: WALK, title: "Ring exchange" }] });
    expect(owner.links.status(WALK).kind).toBe("alone");
    expect(await owner.links.join({ code: hub.owner, name: "Far lead", walk: WALK })).toEqual({
      kind: "joined",
      walk: WALK,
      role: "lead",
    });
    await lead.append(WALK, note("seen by all"));
    await eventually(async () => (await orderedTexts(owner)).includes("seen by all"));
  });

  it("shows who follows, in which role and how far each has read", async () => {
    const { lead, marker } = await twoTablets();
    const { followers } = await statusWhen(
      lead.links,
      WALK,
      (status) => status.followers.filter(({ present }) => present).length === 2,
    );
    expect(followers.map(({ name, role, present }) => [name, role, present]).sort()).toEqual([
      ["Ground", "marker", true],
      ["Inside", "lead", true],
    ]);
    await statusWhen(
      lead.links,
      WALK,
      (status) => status.followers.find(({ device }) => device === marker.store.device)?.seenUpTo !== null,
    );
  });

  it("lets the lead see the codes that are still good, and end them", async () => {
    const { lead, marker } = await twoTablets();
    await lead.links.invite(WALK, "watcher", 15, 2);
    const good = async () => (await lead.links.invitations(WALK)).filter(({ left }) => left > 0);
    const [open] = await good();
    expect(await good()).toMatchObject([{ role: "watcher", left: 2 }]);
    await expect(marker.links.invitations(WALK)).rejects.toThrow();
    await lead.links.endInvitation(WALK, open?.name ?? "");
    expect(await good()).toEqual([]);
  });

  it("keeps what is entered offline, says how much is not sent, and sends it later", async () => {
    const { lead, marker } = await twoTablets();
    marker.browser.disconnect();
    await statusWhen(marker.links, WALK, ({ kind }) => kind === "linking");
    await marker.append(WALK, note("offline 1"), note("offline 2"));
    const status = await statusWhen(marker.links, WALK, ({ unsent }) => unsent === 2);
    expect(status).toMatchObject({ kind: "linking", role: "marker", hubName: "Test hub" });
    marker.browser.reconnect();
    await eventually(async () => (await orderedTexts(lead)).length === 2);
    await allSent(marker);
  });

  it("ends when the device is withdrawn, says so, and begins again with another code", async () => {
    const { lead, marker } = await twoTablets();
    await lead.links.withdraw(WALK, marker.store.device);
    const ended = await statusWhen(marker.links, WALK, ({ kind }) => kind === "ended");
    expect(worded(ended.words)).toMatch(/join the walk again/i);
    await marker.append(WALK, note("kept here"));
    const { code } = await lead.links.invite(WALK, "marker", 15);
    await marker.links.join({ code, name: "Ground" });
    await allSent(marker);
    await eventually(async () => (await orderedTexts(lead)).includes("kept here"));
  });

  it("is left for good: nothing more is sent or fetched", async () => {
    const { lead, marker } = await twoTablets();
    await marker.links.leave(WALK);
    expect(marker.links.status(WALK).kind).toBe("alone");
    const asked = marker.browser.asked.length;
    await marker.append(WALK, note("alone"));
    await lead.append(WALK, note("without it"));
    await allSent(lead);
    expect(marker.browser.asked.length).toBe(asked);
    expect(await orderedTexts(marker)).toEqual(["alone"]);
    expect((await statusWhen(lead.links, WALK, (s) => s.followers.length === 1)).followers).toHaveLength(1);
  });

  it("begins by itself when the page is loaded again", async () => {
    const { lead, marker } = await twoTablets();
    marker.links.close();
    await lead.append(WALK, note("meanwhile"));
    const again = await tablet({ now, of: marker });
    await allSent(again);
    await eventually(async () => (await orderedTexts(again)).includes("meanwhile"));
  });
});

describe("[LINK] clocks", () => {
  it("logs the clock on joining; again only when it moved by more than half a second", async () => {
    let off = 3000;
    const { marker } = await twoTablets(now, () => (hub.now + off) as Instant);
    const compared = async () =>
      (await marker.entries(WALK))
        .filter(
          ({ wire }) => wire.type === "tetherline.clock.compared" && wire.source === marker.store.device,
        )
        .map(({ wire }) => (wire.data as { offset: number }).offset);
    await eventually(async () => (await compared()).length === 1);
    off = 3400;
    for (const next of [3400, 8000]) {
      off = next;
      marker.browser.disconnect();
      await statusWhen(marker.links, WALK, ({ kind }) => kind === "linking");
      marker.browser.reconnect();
      await statusWhen(marker.links, WALK, ({ kind, clock }) => kind === "linked" && clock?.offset === -next);
    }
    await eventually(async () => (await compared()).length === 2);
    expect(await compared()).toEqual([-3, -8]);
  });

  it("orders a tablet whose clock is a day ahead by the hub's clock, and tells its user", async () => {
    const { lead, marker } = await twoTablets(now, () => (hub.now + DAY) as Instant);
    await marker.append(WALK, note("first"));
    await eventually(async () => (await orderedTexts(lead)).length === 1);
    await lead.append(WALK, note("second"));
    await eventually(async () => (await orderedTexts(marker)).length === 2);
    await marker.append(WALK, note("third"));
    await eventually(async () => (await orderedTexts(lead)).length === 3);
    expect(await orderedTexts(lead)).toEqual(["first", "second", "third"]);
    expect(await orderedTexts(marker)).toEqual(["first", "second", "third"]);
    expect(marker.links.status(WALK).clock?.offset).toBe(-DAY);
  });

  it("stamps what was entered alone under a wrong clock anew on sharing, in its order, foreign entries too", async () => {
    const wrong = () => (hub.now + DAY) as Instant;
    const lead = await tablet({ now: wrong });
    await lead.append(WALK, opened("Ring exchange"), note("one"), note("two"));
    const hlc = `${String(hub.now + DAY + 5).padStart(15, "0")}-0000`;
    await lead.store.log.takeIn([entryFrom("/devices/elsewhere", 1, { hlc, data: { text: "from afar" } })]);
    await lead.append(WALK, note("three"));
    const before = await orderedTexts(lead);
    expect(before).toContain("from afar");
    expect(await lead.links.share({ walk: WALK, ownerCode: hub.owner, name: "Inside" })).toMatchObject({
      kind: "joined",
    });
    await allSent(lead);
    expect(await orderedTexts(lead)).toEqual(before);
    const log = (await hub.log()).trim().split("\n");
    expect(log.filter((line) => line.includes('"text"'))).toHaveLength(4);
    expect(
      (await lead.entries(WALK)).every(({ hlc: time }) => Number(time.slice(0, 15)) <= hub.now + 60_000),
    ).toBe(true);
  });

  it("finds out anew how its clock stands when the hub's is set back, and gets its entries through", async () => {
    const standing = hub.now;
    const { lead, marker } = await twoTablets(now, () => standing);
    await allSent(lead);
    hub.now = (standing - 3_600_000) as Instant;
    await marker.append(WALK, note("behind the hub’s back"));
    await eventually(async () => (await orderedTexts(lead)).includes("behind the hub’s back"));
    await allSent(marker);
    expect(marker.links.status(WALK).clock?.offset).toBe(-3_600_000);
  });

  it("of a watcher are compared, and nothing is entered", async () => {
    const { lead } = await twoTablets();
    const { code } = await lead.links.invite(WALK, "watcher", 15);
    const watcher = await tablet({ now: () => (hub.now + 3000) as Instant });
    await watcher.links.join({ code, name: "Window" });
    const { notices } = await statusWhen(watcher.links, WALK, ({ clock }) => clock?.offset === -3000);
    await eventually(async () => (await orderedTexts(lead)).length === (await orderedTexts(watcher)).length);
    const own = (await watcher.entries(WALK)).filter(({ wire }) => wire.source === watcher.store.device);
    expect([own, notices]).toEqual([[], []]);
  });

  it("tells a joined tablet's user when its clock was set a day ahead", async () => {
    let off = 0;
    const { lead, marker } = await twoTablets(now, () => (hub.now + off) as Instant);
    marker.browser.disconnect();
    off = DAY;
    await marker.append(WALK, note("under a wrong clock"));
    marker.browser.reconnect();
    await eventually(async () => (await orderedTexts(lead)).length === 1);
    const { notices } = await statusWhen(marker.links, WALK, (status) => status.notices.length > 0);
    expect(worded(notices.map(({ words }) => words))).toEqual([
      "1 entry was put in order by the hub’s clock, because the clock of this tablet is 24 h 00 min ahead. Set it right.",
    ]);
    marker.links.dismiss(WALK, notices[0]?.key ?? "");
    await statusWhen(marker.links, WALK, (status) => status.notices.length === 0);
  });
});

describe("[LINK] what goes wrong is said in words", () => {
  it("refuses a wrong code, and a hub that is not there is not reached", async () => {
    const one = await tablet();
    expect(worded(await one.links.join({ code: "abc def ghj", name: "Ground" }))).toMatchObject({
      kind: "refused",
      words: expect.stringContaining("code") as string,
    });
    await one.append(WALK, opened("Ring exchange"));
    expect(
      worded(await one.links.share({ walk: WALK, ownerCode: "abc def ghj", name: "Ground" })),
    ).toMatchObject({
      kind: "refused",
      words: expect.stringContaining("owner’s code") as string,
    });
    expect(one.links.status(WALK).kind).toBe("alone");
    one.browser.disconnect();
    expect(worded(await one.links.join({ code: hub.owner, name: "Ground" }))).toEqual({
      kind: "unreachable",
      words: "The hub cannot be reached.",
    });
    await expect(one.links.invite(WALK, "marker", 15)).rejects.toThrow("The hub cannot be reached.");
  });

  it("answers that are no hub's are taken as none", async () => {
    const page: typeof fetch = async () => new Response("<html></html>", { status: 200 });
    const one = await tablet({ now, fetch: page });
    expect(await one.links.join({ code: "abcdefghj", name: "Ground" })).toMatchObject({
      kind: "unreachable",
    });
    expect(await one.links.share({ walk: WALK, ownerCode: hub.owner, name: "In" })).toMatchObject({
      kind: "unreachable",
    });
    const missing: typeof fetch = async () => new Response("Not found", { status: 404 });
    const other = await tablet({ now, fetch: missing });
    expect(worded(await other.links.join({ code: "abcdefghj", name: "Ground" }))).toEqual({
      kind: "unreachable",
      words: "There is no hub here.",
    });
  });

  it("entries that the role may not write are set aside and its user told", async () => {
    const { lead, marker } = await twoTablets();
    await marker.append(WALK, { name: "walk.closed", data: { end: "complete" }, at: hub.now, actor: "g" });
    const { notices } = await statusWhen(marker.links, WALK, (status) => status.notices.length > 0);
    expect(worded(notices[0]?.words)).toBe(
      "1 entry was set aside and does not count: the role of this tablet may not write such entries.",
    );
    expect((await marker.entries(WALK)).some(({ wire }) => wire.type === "tetherline.walk.closed")).toBe(
      false,
    );
    expect(await marker.store.log.links.aside(WALK)).toHaveLength(1);
    expect((await lead.entries(WALK)).some(({ wire }) => wire.type === "tetherline.walk.closed")).toBe(false);
  });
});

describe("[LINK] the history of a walk", () => {
  it("that came from elsewhere goes to the hub whole, and is not doubled by sharing again", {
    timeout: 90_000,
  }, async () => {
    const lead = await tablet();
    await lead.append(WALK, opened("Ring exchange"));
    // More than go over at once.
    const foreign = Array.from({ length: 600 }, (_, index) => entryFrom("/devices/elsewhere", index + 1));
    const past = `${String(hub.now - DAY).padStart(15, "0")}-`;
    await lead.store.log.takeIn(
      foreign.map((entry, index) => {
        const hlc = `${past}${index.toString(16).padStart(4, "0")}`;
        return { ...entry, hlc: hlc as typeof entry.hlc, wire: { ...entry.wire, hlc } };
      }),
    );
    for (let times = 0; times < 2; times += 1) {
      expect(await lead.links.share({ walk: WALK, ownerCode: hub.owner, name: "Inside" })).toMatchObject({
        kind: "joined",
      });
      await allSent(lead);
    }
    const log = (await hub.log()).trim().split("\n");
    expect(log.filter((line) => line.includes("/devices/elsewhere"))).toHaveLength(600);
    expect(log.filter((line) => line.includes("walk.opened"))).toHaveLength(1);
  });

  it("tells how many entries of other devices the hub has not got, until the walk is shared again", async () => {
    const { lead, marker } = await twoTablets();
    await marker.append(WALK, note("over the hub"));
    await eventually(async () => (await orderedTexts(lead)).includes("over the hub"));
    expect(lead.links.status(WALK).onlyHere).toBe(0);
    await lead.store.log.takeIn([
      entryFrom("/devices/elsewhere", 1),
      entryFrom("/devices/elsewhere", 2),
      entryFrom(lead.store.device, 900),
    ]);
    await statusWhen(lead.links, WALK, ({ onlyHere, unsent }) => onlyHere === 2 && unsent === 0);
    const code = hub.owner.toUpperCase().replace(/^(.{3})(.{3})/, "$1\u2013$2 - ");
    expect(await lead.links.share({ walk: WALK, ownerCode: code, name: "Inside" })).toMatchObject({
      kind: "joined",
    });
    await statusWhen(lead.links, WALK, ({ kind, onlyHere }) => kind === "linked" && onlyHere === 0);
    expect((await orderedTexts(marker)).filter((text) => /^note [12]$/.test(text))).toHaveLength(2);
  });
});
