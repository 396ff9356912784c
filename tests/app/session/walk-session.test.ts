import { waitFor } from "@testing-library/react";
import { IDBFactory, IDBKeyRange } from "fake-indexeddb";
import { describe, expect, it, vi } from "vitest";
import { WalkSession } from "../../../src/app/session/index.ts";
import type { Draft, Entry, EntryPage } from "../../../src/core/log/index.ts";
import { readEntry, tick } from "../../../src/core/log/index.ts";
import type { Instant, StepId, WalkId } from "../../../src/core/units/index.ts";
import { WalkFold } from "../../../src/core/walk/index.ts";
import { MemoryEntryStore, openStore } from "../../../src/io/store/index.ts";
import { progressInOrder } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";
import { joining } from "../../io/store/link-stand-ins.ts";

const walk = "walk-1" as WalkId;
const file = fileWith([step("a", "ev1", 5), step("b", "ev1", 5)]);

async function opened() {
  let time = Date.UTC(2031, 3, 2, 9);
  const now = () => {
    time += 1000;
    return time as Instant;
  };
  const parts = { indexedDB: new IDBFactory(), IDBKeyRange };
  const store = await openStore({ now, indexedDb: parts });
  const draft = (name: string, data: object = {}) => ({ name, data, at: now(), actor: "iv" }) as Draft;
  await store.log.append(walk, [
    draft("walk.opened", { procedure: file, mode: "live" }),
    draft("clock.started"),
  ]);
  return { store, draft, other: () => openStore({ now, indexedDb: parts }) };
}

describe("a walk as a screen has it open", () => {
  it("reads the log, then follows it until it is left", async () => {
    const { store, draft } = await opened();
    const session = new WalkSession(store.log, walk);
    expect(session.folded().ledger).toBeNull();
    const stop = await session.follow();
    expect(session.folded().ledger?.phase).toBe("running");
    await store.log.append(walk, [draft("step.done", { step: "a" as StepId })]);
    await waitFor(() => expect(progressInOrder(session.folded().ledger)[0]?.status).toBe("done"));
    stop();
    await store.log.append(walk, [draft("step.done", { step: "b" as StepId })]);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(progressInOrder(session.folded().ledger)[1]?.status).toBe("open");
  });

  it("[LOG5] says that an entry is kept only after it is, and before anything else is worked out", async () => {
    const { store, draft } = await opened();
    const session = new WalkSession(store.log, walk);
    await session.follow();
    const told: string[] = [];
    session.subscribe(() => told.push("folded"));
    const append = store.log.append.bind(store.log);
    vi.spyOn(store.log, "append").mockImplementation(async (...asked) => {
      const entries = await append(...asked);
      told.push("kept");
      return entries;
    });
    await session.enter([draft("step.done", { step: "a" })], () => told.push("told"));
    expect(told.slice(0, 3)).toEqual(["kept", "told", "folded"]);
    expect(progressInOrder(session.folded().ledger)[0]?.status).toBe("done");
  });

  it("folds an entry of its own once: what the store gives back of it is the very object", async () => {
    const { store, draft } = await opened();
    const given = vi.spyOn(WalkFold.prototype, "add");
    const session = new WalkSession(store.log, walk);
    await session.follow();
    const read = vi.spyOn(store.log, "read");
    const [entry] = await session.enter([draft("step.done", { step: "a" })]);
    // Word of it comes back from the store, and the log is read on.
    await waitFor(() => expect(read).toHaveBeenCalled());
    const [page] = await Promise.all(read.mock.results.map(({ value }) => value as Promise<EntryPage>));
    expect(page?.entries).toHaveLength(1);
    await waitFor(() => expect(given.mock.calls.length).toBeGreaterThan(2));
    const wires = given.mock.calls.flatMap(([entries]) => [...entries].map(({ wire }) => wire));
    expect(wires.filter(({ id }) => id === entry?.wire.id)).toHaveLength(2);
    expect(new Set(wires.filter(({ id }) => id === entry?.wire.id))).toEqual(new Set([entry?.wire]));
    expect(new Set(wires).size).toBe(3);
    given.mockRestore();
  });

  it("says nothing of an entry that could not be kept", async () => {
    const { store, draft } = await opened();
    const session = new WalkSession(store.log, walk);
    await session.follow();
    vi.spyOn(store.log, "append").mockRejectedValue(new Error("full"));
    const onKept = vi.fn();
    await expect(session.enter([draft("step.done", { step: "a" })], onKept)).rejects.toThrow("full");
    expect(onKept).not.toHaveBeenCalled();
    expect(progressInOrder(session.folded().ledger)[0]?.status).toBe("open");
  });

  it("takes up what another tab enters, also while an entry of its own is under way", async () => {
    const { store, draft, other } = await opened();
    const session = new WalkSession(store.log, walk);
    await session.follow();
    const tab = await other();
    await Promise.all([
      session.enter([draft("note.made", { text: "here" })], () => {}),
      tab.log.append(walk, [draft("step.done", { step: "a" })]),
    ]);
    await waitFor(() => expect(progressInOrder(session.folded().ledger)[0]?.status).toBe("done"));
    expect(session.folded().ledger?.notes).toHaveLength(1);
  });

  it("takes back what was entered, as undone", async () => {
    const { store, draft } = await opened();
    const session = new WalkSession(store.log, walk);
    await session.follow();
    const entries = await session.enter([draft("step.done", { step: "a" })]);
    await session.undo(entries, Date.UTC(2031, 3, 2, 10) as Instant, "iv");
    expect(progressInOrder(session.folded().ledger)[0]?.status).toBe("open");
    const strike = session.folded().entries.at(-1);
    expect(strike?.wire.data).toEqual({
      source: entries[0]?.wire.source,
      id: entries[0]?.wire.id,
      undone: true,
    });
  });
});

