import { describe, expect, it, vi } from "vitest";
import { TurnedAwayError } from "../../../src/core/link/index.ts";
import { numberedEntries } from "../log/numbered-entry.ts";
import { ZERO } from "../log-writer.ts";
import { worded } from "../said.ts";
import { at, gone, heard, heldLinks, idsOf, pass } from "./link-stand-ins.ts";

const HOUR = 3_600_000;
const begin = heldLinks();

describe("[LINK] what the other side has", () => {
  it("is taken in together with how far it was read, and read on from there", async () => {
    const { stream, streams, near, link } = begin();
    await pass(0);
    expect(stream().after).toBeNull();
    for (const number of [1, 2, 3]) stream().hear(heard(number));
    stream().hear({ kind: "cursor", cursor: at(9) });
    await pass(0);
    expect(link.status().kind).toBe("linked");
    expect(idsOf(near.taken)).toEqual([1, 2, 3]);
    expect(near.cursorKept).toEqual(at(9));
    stream().end(gone());
    await pass(1000);
    expect(streams).toHaveLength(2);
    expect(stream().after).toEqual(at(9));
    expect(link.status().kind).toBe("linking");
  });

  it("is counted against what was stored over there, until all of that is kept here", async () => {
    const { stream, near, link } = begin();
    await pass(0);
    const hello = {
      hub: "h",
      hubKey: null,
      name: "H",
      role: "marker",
      device: "/devices/a",
      now: ZERO,
    } as const;
    expect(link.status().fetching).toBeNull();
    stream().hear({ kind: "hello", hello: { ...hello, toCome: 3 } });
    expect(link.status().fetching).toEqual({ come: 0, of: 3 });
    stream().hear(heard(1));
    stream().hear(heard(2));
    await pass(0);
    expect(link.status().fetching).toEqual({ come: 2, of: 3 });
    near.trouble = new Error("the disk is full");
    stream().hear(heard(3));
    stream().hear({ kind: "presence", followers: [] });
    await pass(0);
    expect(link.status().fetching).toEqual({ come: 2, of: 3 });
    near.trouble = null;
    await pass(60_000);
    stream().hear({ kind: "hello", hello: { ...hello, toCome: 1 } });
    stream().hear(heard(3));
    stream().hear({ kind: "presence", followers: [] });
    await pass(0);
    expect(link.status().fetching).toBeNull();
    expect(idsOf(near.taken)).toEqual([1, 2, 3]);
    stream().hear({ kind: "hello", hello: { ...hello, toCome: 0 } });
    expect(link.status().fetching).toBeNull();
  });

  it("is all read again when the other side begins anew under another epoch", async () => {
    const { stream, near } = begin();
    near.cursorKept = at(50);
    await pass(0);
    expect(stream().after).toEqual(at(50));
    for (const number of [1, 2]) stream().hear(heard(number, "two"));
    await pass(0);
    expect(idsOf(near.taken)).toEqual([1, 2]);
    expect(near.cursorKept).toEqual(at(2, "two"));
    stream().end();
    await pass(1000);
    expect(stream().after).toEqual(at(2, "two"));
  });

  it("that cannot be read is counted and passed", async () => {
    const { stream, near, link } = begin();
    await pass(0);
    stream().hear({ kind: "unreadable", cursor: at(4) });
    stream().hear({ kind: "unreadable", cursor: null });
    await pass(0);
    expect(link.status().unreadable).toBe(2);
    expect(near.cursorKept).toEqual(at(4));
  });

  it("that could not be kept is read again from where keeping stopped", async () => {
    const { stream, streams, near, link } = begin();
    await pass(0);
    stream().hear(heard(1));
    await pass(0);
    near.trouble = new Error("disk full");
    stream().hear(heard(2));
    await pass(0);
    expect(stream().signal.aborted).toBe(true);
    expect(link.status()).toMatchObject({ kind: "linking", trouble: "disk full" });
    near.trouble = null;
    await pass(1000);
    expect(streams).toHaveLength(2);
    expect(stream().after).toEqual(at(1));
    stream().hear(heard(2));
    await pass(0);
    expect(idsOf(near.taken)).toEqual([1, 2]);
    expect(link.status()).toMatchObject({ kind: "linked", trouble: null });
  });

  it("is followed again after pauses that double while no stream says a word", async () => {
    const { stream, streams } = begin({ random: () => 0.5 });
    await pass(0);
    const begunAt: number[] = [];
    for (let times = 0; times < 5; times += 1) {
      const { length } = streams;
      stream().end(gone());
      const since = Date.now();
      while (streams.length === length) await pass(250);
      begunAt.push(Date.now() - since);
    }
    expect(begunAt).toEqual([750, 1500, 3000, 6000, 12_000]);
  });
});

