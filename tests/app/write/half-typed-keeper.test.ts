import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { HalfTypedKeeper } from "../../../src/app/write/half-typed-keeper.ts";
import type { HalfTyped } from "../../../src/io/store/index.ts";

const typed = (text: string): HalfTyped => ({ field: "Do", text });

describe("what is being typed", () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it("[WRT1] is kept within a second however long somebody goes on typing, and not at each letter", () => {
    const keep = vi.fn();
    const keeper = new HalfTypedKeeper(keep);
    for (let letter = 1; letter <= 30; letter += 1) {
      keeper.note(typed("x".repeat(letter)));
      vi.advanceTimersByTime(100);
      const [last] = keep.mock.lastCall ?? [null];
      expect(letter - (last?.text.length ?? 0)).toBeLessThan(10);
    }
    expect(keep.mock.calls.length).toBeLessThan(15);
  });

  it("[WRT1] is forgotten once it was taken or left, and what was not kept yet is never kept", () => {
    const keep = vi.fn();
    const keeper = new HalfTypedKeeper(keep);
    keeper.note(typed("Sh"));
    keeper.forget();
    vi.advanceTimersByTime(5000);
    expect(keep).not.toHaveBeenCalled();
    keeper.note(typed("Shut"));
    vi.advanceTimersByTime(1000);
    keeper.note(typed("Shut it"));
    keeper.forget();
    vi.advanceTimersByTime(5000);
    expect(keep.mock.calls).toEqual([[typed("Shut")], [null]]);
    keeper.forget();
    expect(keep).toHaveBeenCalledTimes(2);
  });
});
