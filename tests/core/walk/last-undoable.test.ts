import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Entry } from "../../../src/core/log/index.ts";
import { formatInstant } from "../../../src/core/units/index.ts";
import { lastUndoable } from "../../../src/core/walk/index.ts";
import { entryFrom, LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

const file = fileWith([
  step("a", "ev1", 5, { records: [{ id: "r", label: "R" }] }),
  step("b", "ev2", 5),
  step("c", "ev1", 5),
  step("try", "ev1", 1, {
    decide: { id: "bolt", ask: "Turns?", outcomes: ["turns", "stuck"], expect: "turns" },
  }),
]);

const OTHER = { source: "/devices/ground", actor: "ground" };
const namesOf = (entries: readonly Entry[] | null) => entries?.map(({ read }) => read.fact?.name) ?? null;
const next = (log: LogWriter, device = "/devices/iv-tablet") => lastUndoable(log.folded, device);

/** Takes back what is offered, as the screen does. */
function undo(log: LogWriter, at: number): boolean {
  const entries = next(log);
  for (const { wire } of entries ?? [])
    log.enter("entry.struck", { source: wire.source, id: wire.id, undone: true }, at);
  return entries !== null;
}

describe("[OFF1] undo", () => {
  it("[OFF1] goes back through everything the device entered, newest first", () => {
    const log = LogWriter.started(file)
      .done(["a", 1])
      .enter("record.taken", { step: "a", record: "r", value: 4 }, 2)
      .done(["b", 3])
      .enter("note.made", { text: "hello" }, 60 * 5);
    const went: unknown[] = [];
    for (let at = 301; next(log) !== null; at += 1) {
      went.push(...(namesOf(next(log)) ?? []));
      undo(log, at);
    }
    expect(went).toEqual(["note.made", "step.done", "record.taken", "step.done", "clock.started"]);
    expect(log.ledger.phase).toBe("prepared");
  });

  it("[OFF1] takes back together what one tap entered", () => {
    const log = LogWriter.started(file)
      .done(["a", 1], ["c", 2])
      .enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 3)
      .done(["try", 3]);
    expect(namesOf(next(log))).toEqual(["decision.taken", "step.done"]);
  });

  it("[OFF1] [PAP1] takes back together what was entered in one go from paper, each with its own time", () => {
    const log = LogWriter.started(file).done(["a", 1]);
    const paper = (id: string, at: number) => {
      log.done([id, at]);
      const made = log.entries.at(-1);
      if (!made) throw new Error("nothing was entered");
      const recordedtime = formatInstant(minute(30));
      log.entries[log.entries.length - 1] = entryFrom({ ...made.wire, recordedtime });
    };
    paper("b", 10);
    paper("c", 12);
    expect(next(log)?.map(({ wire }) => wire.data)).toEqual([{ step: "b" }, { step: "c" }]);
    undo(log, 31);
    expect(next(log)?.map(({ wire }) => wire.data)).toEqual([{ step: "a" }]);
  });

  it("[OFF1] never takes back what another device entered, nor what had no effect", () => {
    const log = LogWriter.started(file)
      .done(["a", 1])
      .enter("step.done", { step: "b" }, 2, OTHER)
      .done(["a", 3]);
    const entries = next(log);
    expect(namesOf(entries)).toEqual(["step.done"]);
    expect(entries?.[0]?.read.fact).toMatchObject({ step: "a" });
    expect(entries?.[0]).toBe(log.entries[2]);
    expect(namesOf(next(log, "/devices/ground"))).toEqual(["step.done"]);
    expect(next(log, "/devices/another")).toBeNull();
  });

  it("[OFF1] the clock's start is not taken back under what others did, and nothing once the walk is closed", () => {
    const log = LogWriter.started(file).enter("step.done", { step: "b" }, 2, OTHER);
    expect(next(log)).toBeNull();
    const closed = LogWriter.started(file).done(["a", 1]).enter("walk.closed", { end: "terminated" }, 2);
    expect(next(closed)).toBeNull();
    expect(lastUndoable(new LogWriter().folded, "/devices/iv-tablet")).toBeNull();
  });

  it("[OFF1] whatever was tapped, undoing all leaves the walk as it was when the clock started", () => {
    const taps = fc.array(fc.constantFrom("a", "b", "c", "try"), { maxLength: 8 });
    fc.assert(
      fc.property(taps, (steps) => {
        const log = LogWriter.started(file);
        for (const [index, id] of steps.entries()) log.done([id, index + 1]);
        let at = 100;
        while ((next(log)?.[0]?.read.fact?.name ?? "clock.started") !== "clock.started") {
          undo(log, at);
          at += 1;
        }
        const before = LogWriter.started(file).ledger.lanes.map(({ status }) => status);
        expect(log.ledger.lanes.map(({ status }) => status)).toEqual(before);
        for (const id of ["a", "b", "c", "try"])
          expect(log.ledger.steps.get(id as never)?.status ?? "open").toBe("open");
      }),
    );
  });
});
