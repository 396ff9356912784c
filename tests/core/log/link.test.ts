import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Cursor, Entry, PushAnswer } from "../../../src/core/log/index.ts";
import { TurnedAwayError, UnreachableError } from "../../../src/core/log/index.ts";
import { ZERO } from "../log-writer.ts";
import { answerFor, heldLink } from "./link-stand-ins.ts";
import { numberedEntries, numberedEntry } from "./numbered-entry.ts";

const HOUR = 3_600_000;
const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);
const gone = (retryAfter: number | null = null) => new UnreachableError("gone", { retryAfter });
const idsOf = (entries: readonly Entry[]) => entries.map(({ wire }) => Number(wire.id));
const at = (offset: number, epoch = "one"): Cursor => ({ epoch, offset });
const heard = (number: number, epoch = "one") =>
  ({ kind: "entry", entry: numberedEntry(number), cursor: at(number, epoch) }) as const;

let begun: ReturnType<typeof heldLink>[] = [];

function begin(parts: Parameters<typeof heldLink>[0] = {}, waiting: readonly Entry[] = []) {
  const made = heldLink(parts);
  made.near.put(waiting);
  made.link.start();
  begun.push(made);
  return made;
}

beforeEach(() => {
  vi.useFakeTimers({ now: ZERO });
});

afterEach(async () => {
  for (const { link, stream } of begun) {
    const stopped = link.stop();
    stream().end();
    await stopped;
  }
  // Nothing of a link that was stopped waits for anything.
  expect(vi.getTimerCount()).toBe(0);
  expect(begun.every(({ near }) => near.watchers.size === 0)).toBe(true);
  begun = [];
  vi.useRealTimers();
});

describe("[LINK] what waits to be sent", () => {
  it("is offered from the oldest on, a batch behind the answer to the one before", async () => {
    const { push, near, link } = begin({ settings: { batch: 4 } }, numberedEntries(10));
    let underWay = 0;
    push.mockImplementation(async (entries) => {
      underWay += 1;
      expect(underWay).toBe(1);
      await new Promise((resolve) => setTimeout(resolve, 500));
      underWay -= 1;
      return answerFor(entries);
    });
    await pass(2000);
    expect(push.mock.calls.map(([entries]) => idsOf(entries))).toEqual([
      [1, 2, 3, 4],
      [5, 6, 7, 8],
      [9, 10],
    ]);
    expect(near.settledTo.map(([id]) => Number(id))).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(link.status().unsent).toBe(0);
  });

  it("is offered as soon as it is entered, and counted until the other side has it", async () => {
    const { push, near, link } = begin();
    await pass(10_000);
    expect(push).not.toHaveBeenCalled();
    const answered = vi.fn<() => void>();
    push.mockImplementation(
      (entries) => new Promise((resolve) => answered.mockImplementation(() => resolve(answerFor(entries)))),
    );
    near.put(numberedEntries(2));
    await pass(0);
    expect(push).toHaveBeenCalledOnce();
    expect(link.status().unsent).toBe(2);
    near.put(numberedEntries(1, 3));
    await pass(0);
    expect(link.status().unsent).toBe(3);
    answered();
    await pass(0);
    expect(push.mock.calls.map(([entries]) => idsOf(entries))).toEqual([[1, 2], [3]]);
  });

  it.each([0, 0.37, 0.999_999])(
    "is offered again after pauses that double, each in its upper half (at random %d)",
    async (random) => {
      const { push, offers } = begin({ random: () => random }, numberedEntries(1));
      push.mockRejectedValue(gone());
      await pass(HOUR);
      const pauses = offers.slice(1).map((offer, index) => offer - (offers[index] ?? 0));
      const bounds = [1000, 2000, 4000, 8000, 16_000, 32_000, ...pauses.slice(6).map(() => 60_000)];
      expect(pauses).toEqual(bounds.map((bound) => Math.round(bound * (0.5 + random / 2))));
      expect(pauses.length).toBeGreaterThan(50);
    },
  );

  it("is left for as long as the other side asked, but not for hours", async () => {
    const { push, offers } = begin({}, numberedEntries(1));
    push.mockRejectedValueOnce(gone(30_000)).mockRejectedValueOnce(gone(24 * HOUR));
    await pass(HOUR);
    expect(offers).toEqual([0, 30_000, 630_000]);
  });

  it("begins with a short pause again once something was answered", async () => {
    const { push, offers, near } = begin({}, numberedEntries(1));
    for (let times = 0; times < 6; times += 1) push.mockRejectedValueOnce(gone());
    await pass(HOUR);
    const begunAnew = offers.length;
    push.mockRejectedValueOnce(gone());
    near.put(numberedEntries(1, 2));
    await pass(HOUR);
    expect(offers.slice(begunAnew)).toEqual([HOUR, HOUR + 500]);
  });

  it("is offered at once when the stream comes back, whatever is left of a pause", async () => {
    const { push, stream, offers } = begin({}, numberedEntries(1));
    push.mockRejectedValueOnce(gone(500_000));
    await pass(20_000);
    expect(offers).toEqual([0]);
    stream().hear({ kind: "alive" });
    stream().hear(heard(7));
    await pass(0);
    expect(offers).toEqual([0, 20_000]);
  });

  it("waits out its pause though there was hope before it was offered", async () => {
    const { push, near, link, stream, offers } = begin();
    await pass(0);
    stream().hear(heard(7));
    link.wake();
    await pass(0);
    push.mockRejectedValueOnce(gone());
    near.put(numberedEntries(1));
    await pass(499);
    expect(offers).toEqual([0]);
  });

  it("that is refused as ahead and stays is not offered again without a pause", async () => {
    const { push, offers } = begin({}, numberedEntries(2));
    push.mockImplementation(async (entries) => answerFor(entries, "ahead"));
    await pass(3600);
    expect(offers).toEqual([0, 500, 1500, 3500]);
    push.mockImplementation(async (entries) => answerFor(entries));
    await pass(10_000);
    expect(offers).toHaveLength(5);
  });

  it.each([
    ["too few results", ({ results }: PushAnswer) => results.slice(1)],
    ["results in another order", ({ results }: PushAnswer) => results.toReversed()],
    ["too many results", ({ results }: PushAnswer) => [...results, ...results]],
  ])("stays when the answer has %s", async (_, wrong) => {
    const { push, near, link } = begin({}, numberedEntries(2));
    push.mockImplementationOnce(async (entries) => {
      const answer = answerFor(entries);
      return { ...answer, results: wrong(answer) };
    });
    await pass(100);
    expect(near.settledTo).toEqual([]);
    expect(link.status()).toMatchObject({ unsent: 2, words: "the answer does not fit what was sent" });
    await pass(1000);
    expect(near.settledTo.map(([, outcome]) => outcome)).toEqual(["accepted", "accepted"]);
  });

  it("is tried again, and the trouble told, when this side's store fails", async () => {
    const { near, link, push } = begin({}, numberedEntries(1));
    const settle = vi.spyOn(near, "settle").mockRejectedValueOnce(new Error("disk full"));
    await pass(100);
    expect(link.status()).toMatchObject({ trouble: "disk full", unsent: 1 });
    await pass(1000);
    expect(settle).toHaveBeenCalledTimes(2);
    expect(push).toHaveBeenCalledTimes(2);
    expect(link.status()).toMatchObject({ trouble: null, unsent: 0 });
  });
});

