import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { HybridTime } from "../../../src/core/log/index.ts";
import { HYBRID_TIME_PATTERN, laterOf, receive, tick, wallOf } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";

const at = (now: number) => now as Instant;
const time = (wall: number, counter: number) =>
  `${String(wall).padStart(15, "0")}-${counter.toString(16).padStart(4, "0")}` as HybridTime;

describe("the hybrid clock", () => {
  it("[LOG1] writes 15 digits of milliseconds and 4 hexadecimal digits of counter", () => {
    expect(tick(null, at(1_932_974_353_020))).toBe("001932974353020-0000");
    expect(tick(time(50, 9), at(20))).toBe("000000000000050-000a");
    expect(wallOf(time(1_932_974_353_020, 7))).toBe(1_932_974_353_020);
  });

  it("[LOG1] borrows the next millisecond when the counter is full, so that it still grows", () => {
    expect(tick(time(50, 0xffff), at(20))).toBe("000000000000051-0000");
    expect(receive(time(50, 0xffff), time(50, 3), at(20))).toBe("000000000000051-0000");
  });

  it("[LOG1] follows the paper's rule for receiving in each of its four cases", () => {
    expect(receive(time(50, 4), time(50, 9), at(20))).toBe(time(50, 10));
    expect(receive(time(50, 4), time(40, 9), at(20))).toBe(time(50, 5));
    expect(receive(time(40, 4), time(50, 9), at(20))).toBe(time(50, 10));
    expect(receive(time(40, 4), time(50, 9), at(60))).toBe(time(60, 0));
    expect(receive(null, time(50, 9), at(20))).toBe(time(50, 10));
  });

  it("tells the later of two readings", () => {
    expect(laterOf(null, null)).toBeNull();
    expect(laterOf(time(1, 0), null)).toBe(time(1, 0));
    expect(laterOf(time(1, 1), time(1, 2))).toBe(time(1, 2));
    expect(laterOf(time(2, 0), time(1, 2))).toBe(time(2, 0));
  });

  const anyTime = fc
    .tuple(fc.nat({ max: 2 ** 31 - 2 }), fc.nat({ max: 0xffff }))
    .map(([wall, counter]) => time(wall, counter));
  test.prop([fc.option(anyTime), anyTime, fc.nat({ max: 2 ** 31 - 2 })])(
    "[LOG1] never goes back, whatever the device's clock says, and stays in its form",
    (last, remote, now) => {
      const sent = tick(last, at(now));
      const received = receive(last, remote, at(now));
      expect(sent).toMatch(HYBRID_TIME_PATTERN);
      expect(received).toMatch(HYBRID_TIME_PATTERN);
      if (last !== null) {
        expect(sent > last).toBe(true);
        expect(received > last).toBe(true);
      }
      expect(received > remote).toBe(true);
      expect(wallOf(sent)).toBeGreaterThanOrEqual(now);
    },
  );
});
