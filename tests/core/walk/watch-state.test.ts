import { describe, expect, it } from "vitest";
import { inMinutes } from "../../../src/core/units/index.ts";
import { walkStateAt, watchStates } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

const FILE = fileWith([step("out", "ev1", 10), step("work", "ev1", 300), step("in", "ev1", 10)], {
  watches: [{ id: "gloves", by: ["ev1"], do: "Check gloves", from: "out", until: "in", every: "PT60M" }],
});

/** The watches at a minute of PET: when due, whether open, when next. */
function watchesAt(log: LogWriter, at: number) {
  return watchStates(walkStateAt(log.ledger, minute(at))).map(({ due, isOpen, next }) => [
    due === null ? null : inMinutes(due),
    isOpen,
    inMinutes(next),
  ]);
}

describe("watches", () => {
  it("[WLK2] come round from the completion of `from` on, until that of `until`", () => {
    const log = LogWriter.started(FILE);
    expect(watchesAt(log, 5)).toEqual([]);
    log.done(["out", 12]);
    expect(watchesAt(log, 20)).toEqual([[null, false, 72]]);
    expect(watchesAt(log, 72)).toEqual([[72, true, 132]]);
    expect(watchesAt(log, 140)).toEqual([[132, true, 192]]);
    log.done(["work", 312], ["in", 322]);
    expect(watchesAt(log, 330)).toEqual([]);
  });

  it.each([
    ["kept", "watch.kept", { watch: "gloves", due: 72 * 60 }],
    ["noted, as earlier versions had it", "note.made", { text: "Check gloves: done" }],
  ] as const)("[LOG2] are open until they were %s since they were due", (_, name, data) => {
    const log = LogWriter.started(FILE).done(["out", 12]);
    log.enter(name, data, 71);
    expect(watchesAt(log, 75)).toEqual([[72, true, 132]]);
    log.enter(name, data, 74);
    expect(watchesAt(log, 75)).toEqual([[72, false, 132]]);
    expect(watchesAt(log, 133)).toEqual([[132, true, 192]]);
    expect(log.reasons).toEqual([]);
  });

  it("[LOG4] that nobody knows cannot be kept", () => {
    const log = LogWriter.started(FILE).enter("watch.kept", { watch: "hats", due: 0 }, 3);
    expect(log.reasons).toEqual(['there is no watch "hats"']);
  });
});
