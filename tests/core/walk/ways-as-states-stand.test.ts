import { describe, expect, it } from "vitest";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { StateId, StepId } from "../../../src/core/units/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { alertsOf, forecastOf, walkStateAt } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const MORE: Partial<ProcedureFile> = {
  format: "tetherline.procedure/2",
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "lock" },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [{ id: "lock", refuge: true }, { id: "mast" }, { id: "tip" }],
  routes: [
    { between: ["lock", "mast"], length: 1, time: "PT1M", needs: { hatch: "open" } },
    { between: ["mast", "tip"], length: 3, time: "PT2M", needs: { ladder: "out" } },
    { between: ["mast", "tip"], length: 30, time: "PT9M" },
  ],
  states: [
    { id: "hatch", label: "Outer hatch", values: ["open", "closed"], start: "closed" },
    { id: "ladder", values: ["out", "in"], start: "out" },
  ],
};
const STEPS = [
  step("open-hatch", "iv", 1, { sets: { hatch: "open" } }),
  step("fold", "iv", 1, { sets: { ladder: "in" } }),
  step("ev1-out", "ev1", null, { to: "mast", after: ["open-hatch", "fold"] }),
  step("bolt", "ev1", 5, { at: "mast" }),
  step("ev1-up", "ev1", null, { to: "tip" }),
  step("ev1-back", "ev1", null, { to: "lock" }),
];
const started = () => LogWriter.started(fileWith([task("work", STEPS)], MORE));
const set = (log: LogWriter, state: string, value: string, pet: number) =>
  log.enter("state.set", { state: state as StateId, value, reason: "It was seen." }, pet);
const lengthOf = (log: LogWriter, pet: number, id: string) => {
  const one = forecastOf(log.ledger, minute(pet))?.steps.get(id as StepId);
  return one && inMinutes(one.finish) - inMinutes(one.start);
};
const wayAlertsAt = (log: LogWriter, pet: number) =>
  alertsOf(walkStateAt(log.ledger, minute(pet)))
    .filter(({ alert }) => alert.startsWith("way "))
    .map(({ alert, level, crew, since, text }) => [alert, level, crew, inMinutes(since), inWords(text)]);

describe("ways of a running walk", () => {
  it("[FOR1] [PRO13] take as long as the states that stand let them, not as those at the start", () => {
    const log = started();
    expect(lengthOf(log, 0, "ev1-up")).toBe(9);
    log.done(["open-hatch", 1], ["fold", 2]);
    expect(lengthOf(log, 2, "ev1-up")).toBe(9);
    set(log, "ladder", "out", 3);
    expect(lengthOf(log, 3, "ev1-up")).toBe(2);
    expect(lengthOf(log, 3, "ev1-back")).toBe(3);
    set(log, "ladder", "in", 4);
    expect(lengthOf(log, 4, "ev1-up")).toBe(9);
  });

  it("[FOR1] [PRO13] a step that is reopened sets its state again", () => {
    const log = started().done(["open-hatch", 1], ["fold", 2]);
    set(log, "ladder", "out", 3);
    log.enter("step.reopened", { step: "fold", reason: "It slipped." }, 4);
    expect(lengthOf(log, 4, "ev1-up")).toBe(9);
  });

  it("[FOR1] whoever set out on the long way does not arrive by the short one that opens meanwhile", () => {
    const log = started().done(["open-hatch", 1], ["fold", 2], ["ev1-out", 3], ["bolt", 8]);
    expect(lengthOf(log, 9, "ev1-up")).toBe(9);
    set(log, "ladder", "out", 10);
    expect(lengthOf(log, 10, "ev1-up")).toBe(9);
  });

  it("[OFF3] [PRO13] an alert says that the next way is closed, by which state, until it is open again", () => {
    const log = started().done(["open-hatch", 1]);
    expect(wayAlertsAt(log, 1)).toEqual([]);
    set(log, "hatch", "closed", 1.5);
    expect(wayAlertsAt(log, 1.6)).toEqual([
      ["way ev1-out", "look-soon", ["ev1"], 1.5, expect.stringContaining("only while Outer hatch is open")],
    ]);
    set(log, "hatch", "open", 2);
    log.done(["fold", 3]);
    expect(wayAlertsAt(log, 3)).toEqual([]);
    // Closed behind somebody who is out: the way back is the next one that is closed.
    // The ladder is in as well, and there is a way round that.
    log.done(["ev1-out", 5]);
    set(log, "hatch", "closed", 6);
    expect(wayAlertsAt(log, 6).map(([alert, , , , text]) => [alert, text])).toEqual([
      ["way ev1-back", expect.stringContaining("only while Outer hatch is open")],
    ]);
  });
});
