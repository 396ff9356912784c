import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Entry } from "../../../src/core/log/index.ts";
import { reviewOf } from "../../../src/core/review/index.ts";
import type { StepId } from "../../../src/core/units/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { foldLog, overruledOf, stateDocument, WalkFold } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { copyOf, LogWriter, minute, ZERO } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

const FILE = fileWith([step("a", "ev1", 5), step("b", "ev1", 5), step("c", "ev2", 5)]);
const IV = "/devices/iv-tablet";
const GROUND = "/devices/ground-tablet";
const ground = { source: GROUND, actor: "ground" };
const DAY = 24 * 60;

function stepOf(entries: readonly Entry[], id: string) {
  const { ledger } = foldLog(entries);
  const progress = ledger?.steps.get(id as StepId);
  if (!progress) throw new Error("no such step");
  return progress;
}

describe("two devices that mark the same step", () => {
  it("[LOG3] the first by order counts, the other confirms it and is listed", () => {
    const log = LogWriter.started(FILE).done(["a", 4]).enter("step.done", { step: "a" }, 4.1, ground);
    const a = stepOf(log.entries, "a");
    expect(a.finish).toBe(minute(4));
    expect(a.completedBy?.actor).toBe("iv");
    expect(a.alsoDone).toEqual([{ at: minute(4.1), actor: "ground", source: GROUND }]);
    expect(log.reasons).toEqual(['"a" is already done; this confirms it']);
    expect(overruledOf(log.folded, GROUND)).toEqual([]);
  });

  it("[LOG4] the same device marking it twice confirms nothing, nor does a third mark of one that did", () => {
    const log = LogWriter.started(FILE)
      .done(["a", 4], ["a", 4.2])
      .enter("step.done", { step: "a" }, 4.3, ground)
      .enter("step.done", { step: "a" }, 4.4, ground);
    expect(stepOf(log.entries, "a").alsoDone).toHaveLength(1);
    expect(log.reasons.filter((reason) => reason.includes("confirms"))).toHaveLength(1);
  });

  it("[LOG2] when the mark that counts is struck, the other counts in its place", () => {
    const log = LogWriter.started(FILE).done(["a", 4]).enter("step.done", { step: "a" }, 5, ground);
    log.enter("entry.struck", { source: IV, id: log.entries.at(-2)?.wire.id ?? "" }, 6);
    const a = stepOf(log.entries, "a");
    expect([a.status, a.finish, a.completedBy?.source, a.alsoDone]).toEqual(["done", minute(5), GROUND, []]);
  });

  it("[LOG3] a mark and a skip at once: the order decides, and the author of the other can be told", () => {
    const skipFirst = LogWriter.started(FILE)
      .enter("step.skipped", { step: "a", reason: "late" }, 4, ground)
      .done(["a", 4.1]);
    expect(stepOf(skipFirst.entries, "a").status).toBe("skipped");
    expect(overruledOf(skipFirst.folded, IV)).toEqual([
      { key: `${IV} 0000000003`, step: "a", lost: "done", stands: "skipped", by: "ground" },
    ]);
    expect(overruledOf(skipFirst.folded, GROUND)).toEqual([]);
    const doneFirst = LogWriter.started(FILE)
      .done(["a", 4])
      .enter("step.skipped", { step: "a", reason: "late" }, 4.1, ground);
    expect(overruledOf(doneFirst.folded, GROUND)).toMatchObject([
      { lost: "skipped", stands: "done", by: "iv" },
    ]);
  });
});

