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

  it("[OFF3] is left where the page may sound only at its first touch, at which it would tell of nothing new", async () => {
    silent = 60_000;
    const done = signalAlert("act-now");
    await vi.runAllTimersAsync();
    await done;
    expect(started).toEqual([]);
  });
});
