import { describe, expect, it, vi } from "vitest";
import type { PushAnswer } from "../../../src/core/link/index.ts";
import { UnreachableError } from "../../../src/core/link/index.ts";
import { numberedEntries } from "../log/numbered-entry.ts";
import { worded } from "../said.ts";
import { answerFor, gone, heard, heldLinks, idsOf, pass } from "./link-stand-ins.ts";

const HOUR = 3_600_000;
const begin = heldLinks();

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
    expect(worded(link.status())).toMatchObject({
      unsent: 2,
      words: "The answer does not fit what was sent.",
    });
    await pass(1000);
    expect(near.settledTo.map(([, outcome]) => outcome)).toEqual(["accepted", "accepted"]);
  });

  it("is said to be refused for as long as it is, though the stream is open", async () => {
    const { push, stream, link, near } = begin({}, numberedEntries(1));
    push.mockRejectedValue(new UnreachableError("The hub’s disk is full."));
    await pass(0);
    stream().hear(heard(7));
    await pass(3000);
    expect(link.status()).toMatchObject({ kind: "linked", words: "The hub’s disk is full.", unsent: 1 });
    push.mockImplementation(async (entries) => answerFor(entries));
    await pass(10_000);
    expect(near.waiting).toEqual([]);
    expect(link.status()).toMatchObject({ kind: "linked", words: null });
  });

  it("that is sent says nothing of a stream that is still missing", async () => {
    const { stream, link, near } = begin();
    await pass(0);
    stream().end(gone());
    await pass(0);
    near.put(numberedEntries(1));
    await pass(0);
    expect(near.waiting).toEqual([]);
    expect(link.status()).toMatchObject({ kind: "linking", words: "gone" });
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

describe("[LINK] an offer under way when the other side is there again", () => {
  /** A link whose offers vanish and which by now waits for minutes for their answers. */
  async function patient() {
    const made = begin({}, numberedEntries(1));
    made.push.mockImplementation(() => new Promise(() => {}));
    await pass(HOUR);
    const { length } = made.offers;
    while (made.offers.length === length) await pass(1000);
    await pass(60_000);
    expect(made.offers).toHaveLength(length + 1);
    made.push.mockImplementation(async (entries) => answerFor(entries));
    return { ...made, offered: length + 1 };
  }

  it("is given up for another once the stream comes back", async () => {
    const { streams, stream, offered, offers, near } = await patient();
    const { length } = streams;
    stream().end(gone());
    while (streams.length === length) await pass(1000);
    expect(offers).toHaveLength(offered);
    stream().hear(heard(7));
    await pass(0);
    expect(offers).toHaveLength(offered + 1);
    expect(near.waiting).toEqual([]);
  });

  it("is given up for another when the device wakes up", async () => {
    const { link, offered, offers } = await patient();
    link.wake();
    await pass(0);
    expect(offers).toHaveLength(offered + 1);
  });

  it("is left its time when the stream took as long to come back", async () => {
    const { streams, stream, offered, offers } = await patient();
    const { length } = streams;
    stream().end(gone());
    while (streams.length === length) await pass(1000);
    // The first word takes minutes over this link, and so do answers.
    await pass(120_000);
    stream().hear(heard(7));
    await pass(0);
    expect(offers).toHaveLength(offered);
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
    await pass(59_000);
    expect(streams[6]?.signal.aborted).toBe(false);
    await pass(2000);
    expect(streams[6]?.signal.aborted).toBe(true);
  });
});
