import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sized } from "../../../machine/test-size.ts";
import type { Schedule } from "./schedule.ts";
import { played, schedules } from "./schedule.ts";

/** How many schedules. */
const RUNS = sized({ daily: 1_000, soak: 10_000 });

// Losing a connection is an error, and nobody reads its stack here: it takes a tenth of the time.
const { stackTraceLimit } = Error;
beforeAll(() => {
  Error.stackTraceLimit = 0;
});
afterAll(() => {
  Error.stackTraceLimit = stackTraceLimit;
});

async function agrees(schedule: Schedule): Promise<void> {
  const { isSettled, logs, screens, state, hubs, taps, conflictsBetweenHubs, aside } = await played(schedule);
  expect(isSettled, "everything was sent and read in the end").toBe(true);
  expect(new Set([...logs, ...hubs]).size, "one log, byte for byte, on every device and hub").toBe(1);
  expect(new Set([state, ...screens]).size, "one state, byte for byte, on every device").toBe(1);
  expect(
    [...taps].filter(([, times]) => times !== 1),
    "every tap is there once",
  ).toEqual([]);
  expect([conflictsBetweenHubs, aside]).toEqual([0, 0]);
}

/** Schedules that failed once, cut down. */
const PINNED: Readonly<Record<string, Schedule>> = {
  "what was made while an entry was stamped anew and came back from the hub is sent": {
    seed: 64191167,
    hubs: [0],
    devices: [
      { hub: 0, role: "marker", skew: 0 },
      { hub: 0, role: "marker", skew: 0 },
    ],
    events: [
      { after: 60118, happening: { kind: "tap", device: 3, tap: "done", step: 0 } },
      { after: 122042, happening: { kind: "tap", device: 0, tap: "done", step: 0 } },
      { after: 60943, happening: { kind: "tap", device: 0, tap: "done", step: 0 } },
      { after: 182, happening: { kind: "gap", state: { kind: "up", delay: 50, oneIn: 0 } } },
      { after: 665, happening: { kind: "hub", hub: 0, off: 272951 } },
      { after: 2700, happening: { kind: "tap", device: 0, tap: "done", step: 0 } },
      { after: 1095, happening: { kind: "tap", device: 1, tap: "done", step: 0 } },
      { after: 349, happening: { kind: "restart", device: 0, off: 33807 } },
      {
        after: 179631,
        happening: { kind: "wire", device: 0, state: { kind: "up", delay: 180000, oneIn: 0 } },
      },
      { after: 2498, happening: { kind: "clock", device: 0, skew: 230054 } },
      { after: 1446, happening: { kind: "tap", device: 1, tap: "done", step: 0 } },
      { after: 245316, happening: { kind: "tap", device: 0, tap: "done", step: 0 } },
      { after: 209837, happening: { kind: "tap", device: 0, tap: "done", step: 0 } },
      { after: 51684, happening: { kind: "tap", device: 0, tap: "done", step: 0 } },
      { after: 912, happening: { kind: "tap", device: 0, tap: "done", step: 0 } },
      { after: 2016, happening: { kind: "wire", device: 0, state: { kind: "up", delay: 20000, oneIn: 0 } } },
      { after: 106816, happening: { kind: "wire", device: 0, state: { kind: "up", delay: 50, oneIn: 0 } } },
    ],
  },
  "entries settled with a lost store are offered again, though the walk itself did not change": {
    seed: 1,
    hubs: [0],
    devices: [
      { hub: 0, role: "marker", skew: 0 },
      { hub: 0, role: "marker", skew: 0 },
    ],
    events: [
      { after: 0, happening: { kind: "tap", device: 0, tap: "done", step: 0 } },
      { after: 0, happening: { kind: "wire", device: 0, state: { kind: "up", delay: 50, oneIn: 0 } } },
      { after: 200, happening: { kind: "loss", hub: 0 } },
    ],
  },
  "an answer on its way while everything is to be sent again settles nothing before it": {
    seed: 1,
    hubs: [0],
    devices: [
      { hub: 0, role: "marker", skew: 0 },
      { hub: 0, role: "marker", skew: 0 },
    ],
    events: [
      { after: 200, happening: { kind: "restart", device: 0, off: 0 } },
      { after: 48, happening: { kind: "tap", device: 0, tap: "done", step: 0 } },
      { after: 202, happening: { kind: "loss", hub: 0 } },
      { after: 0, happening: { kind: "tap", device: 0, tap: "done", step: 0 } },
      { after: 0, happening: { kind: "wire", device: 3, state: { kind: "up", delay: 180_000, oneIn: 0 } } },
      { after: 0, happening: { kind: "tap", device: 3, tap: "done", step: 0 } },
    ],
  },
};

describe("[LINK] devices in agreement", () => {
  it(
    `after ${RUNS} random schedules, whatever was dropped, delayed, doubled or restarted`,
    { timeout: 900_000 },
    () => fc.assert(fc.asyncProperty(schedules(false), agrees), { numRuns: RUNS }),
  );

  it.each(Object.entries(PINNED))("%s", (_, schedule) => agrees(schedule));

  it("also when hubs lose what they had confirmed", { timeout: 300_000 }, () =>
    fc.assert(fc.asyncProperty(schedules(true), agrees), { numRuns: Math.ceil(RUNS / 20) }),
  );
});
