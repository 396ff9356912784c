import { describe, expect, it } from "vitest";
import type { LaneCommand, LaneStatus, WalkCommand, WalkPhase } from "../../../src/core/walk/index.ts";
import {
  laneMay,
  phaseAfter,
  RefusedCommandError,
  statusAfter,
  walkMay,
} from "../../../src/core/walk/index.ts";

/** For each phase the commands it takes and where they lead; every other command is refused. */
const PHASES: Readonly<Record<WalkPhase, Partial<Record<WalkCommand, WalkPhase>>>> = {
  prepared: { start: "running", close: "closed", report: "prepared", note: "prepared" },
  running: { hold: "held", close: "closed", mark: "running", report: "running", note: "running" },
  held: { lift: "running", close: "closed", mark: "held", report: "held", note: "held" },
  closed: { note: "closed", reopen: "running", "reopen-held": "held", "reopen-prepared": "prepared" },
};
const WALK_COMMANDS: readonly WalkCommand[] = [
  "open",
  "start",
  "hold",
  "lift",
  "close",
  "mark",
  "report",
  "note",
  "reopen",
  "reopen-held",
  "reopen-prepared",
];

const STATUSES: Readonly<Record<LaneStatus, Partial<Record<LaneCommand, LaneStatus>>>> = {
  ready: { begin: "waiting" },
  waiting: { work: "working", advance: "waiting", finish: "finished", reopen: "waiting" },
  working: { advance: "waiting", finish: "finished", reopen: "waiting" },
  finished: { reopen: "waiting" },
};
const LANE_COMMANDS: readonly LaneCommand[] = ["begin", "work", "advance", "finish", "reopen"];

describe("the walk's machine", () => {
  const cases = (Object.keys(PHASES) as WalkPhase[]).flatMap((phase) =>
    WALK_COMMANDS.map((command) => [phase, command, PHASES[phase][command] ?? null] as const),
  );
  it.each(cases)("[WLK1] %s, told to %s: %s", (phase, command, expected) => {
    expect(phaseAfter(phase, command)).toBe(expected);
    expect(walkMay(phase, command)).toBe(expected !== null);
  });
});

describe("a lane's machine", () => {
  const cases = (Object.keys(STATUSES) as LaneStatus[]).flatMap((status) =>
    LANE_COMMANDS.map((command) => [status, command, STATUSES[status][command] ?? null] as const),
  );
  it.each(cases)("[WLK1] [PRO1] %s, told to %s: %s", (status, command, expected) => {
    expect(laneMay(status, command)).toBe(expected !== null);
    if (expected === null) expect(() => statusAfter(status, command)).toThrow(RefusedCommandError);
    else expect(statusAfter(status, command)).toBe(expected);
  });
});
