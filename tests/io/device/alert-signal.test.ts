import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { signalAlert } from "../../../src/io/device/index.ts";

/** When each tone began that was sounded, in s of the context. */
const started: number[] = [];
/** How long the browser keeps a page silent, in ms. */
let silent = 0;

class Sound {
  readonly currentTime = 0;
  readonly destination = {};
  readonly resume = () => new Promise<void>((resolve) => setTimeout(resolve, silent));
  readonly createGain = () => ({ gain: { value: 0 }, connect: () => {} });
  readonly createOscillator = () => ({
    frequency: { value: 0 },
    connect: () => {},
    start: (at: number) => started.push(at),
    stop: () => {},
  });
}

describe("the signal of an alert", () => {
  beforeEach(() => {
    vi.useFakeTimers();
    vi.stubGlobal("AudioContext", Sound);
    vi.stubGlobal("navigator", {});
    started.length = 0;
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  it("[OFF3] has the tones of its level, one after the other", async () => {
    silent = 0;
    const done = signalAlert("look-soon");
    await vi.runAllTimersAsync();
    await done;
    expect(started).toEqual([0, expect.closeTo(0.28)]);
  });

  it("[OFF3] begins once the page is at rest, and at once when sound has begun", async () => {
    vi.resetModules();
    const { signalAlert: signalAnew } = await import("../../../src/io/device/index.ts");
    let rest = () => {};
    const asked = vi.fn((whenIdle: () => void, limit: { readonly timeout: number }) => {
      expect(limit.timeout).toBeLessThanOrEqual(500);
      rest = whenIdle;
    });
    vi.stubGlobal("requestIdleCallback", asked);
    silent = 0;
    const first = signalAnew("know");
    await vi.advanceTimersByTimeAsync(0);
    expect(started).toEqual([]);
    rest();
    await vi.runAllTimersAsync();
    await first;
    expect(started).toHaveLength(1);
    const second = signalAnew("know");
    await vi.runAllTimersAsync();
    await second;
    expect(started).toHaveLength(2);
    expect(asked).toHaveBeenCalledTimes(1);
  });

  it("[OFF3] sounds after a page that was busy for long, whose rest does not count as silence", async () => {
    vi.resetModules();
    const { signalAlert: signalAnew } = await import("../../../src/io/device/index.ts");
    vi.stubGlobal("requestIdleCallback", (whenIdle: () => void) => setTimeout(whenIdle, 3000));
    silent = 0;
    const done = signalAnew("know");
    await vi.runAllTimersAsync();
    await done;
    expect(started).toHaveLength(1);
  });

  it("[OFF3] is left where the page may sound only at its first touch, at which it would tell of nothing new", async () => {
    silent = 60_000;
    const done = signalAlert("act-now");
    await vi.runAllTimersAsync();
    await done;
    expect(started).toEqual([]);
  });
});