/** A linked walk in memory, whose entries a hub's clock may change in place, and whose reading can be held up. */
async function linked() {
  let time = Date.UTC(2031, 3, 2, 9);
  const now = () => {
    time += 1000;
    return time as Instant;
  };
  const store = new MemoryEntryStore("/devices/iv-tablet", now);
  const draft = (name: string, data: object = {}) => ({ name, data, at: now(), actor: "iv" }) as Draft;
  await store.append(walk, [draft("walk.opened", { procedure: file, mode: "live" }), draft("clock.started")]);
  await store.links.join({ ...joining, walk, device: store.source, joinedAt: now() });
  const { read } = MemoryEntryStore.prototype;
  let offset = 0;
  /** The entry made last comes back from the hub with another hybrid time. */
  const restampLast = async () => {
    const last = (await read.call(store, walk, 0)).entries.at(-1) as Entry;
    const { entry } = readEntry({ ...last.wire, hlc: tick(last.hlc, now()) });
    offset += 1;
    await store.links.takeIn(walk, [entry as Entry], { epoch: "one", offset });
  };
  /** Holds up every reading that begins from now on. */
  const holdReading = () => {
    let open = () => {};
    const gate = new Promise<void>((resolve) => {
      open = resolve;
    });
    const asked = vi.spyOn(store, "read").mockImplementation(async (...place) => {
      await gate;
      return read.apply(store, place);
    });
    const letGo = () => {
      asked.mockRestore();
      open();
    };
    return { asked, letGo };
  };
  return { store, draft, restampLast, holdReading };
}

it("misses nothing of which word comes in the moment in which something else was shown", async () => {
  const { store, draft } = await linked();
  const session = new WalkSession(store, walk);
  await session.follow();
  const end = session.subscribe(() => {
    end();
    void store.append(walk, [draft("step.done", { step: "b" })]);
  });
  await store.append(walk, [draft("step.done", { step: "a" })]);
  await waitFor(() =>
    expect(progressInOrder(session.folded().ledger).map(({ status }) => status)).toEqual(["done", "done"]),
  );
});

describe("[LINK] a walk whose log is changed in place while a screen has it open", () => {
  it("[LOG3] shows what is entered meanwhile once, and never as a conflict", async () => {
    const { store, draft, restampLast, holdReading } = await linked();
    const session = new WalkSession(store, walk);
    await session.follow();
    const reading = holdReading();
    await store.append(walk, [draft("note.made", { text: "from another tab" })]);
    await waitFor(() => expect(reading.asked).toHaveBeenCalled());
    await session.enter([draft("step.done", { step: "a" })], () => {
      void restampLast().then(reading.letGo);
    });
    await waitFor(() => expect(session.folded().ledger?.notes).toHaveLength(1));
    const { ledger, ignored, entries } = session.folded();
    expect(progressInOrder(ledger)[0]?.status).toBe("done");
    expect(ignored).toEqual([]);
    expect(entries.at(-1)?.hlc).toBe((await store.read(walk, 0)).entries.at(-1)?.hlc);
  });

  it("never shows less than there is, whatever is entered while it is read anew", async () => {
    const { store, draft, restampLast, holdReading } = await linked();
    await store.append(walk, [draft("step.done", { step: "a" })]);
    const session = new WalkSession(store, walk);
    await session.follow();
    const shown = new Set<unknown>();
    session.subscribe(() => shown.add(progressInOrder(session.folded().ledger)[0]?.status));
    let reading = holdReading();
    await restampLast();
    await waitFor(() => expect(reading.asked).toHaveBeenCalledTimes(1));
    reading.letGo();
    reading = holdReading();
    await waitFor(() => expect(reading.asked).toHaveBeenCalled());
    await session.enter([draft("step.done", { step: "b" })]);
    reading.letGo();
    await waitFor(() => expect(progressInOrder(session.folded().ledger)[1]?.status).toBe("done"));
    await waitFor(() => expect(session.folded().ignored).toEqual([]));
    expect([...shown]).toEqual(["done"]);
  });

  it("shows that nothing is left of it when all of it was taken off the device", async () => {
    const { store } = await linked();
    const session = new WalkSession(store, walk);
    await session.follow();
    const onChange = vi.fn();
    session.subscribe(onChange);
    await store.removeWalk(walk);
    await waitFor(() => expect(onChange).toHaveBeenCalled());
    expect(session.folded()).toMatchObject({ ledger: null, entries: [] });
  });
});
