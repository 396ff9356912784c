import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Entry } from "../../../src/core/log/index.ts";
import { readEntry, roleRefusal } from "../../../src/core/log/index.ts";
import { reviewCsv, reviewDocument, reviewOf, reviewXes } from "../../../src/core/review/index.ts";
import { foldLog, lastUndoable, newerEntriesOf, stateDocument } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

const HUB = "/hubs/vehicle/one";
const FILE = fileWith([step("a", ["ev1", "ev2"], 5), step("b", "ev1", 3), step("c", "iv", 1)]);

const SAID: readonly (readonly [type: string, data: unknown])[] = [
  ["hub.named", { name: "Vehicle" }],
  ["device.admitted", { source: "/devices/iv-tablet", key: null, role: "lead", name: "iv" }],
  ["hub.vouched", { source: "/hubs/ground", key: "k" }],
  ["checkpoint.made", { entries: 1, held: { "/devices/iv-tablet": "1" }, root: "r", order: "o" }],
];

/** Something that a hub writes of itself at so many minutes of PET. */
function ofHub(number: number, at: number, subject = "walk-1"): Entry {
  const [type, data] = SAID[number % SAID.length] ?? ["", null];
  const sequence = String(number + 1).padStart(10, "0");
  const { entry } = readEntry({
    specversion: "1.0",
    id: sequence,
    source: HUB,
    type: `tetherline.${type}`,
    subject,
    time: new Date(minute(at)).toISOString(),
    sequence,
    hlc: `${String(minute(at)).padStart(15, "0")}-00${String(number % 10)}0`,
    actor: "Vehicle",
    data,
  });
  if (!entry) throw new Error("no entry");
  return entry;
}

const walked = () =>
  LogWriter.started(FILE)
    .done(["a", 6])
    .enter("note.made", { text: "Slow" }, 7)
    .strike(0, 8)
    .done(["b", 10], ["c", 12])
    .enter("walk.closed", { end: "complete" }, 13);

/** Everything that anybody is shown or given of a log. */
function told(entries: readonly Entry[]) {
  const folded = foldLog(entries);
  const review = reviewOf(folded, minute(30));
  if (!review) throw new Error("no walk was opened");
  const { ignored, deviations, lastAt, clocks, jumps } = folded;
  return {
    state: stateDocument(folded, minute(30), inWords),
    ignored,
    deviations,
    lastAt,
    clocks,
    jumps,
    newer: newerEntriesOf(folded),
    undoable: lastUndoable(folded, "/devices/iv-tablet"),
    document: reviewDocument(review, inWords),
    csv: reviewCsv(review, inWords),
    xes: reviewXes(review),
  };
}

describe("what hubs write of themselves", () => {
  test.prop([fc.array(fc.integer({ min: -5, max: 60 }), { maxLength: 12 })])(
    "[SEL4] is no part of a walk, before its opening, within it and after its closing",
    (times) => {
      const { entries } = walked();
      const hubs = times.map((at, number) => ofHub(number, at));
      expect(told([...entries, ...hubs])).toEqual(told(entries));
    },
  );

  it("[SEL4] is no part of a walk that goes on either, nor something to take back", () => {
    const { entries } = LogWriter.started(FILE).done(["a", 6]);
    const hubs = SAID.map((_, number) => ofHub(number, 7));
    expect(told([...entries, ...hubs])).toEqual(told(entries));
    expect(foldLog(hubs).ignored).toEqual([]);
  });

  it("[LOG4] is listed where it cannot be read", () => {
    const spoiled = { ...ofHub(0, 1).wire, data: { name: 7 } };
    const { entry } = readEntry(spoiled);
    expect(foldLog([...walked().entries, ...(entry ? [entry] : [])]).ignored).toHaveLength(1);
  });

  it("[LINK] is written by no device in any role, but passed on by a relay", () => {
    const entry = ofHub(0, 1);
    const own = { ...entry, wire: { ...entry.wire, source: "/devices/iv" } };
    for (const role of ["lead", "marker", "watcher"] as const) {
      expect(roleRefusal(own, role, "/devices/iv")?.reason).toBe("role");
    }
    expect(roleRefusal(entry, "relay", "/hubs/far")).toBeNull();
  });
});
