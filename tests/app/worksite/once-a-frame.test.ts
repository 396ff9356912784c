import { afterEach, describe, expect, it, vi } from "vitest";
import { onceAFrame } from "../../../src/app/worksite/once-a-frame.ts";

describe("an act that is done once a frame", () => {
  afterEach(() => vi.useRealTimers());

  it("[MAP6] is done at once, and then once for all that was asked for until the next picture, with the latest", () => {
    vi.useFakeTimers({ toFake: ["requestAnimationFrame", "cancelAnimationFrame"] });
    let latest = 0;
    const done: number[] = [];
    const { ask, stop } = onceAFrame(() => done.push(latest));
    for (latest = 1; latest <= 5; latest += 1) ask();
    latest = 5;
    expect(done).toEqual([1]);
    vi.advanceTimersToNextFrame();
    expect(done).toEqual([1, 5]);
    vi.advanceTimersToNextFrame();
    vi.advanceTimersToNextFrame();
    expect(done).toEqual([1, 5]);
    latest = 6;
    ask();
    ask();
    stop();
    vi.advanceTimersToNextFrame();
    expect(done).toEqual([1, 5, 6]);
    ask();
    expect(done).toEqual([1, 5, 6, 6]);
  });
});
