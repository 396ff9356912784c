import { describe, expect, it } from "vitest";
import { walkRecords } from "../../../src/core/learn/index.ts";
import { evidenceOf } from "../../../src/core/learn/observation.ts";
import { foldLog } from "../../../src/core/walk/index.ts";
import type { LogWriter } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { timeOf, walkOf } from "./observed-walks.ts";

function evidence({ folded }: LogWriter) {
  const [record] = walkRecords([folded]);
  if (!record) throw new RangeError("no walk");
  const { observations, inOneGo } = evidenceOf(record);
  return {
    inOneGo,
    seen: observations.map(({ entry, minutes, ...rest }) => ({
      step: entry.step.id,
      minutes: Math.round(minutes * 1000) / 1000,
      ...rest,
    })),
  };
}

const minutesOf = (log: LogWriter) =>
  Object.fromEntries(evidence(log).seen.map(({ step: id, minutes }) => [id, minutes]));

describe("observations", () => {
  it("[LRN1] tell of each performed step how long, by whom, in which walk, and how its start is known", () => {
    const log = walkOf("w")
      .enter("step.started", { step: "turn" }, 1)
      .done(["turn", 4], ["stow", 15])
      .enter("walk.closed", { end: "complete" }, 16);
    expect(evidence(log).seen).toMatchObject([
      {
        step: "turn",
        minutes: 3,
        walk: "w",
        mode: "live",
        who: ["ev1"],
        isStartSaid: true,
        isBrokenOff: false,
      },
      { step: "stow", minutes: 11, isStartSaid: false, isReopened: false },
    ]);
  });

  it("[LRN1] a start that was struck, or that had no effect, was not said", () => {
    const struck = walkOf("w").enter("step.started", { step: "turn" }, 1).strike(0, 2).done(["turn", 4]);
    expect(evidence(struck).seen).toMatchObject([{ step: "turn", minutes: 4, isStartSaid: false }]);
    const idle = walkOf("w").enter("step.started", { step: "stow" }, 1).done(["turn", 4], ["stow", 9]);
    expect(evidence(idle).seen).toMatchObject([{}, { step: "stow", minutes: 5, isStartSaid: false }]);
  });

  it("[LRN1] what was worked on after each reopening is added, and flagged", () => {
    const log = walkOf("w")
      .done(["turn", 4], ["stow", 14])
      .enter("step.reopened", { step: "turn", reason: "slipped" }, 20)
      .done(["turn", 22])
      .enter("step.reopened", { step: "turn", reason: "again" }, 30)
      .done(["turn", 31]);
    expect(evidence(log).seen).toMatchObject([
      { step: "turn", minutes: 7, isReopened: true },
      { step: "stow", minutes: 10, isReopened: false },
    ]);
  });

  it("[LRN1] a mark that was taken back and made again is no reopening", () => {
    const log = walkOf("w").done(["turn", 2]).strike(0, 2.5).done(["turn", 5]);
    expect(evidence(log).seen).toMatchObject([{ step: "turn", minutes: 5, isReopened: false }]);
  });

  it("[LRN1] a hold is not worked on", () => {
    const log = walkOf("w")
      .enter("hold.called", { reason: "" }, 1)
      .enter("hold.lifted", { reason: "" }, 3)
      .done(["turn", 6], ["stow", 12]);
    // Nothing can begin within a hold, but what had begun goes on behind it.
    expect(minutesOf(log)).toEqual({ turn: 4, stow: 6 });
    expect(evidence(log).seen.map(({ isHeld }) => isHeld)).toEqual([true, false]);
  });

  it.each([
    [5, []],
    [5.001, ["stow", "turn"]],
  ])("[LRN1] two taps %s s apart tell of %j", (seconds, told) => {
    const log = walkOf("w").done(["turn", 10], ["stow", 10 + seconds / 60]);
    expect(Object.keys(minutesOf(log)).sort()).toEqual(told);
    expect(evidence(log).inOneGo).toHaveLength(2 - told.length);
  });

  it("[LRN1] a chain of taps is one group, whoever's steps they are", () => {
    const steps = ["a", "b", "c"].map((id) => step(id, "ev1", 5));
    const file = fileWith([...steps, step("d", "ev2", 5)]);
    const log = walkOf("w", file).done(["a", 6], ["b", 6.08], ["c", 6.16], ["d", 6.2]);
    expect(evidence(log)).toMatchObject({ seen: [], inOneGo: ["a", "b", "c", "d"] });
  });

  it("[LRN1] a step planned to take no time is left out, and takes nothing from its neighbours", () => {
    const file = fileWith([step("go", "ev1", 0), step("turn", "ev1", null, timeOf(2, 3, 6))]);
    const log = walkOf("w", file).done(["go", 5], ["turn", 5.05]);
    expect(minutesOf(log)).toEqual({ turn: 0.05 });
  });

  it("[LRN1] a step that took no time is none: it was only marked", () => {
    const log = walkOf("w").done(["turn", 0], ["stow", 9]);
    expect(minutesOf(log)).toEqual({ stow: 9 });
  });

  it("[LRN1] what was in work when the walk was closed was broken off", () => {
    const log = walkOf("w").done(["turn", 4]).enter("walk.closed", { end: "terminated", reason: "late" }, 9);
    expect(evidence(log).seen).toMatchObject([
      { step: "turn", isBrokenOff: false },
      { step: "stow", minutes: 5, isBrokenOff: true },
    ]);
  });

  it("[LRN1] what is in work in an open walk tells nothing yet", () => {
    const log = walkOf("w").done(["turn", 4]).enter("note.made", { text: "on it" }, 9);
    expect(minutesOf(log)).toEqual({ turn: 4 });
  });

  it("[LRN1] a skipped step was broken off when somebody had said that it began, and tells nothing otherwise", () => {
    const said = walkOf("w")
      .enter("step.started", { step: "turn" }, 1)
      .enter("step.skipped", { step: "turn", reason: "jammed" }, 6);
    expect(evidence(said).seen).toMatchObject([{ step: "turn", minutes: 5, isBrokenOff: true }]);
    const unsaid = walkOf("w").enter("step.skipped", { step: "turn", reason: "not needed" }, 6);
    expect(evidence(unsaid).seen).toEqual([]);
  });

  it("[LRN1] a get-ahead that had only come up when the walk was closed was not begun", () => {
    const file = fileWith([
      task("work", [step("turn", "ev1", 3)]),
      task("more", [step("extra", "ev1", 5)], { priority: "get-ahead" }),
    ]);
    const closed = (log: LogWriter) => log.enter("walk.closed", { end: "terminated", reason: "" }, 9);
    expect(minutesOf(closed(walkOf("w", file).done(["turn", 4])))).toEqual({ turn: 4 });
    const begun = walkOf("w", file).done(["turn", 4]).enter("step.started", { step: "extra" }, 5);
    expect(minutesOf(closed(begun))).toEqual({ turn: 4, extra: 4 });
  });

  it("[LRN1] times are by corrected clocks", () => {
    const ground = { source: "/devices/ground" };
    const log = walkOf("w");
    log
      .enter("clock.compared", { hub: "h", offset: -3600, error: 0 }, 61, ground)
      .enter("step.done", { step: "turn" }, 64, ground);
    expect(minutesOf(log)).toEqual({ turn: 4 });
  });

  it("[LRN1] a walk that two logs tell of counts once, with the entries of both", () => {
    const whole = walkOf("w").done(["turn", 4], ["stow", 15]).entries;
    const part = (...places: readonly number[]) => foldLog(places.flatMap((place) => whole[place] ?? []));
    expect(walkRecords([part(0, 1, 2), foldLog(whole), part(0, 1)])).toHaveLength(1);
    const [record] = walkRecords([part(0, 1, 2), part(0, 1, 3)]);
    expect(record && evidenceOf(record).observations.map(({ minutes }) => minutes)).toEqual([4, 11]);
  });

  it("[LRN1] a log without a walk gives none", () => {
    expect(walkRecords([foldLog([]), foldLog(walkOf("w").entries.slice(1))])).toEqual([]);
  });
});