describe("[LINK] a stream on which nothing is heard", () => {
  it("is given up after 40 s and followed anew, and that is said", async () => {
    const { stream, streams, link } = begin();
    await pass(0);
    stream().hear(heard(1));
    await pass(39_000);
    expect(link.status().kind).toBe("linked");
    await pass(1000);
    expect(streams[0]?.signal.aborted).toBe(true);
    expect(worded(link.status())).toMatchObject({ kind: "linking", words: "Nothing was heard for 40 s." });
    await pass(1000);
    expect(streams).toHaveLength(2);
  });

  it("is kept by any sign of life", async () => {
    const { stream, streams, link } = begin();
    await pass(0);
    stream().hear(heard(1));
    for (let times = 0; times < 20; times += 1) {
      await pass(30_000);
      stream().hear({ kind: "alive" });
    }
    expect(streams).toHaveLength(1);
    expect(link.status().kind).toBe("linked");
    expect(link.status().heardAt).toBe(Date.now());
  });

  it("may take longer for its first word where answers take long", async () => {
    const { streams } = begin();
    await pass(HOUR);
    const lasted = streams.slice(0, 6).map(({ signal }) => signal.aborted);
    expect(lasted).toEqual([true, true, true, true, true, true]);
    // 60, 120, 240, 480 and 600 s: so many streams and their pauses fill half an hour.
    expect(streams.length).toBeLessThan(12);
  });

  it("is not trusted for longer after this device's clock was set back", async () => {
    const { stream, streams } = begin();
    await pass(0);
    stream().hear(heard(1));
    vi.setSystemTime(ZERO - HOUR);
    await pass(81_000);
    expect(streams[0]?.signal.aborted).toBe(true);
  });
});

describe("[LINK] a device that wakes up", () => {
  it("distrusts a stream that was silent while it slept, and follows anew at once", async () => {
    const { stream, streams, link } = begin();
    await pass(0);
    stream().hear(heard(1));
    await pass(0);
    // Asleep: the clock goes on and no timer fires.
    vi.setSystemTime(ZERO + HOUR);
    link.wake();
    await pass(0);
    expect(streams[0]?.signal.aborted).toBe(true);
    expect(streams).toHaveLength(2);
    expect(stream().after).toEqual(at(1));
  });

  it("keeps a stream that was heard just now", async () => {
    const { stream, streams, link } = begin();
    await pass(0);
    stream().hear(heard(1));
    await pass(5000);
    link.wake();
    await pass(1000);
    expect(streams).toHaveLength(1);
    expect(stream().signal.aborted).toBe(false);
  });

  it("waits out no pause in either direction", async () => {
    const { push, stream, streams, offers, link } = begin({}, numberedEntries(1));
    push.mockRejectedValue(gone());
    await pass(0);
    for (let times = 0; times < 6; times += 1) {
      stream().end(gone());
      await pass(32_000);
    }
    stream().end(gone());
    await pass(10);
    const before = { offers: offers.length, streams: streams.length };
    link.wake();
    await pass(0);
    expect(offers).toHaveLength(before.offers + 1);
    expect(streams).toHaveLength(before.streams + 1);
  });
});

describe("[LINK] a device that is turned away", () => {
  it.each(["push", "follow"])("on %s stops for good and says why", async (where) => {
    const { push, stream, streams, link, near } = begin({}, numberedEntries(1));
    const error = new TurnedAwayError("Join the walk again.");
    if (where === "push") push.mockRejectedValueOnce(error);
    else push.mockRejectedValue(gone());
    await pass(0);
    if (where === "follow") stream().end(error);
    await pass(0);
    expect(link.status()).toMatchObject({ kind: "ended", words: "Join the walk again.", unsent: 1 });
    const asked = push.mock.calls.length;
    expect(stream().signal.aborted).toBe(true);
    near.put(numberedEntries(1, 2));
    stream().hear(heard(9));
    link.wake();
    await pass(HOUR);
    expect(push).toHaveBeenCalledTimes(asked);
    expect(streams).toHaveLength(1);
    expect(near.taken).toEqual([]);
    expect(link.status().kind).toBe("ended");
  });
});

describe("[LINK] a link that is stopped", () => {
  it("keeps what it had heard before, offers nothing more and hears nothing more", async () => {
    const { push, stream, link, near } = begin();
    await pass(0);
    stream().hear(heard(1));
    const stopped = link.stop();
    stream().hear(heard(2));
    await stopped;
    near.put(numberedEntries(1));
    await pass(HOUR);
    expect(idsOf(near.taken)).toEqual([1]);
    expect(push).not.toHaveBeenCalled();
  });

  it("is over only once what was heard is kept", async () => {
    const { stream, link, near } = begin();
    await pass(0);
    const takeIn = near.takeIn;
    near.takeIn = async (...heardThen) => {
      await new Promise((resolve) => setTimeout(resolve, 5000));
      return takeIn(...heardThen);
    };
    stream().hear(heard(1));
    await pass(0);
    const keptAtTheEnd = link.stop().then(() => idsOf(near.taken));
    await pass(5000);
    expect(await keptAtTheEnd).toEqual([1]);
  });

  it("at once follows nothing, and cannot be begun again", async () => {
    const { link, streams } = begin();
    await link.stop();
    link.start();
    await pass(HOUR);
    expect(streams).toEqual([]);
  });
});
