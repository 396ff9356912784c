import { describe, expect, it, vi } from "vitest";
import { UnreachableError } from "../../../src/core/link/index.ts";
import type { Duration, Instant } from "../../../src/core/units/index.ts";
import { betterOf, compareClocks } from "../../../src/io/link/compare-clocks.ts";
import { start } from "../store/stand-ins.ts";

/** A hub an hour ahead, whose clock is asked over ways of so many ms there and back, each used in its turn. */
function hub(ways: readonly (readonly [there: number, back: number])[]) {
  let now: number = start;
  const left = [...ways];
  const ask = vi.fn(async () => {
    const [there, back] = left.shift() ?? [];
    if (there === undefined || back === undefined) throw new UnreachableError("gone");
    now += there;
    const said = now + 3_600_000;
    now += back;
    return said as Instant;
  });
  return { ask, now: () => now as Instant };
}

describe("[LINK] comparing clocks", () => {
  it("asks eight times and goes by the shortest round trip", async () => {
    const ways = [
      [100, 20],
      [40, 40],
      [5, 7],
      [300, 1],
      ...Array.from({ length: 9 }, () => [50, 50] as const),
    ];
    const { ask, now } = hub(ways as [number, number][]);
    // Half of 12 ms is said to have passed when 5 had.
    expect(await compareClocks(ask, now)).toEqual({ offset: 3_600_000 - 1, error: 6 });
    expect(ask).toHaveBeenCalledTimes(8);
  });

  it("over a slow link makes do with what it got in ten seconds", async () => {
    const { ask, now } = hub(Array.from({ length: 9 }, () => [3000, 3000] as const));
    expect(await compareClocks(ask, now)).toEqual({ offset: 3_600_000, error: 3000 });
    expect(ask).toHaveBeenCalledTimes(2);
  });

  it("makes do with what it got before the link was lost, and fails with nothing", async () => {
    const some = hub([[10, 10]]);
    expect(await compareClocks(some.ask, some.now)).toEqual({ offset: 3_600_000, error: 10 });
    const none = hub([]);
    await expect(compareClocks(none.ask, none.now)).rejects.toThrow("gone");
  });

  it("fails, to be done again, when the clock here was set back meanwhile", async () => {
    const { ask, now } = hub(Array.from({ length: 8 }, () => [10, -5000] as const));
    await expect(compareClocks(ask, now)).rejects.toThrow(UnreachableError);
  });
});

describe("[LINK] of two comparisons", () => {
  const clock = (offset: number, error: number) => ({ offset: offset as Duration, error: error as Duration });

  it("the later counts, unless the earlier was closer and both can be right", () => {
    const earlier = clock(1000, 10);
    expect(betterOf(null, clock(7, 500))).toEqual(clock(7, 500));
    expect(betterOf(earlier, clock(1200, 10))).toEqual(clock(1200, 10));
    expect(betterOf(earlier, clock(1200, 300))).toBe(earlier);
    expect(betterOf(earlier, clock(1310, 300))).toBe(earlier);
    expect(betterOf(earlier, clock(1311, 300))).toEqual(clock(1311, 300));
    expect(betterOf(earlier, clock(-86_400_000, 300))).toEqual(clock(-86_400_000, 300));
  });
});
