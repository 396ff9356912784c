import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import type { Instant } from "../../../src/core/units/index.ts";
import { ID_PATTERN } from "../../../src/core/units/index.ts";
import type { StorageParts, WakeParts } from "../../../src/io/device/index.ts";
import {
  askToPersist,
  keepAwake,
  mayBeOnline,
  newDeviceSource,
  newWalkId,
  storageSpace,
  watchNetwork,
} from "../../../src/io/device/index.ts";

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

describe("new ids", () => {
  it("follow from the day and the bytes given", () => {
    const random = (count: number) => Uint8Array.from({ length: count }, (_, index) => index + 32 * index);
    expect(newWalkId(Date.UTC(2031, 3, 2, 23, 59) as Instant, random)).toBe("walk-2031-04-02-abcdef");
    expect(newDeviceSource(random)).toBe("/devices/abcdefghjk");
  });

  it("are ids whatever the bytes, and differ from one to the next", () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 6, maxLength: 6 }), (bytes) => {
        expect(newWalkId(0 as Instant, () => bytes)).toMatch(ID_PATTERN);
      }),
    );
    expect(new Set(Array.from({ length: 200 }, () => newDeviceSource())).size).toBe(200);
  });
});

describe("storage", () => {
  const storage = (isPersisted: boolean, grants: boolean) => ({
    persisted: vi.fn(async () => isPersisted),
    persist: vi.fn(async () => grants),
    estimate: async () => ({ usage: 10, quota: 1000 }),
  });

  it("is asked for persistence once it is not persistent yet", async () => {
    const [granted, already] = [storage(false, true), storage(true, false)];
    expect(await askToPersist(granted)).toEqual({ persisted: true, usage: 10, quota: 1000 });
    expect(await askToPersist(already)).toMatchObject({ persisted: true });
    expect(already.persist).not.toHaveBeenCalled();
    expect(await askToPersist(storage(false, false))).toMatchObject({ persisted: false });
  });

  it("is looked at without asking", async () => {
    const parts = storage(false, true);
    expect(await storageSpace(parts)).toEqual({ persisted: false, usage: 10, quota: 1000 });
    expect(parts.persist).not.toHaveBeenCalled();
  });

  it("tells nothing where the browser has or gives no answer", async () => {
    const nothing = { persisted: null, usage: null, quota: null };
    expect(await askToPersist({})).toEqual(nothing);
    const refuses = () => Promise.reject(new TypeError("opaque origin"));
    const refusing: StorageParts = { persist: refuses, persisted: refuses, estimate: refuses };
    expect(await askToPersist(refusing)).toEqual(nothing);
    expect(await storageSpace({ estimate: async () => ({}) })).toEqual(nothing);
  });
});

describe("keeping the screen awake", () => {
  class Page extends EventTarget {
    visibilityState: DocumentVisibilityState = "visible";
    turn(to: DocumentVisibilityState): void {
      this.visibilityState = to;
      this.dispatchEvent(new Event("visibilitychange"));
    }
  }
  class Lock extends EventTarget {
    released = false;
    async release(): Promise<void> {
      this.released = true;
      this.dispatchEvent(new Event("release"));
    }
  }

  function screen(answer: () => Promise<Lock> = async () => new Lock()) {
    const page = new Page();
    const locks: Lock[] = [];
    const request = vi.fn(async () => {
      const lock = await answer();
      locks.push(lock);
      return lock;
    });
    const parts = { page, wakeLock: { request } } as unknown as WakeParts;
    return { page, locks, request, parts };
  }

  it("asks at once and again whenever the page is shown after the browser took the lock", async () => {
    const { page, locks, request, parts } = screen();
    const keeper = keepAwake(parts);
    const onChange = vi.fn();
    keeper.watch(onChange);
    await settled();
    expect(keeper.status()).toBe("awake");

    page.turn("hidden");
    await locks[0]?.release();
    expect(keeper.status()).toBe("resting");
    await settled();
    expect(request).toHaveBeenCalledTimes(1);

    page.turn("visible");
    await settled();
    expect(request).toHaveBeenCalledTimes(2);
    expect(keeper.status()).toBe("awake");
    expect(onChange).toHaveBeenCalledTimes(3);
  });

  it("holds one lock at most", async () => {
    const { page, request, parts } = screen();
    keepAwake(parts);
    page.turn("visible");
    await settled();
    page.turn("visible");
    await settled();
    expect(request).toHaveBeenCalledTimes(1);
  });

  it("lets go for good, even of a lock that comes late", async () => {
    const { page, locks, request, parts } = screen();
    const keeper = keepAwake(parts);
    keeper.release();
    await settled();
    expect(locks.map(({ released }) => released)).toEqual([true]);
    page.turn("visible");
    await settled();
    expect(request).toHaveBeenCalledTimes(1);

    const held = screen();
    const holder = keepAwake(held.parts);
    await settled();
    holder.release();
    expect(held.locks[0]?.released).toBe(true);
    expect(holder.status()).toBe("resting");
  });

  it("says when the browser would not or cannot, and tries again later", async () => {
    let isLow = true;
    const low = screen(async () => {
      if (isLow) throw new DOMException("battery", "NotAllowedError");
      return new Lock();
    });
    const keeper = keepAwake(low.parts);
    await settled();
    expect(keeper.status()).toBe("denied");
    isLow = false;
    low.page.turn("visible");
    await settled();
    expect(keeper.status()).toBe("awake");
    expect(keepAwake({ page: new Page(), wakeLock: undefined } as unknown as WakeParts).status()).toBe(
      "absent",
    );
  });
});

it("the network's presence is told and watched until the end", () => {
  const network = Object.assign(new EventTarget(), { navigator: { onLine: true } });
  const onChange = vi.fn();
  const end = watchNetwork(onChange, network);
  expect(mayBeOnline(network)).toBe(true);
  network.navigator.onLine = false;
  network.dispatchEvent(new Event("offline"));
  expect(mayBeOnline(network)).toBe(false);
  network.dispatchEvent(new Event("online"));
  expect(onChange).toHaveBeenCalledTimes(2);
  end();
  network.dispatchEvent(new Event("offline"));
  expect(onChange).toHaveBeenCalledTimes(2);
});
