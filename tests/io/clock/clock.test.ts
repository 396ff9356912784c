import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Instant } from "../../../src/core/units/index.ts";
import type { ClockJump, PageVisibility } from "../../../src/io/clock/index.ts";
import { secondsOf, systemClock, watchClockJumps } from "../../../src/io/clock/index.ts";

class Page extends EventTarget implements PageVisibility {
  hidden = false;
  turn(hidden: boolean): void {
    this.hidden = hidden;
    this.dispatchEvent(new Event("visibilitychange"));
  }
}

const nine = Date.UTC(2031, 3, 2, 9);

beforeEach(() => void vi.useFakeTimers({ now: nine + 300 }));
afterEach(() => void vi.useRealTimers());

describe("seconds", () => {
  it("tick on whole seconds of UTC, and stand still between", () => {
    const seconds = secondsOf({ page: new Page() });
    const ticks: number[] = [];
    seconds.watch(() => ticks.push(seconds.now() - nine));
    vi.advanceTimersByTime(699);
    expect(ticks).toEqual([]);
    expect(seconds.now()).toBe(nine + 300);
    vi.advanceTimersByTime(2001);
    expect(ticks).toEqual([1000, 2000, 3000]);
  });

  it("tick on whole seconds from PET 0, before it as well", () => {
    const page = new Page();
    for (const from of [nine - 59_250, nine + 60_750]) {
      vi.setSystemTime(nine + 300);
      const seconds = secondsOf({ from: from as Instant, page });
      const end = seconds.watch(() => {});
      vi.advanceTimersByTime(1500);
      expect((seconds.now() - nine) % 1000).toBe(750);
      end();
    }
  });

  it("rest while the page is hidden and tick at once when it is shown", () => {
    const page = new Page();
    const onTick = vi.fn();
    const seconds = secondsOf({ page });
    seconds.watch(onTick);
    page.turn(true);
    vi.advanceTimersByTime(10_000);
    expect(onTick).not.toHaveBeenCalled();
    page.turn(false);
    expect(onTick).toHaveBeenCalledOnce();
    expect(seconds.now()).toBe(nine + 10_300);
    vi.advanceTimersByTime(700);
    expect(onTick).toHaveBeenCalledTimes(2);
  });

  it("leave no timer when nobody watches any more", () => {
    const seconds = secondsOf({ page: new Page() });
    const [one, two] = [seconds.watch(() => {}), seconds.watch(() => {})];
    one();
    expect(vi.getTimerCount()).toBe(1);
    two();
    expect(vi.getTimerCount()).toBe(0);
    vi.advanceTimersByTime(5000);
    expect(seconds.now()).toBe(nine + 5300);
  });
});

describe("jumps of the clock", () => {
  function watching(page = new Page()) {
    const jumps: ClockJump[] = [];
    let steady = 0;
    const end = watchClockJumps((jump) => jumps.push(jump), { steady: () => steady, page });
    const pass = (wall: number, ticks = wall) => {
      steady += ticks;
      vi.setSystemTime(Date.now() + wall - 1000);
      vi.advanceTimersByTime(1000);
    };
    return { jumps, end, pass, page };
  }

  it("are told once, forward and back, above half a second", () => {
    const { jumps, pass } = watching();
    pass(1000);
    pass(1500, 1000);
    expect(jumps).toEqual([]);
    pass(1001, 1000);
    expect(jumps).toEqual([{ at: nine + 3801, by: 501, mayBeSleep: false }]);
    pass(1000);
    pass(-86_399_000, 1000);
    expect(jumps.slice(1).map(({ by }) => by)).toEqual([-86_400_000]);
  });

  it("are marked as possible sleep when the page was hidden", () => {
    const { jumps, pass, page } = watching();
    page.turn(true);
    vi.setSystemTime(Date.now() + 3_600_000);
    page.turn(false);
    expect(jumps).toEqual([{ at: nine + 3_600_300, by: 3_600_000, mayBeSleep: true }]);
    pass(61_000, 1000);
    expect(jumps[1]).toMatchObject({ by: 60_000, mayBeSleep: false });
  });

  it("are no longer looked for after the end", () => {
    const { jumps, end, pass } = watching();
    end();
    pass(60_000, 1000);
    expect(jumps).toEqual([]);
    expect(vi.getTimerCount()).toBe(0);
  });
});

it("the system clock tells whole milliseconds of UTC", () => {
  expect(systemClock()).toBe(nine + 300);
});
