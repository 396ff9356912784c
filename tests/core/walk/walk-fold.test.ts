import { describe, expect, it } from "vitest";
import { readEntry } from "../../../src/core/log/index.ts";
import { foldLog, stateDocument, WalkFold } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { entryFrom, LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

const FILE = fileWith([step("a", "ev1", 5), step("b", "ev1", 5)]);

/** The same entry as it comes back from a store or a hub: another object that says the same. */
function echoOf(log: LogWriter) {
  const { entry } = readEntry(JSON.parse(JSON.stringify(log.entries.at(-1)?.wire)));
  if (!entry) throw new Error("no entry");
  return entry;
}

function busyLog(notes: number): LogWriter {
  const log = LogWriter.started(FILE);
  for (let count = 0; count < notes; count += 1) log.enter("note.made", { text: `Note ${count}.` }, 1);
  return log;
}

describe("a log being folded", () => {
  it("[LOG3] costs an entry at the end its own step, and its echo as a fresh object nothing", () => {
    const log = busyLog(2000);
    const fold = new WalkFold();
    fold.add(log.entries);
    log.done(["a", 5]);
    expect(fold.add(log.entries.slice(-1))).toBe(1);
    const { ledger } = fold.folded;
    expect(fold.add([echoOf(log)])).toBe(0);
    expect(fold.folded.ledger).toBe(ledger);
  });

  it("[LOG3] folds a late entry again from the last ledger kept before it, not from the beginning", () => {
    const log = busyLog(3000);
    const fold = new WalkFold();
    const [late] = log.entries.slice(1500, 1501);
    fold.add(log.entries.filter((entry) => entry !== late));
    expect(fold.add(late ? [late] : [])).toBeLessThanOrEqual(3002 - 1500 + 256);
    expect(stateDocument(fold.folded, minute(9), inWords)).toEqual(
      stateDocument(log.folded, minute(9), inWords),
    );
  });

  it("[LOG3] undoes the last of many entries at the cost of the strike", () => {
    const log = busyLog(3000).done(["a", 5]);
    const fold = new WalkFold();
    fold.add(log.entries);
    log.strike(0, 6);
    expect(fold.add(log.entries.slice(-1))).toBeLessThanOrEqual(2);
    expect(stateDocument(fold.folded, minute(9), inWords)).toEqual(
      stateDocument(log.folded, minute(9), inWords),
    );
  });

  it("[LOG3] lets a strike go that loses its key to another entry, as a fold in one go does", () => {
    const log = LogWriter.started(FILE).enter("entry.struck", { source: "/devices/gone", id: "7" }, 2);
    const [strike] = log.entries.slice(-1);
    // It counts of the two, since its canonical text sorts first.
    const note = entryFrom({
      ...strike?.wire,
      type: "tetherline.note.made",
      actor: "a",
      data: { text: "Here." },
    });
    const fold = new WalkFold();
    fold.add(log.entries);
    fold.add([note]);
    const whole = foldLog([...log.entries, note]);
    expect(whole.ignored.map(({ reason }) => reason.key)).toEqual(["walk/same-key"]);
    expect(fold.folded.ignored).toEqual(whole.ignored);
  });
});
