// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { describe, expect, it, vi } from "vitest";
import type { RefusalReason } from "../../../src/core/link/index.ts";
import { keyOf } from "../../../src/core/log/index.ts";
import type { Duration, Instant } from "../../../src/core/units/index.ts";
import type { NewLink } from "../../../src/io/store/index.ts";
import { NotLinkedError } from "../../../src/io/store/link-store.ts";
import { joinedStore, KINDS } from "./joined-store.ts";
import { accepted, at, clock, ground, joining, refused, restamped } from "./link-stand-ins.ts";
import { entryFrom, otherWalk, source, start, textsOf, until, walk } from "./stand-ins.ts";

const DAY = 86_400_000;

describe.each(KINDS)("[LINK] the links of a store %s", (_, open) => {
  const joined = (more: Partial<NewLink> = {}) => joinedStore(open, more);

  it("are kept, and forgotten when a walk is left", async () => {
    const { links } = await joined();
    await links.join({ ...joining, walk: otherWalk, role: "marker" });
    expect((await links.all()).map(({ walk: of, role }) => [of, role])).toEqual([
      [walk, "lead"],
      [otherWalk, "marker"],
    ]);
    await links.leave(walk);
    expect(await links.get(walk)).toBeNull();
    expect(await links.get(otherWalk)).toMatchObject({ role: "marker", cursor: null, notices: [] });
    await links.leave(walk);
  });

  it("go on where they were when the same hub is joined again, and begin anew with another", async () => {
    const { links, append, settle, outbox } = await joined();
    await append("a");
    await settle((entry) => accepted(entry));
    await links.takeIn(walk, [], at(7));
    await links.join({ ...joining, role: "marker", joinedAt: (start + 5) as Instant });
    expect(await links.get(walk)).toMatchObject({ cursor: at(7), role: "marker", joinedAt: start + 5 });
    expect(await outbox()).toEqual([]);
    await links.join({ ...joining, hub: "hub-2" });
    expect(await links.get(walk)).toMatchObject({ cursor: null });
    expect(textsOf(await outbox())).toEqual(["a"]);
  });

  it("tell of each change", async () => {
    const { links } = await joined();
    const onChange = vi.fn();
    const end = links.watch(onChange);
    // A live query calls back once for what there is.
    await new Promise((resolve) => setTimeout(resolve, 20));
    onChange.mockClear();
    await links.change(walk, (row) => ({ ...row, loggedOffset: 7 as Duration }));
    await until(() => onChange.mock.calls.length > 0);
    expect((await links.get(walk))?.loggedOffset).toBe(7);
    end();
    onChange.mockClear();
    await links.leave(walk);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(onChange).not.toHaveBeenCalled();
  });

  it("hold the device's own entries until they are settled, oldest first", async () => {
    const { store, links, append, settle, outbox } = await joined();
    await append("a", "b");
    await store.takeIn([entryFrom(ground, 1), entryFrom(`${source}/memory-old`, 1, { data: { text: "m" } })]);
    await append("c");
    expect(textsOf(await outbox())).toEqual(["a", "b", "m", "c"]);
    expect(await links.unsent(walk)).toBe(4);
    expect(textsOf((await links.outbox(walk, 2)).entries)).toEqual(["a", "b"]);
    const first = await links.outbox(walk, 2);
    await links.settle(
      walk,
      first.entries.map((entry, index) => accepted(entry, index === 0 ? "accepted" : "known")),
      first.round,
    );
    expect(textsOf(await outbox())).toEqual(["m", "c"]);
    await settle((entry) => accepted(entry));
    expect(await links.unsent(walk)).toBe(0);
    expect(await links.unsent(otherWalk)).toBe(0);
    expect((await links.outbox(otherWalk, 9)).entries).toEqual([]);
  });

  it("send all of their own when others' entries, made later, were settled before", async () => {
    const { store, links, append, outbox } = await joined();
    await append("a");
    const foreign = entryFrom(ground, 1);
    await store.takeIn([foreign]);
    const { round } = await links.outbox(walk, 9);
    await links.settle(walk, [accepted(foreign)], round);
    expect(textsOf(await outbox())).toEqual(["a"]);
  });

  it("keep what comes from the hub together with how far it was read, and do not send it back", async () => {
    const { links, append, outbox, here } = await joined();
    await append("a");
    const theirs = [entryFrom(ground, 1), entryFrom(ground, 2)];
    expect((await links.takeIn(walk, theirs, at(2))).added).toEqual(theirs);
    expect((await links.takeIn(walk, theirs, at(3))).added).toEqual([]);
    expect((await links.get(walk))?.cursor).toEqual(at(3));
    expect(textsOf(await here())).toEqual(["a", "note 1", "note 2"]);
    expect(textsOf(await outbox())).toEqual(["a"]);
  });

  it("know which entries of other devices came by a file and were not heard of from the hub", async () => {
    const { store, links, append, settle } = await joined();
    const onlyHere = async () => (await links.get(walk))?.onlyHere ?? [];
    await append("a");
    await links.takeIn(walk, [entryFrom(ground, 1)], at(1));
    expect(await onlyHere()).toEqual([]);
    await store.takeIn([1, 2, 3, 4].map((number) => entryFrom(ground, number)));
    await store.takeIn([entryFrom(source, 50)]);
    expect(await onlyHere()).toEqual(
      [2, 3, 4].map((number) => `${ground} ${entryFrom(ground, number).wire.id}`),
    );
    await links.takeIn(
      walk,
      [entryFrom(ground, 3), entryFrom(ground, 4, { data: { text: "other" } })],
      at(3),
    );
    expect(await onlyHere()).toHaveLength(1);
    // As after sharing: the hub refused what the owner brought.
    await links.settle(walk, [refused(entryFrom(ground, 2), "not-an-entry")], 0);
    expect(await onlyHere()).toEqual([]);
    await settle((entry) => accepted(entry));
  });

  it("hold all entries of other devices to be only here until a new hub, or a new store of it, is heard", async () => {
    const { store, links } = await joined();
    const count = async () => (await links.get(walk))?.onlyHere?.length ?? 0;
    await links.takeIn(walk, [entryFrom(ground, 1), entryFrom(ground, 2)], at(2));
    await links.takeIn(walk, [entryFrom(ground, 1)], at(1, "two"));
    expect(await count()).toBe(1);
    await links.takeIn(walk, [entryFrom(ground, 2)], at(2, "two"));
    expect(await count()).toBe(0);
    await links.leave(walk);
    await store.takeIn([entryFrom(ground, 3)]);
    await links.join(joining);
    await links.takeIn(walk, [entryFrom(ground, 1), entryFrom(ground, 2)], at(2));
    expect(await count()).toBe(1);
  });

  it("send what is entered while the hub's entries come in", async () => {
    const { links, append, settle, outbox } = await joined();
    await append("a");
    await settle((entry) => accepted(entry));
    await links.takeIn(walk, [entryFrom(ground, 1)], at(1));
    await append("b");
    await links.takeIn(walk, [entryFrom(ground, 2)], at(2));
    await append("c");
    expect(textsOf(await outbox())).toEqual(["b", "c"]);
  });

  it.each<[string, ReturnType<typeof at>]>([
    ["lost its store", at(0, "two")],
    ["came back from an older copy", at(3)],
  ])("offer all once more to a hub that %s", async (_how, cursor) => {
    const { links, append, settle, outbox } = await joined();
    await append("a", "b");
    await settle((entry) => accepted(entry));
    await links.takeIn(walk, [entryFrom(ground, 1)], at(7));
    expect(await outbox()).toEqual([]);
    expect(await links.takeIn(walk, [entryFrom(ground, 1)], cursor)).toMatchObject({ isResent: true });
    expect(textsOf(await outbox())).toEqual(["a", "b"]);
    expect(await links.takeIn(walk, [], { ...cursor, offset: cursor.offset + 1 })).toMatchObject({
      isResent: false,
    });
  });

  it.each([
    ["something was", 1],
    ["nothing was", 0],
  ])(
    "pass nothing over that was on its way to a store that is lost by now, when %s settled before",
    async (_how, count) => {
      const { links, append, settle, outbox } = await joined();
      await append(...["a"].slice(0, count));
      await settle((entry) => accepted(entry));
      await append("b");
      const underWay = await links.outbox(walk, 9);
      await links.takeIn(walk, [], at(0, "two"));
      // The answer of the first store comes late.
      await links.settle(
        walk,
        underWay.entries.map((entry) => accepted(entry)),
        underWay.round,
      );
      expect(textsOf(await outbox())).toEqual(["a", "b"].slice(1 - count));
      await settle((entry) => accepted(entry));
      expect(await outbox()).toEqual([]);
    },
  );

  it("offer once more what was sent before it was known to which store", async () => {
    const { links, append, settle, outbox } = await joined({ hub: "hub-2" });
    await links.join(joining);
    await append("a");
    await settle((entry) => accepted(entry));
    expect(await links.takeIn(walk, [], at(5))).toMatchObject({ isResent: true });
    expect(textsOf(await outbox())).toEqual(["a"]);
  });

  it.each<RefusalReason>(["role", "other-source", "not-an-entry", "other-walk"])(
    "set aside what is refused as %s, keep it with the reason and tell so once for all",
    async (reason) => {
      const { links, append, settle, outbox, here, notices, edition } = await joined();
      await append("a", "b", "c");
      const before = await edition();
      const changed = await settle((entry, index) => (index < 2 ? refused(entry, reason) : accepted(entry)));
      expect(textsOf(changed.removed)).toEqual(["a", "b"]);
      expect(textsOf(await here())).toEqual(["c"]);
      expect(await edition()).not.toBe(before);
      expect(await outbox()).toEqual([]);
      await append("d");
      await settle((entry) => refused(entry, reason));
      expect((await links.aside(walk)).map(({ wire, reason: why }) => [wire.data, why])).toEqual(
        ["a", "b", "d"].map((text) => [{ text }, reason]),
      );
      expect(await links.aside(otherWalk)).toEqual([]);
      expect(await notices()).toEqual([["aside", 3, reason]]);
    },
  );

  it("[LOG1] give a number that was set aside to nothing else", async () => {
    const { append, settle, store } = await joined();
    await append("a", "b");
    await settle((entry, index) => (index === 1 ? refused(entry, "role") : accepted(entry)));
    const [next] = await append("c");
    expect(next?.wire).toMatchObject({ source: store.source, sequence: "0000000003" });
  });

  it("[LOG1] let the hub's entry count where another has its number, and enter ours anew", async () => {
    const { links, append, settle, outbox, here, notices } = await joined();
    const [ours] = await append("ours", "next");
    if (!ours) throw new Error("nothing was appended");
    await settle((entry) => (entry.wire.id === ours.wire.id ? refused(entry, "conflict") : accepted(entry)));
    // Until the hub's entry comes, ours stays.
    expect(textsOf(await here())).toEqual(["ours", "next"]);
    const theirs = entryFrom(ours.wire.source, 1, { data: { text: "theirs" } });
    await links.takeIn(walk, [theirs], at(1));
    expect(new Set(textsOf(await here()))).toEqual(new Set(["theirs", "next", "ours"]));
    const [anew] = await outbox();
    expect(anew?.wire).toMatchObject({
      data: { text: "ours" },
      id: "0000000003",
      sequence: "0000000003",
      remadefrom: keyOf(ours),
    });
    expect(await outbox()).toHaveLength(1);
    expect((await links.aside(walk)).map(({ wire, reason }) => [wire.data, reason])).toEqual([
      [{ text: "ours" }, "conflict"],
    ]);
    expect(await notices()).toEqual([["anew", 1, null]]);
  });

  it("enter ours anew once, and not behind a time that the hub would refuse", async () => {
    const { store, links, append, outbox } = await joined();
    const [ours] = await append("ours");
    if (!ours) throw new Error("nothing was appended");
    await store.takeIn([restamped(entryFrom(ground, 1), start + DAY)]);
    const theirs = entryFrom(ours.wire.source, 1, { data: { text: "theirs" } });
    await links.takeIn(walk, [theirs, theirs], at(1));
    expect(await links.aside(walk)).toHaveLength(1);
    const anew = (await outbox()).at(-1);
    expect(anew?.wire.data).toEqual({ text: "ours" });
    expect(Number(anew?.hlc.slice(0, 15))).toBe(start);
  });

  it("let the hub's entry count where another device's differs, and do not enter that anew", async () => {
    const { store, links, outbox, here, notices } = await joined();
    await store.takeIn([entryFrom(ground, 1, { data: { text: "as imported" } })]);
    await links.takeIn(walk, [entryFrom(ground, 1, { data: { text: "as the hub has it" } })], at(1));
    expect(textsOf(await here())).toEqual(["as the hub has it"]);
    expect(await outbox()).toEqual([]);
    expect(await links.aside(walk)).toHaveLength(1);
    expect(await notices()).toEqual([["aside", 1, "conflict"]]);
  });

  it("reject what is about a walk that was left meanwhile, and do nothing", async () => {
    const { store, links, append } = await joined();
    const [entry] = await append("a");
    if (!entry) throw new Error("nothing was appended");
    await links.leave(walk);
    await expect(links.settle(walk, [refused(entry, "role")], 0)).rejects.toThrow(NotLinkedError);
    await expect(links.takeIn(walk, [entryFrom(ground, 1)], at(1))).rejects.toThrow(NotLinkedError);
    await expect(links.setClock(walk, clock(0), "own")).rejects.toThrow(NotLinkedError);
    await links.change(walk, (row) => ({ ...row, role: "watcher" }));
    expect(textsOf((await store.read(walk, 0)).entries)).toEqual(["a"]);
    expect(await links.get(walk)).toBeNull();
  });

  it("are gone with a walk that is taken off the device, and so is what was set aside of it", async () => {
    const { store, links, append, settle } = await joined();
    await append("b");
    await settle((entry) => refused(entry, "role"));
    await append("a");
    await store.removeWalk(walk);
    expect(await links.aside(walk)).toEqual([]);
    expect(await links.get(walk)).toBeNull();
    expect(await links.unsent(walk)).toBe(0);
  });
});
