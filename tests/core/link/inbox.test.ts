import { describe, expect, it, vi } from "vitest";
import { Inbox } from "../../../src/core/link/inbox.ts";
import type { Cursor } from "../../../src/core/link/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import { numberedEntry } from "../log/numbered-entry.ts";
import { at, idsOf } from "./link-stand-ins.ts";

/** An inbox whose keeping is let go one batch at a time. */
function heldInbox(largest = 100) {
  const kept: (readonly [ids: readonly number[], cursor: Cursor])[] = [];
  const gates: (() => void)[] = [];
  let failure: Error | null = null;
  const onFailure = vi.fn();
  const keep = async (entries: readonly Entry[], cursor: Cursor) => {
    await new Promise<void>((resolve) => gates.push(resolve));
    if (failure) throw failure;
    kept.push([idsOf(entries), cursor]);
  };
  const inbox = new Inbox({ keep, onFailure, largest });
  const turns = () => new Promise((resolve) => setImmediate(resolve));
  return {
    inbox,
    kept,
    onFailure,
    put: (...numbers: readonly number[]) => {
      for (const number of numbers) inbox.put(numberedEntry(number), at(number));
    },
    letGo: async () => {
      await turns();
      gates.shift()?.();
      await turns();
    },
    fail: (error: Error) => {
      failure = error;
    },
  };
}

describe("[LINK] what a stream brought", () => {
  it("is kept in one go as far as it came in one turn, then what came meanwhile", async () => {
    const { put, kept, letGo, inbox } = heldInbox();
    put(1, 2, 3);
    await letGo();
    put(4);
    await new Promise((resolve) => setImmediate(resolve));
    put(5, 6);
    await letGo();
    await letGo();
    await inbox.emptied();
    expect(kept).toEqual([
      [[1, 2, 3], at(3)],
      [[4], at(4)],
      [[5, 6], at(6)],
    ]);
  });

  it("is kept in parts of a bounded size, in order", async () => {
    const { put, kept, letGo } = heldInbox(2);
    put(1, 2, 3, 4, 5);
    for (let times = 0; times < 3; times += 1) await letGo();
    expect(kept).toEqual([
      [[1, 2], at(2)],
      [[3, 4], at(4)],
      [[5], at(5)],
    ]);
  });

  it("without an entry still moves how far it was read", async () => {
    const { inbox, kept, letGo } = heldInbox();
    inbox.put(null, at(9));
    await letGo();
    expect(kept).toEqual([[[], at(9)]]);
  });

  it("is not kept any more once a part could not be: nothing may be passed over", async () => {
    const { put, kept, letGo, fail, onFailure, inbox } = heldInbox();
    put(1);
    await letGo();
    fail(new Error("disk full"));
    put(2);
    await new Promise((resolve) => setImmediate(resolve));
    put(3);
    await letGo();
    put(4);
    await letGo();
    await inbox.emptied();
    expect(kept).toEqual([[[1], at(1)]]);
    expect(onFailure).toHaveBeenCalledExactlyOnceWith(new Error("disk full"));
  });

  it("is waited for until all of it is kept", async () => {
    const { put, kept, letGo, inbox } = heldInbox();
    put(1);
    const emptied = inbox.emptied().then(() => kept.length);
    await new Promise((resolve) => setImmediate(resolve));
    put(2);
    await letGo();
    await letGo();
    expect(await emptied).toBe(2);
  });
});
