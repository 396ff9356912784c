// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { afterEach, beforeEach, expect, it } from "vitest";
import type { PageParts } from "../../../src/io/link/page-signals.ts";
import { waited } from "../../../src/io/link/timers.ts";
import { TestHub, WALK } from "../../hub/test-hub.ts";
import { note, opened } from "../store/stand-ins.ts";
import { StandInLocks } from "./stand-in-locks.ts";
import { eventually, openTablet, statusWhen } from "./tablet.ts";

let hub: TestHub;

beforeEach(async () => {
  hub = await TestHub.open();
});

afterEach(() => hub.close());

/** A part of a page, on which it is counted who listens. */
class CountedTarget extends EventTarget {
  readonly #listeners: Set<unknown>;

  constructor(listeners: Set<unknown>) {
    super();
    this.#listeners = listeners;
  }

  override addEventListener(...[type, listener]: Parameters<EventTarget["addEventListener"]>): void {
    this.#listeners.add(listener);
    super.addEventListener(type, listener);
  }

  override removeEventListener(...[type, listener]: Parameters<EventTarget["removeEventListener"]>): void {
    this.#listeners.delete(listener);
    super.removeEventListener(type, listener);
  }
}

function countedPage() {
  const listeners = new Set<unknown>();
  const document = Object.assign(new CountedTarget(listeners), { visibilityState: "visible" as const });
  const page: PageParts & EventTarget = Object.assign(new CountedTarget(listeners), { document });
  return { page, listeners };
}

it.each(["linked", "linking"] as const)(
  "[LINK] nothing of a %s page goes on once it is closed",
  async (kind) => {
    const { page, listeners } = countedPage();
    let waiting = 0;
    const tablet = await openTablet(await hub.listen(), {
      now: () => hub.now,
      page,
      locks: new StandInLocks(),
      wait: async (ms, signal) => {
        waiting += 1;
        await waited(ms / 10, signal);
        waiting -= 1;
      },
    });
    await tablet.append(WALK, opened("Ring exchange"));
    const stop = tablet.links.watch(WALK, () => {});
    await tablet.links.share({ walk: WALK, ownerCode: hub.owner, name: "Inside" });
    await statusWhen(tablet.links, WALK, (status) => status.kind === "linked" && status.unsent === 0);
    if (kind === "linking") tablet.browser.disconnect();
    await statusWhen(tablet.links, WALK, (status) => status.kind === kind);
    expect(listeners.size).toBeGreaterThan(0);
    tablet.links.close();
    stop();
    await eventually(() => waiting === 0);
    expect(listeners.size).toBe(0);
    tablet.browser.reconnect();
    const asked = tablet.browser.asked.length;
    await tablet.append(WALK, note("after the end"));
    page.dispatchEvent(new Event("online"));
    await new Promise((resolve) => setTimeout(resolve, 150));
    expect(waiting).toBe(0);
    expect(tablet.browser.asked.slice(asked)).toEqual([]);
    tablet.close();
  },
);
