// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { describe, expect, it } from "vitest";
import type { Entry } from "../../../src/core/log/index.ts";
import { stamp } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { joinedStore, KINDS } from "./joined-store.ts";
import { accepted, at, clock, ground, refused, restamped } from "./link-stand-ins.ts";
import { entryFrom, note, start, textsOf, walk } from "./stand-ins.ts";

const DAY = 86_400_000;

describe.each(KINDS)("[LINK] hybrid times and the links of a store %s", (_, open) => {
  const joined = () => joinedStore(open);

  it("take the hub's hybrid time of an entry that differs in nothing else, without a word", async () => {
    const { links, append, settle, here, notices, outbox } = await joined();
    const [entry] = await append("a");
    if (!entry) throw new Error("nothing was appended");
    await settle((one) => accepted(one));
    await links.takeIn(walk, [restamped(entry, start - 5)], at(1));
    expect((await here()).map(({ hlc }) => hlc)).toEqual([restamped(entry, start - 5).hlc]);
    expect(await links.aside(walk)).toEqual([]);
    expect(await notices()).toEqual([]);
    expect(await outbox()).toEqual([]);
  });

  it("offer an entry as the hub has it that was stamped anew while it was under way", async () => {
    const { links, append, outbox, here } = await joined();
    const [entry] = await append("a", "b");
    if (!entry) throw new Error("nothing was appended");
    const underWay = await links.outbox(walk, 9);
    // The clock turns out to be a day ahead while they are on their way.
    await links.setClock(walk, clock(-DAY), "own");
    expect((await here()).every(({ hlc }) => Number(hlc.slice(0, 15)) < start)).toBe(true);
    await links.settle(
      walk,
      underWay.entries.map((one) => accepted(one)),
      underWay.round,
    );
    const now = await here();
    expect(now.map(({ hlc }) => hlc)).toEqual(underWay.entries.map(({ hlc }) => hlc));
    expect(textsOf(await outbox())).toEqual(["a", "b"]);
  });

  it("[SEL8] take the hybrid time under which the hub has an entry already, and offer it so", async () => {
    const { links, append, settle, here, outbox, notices } = await joined();
    const [entry] = await append("a", "b");
    if (!entry) throw new Error("nothing was appended");
    const { hlc } = restamped(entry, start - 5);
    await settle((one) => accepted(one, "known", one.wire.id === entry.wire.id ? hlc : undefined));
    const again = (await here()).find(({ wire }) => wire.id === entry.wire.id);
    expect(again?.wire).toEqual({ ...entry.wire, hlc, hlcmade: entry.hlc });
    expect(textsOf(await outbox())).toEqual(["a"]);
    await settle((one) => accepted(one, "known"));
    expect(await outbox()).toEqual([]);
    expect(await here()).toHaveLength(2);
    expect([await notices(), await links.aside(walk)]).toEqual([[], []]);
  });

  it("[SEL8] keep the hub's form that came down the stream before a belated answer", async () => {
    const { links, append, here } = await joined();
    const [entry] = await append("a");
    if (!entry) throw new Error("nothing was appended");
    await links.setClock(walk, clock(-DAY), "own");
    const underWay = await links.outbox(walk, 9);
    await links.takeIn(walk, [entry], at(1));
    await links.settle(
      walk,
      underWay.entries.map((one) => accepted(one, "known", entry.hlc)),
      underWay.round,
    );
    expect((await here()).map(({ wire }) => wire)).toEqual([entry.wire]);
  });

  it("still offer what was made between an entry's being stamped anew and its coming back as the hub has it", async () => {
    const { links, append, outbox, settle } = await joined();
    await append("a");
    const underWay = await links.outbox(walk, 9);
    await links.setClock(walk, clock(-DAY), "own");
    await append("b");
    // The stream brings it before the answer does: it goes behind what was made since.
    await links.takeIn(walk, underWay.entries, at(1));
    await links.settle(
      walk,
      underWay.entries.map((one) => accepted(one)),
      underWay.round,
    );
    expect(textsOf(await outbox())).toEqual(["b", "a"]);
    await settle((entry) => accepted(entry));
    expect(await outbox()).toEqual([]);
  });

  it("stamp what is refused as ahead anew by the hub's clock, with all behind it, in its order", async () => {
    const { links, append, settle, outbox, here, notices, setTime } = await joined();
    await append("early");
    await settle((entry) => accepted(entry));
    setTime(start + DAY);
    await append("a", "b");
    await links.takeIn(walk, [entryFrom(ground, 1)], at(2));
    await append("c");
    setTime(start + 60_000);
    await settle((entry) => refused(entry, "ahead"));
    const waiting = await outbox();
    expect(textsOf(waiting)).toEqual(["a", "b", "c"]);
    expect(waiting.every(({ hlc }) => Number(hlc.slice(0, 15)) === start + 60_000)).toBe(true);
    expect(textsOf(await here())).toEqual(["early", "note 1", "a", "b", "c"]);
    expect(await notices()).toEqual([["restamped", 3, null]]);
  });

  it("stamp anew what waits behind an entry that is ahead before it is refused too", async () => {
    const { links, append, outbox } = await joined();
    await append("a", "b");
    const { entries, round } = await links.outbox(walk, 1);
    await links.settle(
      walk,
      entries.map((entry) => refused(entry, "ahead")),
      round,
    );
    expect(textsOf(await outbox())).toEqual(["a", "b"]);
  });

  it("have hybrid times go by the hub's clock from then on, until the walk is left", async () => {
    const { links, append, settle } = await joined();
    const wall = async () => Number((await append("x"))[0]?.hlc.slice(0, 15));
    await links.setClock(walk, clock(500), "own");
    expect(await wall()).toBe(start);
    await links.setClock(walk, clock(501), "own");
    expect(await wall()).toBe(start + 501);
    expect((await links.get(walk))?.clock).toEqual(clock(501));
    await settle((entry) => accepted(entry));
    await links.leave(walk);
    // Behind what was seen, and no further.
    expect(await wall()).toBe(start + 501);
  });

  it("stamp anew what a hub's clock would refuse: what waits, or with every all that was not settled", async () => {
    const { store, links, append, outbox, here } = await joined();
    const day = `${String(start + DAY).padStart(15, "0")}-0000`;
    await store.takeIn([entryFrom(ground, 1, { hlc: day })]);
    await append("a");
    await links.setClock(walk, clock(0), "own");
    expect((await outbox()).map(({ hlc }) => Number(hlc.slice(0, 15)))).toEqual([start]);
    expect((await here()).map(({ hlc }) => hlc).includes(day as Entry["hlc"])).toBe(true);
    await links.setClock(walk, clock(0), "every");
    expect((await here()).some(({ hlc }) => hlc === day)).toBe(false);
  });

  it("leave what was settled as it was sent, whatever the clock turns out to be", async () => {
    const { links, append, settle, here } = await joined();
    await append("a");
    await settle((entry) => accepted(entry));
    const before = await here();
    await links.setClock(walk, clock(-DAY), "every");
    expect(await here()).toEqual(before);
  });

  it("before joining stamp anew on sharing, for a walk without a link", async () => {
    const { store, links } = await joined();
    await links.leave(walk);
    const far = stamp(note("far"), walk, { source: ground, made: 0, seen: null }, (start + DAY) as Instant);
    await store.takeIn([far]);
    const { removed, added } = await links.setClock(walk, clock(0), "every");
    expect([textsOf(removed), textsOf(added)]).toEqual([["far"], ["far"]]);
    expect(Number((await store.append(walk, [note("a")]))[0]?.hlc.slice(0, 15))).toBe(start);
    expect(await links.get(walk)).toBeNull();
  });
});
