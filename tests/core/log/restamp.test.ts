import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Entry, HybridTime } from "../../../src/core/log/index.ts";
import {
  compareEntries,
  highestWithin,
  isSameStatement,
  isTooFarAhead,
  restamp,
  stamp,
} from "../../../src/core/log/index.ts";
import type { Duration, Instant, WalkId } from "../../../src/core/units/index.ts";
import { ZERO } from "../log-writer.ts";
import { numberedEntries, numberedEntry } from "./numbered-entry.ts";

const MINUTE = 60_000;
const time = (wall: number, counter = 0) =>
  `${String(wall).padStart(15, "0")}-${counter.toString(16).padStart(4, "0")}` as HybridTime;
const clock = ZERO as Instant;

describe("[LINK] a hybrid time ahead of a hub's clock", () => {
  it("is let pass up to and including one minute, whatever its counter", () => {
    expect(isTooFarAhead(time(ZERO + MINUTE, 0xffff), clock)).toBe(false);
    expect(isTooFarAhead(time(ZERO + MINUTE + 1), clock)).toBe(true);
    expect(isTooFarAhead(time(0), clock)).toBe(false);
  });

  it("is left out of the highest that may be followed", () => {
    const times = [time(ZERO - 5), time(ZERO + MINUTE, 3), time(ZERO + MINUTE, 2), time(ZERO + MINUTE + 1)];
    expect(highestWithin(times, clock)).toBe(time(ZERO + MINUTE, 3));
    expect(highestWithin(times.slice(-1), clock)).toBeNull();
    expect(highestWithin([], clock)).toBeNull();
  });
});

describe("[LINK] entries stamped anew", () => {
  const day = 86_400_000;
  const ahead = numberedEntries(4).map((entry) => {
    const hlc = time(Number(entry.hlc.slice(0, 15)) + day);
    return numberedEntry(Number(entry.wire.id), { hlc });
  });

  test.prop([
    fc.uniqueArray(fc.integer({ min: 1, max: 500 }), { minLength: 1, maxLength: 20 }),
    fc.option(fc.integer({ min: -day, max: day })),
  ])("[LOG3] keep their order and all else, and stand behind what was seen", (numbers, seenAt) => {
    const entries = numbers.map((number) => numberedEntry(number, { hlc: time(ZERO + day + number) }));
    const seen = seenAt === null ? null : time(ZERO + seenAt, 7);
    const stamped = restamp(entries, clock, seen);
    const before = entries.toSorted(compareEntries);
    expect(stamped.map(({ wire }) => wire.id)).toEqual(before.map(({ wire }) => wire.id));
    expect(stamped.toSorted(compareEntries)).toEqual(stamped);
    for (const [index, entry] of stamped.entries()) {
      expect(isSameStatement(entry, before[index] as Entry)).toBe(true);
      expect(entry.wire.hlc).toBe(entry.hlc);
      expect(isTooFarAhead(entry.hlc, clock)).toBe(false);
      if (seen !== null && !isTooFarAhead(seen, clock)) expect(entry.hlc > seen).toBe(true);
    }
  });

  it("begin at the hub's clock, and do not follow a time that a hub would refuse", () => {
    expect(restamp(ahead, clock, null).map(({ hlc }) => hlc)).toEqual([
      time(ZERO),
      time(ZERO, 1),
      time(ZERO, 2),
      time(ZERO, 3),
    ]);
    expect(restamp(ahead, clock, time(ZERO + day))[0]?.hlc).toBe(time(ZERO));
    expect(restamp(ahead, clock, time(ZERO + 9, 4))[0]?.hlc).toBe(time(ZERO + 9, 5));
  });

  it("leave those given as they are", () => {
    const before = structuredClone(ahead.map(({ wire }) => wire));
    restamp(ahead, clock, null);
    expect(ahead.map(({ wire }) => wire)).toEqual(before);
  });
});

describe("[LINK] stamping on a device whose clock is off", () => {
  const draft = { name: "note.made", data: { text: "seen" }, at: clock, actor: "iv" } as const;
  const stamped = (seen: HybridTime | null, clockOffset?: number) =>
    stamp(
      draft,
      "walk-1" as WalkId,
      {
        source: "/devices/a",
        made: 0,
        seen,
        ...(clockOffset === undefined ? {} : { clockOffset: clockOffset as Duration }),
      },
      clock,
    );

  it("goes by the hub's clock in the hybrid time, and by its own in the times", () => {
    const { wire } = stamped(null, -3_600_000);
    expect(wire.hlc).toBe(time(ZERO - 3_600_000));
    expect(wire.time).toBe(new Date(ZERO).toISOString());
    expect(wire.recordedtime).toBe(new Date(ZERO).toISOString());
  });

  it("does not follow a time that the hub would refuse; without a hub it follows any", () => {
    const far = time(ZERO + MINUTE + 1);
    expect(stamped(far, 0).hlc).toBe(time(ZERO));
    expect(stamped(far, 1).hlc).toBe(time(ZERO + MINUTE + 1, 1));
    expect(stamped(far).hlc).toBe(time(ZERO + MINUTE + 1, 1));
    expect(stamped(time(ZERO + MINUTE), 0).hlc).toBe(time(ZERO + MINUTE, 1));
  });
});
