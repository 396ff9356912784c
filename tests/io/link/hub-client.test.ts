import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { HubClient, UnreachableError } from "../../../src/core/link/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import type { Fetch } from "../../../src/io/link/fetch-hub.ts";
import { fetchHub, TABLET_MANNER } from "../../../src/io/link/fetch-hub.ts";
import { handOver } from "../../../src/io/link/sharing.ts";
import { waited } from "../../../src/io/link/timers.ts";
import { FallbackEntryStore } from "../../../src/io/store/index.ts";
// Nothing is loaded while the clock of a test stands.
import "../../../src/io/store/link-changes.ts";
import { entryFrom, source, standing, start, walk } from "../store/stand-ins.ts";

const clientBy = (fetch: Fetch) =>
  new HubClient({
    ask: fetchHub({ fetch, origin: "https://hub.example", token: null, wait: waited }),
    manner: TABLET_MANNER,
  });

/** A hub whose answers begin and never end, until they are given up. */
const unending: Fetch = async (_, { signal }) =>
  new Response(
    new ReadableStream({
      start: (controller) => {
        controller.enqueue(new TextEncoder().encode('{"now":'));
        signal?.addEventListener("abort", () => controller.error(new DOMException("", "AbortError")));
      },
    }),
    { headers: { "content-type": "application/json" } },
  );

/** A hub that never answers, until it is given up. */
const silent: Fetch = (_, { signal }) =>
  new Promise((_resolve, reject) => {
    signal?.addEventListener("abort", () => reject(new DOMException("", "AbortError")));
  });

beforeEach(() => {
  vi.useFakeTimers({ now: start });
});

afterEach(() => {
  expect(vi.getTimerCount()).toBe(0);
  vi.useRealTimers();
});

describe("[LINK] a hub that goes silent", () => {
  it.each([
    ["before it answers", silent],
    ["in the middle of an answer", unending],
  ])("%s is given up after a minute", async (_, fetch) => {
    const client = clientBy(fetch);
    const asked = [
      client.clock(),
      client.join({ code: "abcdefghj", device: source, name: "Inside", use: "cookie" }),
      client.invite(walk as WalkId, "marker", 15),
    ];
    const outcomes = Promise.allSettled(asked);
    await vi.advanceTimersByTimeAsync(60_000);
    for (const outcome of await outcomes) {
      expect(outcome).toMatchObject({ status: "rejected", reason: expect.any(UnreachableError) });
    }
  });

  it("while a walk is handed over to it is given up after two minutes", async () => {
    const log = new FallbackEntryStore({ durable: null, memorySource: source, now: standing });
    await log.takeIn([entryFrom("/devices/elsewhere", 1)]);
    const fetch: Fetch = async (address, init) =>
      address.endsWith("/api/clock")
        ? Response.json({ now: new Date(Date.now()).toISOString() })
        : silent(address, init);
    const store = { log, device: source } as Parameters<typeof handOver>[1]["store"];
    const now = () => Date.now() as Instant;
    const sharing = { walk, ownerCode: "abcdefghj", name: "Inside" };
    const outcome = handOver(sharing, { store, hub: clientBy(fetch), now, wait: waited });
    const isGivenUp = vi.fn();
    outcome.catch(isGivenUp);
    await vi.advanceTimersByTimeAsync(119_000);
    expect(isGivenUp).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(1000);
    await expect(outcome).rejects.toThrow(UnreachableError);
  });
});
