import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Schedule } from "./schedule.ts";
import { played, schedules } from "./schedule.ts";

/** How many schedules: `AGREEMENT_RUNS=100 npx vitest run tests/io/link/agreement`. */
const RUNS = Number(process.env["AGREEMENT_RUNS"] ?? 10_000);

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
