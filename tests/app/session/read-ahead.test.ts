import { waitFor } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { readAhead, takeReadAhead } from "../../../src/app/session/read-ahead.ts";
import type { Draft } from "../../../src/core/log/index.ts";
import type { Instant, StepId, WalkId } from "../../../src/core/units/index.ts";
import { MemoryEntryStore } from "../../../src/io/store/index.ts";
import { progressInOrder } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const walk = "walk-1" as WalkId;
const other = "walk-2" as WalkId;
const now = () => Date.UTC(2031, 3, 2, 9) as Instant;
const draft = (name: string, data: object = {}) => ({ name, data, at: now(), actor: "iv" }) as Draft;
const done = (id: string) => draft("step.done", { step: id as StepId });

async function stored() {
  const store = new MemoryEntryStore("/devices/a", now);
  const procedure = fileWith([step("a", "ev1", 5), step("b", "ev1", 5)]);
  for (const one of [walk, other])
    await store.append(one, [draft("walk.opened", { procedure, mode: "live" }), draft("clock.started")]);
  return store;
}

describe("a walk that is read before it is opened", () => {
  it("is opened as it is then, not as it was read", async () => {
    const store = await stored();
    const read = vi.spyOn(store, "read");
    await readAhead(store, walk);
    await store.append(walk, [done("a")]);
    await waitFor(() => expect(read).toHaveBeenCalledTimes(2));
    await read.mock.results[1]?.value;
    const session = takeReadAhead(store, walk);
    expect(progressInOrder(session?.folded().ledger ?? null)[0]?.status).toBe("done");
  });

  it("is followed by whoever opens it, from there on", async () => {
    const store = await stored();
    await readAhead(store, walk);
    const session = takeReadAhead(store, walk);
    const stop = await session?.follow();
    await store.append(walk, [done("a")]);
    await waitFor(() => expect(progressInOrder(session?.folded().ledger ?? null)[0]?.status).toBe("done"));
    stop?.();
  });

  it("is gone on with while it is still being read, and read once", async () => {
    const store = await stored();
    const read = vi.spyOn(store, "read");
    const reading = readAhead(store, walk);
    const session = takeReadAhead(store, walk);
    await session?.follow();
    await reading;
    expect(session?.folded().ledger?.phase).toBe("running");
    expect(read.mock.calls.filter(([, from]) => from === 0)).toHaveLength(1);
  });

  it("is given once, for its own walk of its own store, and is let go of otherwise", async () => {
    const [store, another] = [await stored(), await stored()];
    expect(takeReadAhead(store, walk)).toBeNull();
    await readAhead(store, walk);
    expect(takeReadAhead(store, other)).toBeNull();
    expect(takeReadAhead(store, walk)).toBeNull();
    await readAhead(store, walk);
    expect(takeReadAhead(another, walk)).toBeNull();
    await readAhead(store, walk);
    await readAhead(store, other);
    expect(takeReadAhead(store, walk)).toBeNull();
  });

  it("that cannot be read rejects, and so does opening it", async () => {
    const store = await stored();
    vi.spyOn(store, "read").mockRejectedValue(new Error("the disk is full"));
    await expect(readAhead(store, walk)).rejects.toThrow("the disk is full");
    await expect(takeReadAhead(store, walk)?.follow()).rejects.toThrow("the disk is full");
  });
});
