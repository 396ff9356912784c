import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { WindowId } from "../../../src/core/units/index.ts";
import type { WindowSpans } from "../../../src/core/window/index.ts";
import { closedWindowAt, earliestFit } from "../../../src/core/window/index.ts";
import { minutes } from "../log-writer.ts";

type Given = Readonly<Record<string, readonly (readonly [number, number])[]>>;
const spansOf = (given: Given): WindowSpans =>
  new Map(
    Object.entries(given).map(([id, spans]) => [
      id as WindowId,
      spans.map(([from, to]) => ({ from: minutes(from), to: minutes(to) })),
    ]),
  );
const closed = (given: Given, at: number, length: number) => {
  const found = closedWindowAt(
    minutes(at),
    minutes(length),
    Object.keys(given) as WindowId[],
    spansOf(given),
  );
  return found && [found.window, found.until / 60_000];
};

describe("the window that is waited for", () => {
  it("[PLN3] is never one that would let the step start", () => {
    const given: Given = {
      day: [[180, 300]],
      contact: [
        [0, 12],
        [90, 102],
        [190.5, 203],
      ],
    };
    // Contact opens twice meanwhile; until minute 180 it is the day that is waited for.
    expect(closed(given, 0, 10)).toEqual(["day", 180]);
    expect(closed(given, 180, 10)).toEqual(["contact", 190.5]);
    expect(closed(given, 190.5, 10)).toBeNull();
  });

  it("[PLN3] is closed for a step that its span is too short for", () => {
    expect(
      closed(
        {
          pass: [
            [0, 8],
            [40, 55],
          ],
        },
        0,
        10,
      ),
    ).toEqual(["pass", 40]);
    expect(closed({ pass: [[0, 8]] }, 0, 10)).toBeNull();
    expect(closed({}, 0, 10)).toBeNull();
  });

  const span = fc.tuple(fc.nat({ max: 60 }), fc.integer({ min: 1, max: 25 }));
  const list = fc
    .array(span, { minLength: 1, maxLength: 4 })
    .map((drawn) =>
      drawn.map(([from, length]) => [from, from + length] as const).sort((a, b) => a[0] - b[0]),
    );
  test.prop([list, list, fc.nat({ max: 40 }), fc.integer({ min: 0, max: 12 })], { numRuns: 500 })(
    "[PLN3] fills the time until the step starts, each moment with a window in which it does not fit then",
    (one, other, ready, length) => {
      const given: Given = { one, other };
      const windows = spansOf(given);
      const within = ["one", "other"] as WindowId[];
      const fit = earliestFit(minutes(ready), minutes(length), within, windows);
      if (!fit) return;
      let before: string | null = null;
      for (let at = minutes(ready); at < fit.start; ) {
        const found = closedWindowAt(at, minutes(length), within, windows);
        expect(found).not.toBeNull();
        if (!found) return;
        expect(found.window).not.toBe(before);
        const until = Math.min(found.until, fit.start);
        expect(until).toBeGreaterThan(at);
        for (let moment = at + 30_000; moment < until; moment += 60_000) {
          const fits = given[found.window]?.some(
            ([from, to]) => minutes(from) <= moment && moment + minutes(length) <= minutes(to),
          );
          expect(fits).toBe(false);
        }
        before = found.window;
        at = until as typeof at;
      }
    },
  );
});
