import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { HubClient } from "../../../src/core/link/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import { formatInstant } from "../../../src/core/units/index.ts";
import type { Fetch } from "../../../src/io/link/fetch-hub.ts";
import { fetchHub, TABLET_MANNER } from "../../../src/io/link/fetch-hub.ts";
import { RunningLink } from "../../../src/io/link/running-link.ts";
import { waited } from "../../../src/io/link/timers.ts";
import { MemoryEntryStore } from "../../../src/io/store/index.ts";
// Nothing is loaded while the clock of a test stands.
import "../../../src/io/store/link-changes.ts";
import { note, source, start } from "../store/stand-ins.ts";

const WALK = "walk-1" as WalkId;
const DELAY = 20_000;
const now = () => Date.now() as Instant;

/** A hub that is so far away, or in a hole from which nothing comes; what reached it, and when. */
class FarHub {
  readonly reached: { readonly what: string; readonly at: number }[] = [];
  delay = DELAY;
  isInHole = false;

  readonly fetch: Fetch = async (address, { method = "GET", body, signal }) => {
    await this.#travel(signal);
    const what = `${method} ${new URL(address).pathname.replace(`/api/walks/${WALK}`, "")}`;
    this.reached.push({ what, at: Date.now() - start });
    const answer = this.#answer(what, body);
    await this.#travel(signal);
    return answer;
  };

  times(what: string): readonly number[] {
    return this.reached.flatMap((one) => (one.what === what ? [one.at] : []));
  }

  async #travel(signal: AbortSignal | null | undefined): Promise<void> {
    await new Promise<void>((resolve, reject) => {
      const timer = this.isInHole ? undefined : setTimeout(resolve, this.delay);
      signal?.addEventListener("abort", () => {
        clearTimeout(timer);
        reject(new DOMException("", "AbortError"));
      });
    });
  }

  #answer(what: string, body: BodyInit | null | undefined): Response {
    const time = formatInstant(now());
    if (what === "GET /entries") return new Response(this.#stream(time), STREAM);
    if (what !== "POST /entries") return Response.json({ now: time });
    const entries = JSON.parse(String(body)) as { source: string; id: string }[];
    const results = entries.map(({ source: from, id }) => ({ source: from, id, outcome: "accepted" }));
    return Response.json({ results, gaps: [], now: time });
  }

  #stream(time: string): ReadableStream {
    const hello = JSON.stringify({ hub: "/hubs/x", name: "x", role: "lead", device: source, now: time });
    const text = new TextEncoder();
    let life: ReturnType<typeof setInterval>;
    return new ReadableStream({
      start: (controller) => {
        controller.enqueue(
          text.encode(`event: hello\ndata: ${hello}\n\nevent: cursor\nid: e:1\ndata: {}\n\n`),
        );
        life = setInterval(() => controller.enqueue(text.encode(": \n\n")), 15_000);
      },
      cancel: () => clearInterval(life),
    });
  }
}

const STREAM = { headers: { "content-type": "text/event-stream" } };
let hub: FarHub;
let log: MemoryEntryStore;
let link: RunningLink;

beforeEach(async () => {
  vi.useFakeTimers({ now: start });
  hub = new FarHub();
  log = new MemoryEntryStore(source, now);
  const joining = { origin: "https://hub", hub: "/hubs/x", hubName: "x", role: "lead", name: "IV" } as const;
  const row = await log.links.join({ walk: WALK, device: source, joinedAt: now(), ...joining });
  const ask = fetchHub({ fetch: hub.fetch, origin: "https://hub", token: null, wait: waited });
  link = new RunningLink({
    row,
    log,
    hub: new HubClient({ ask, manner: TABLET_MANNER }),
    now,
    time: { now, random: () => 0.5, wait: waited },
  });
});
afterEach(async () => {
  await link.stop();
  vi.useRealTimers();
});

describe("[LINK] over a link of twenty seconds each way", () => {
  it("the first entry is there after one round trip to compare clocks and its own way, and is offered once", async () => {
    await log.append(WALK, [note("first")]);
    link.start();
    await vi.advanceTimersByTimeAsync(3 * DELAY + 1000);
    expect(hub.times("POST /entries")).toEqual([3 * DELAY]);
    await vi.advanceTimersByTimeAsync(5 * DELAY);
    // The second batch tells how the clocks compared.
    expect(hub.times("POST /entries").length).toBeLessThanOrEqual(2);
    expect(link.status()).toMatchObject({ kind: "linked", unsent: 0 });
  });

  it("the stream is open after one round trip, and a later entry takes its own way alone", async () => {
    link.start();
    await vi.advanceTimersByTimeAsync(2 * DELAY + 1000);
    expect(link.status().kind).toBe("linked");
    await vi.advanceTimersByTimeAsync(10 * DELAY);
    const before = hub.times("POST /entries").length;
    const at = Date.now() - start;
    await log.append(WALK, [note("later")]);
    await vi.advanceTimersByTimeAsync(5 * DELAY);
    expect(hub.times("POST /entries").slice(before)).toEqual([at + DELAY]);
    expect(hub.times("GET /entries")).toHaveLength(1);
  });

  it("the hub hears every quarter of a minute how far this device has read", async () => {
    link.start();
    await vi.advanceTimersByTimeAsync(300_000);
    const times = hub.times("POST /presence");
    const gaps = times.slice(1).map((at, index) => at - (times[index] ?? 0));
    expect(times.length).toBeGreaterThan(15);
    expect(Math.max(...gaps)).toBeLessThanOrEqual(15_000);
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(5_000);
  });

  it("after ten minutes in a hole the hub hears of it again", async () => {
    hub.delay = 100;
    link.start();
    await vi.advanceTimersByTimeAsync(30_000);
    hub.isInHole = true;
    await vi.advanceTimersByTimeAsync(600_000);
    hub.isInHole = false;
    await vi.advanceTimersByTimeAsync(120_000);
    expect(link.status().kind).toBe("linked");
    const late = hub.times("POST /presence").filter((at) => at > 640_000);
    expect(late.length).toBeGreaterThan(5);
  });
});
