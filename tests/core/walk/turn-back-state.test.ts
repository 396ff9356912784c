import { describe, expect, it } from "vitest";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { CrewId, SupplyId } from "../../../src/core/units/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { turnBackState, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const TASKS = [
  task("work", [
    step("out", "ev1", null, { to: "boom" }),
    step("far", "ev1", null, { to: "tip" }),
    step("bolt", "ev1", 10),
    step("back", "ev1", null, { to: "hatch" }),
  ]),
  task("close", [step("stow", "ev1", 6)], { closeout: true }),
];
const MORE: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "hatch" },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [{ id: "hatch", refuge: true }, { id: "boom" }, { id: "tip" }],
  routes: [
    { between: ["hatch", "boom"], length: 10, time: "PT4M" },
    { between: ["boom", "tip"], length: 10, time: "PT3M" },
  ],
  limits: { elapsed: "PT2H" },
  supplies: [
    { crew: "ev1", id: "oxygen", unit: "kPa", full: 6000, redline: 1000, perHour: 2000 },
    { crew: "ev1", id: "power", unit: "%", full: 100, redline: 10, perHour: 10 },
  ],
};
const file = (more: Partial<ProcedureFile> = {}) => fileWith(TASKS, { ...MORE, ...more });
const turnAt = (log: LogWriter, at: number) => turnBackState(walkStateAt(log.ledger, minute(at)));
const read = (log: LogWriter, value: number, at: number) =>
  log.enter("supply.read", { crew: "ev1" as CrewId, supply: "oxygen" as SupplyId, value }, at);

describe("turning back", () => {
  it("[FOR3] before the clock starts goes by the planned rates; the limit is first here", () => {
    const found = turnAt(LogWriter.opened(file()), 0);
    expect(found.supplies.map(({ supply }) => supply.id)).toEqual(["oxygen", "power"]);
    expect(found.limiting?.supply.id).toBe("oxygen");
    expect(inMinutes(found.limiting?.redlineAt ?? Number.NaN)).toBe(150);
    // At the hatch there is nothing but the closeout.
    expect(inMinutes(found.longestReturn?.total ?? Number.NaN)).toBe(6);
    expect(found.turnBack?.because).toBe("limit");
    expect(inMinutes(found.turnBack?.at ?? Number.NaN)).toBe(114);
  });

  it("[FOR3] is worked out once for a state, and anew for each other state, so that a reading counts at once", () => {
    const log = read(LogWriter.started(file()), 6000, 0);
    const before = walkStateAt(log.ledger, minute(30));
    const found = turnBackState(before);
    expect(turnBackState(before)).toBe(found);
    expect(turnBackState({ ...before })).toEqual(found);
    read(log, 3000, 29);
    read(log, 9, 30);
    const after = turnAt(log, 30).supplies[0]?.forecast;
    expect(found.supplies[0]?.forecast.last?.value).toBe(6000);
    expect(after?.last?.value).toBe(9);
    expect(turnBackState(before)).toEqual(found);
    expect(turnBackState({ ...before })).toEqual(found);
  });

  it("[PLN6] [FOR3] grows with the way back, and shrinks with what is done of the closeout", () => {
    const log = LogWriter.started(file()).done(["out", 4], ["far", 7]);
    const out = turnAt(log, 8);
    expect(out.longestReturn).toMatchObject({ crew: "ev1", from: "tip", refuge: "hatch" });
    expect(inMinutes(out.longestReturn?.total ?? Number.NaN)).toBe(13);
    expect(inMinutes(out.turnBack?.at ?? Number.NaN)).toBe(107);
    log.done(["bolt", 17], ["back", 24]);
    expect(inMinutes(turnAt(log, 25).longestReturn?.total ?? Number.NaN)).toBe(6);
    log.done(["stow", 30]);
    expect(turnAt(log, 31).longestReturn).toBeNull();
  });

  it("[FOR3] readings set the rate; the supply whose redline comes first sets the time", () => {
    const log = LogWriter.started(file()).done(["out", 4]);
    read(log, 5900, 5);
    read(log, 5000, 15);
    read(log, 4100, 25);
    const found = turnAt(log, 26);
    // 90 a minute from 4100 to 1000: 34.4 min after minute 25.
    expect(inMinutes(found.limiting?.redlineAt ?? Number.NaN)).toBeCloseTo(25 + 3100 / 90, 2);
    expect(found.turnBack?.because).toBe("supply");
    expect(found.turnBack?.supply?.supply.id).toBe("oxygen");
    expect(found.turnBack?.at).toBe((found.limiting?.redlineAt ?? 0) - (found.longestReturn?.total ?? 0));
  });

  it("[FOR3] without supplies and limit there is none", () => {
    const { limits: _, ...rest } = MORE;
    const found = turnAt(LogWriter.started(fileWith(TASKS, { ...rest, supplies: [] })), 5);
    expect(found).toMatchObject({ supplies: [], limiting: null, turnBack: null });
  });

  it("[PLN6] is told when the rest of the work fits no window any more", () => {
    const shut = fileWith(
      [
        task("work", [step("far", "ev1", null, { to: "tip" }), step("call", "ev1", 9, { within: ["open"] })]),
        ...TASKS.slice(1),
      ],
      { ...MORE, windows: [{ id: "open", kind: "listed", spans: [{ from: "PT5M", to: "PT20M" }] }] },
    );
    const log = LogWriter.started(shut).done(["far", 16]);
    expect(walkStateAt(log.ledger, minute(17)).forecast).toBeNull();
    // The closeout is done at the tip, where the procedure has it; then the way home.
    expect(inMinutes(turnAt(log, 17).longestReturn?.total ?? Number.NaN)).toBe(13);
  });

  it("[PLN6] takes the longest that may come out for somebody who should have arrived", () => {
    const log = LogWriter.started(file());
    expect(inMinutes(turnAt(log, 1).longestReturn?.total ?? Number.NaN)).toBe(1 + 6);
    // Four minutes to the boom are over. The way back may be all of them.
    expect(inMinutes(turnAt(log, 4).longestReturn?.total ?? Number.NaN)).toBe(4 + 6);
    // Taking twice as long: whoever is 6 of 8 minutes on is 6 from the hatch, back or by way of the boom.
    expect(inMinutes(turnAt(log, 8).longestReturn?.total ?? Number.NaN)).toBe(6 + 6);
  });

  it("[FOR3] a struck reading does not count", () => {
    const log = LogWriter.started(file());
    read(log, 5900, 5);
    read(log, 2000, 15);
    const wrong = turnAt(log, 16).limiting?.redlineAt ?? 0;
    log.strike(0, 16);
    const right = turnAt(log, 17).limiting?.redlineAt ?? 0;
    expect(inMinutes(wrong)).toBeLessThan(30);
    expect(inMinutes(right)).toBeGreaterThan(120);
  });
});
