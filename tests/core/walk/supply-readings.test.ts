import { describe, expect, it } from "vitest";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { impossibleReading } from "../../../src/core/supply/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { alertsOf, turnBackState, walkStateAt } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

const OXYGEN = {
  crew: "ev1",
  id: "oxygen",
  label: "Oxygen",
  unit: "kPa",
  full: 6000,
  redline: 600,
  perHour: 600,
};
const OUTSIDE: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "site" },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [{ id: "lock", refuge: true }, { id: "site" }],
  routes: [{ between: ["lock", "site"], length: 4, time: "PT2M" }],
  supplies: [OXYGEN],
};
const FILE = fileWith(
  [step("work", "ev1", 300, { at: "site" }), step("in", "ev1", 2, { to: "lock" })],
  OUTSIDE,
);

/** The turn-back time at a minute of PET, in minutes. */
function turnBackAt(log: LogWriter, at: number): number | null {
  const { turnBack } = turnBackState(walkStateAt(log.ledger, minute(at)));
  return turnBack && inMinutes(turnBack.at);
}

const read = (log: LogWriter, value: number, at: number) =>
  log.enter("supply.read", { crew: "ev1", supply: "oxygen", value }, at);

describe("readings that cannot be true", () => {
  it.each([
    [-0.1, "-0.1 is below zero, which no gauge can show"],
    [0, null],
    [6600, null],
    [6601, "6601 is more than a tenth above full, which is 6000"],
  ])("[OFF7] %s of 6000: %s", (value, why) => {
    const found = impossibleReading(OXYGEN, value);
    expect(found && inWords(found)).toBe(why);
  });

  it.each([-3, 9999])(
    "[OFF7] %s is kept and told, and neither the rate nor the turn-back goes by it",
    (wrong) => {
      const log = read(LogWriter.started(FILE), 5000, 60);
      const before = turnBackAt(log, 70);
      expect(before).toBe(60 + 440 - 2);
      read(log, wrong, 65);
      expect(turnBackAt(log, 70)).toBe(before);
      expect([...log.ledger.readings]).toHaveLength(2);
      const alerts = alertsOf(walkStateAt(log.ledger, minute(70)));
      expect(alerts.map(({ alert, level }) => [alert, level])).toEqual([
        ["reading ev1 oxygen 2", "look-soon"],
      ]);
      expect(alerts.map(({ text }) => inWords(text))[0]).toContain("EV1: Oxygen is not counted as read: ");
      read(log, 4900, 70);
      expect(alertsOf(walkStateAt(log.ledger, minute(71)))).toEqual([]);
    },
  );

  it("[OFF7] a reading that was wrong and is struck leaves the turn-back as it was", () => {
    const log = read(LogWriter.started(FILE), 5000, 60);
    const before = turnBackAt(log, 80);
    read(log, 700, 70);
    expect(turnBackAt(log, 80)).toBeLessThan(100);
    log.strike(0, 79);
    expect(turnBackAt(log, 80)).toBe(before);
  });

  it("[OFF7] two readings half a minute apart set no rate", () => {
    const log = read(read(LogWriter.started(FILE), 5000, 60), 4900, 60.5);
    const [oxygen] = turnBackState(walkStateAt(log.ledger, minute(61))).supplies;
    expect(oxygen?.forecast).toMatchObject({ basis: "plan", perHour: 600 });
  });
});
