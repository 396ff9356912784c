import { IDBFactory, IDBKeyRange } from "fake-indexeddb";
import { describe, expect, it, vi } from "vitest";
import { WalkSession } from "../../../src/app/session/index.ts";
import type { Draft } from "../../../src/core/log/index.ts";
import type { Instant, StepId, WalkId } from "../../../src/core/units/index.ts";
import { openStore } from "../../../src/io/store/index.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

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
    await vi.waitFor(() => expect(session.folded().ledger?.steps[0]?.status).toBe("done"));
    stop();
    await store.log.append(walk, [draft("step.done", { step: "b" as StepId })]);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(session.folded().ledger?.steps[1]?.status).toBe("open");
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
    expect(session.folded().ledger?.steps[0]?.status).toBe("done");
  });

  it("says nothing of an entry that could not be kept", async () => {
    const { store, draft } = await opened();
    const session = new WalkSession(store.log, walk);
    await session.follow();
    vi.spyOn(store.log, "append").mockRejectedValue(new Error("full"));
    const onKept = vi.fn();
    await expect(session.enter([draft("step.done", { step: "a" })], onKept)).rejects.toThrow("full");
    expect(onKept).not.toHaveBeenCalled();
    expect(session.folded().ledger?.steps[0]?.status).toBe("open");
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
    await vi.waitFor(() => expect(session.folded().ledger?.steps[0]?.status).toBe("done"));
    expect(session.folded().ledger?.notes).toHaveLength(1);
  });

  it("strikes what was entered", async () => {
    const { store, draft } = await opened();
    const session = new WalkSession(store.log, walk);
    await session.follow();
    const entries = await session.enter([draft("step.done", { step: "a" })]);
    await session.strike(entries, Date.UTC(2031, 3, 2, 10) as Instant, "iv", "undone");
    expect(session.folded().ledger?.steps[0]?.status).toBe("open");
  });
});
