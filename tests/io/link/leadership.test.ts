import { describe, expect, it, vi } from "vitest";
import type { Candidacy, Locks } from "../../../src/io/link/leadership.ts";
import { stand } from "../../../src/io/link/leadership.ts";
import { StandInLocks } from "./stand-in-locks.ts";

/** Lets everything be done that is under way. */
async function settled(): Promise<void> {
  for (let turns = 0; turns < 5; turns += 1) await new Promise((resolve) => setImmediate(resolve));
}

/** Pages that want to lead, and who of them does. */
function pages(locks: Locks | null) {
  const leading = new Set<string>();
  const log: string[] = [];
  const open = (page: string): Candidacy =>
    stand(locks, "walk-1", (signal) => {
      leading.add(page);
      log.push(page);
      signal.addEventListener("abort", () => leading.delete(page));
    });
  return { open, leading: () => [...leading], log };
}

describe("[LINK] of several pages of a device", () => {
  it("one leads at a time, and when it ends the next in the order in which they came", async () => {
    const { open, leading, log } = pages(new StandInLocks());
    const [a, b, c] = [open("a"), open("b"), open("c")];
    await settled();
    expect(leading()).toEqual(["a"]);
    a.end();
    expect(leading()).toEqual([]);
    await settled();
    expect(leading()).toEqual(["b"]);
    b.end();
    await settled();
    c.end();
    await settled();
    expect(leading()).toEqual([]);
    expect(log).toEqual(["a", "b", "c"]);
  });

  it("one that gave it up while it waited never leads", async () => {
    const { open, leading, log } = pages(new StandInLocks());
    const [a, b, c] = [open("a"), open("b"), open("c")];
    await settled();
    b.end();
    await settled();
    a.end();
    await settled();
    expect(leading()).toEqual(["c"]);
    expect(log).toEqual(["a", "c"]);
    c.end();
  });

  it("one that gave it up in the moment in which it was its turn does not lead", async () => {
    const { open, leading, log } = pages(new StandInLocks());
    const a = open("a");
    a.end();
    const b = open("b");
    await settled();
    expect(log).toEqual(["b"]);
    b.end();
    await settled();
    expect(leading()).toEqual([]);
  });

  it("one takes over from another, which leads again behind it", async () => {
    const { open, leading, log } = pages(new StandInLocks());
    const [a, b] = [open("a"), open("b")];
    await settled();
    b.takeOver();
    await settled();
    expect(leading()).toEqual(["b"]);
    b.end();
    await settled();
    expect(leading()).toEqual(["a"]);
    expect(log).toEqual(["a", "b", "a"]);
    a.end();
  });

  it("each can take over again and again, and the others stay in the queue once each", async () => {
    const locks = new StandInLocks();
    const { open, leading } = pages(locks);
    const [a, b, c] = [open("a"), open("b"), open("c")];
    await settled();
    for (const [page, name] of [
      [b, "b"],
      [c, "c"],
      [a, "a"],
      [b, "b"],
    ] as const) {
      page.takeOver();
      await settled();
      expect(leading()).toEqual([name]);
    }
    b.end();
    await settled();
    const [next] = leading();
    expect(next === "a" || next === "c").toBe(true);
    for (const page of [a, c]) page.end();
    await settled();
    const { granted } = locks;
    await settled();
    expect([leading(), locks.granted]).toEqual([[], granted]);
  });

  it("one that leads, or ended, has nothing to take over", async () => {
    const locks = new StandInLocks();
    const { open, leading, log } = pages(locks);
    const [a, b] = [open("a"), open("b")];
    await settled();
    a.takeOver();
    b.end();
    b.takeOver();
    await settled();
    expect(leading()).toEqual(["a"]);
    expect(log).toEqual(["a"]);
    a.end();
  });

  it("one that takes over twice in a moment leads once in the end", async () => {
    const { open, leading } = pages(new StandInLocks());
    const [a, b] = [open("a"), open("b")];
    await settled();
    b.takeOver();
    b.takeOver();
    await settled();
    expect(leading()).toEqual(["b"]);
    b.end();
    await settled();
    expect(leading()).toEqual(["a"]);
    a.end();
  });

  it("each leads on its own where there are no locks", async () => {
    const { open, leading } = pages(null);
    const [a, b] = [open("a"), open("b")];
    expect(leading()).toEqual(["a", "b"]);
    a.takeOver();
    a.end();
    expect(leading()).toEqual(["b"]);
    b.end();
    expect(leading()).toEqual([]);
  });

  it("each leads on its own where the browser grants no locks, and asks no further", async () => {
    const request = vi.fn(async () => {
      if (request.mock.calls.length > 50) await new Promise(() => {});
      throw new DOMException("no storage for this page", "SecurityError");
    });
    const { open, leading } = pages({ request });
    const a = open("a");
    await settled();
    expect(leading()).toEqual(["a"]);
    a.takeOver();
    await settled();
    expect(request).toHaveBeenCalledOnce();
    a.end();
    expect(leading()).toEqual([]);
  });
});