describe("a device whose clock is wrong", () => {
  const compared = (offset: number) => ({ hub: "/hubs/one", offset, error: 0.02 });

  it("[LOG1] by a day: times count as the hub's clock would have had them, before and after it was found out", () => {
    const log = LogWriter.started(FILE)
      .enter("step.done", { step: "a" }, 5 + DAY, ground)
      .enter("clock.compared", compared(-DAY * 60), 6 + DAY, ground)
      .enter("step.done", { step: "b" }, 9 + DAY, ground)
      .done(["c", 10]);
    const finish = (id: string) => inMinutes((stepOf(log.entries, id).finish ?? 0) - ZERO);
    expect([finish("a"), finish("b"), finish("c")]).toEqual([5, 9, 10]);
    expect(log.folded.lastAt).toBe(minute(10));
    expect(log.reasons).toEqual([]);
    expect(log.folded.clocks.map(({ device, offset, error }) => [device, offset, error])).toEqual([
      [GROUND, -DAY * 60_000, 20],
    ]);
  });

  it("[LOG1] the log itself keeps what the device said, and can be read so", () => {
    const log = LogWriter.started(FILE)
      .enter("step.done", { step: "a" }, 5 + DAY, ground)
      .enter("clock.compared", compared(-DAY * 60), 6 + DAY, ground);
    const asEntered = foldLog(log.entries, { asEntered: true });
    expect(asEntered.lastAt).toBe(minute(6 + DAY));
    expect(log.folded.entries[2]?.wire.time).toBe(asEntered.entries[2]?.wire.time);
  });

  it("[LOG1] by less than half a second it is left as it is", () => {
    const log = LogWriter.started(FILE)
      .enter("clock.compared", compared(0.4), 1, ground)
      .enter("step.done", { step: "a" }, 5, ground);
    expect(stepOf(log.entries, "a").finish).toBe(minute(5));
  });

  it("[LOG1] that is set anew: each reading holds from its place on", () => {
    const log = LogWriter.started(FILE)
      .enter("clock.compared", compared(60), 0, ground)
      .enter("step.done", { step: "a" }, 4, ground)
      .enter("clock.compared", compared(0), 6, ground)
      .enter("step.done", { step: "b" }, 9, ground);
    expect(stepOf(log.entries, "a").finish).toBe(minute(5));
    expect(stepOf(log.entries, "b").finish).toBe(minute(9));
  });

  it("[LOG1] is not corrected by a comparison that was struck, nor by one of another walk", () => {
    const log = LogWriter.started(FILE)
      .enter("clock.compared", compared(60), 0, ground)
      .strike(0, 1)
      .enter("step.done", { step: "a" }, 4, ground);
    expect(stepOf(log.entries, "a").finish).toBe(minute(4));
    expect(log.folded.clocks).toEqual([]);
    log.strike(1, 5);
    expect(stepOf(log.entries, "a").finish).toBe(minute(5));
    const foreign = new LogWriter("walk-2")
      .enter("note.made", { text: "elsewhere" }, 0, ground)
      .enter("clock.compared", compared(60), 1, ground);
    const own = LogWriter.started(FILE).enter("step.done", { step: "a" }, 4, { source: "/devices/third" });
    const entries = [...own.entries, ...foreign.entries.slice(1)];
    const late = new WalkFold();
    late.add(foreign.entries);
    late.add(own.entries);
    for (const folded of [foldLog(entries), late.folded]) {
      expect(folded.clocks).toEqual([]);
      expect(folded.ignored.map(({ reason }) => inWords(reason))).toContain(
        'it belongs to another walk, "walk-2"',
      );
    }
  });

  it("[LOG2] [LOG4] a strike under another walk's id strikes nothing, whenever it comes in", () => {
    const own = LogWriter.started(FILE).done(["a", 4]);
    const [target] = own.entries.slice(-1);
    const foreign = new LogWriter("walk-2").enter(
      "entry.struck",
      { source: target?.wire.source ?? "", id: target?.wire.id ?? "" },
      5,
      ground,
    );
    for (const batches of [
      [own.entries, foreign.entries],
      [foreign.entries, own.entries],
    ]) {
      const fold = new WalkFold();
      for (const batch of batches) fold.add(batch);
      expect(fold.folded.struck.size).toBe(0);
      expect(fold.folded.ledger?.steps.get("a" as StepId)?.status).toBe("done");
      expect(fold.folded.ignored.map(({ reason }) => inWords(reason))).toEqual([
        'it belongs to another walk, "walk-2"',
      ]);
    }
  });

  it("[OFF6] that jumps without a hub: its times count on from its place as if it had not jumped", () => {
    const log = LogWriter.started(FILE)
      .done(["a", 10])
      .enter("clock.jumped", { by: -55 * 60 }, 20 - 55)
      .done(["b", 25 - 55]);
    expect(stepOf(log.entries, "a").finish).toBe(minute(10));
    expect(stepOf(log.entries, "b").finish).toBe(minute(25));
    expect(log.folded.jumps.map(({ device, by }) => [device, inMinutes(by)])).toEqual([[IV, -55]]);
    expect(inMinutes(log.folded.clockOffsetOf(IV))).toBe(55);
    expect(log.folded.clockOffsetOf(GROUND)).toBe(0);
    expect(log.reasons).toEqual([]);
  });

  it("[OFF6] that jumps before and after it was compared: each time by what is known best", () => {
    const log = LogWriter.started(FILE)
      .enter("step.done", { step: "a" }, 5, ground)
      .enter("clock.jumped", { by: 3600 }, 66, ground)
      .enter("clock.compared", compared(-3600), 68, ground)
      .enter("step.done", { step: "b" }, 70, ground)
      .enter("clock.jumped", { by: -3600 }, 15, ground)
      .enter("step.done", { step: "c" }, 20, ground);
    const finish = (id: string) => inMinutes((stepOf(log.entries, id).finish ?? 0) - ZERO);
    expect([finish("a"), finish("b"), finish("c")]).toEqual([5, 10, 20]);
  });

  it("[OFF6] that jumps once, noticed by two tabs: it counts once; struck, it does not count", () => {
    const log = LogWriter.started(FILE)
      .enter("clock.jumped", { by: 600 }, 20, ground)
      .enter("clock.jumped", { by: 600.3 }, 20.01, ground)
      .enter("step.done", { step: "a" }, 25, ground);
    expect(stepOf(log.entries, "a").finish).toBe(minute(15));
    log.strike(1, 30).strike(3, 30);
    expect(stepOf(log.entries, "a").finish).toBe(minute(25));
  });

  it("[LOG1] [REV1] by an hour: strikes and reopenings are told at the corrected time too", () => {
    const log = LogWriter.started(FILE)
      .enter("clock.compared", compared(-3600), 60, ground)
      .enter("step.done", { step: "a" }, 66, ground)
      .enter("step.reopened", { step: "a", reason: "slipped" }, 67, ground)
      .enter("step.done", { step: "a" }, 72, ground)
      .enter("note.made", { text: "Wrong." }, 73, ground)
      .strike(0, 74);
    const review = reviewOf(log.folded, minute(80));
    const [a] = review?.steps ?? [];
    expect(a?.actual?.finish).toBe(minute(12) - ZERO);
    expect(a?.reopened).toEqual([{ at: minute(7), reason: "slipped" }]);
    // The note was made by the tablet whose clock is wrong, the strike by the other one.
    expect(review?.struck).toMatchObject([{ at: minute(13), struckAt: minute(74) }]);
    expect(review?.deviations).toMatchObject([{ kind: "struck", at: minute(74) }]);
    const asEntered = reviewOf(foldLog(log.entries, { asEntered: true }), minute(80));
    expect(asEntered?.steps[0]?.reopened).toEqual([{ at: minute(67), reason: "slipped" }]);
    expect(asEntered?.struck).toMatchObject([{ at: minute(73) }]);
  });

  const shuffled = fc
    .record({
      offsets: fc.array(fc.integer({ min: -90_000, max: 90_000 }), { minLength: 1, maxLength: 3 }),
      order: fc.infiniteStream(fc.nat()),
    })
    .map(({ offsets, order }) => {
      const log = LogWriter.started(FILE).done(["c", 3]);
      for (const [index, offset] of offsets.entries()) {
        log.enter("clock.compared", compared(offset), index + 1, index % 2 ? {} : ground);
        log.enter("step.done", { step: index ? "b" : "a" }, 5 + index, index % 2 ? {} : ground);
      }
      const keyed = log.entries.map((entry) => ({ entry, key: order.next().value ?? 0 }));
      return { log, arrivals: keyed.sort((a, b) => a.key - b.key).map(({ entry }) => copyOf(entry)) };
    });

  test.prop([shuffled, fc.integer({ min: 1, max: 3 })], { numRuns: 300 })(
    "[LOG3] entries in any order of arrival, in any portions, give the same state",
    ({ log, arrivals }, portion) => {
      const whole = stateDocument(log.folded, minute(30), inWords);
      const fold = new WalkFold();
      for (let at = 0; at < arrivals.length; at += portion) fold.add(arrivals.slice(at, at + portion));
      expect(stateDocument(fold.folded, minute(30), inWords)).toEqual(whole);
      expect(fold.folded.lastAt).toBe(log.folded.lastAt);
    },
  );
});