describe("[LINK] an answer that does not come", () => {
  it("is waited for twice as long each time, up to ten minutes, and its request is given up", async () => {
    const { push, offers } = begin({}, numberedEntries(1));
    const given: number[] = [];
    push.mockImplementation((_, signal) => {
      const since = Date.now();
      signal.addEventListener("abort", () => given.push(Date.now() - since));
      return new Promise(() => {});
    });
    await pass(HOUR);
    expect(given.slice(0, 7)).toEqual([15_000, 30_000, 60_000, 120_000, 240_000, 480_000, 600_000]);
    expect(offers.length - given.length).toBeLessThanOrEqual(1);
    // The request that is under way when the link is stopped is given up too.
    expect(push.mock.lastCall?.[1].aborted).toBe(false);
  });

  it("comes over a link with minutes of delay once it is waited for long enough", async () => {
    const { push, near } = begin({}, numberedEntries(1));
    push.mockImplementation(async (entries) => {
      await new Promise((resolve) => setTimeout(resolve, 200_000));
      return answerFor(entries);
    });
    await pass(HOUR / 2);
    expect(near.settledTo).toHaveLength(1);
    const calls = push.mock.calls.length;
    near.put(numberedEntries(1, 2));
    await pass(200_000);
    expect(near.settledTo).toHaveLength(2);
    expect(push).toHaveBeenCalledTimes(calls + 1);
  });
});

describe("[LINK] what answers take", () => {
  it("is learned anew: once one came quickly, the next is not waited for so long", async () => {
    const { push, near, offers } = begin({}, numberedEntries(1));
    push.mockImplementation(() => new Promise(() => {}));
    await pass(HOUR);
    push.mockImplementation(async (entries) => answerFor(entries));
    await pass(HOUR);
    expect(near.waiting).toEqual([]);
    const begunAnew = offers.length;
    push.mockImplementation(() => new Promise(() => {}));
    near.put(numberedEntries(1, 2));
    await pass(46_000);
    expect(offers.slice(begunAnew).map((offer) => offer - 2 * HOUR)).toEqual([0, 15_500]);
  });

  it("is learned from the first word of a stream too", async () => {
    const { stream, streams } = begin();
    while (streams.length < 6) await pass(1000);
    stream().hear(heard(1));
    stream().end(gone());
    while (streams.length < 7) await pass(1000);
    await pass(41_000);
    expect(streams[6]?.signal.aborted).toBe(true);
  });
});

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
    expect(link.status()).toMatchObject({ kind: "linking", words: "nothing was heard for 40 s" });
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
    // 40, 40, 60, 120, 240, 480 and 600 s: seven streams and their pauses fill half an hour.
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

  it("before it was begun never begins", async () => {
    const made = heldLink();
    await made.link.stop();
    made.link.start();
    await pass(HOUR);
    expect(made.streams).toEqual([]);
  });
});
