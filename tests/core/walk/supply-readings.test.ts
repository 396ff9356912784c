import { describe, expect, it } from "vitest";
import { checkProcedureText } from "../../../src/core/check/index.ts";
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
    [-0.1, "-0.1 kPa is below zero, which no gauge can show"],
    [0, null],
    [6600, null],
    [6601, "6601 kPa is more than a tenth above full, which is 6000 kPa"],
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

describe("a record that is bound to a supply", () => {
  const record = { id: "gauge", label: "Oxygen", unit: "kPa", supply: "oxygen" };
  const bound = (records: NonNullable<ProcedureFile["tasks"][number]["steps"][number]["records"]>) =>
    fileWith(
      [step("work", ["iv", "ev1"], 300, { at: "site", records }), step("in", "ev1", 2, { to: "lock" })],
      { ...OUTSIDE, format: "tetherline.procedure/2" },
    );
  const readingsOf = (log: LogWriter) =>
    [...log.ledger.readings].map(({ crew, supply, value, at }) => [crew, supply, value, at]);
  const taken = (log: LogWriter, value: number, at: number) =>
    log.enter("record.taken", { step: "work", record: "gauge", value }, at);

  it("[OFF7] is a reading of the first performer who has the supply, and the turn-back goes by it", () => {
    const log = taken(LogWriter.started(bound([record])), 3000, 60);
    expect(readingsOf(log)).toEqual([["ev1", "oxygen", 3000, minute(60)]]);
    const same = read(LogWriter.started(bound([{ ...record, supply: undefined }])), 3000, 60);
    expect(turnBackAt(log, 70)).toBe(turnBackAt(same, 70));
    expect(turnBackAt(log, 70)).not.toBeNull();
  });

  it("[OFF7] is none any more once it is struck", () => {
    const log = taken(LogWriter.started(bound([record])), 3000, 60).strike(0, 61);
    expect(readingsOf(log)).toEqual([]);
  });

  it("[OFF7] that cannot be true is kept as a record, told, and not counted", () => {
    const log = taken(LogWriter.started(bound([record])), -3, 60);
    expect(turnBackAt(log, 70)).toBe(turnBackAt(LogWriter.started(bound([record])), 70));
    expect(alertsOf(walkStateAt(log.ledger, minute(70))).map(({ alert }) => alert)).toContain(
      "reading ev1 oxygen 1",
    );
  });

  it("[OFF7] is no reading in another unit, or of a supply that no performer has", () => {
    expect(readingsOf(taken(LogWriter.started(bound([{ ...record, unit: "psi" }])), 3000, 60))).toEqual([]);
    expect(readingsOf(taken(LogWriter.started(bound([{ ...record, supply: "air" }])), 3000, 60))).toEqual([]);
  });

  it("[OFF7] is an error of the checker in another unit, or of a supply that no performer has", () => {
    const found = (file: ProcedureFile) =>
      checkProcedureText(JSON.stringify(file)).findings.flatMap(({ code, pointer }) =>
        code.startsWith("record/") ? [[code, pointer]] : [],
      );
    expect(found(bound([record]))).toEqual([]);
    expect(found(bound([{ ...record, unit: "[psi]" }]))).toEqual([
      ["record/other-unit", "/tasks/0/steps/0/records/0/unit"],
    ]);
    expect(found(bound([{ ...record, supply: "air" }]))).toEqual([
      ["record/no-supply", "/tasks/0/steps/0/records/0/supply"],
    ]);
  });

  it("[PRO11] is a key of format 2", () => {
    const { findings } = checkProcedureText(
      JSON.stringify({ ...bound([record]), format: "tetherline.procedure/1" }),
    );
    expect(findings.map(({ code }) => code)).toContain("file/key-of-newer-format");
  });
});
