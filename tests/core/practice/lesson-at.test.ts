import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { isPracticeWalk, lessonAt } from "../../../src/core/practice/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { BROUGHT, practiceFile, practiceLog, stateOf, UP_TO_SWAP, UP_TO_VOLTS } from "./practice-file.ts";

/** What the guide says of a log at a minute, by key, with the number of the step it is about. */
function said(log: LogWriter, at = 20) {
  const { next, aside, step } = lessonAt(stateOf(log, at));
  return { next: next.key, aside: aside?.key ?? null, step, words: inWords(next) };
}

const volts = (value: number) =>
  practiceLog()
    .done(...UP_TO_VOLTS)
    .enter("record.taken", { step: "ev1-volts", record: "volts", value }, 4.5);

describe("the practice walk", () => {
  it("[PRA1] is a rehearsal of the procedure to learn by, and nothing else is", () => {
    expect(isPracticeWalk(practiceLog().ledger)).toBe(true);
    expect(isPracticeWalk(LogWriter.started(practiceFile).ledger)).toBe(false);
    const other = { ...practiceFile, id: "another" };
    expect(isPracticeWalk(LogWriter.started(other, { mode: "rehearsal" }).ledger)).toBe(false);
    const revised = { ...practiceFile, revision: "Z" };
    expect(isPracticeWalk(LogWriter.started(revised, { mode: "rehearsal" }).ledger)).toBe(true);
  });
});

describe("what the guide says, done as it asks", () => {
  it("[PRA2] leads from the start of the clock to the review", () => {
    const log = LogWriter.opened(practiceFile, { mode: "rehearsal" });
    expect(said(log, 0)).toMatchObject({ next: "practice/start", step: null });
    log.enter("clock.started", {}, 0);
    expect(said(log)).toMatchObject({ next: "practice/first", step: "iv-door" });
    log.done(["iv-door", 0.5]);
    expect(said(log)).toMatchObject({ next: "practice/go-on", step: "ev1-mast" });
    log.done(...UP_TO_SWAP.slice(1, 5));
    expect(said(log)).toMatchObject({ next: "practice/waits", step: "ev2-new" });
    expect(said(log).words).toContain("EV1 has reached joint step 2.5 and waits there for EV2");
    log.done(["ev2-new", 2.2], ["ev2-mast", 2.5]);
    expect(said(log)).toMatchObject({ next: "practice/joint-confirm", step: "swap" });
    log.enter("confirm.given", { step: "swap" }, 2.8);
    expect(said(log)).toMatchObject({ next: "practice/joint", step: "swap" });
    log.done(["swap", 3], ["ev1-new", 3.5], ["iv-power-on", 4]);
    expect(said(log)).toMatchObject({ next: "practice/value-outside", step: "ev1-volts" });
    expect(said(log).words).toContain("19 V");
    log.enter("record.taken", { step: "ev1-volts", record: "volts", value: 19 }, 4.2);
    expect(said(log)).toMatchObject({ next: "practice/outside", step: "ev1-volts" });
    expect(said(log).words).toContain("“Contingencies” at the foot, “Too little voltage”");
    log.enter("plan.amended", { changes: BROUGHT, reason: "Too little voltage", needs: 2 }, 4.4);
    log.done(["ev1-volts", 4.5]);
    expect(said(log)).toMatchObject({ next: "practice/brought", step: "ev1-fuse" });
    log.done(["ev1-fuse", 5]);
    expect(said(log)).toMatchObject({ next: "practice/value", step: "ev1-volts-again" });
    expect(said(log).words).toContain("28 V");
    log.enter("record.taken", { step: "ev1-volts-again", record: "volts", value: 28 }, 5.2);
    log.done(["ev1-volts-again", 5.3], ["both-in", 6], ["ev2-stow", 6.2], ["iv-shut", 6.5]);
    expect(said(log)).toMatchObject({ next: "practice/close", step: null, aside: null });
    log.enter("walk.closed", { end: "complete" }, 7);
    expect(said(log)).toMatchObject({ next: "practice/closed", step: null });
    expect(log.folded.ignored).toEqual([]);
  });
});

describe("what the guide says when something else is done", () => {
  it("[PRA2] [PRA3] a value within its limits: that nothing is raised, how to see an alert, and how to go on without", () => {
    const { next, words } = said(volts(27));
    expect(next).toBe("practice/within");
    expect(words).toContain("enter 19 V");
    expect(words).toContain("Or go on with step 2.8 of EV1.");
    const gone = volts(27).done(["ev1-volts", 4.6], ["both-in", 5]);
    expect(said(gone)).toMatchObject({ next: "practice/go-on", step: "ev2-stow" });
  });

  it("[PRA2] [PRA3] a value outside and no contingency: asks for it until the walk has gone on without", () => {
    const log = volts(19).done(["ev1-volts", 4.6]);
    expect(said(log)).toMatchObject({ next: "practice/outside" });
    expect(said(log).words).toContain("Or go on with step 3.1 of EV1 and EV2.");
    expect(said(log.done(["both-in", 5]))).toMatchObject({ next: "practice/go-on", step: "ev2-stow" });
  });

  it("[PRA2] a value that is corrected counts as it is now", () => {
    const log = volts(19).enter("record.taken", { step: "ev1-volts", record: "volts", value: 26 }, 4.6);
    // EV2 waits at the next joint step meanwhile.
    expect(said(log)).toMatchObject({ next: "practice/waits", step: "ev1-volts" });
  });

  it("[PRA2] [PRA3] a step marked done without its value: what it owes, once", () => {
    const log = practiceLog().done(...UP_TO_VOLTS, ["ev1-volts", 4.5]);
    expect(said(log)).toMatchObject({ next: "practice/owed", step: "ev1-volts" });
    expect(said(log.done(["both-in", 5])).next).toBe("practice/go-on");
  });

  it("[PRA2] the contingency taken twice, or taken out again: as the plan stands", () => {
    const bring = { changes: BROUGHT, reason: "Too little voltage", needs: 2 };
    const log = volts(19).enter("plan.amended", bring, 4.6).enter("plan.amended", bring, 4.7);
    expect(log.folded.ignored).toHaveLength(1);
    log.done(["ev1-volts", 4.8]);
    expect(said(log)).toMatchObject({ next: "practice/brought", step: "ev1-fuse" });
    const back = volts(19).enter("plan.amended", bring, 4.6).strike(0, 4.7);
    expect(said(back)).toMatchObject({ next: "practice/outside" });
  });

  it("[PRA2] a tap taken back, or a step that is open again: the step that is in work then", () => {
    const log = practiceLog().done(["iv-door", 0.5], ["ev1-mast", 1]).strike(0, 1.2);
    expect(said(log)).toMatchObject({ next: "practice/go-on", step: "ev1-mast", aside: null });
    const again = practiceLog()
      .done(["iv-door", 0.5], ["ev1-mast", 1])
      .enter("step.reopened", { step: "ev1-mast", reason: "wrong button" }, 1.2);
    expect(said(again)).toMatchObject({ step: "ev1-mast", aside: "practice/open-again" });
  });

  it("[PRA2] a step that is skipped, or done out of order: that it is taken, and what is next", () => {
    const skipped = practiceLog().enter("step.skipped", { step: "iv-door", reason: "open" }, 0.4);
    expect(said(skipped)).toMatchObject({ step: "ev1-mast", aside: "practice/skipped" });
    const early = practiceLog().enter("step.done", { step: "ev2-new", outOfOrder: true }, 0.4);
    expect(said(early)).toMatchObject({ step: "iv-door", aside: "practice/out-of-order" });
    expect(said(early.done(["iv-door", 0.6])).aside).toBeNull();
  });

  it("[PRA2] a hold, a walk that is closed early, and one that is reopened", () => {
    const log = practiceLog().done(["iv-door", 0.5]).enter("hold.called", {}, 1);
    expect(said(log)).toMatchObject({ next: "practice/held" });
    log.enter("hold.lifted", {}, 2).enter("walk.closed", { end: "terminated", reason: "lunch" }, 3);
    expect(said(log)).toMatchObject({ next: "practice/closed-early" });
    log.enter("walk.reopened", { reason: "on again" }, 4);
    expect(said(log)).toMatchObject({ next: "practice/go-on", step: "ev1-mast" });
  });

  it("[PRA2] after a week: the same as before", () => {
    const log = practiceLog().done(...UP_TO_SWAP);
    expect(said(log, 7 * 24 * 60)).toEqual(said(log, 3));
  });
});

const STEPS = practiceFile.tasks.flatMap(({ steps }) => steps.map(({ id }) => id));

const entered = fc.oneof(
  fc.constantFrom(...STEPS).map((step) => ["step.done", { step }] as const),
  fc.constantFrom(...STEPS).map((step) => ["step.done", { step, outOfOrder: true }] as const),
  fc.constantFrom(...STEPS).map((step) => ["step.skipped", { step, reason: "" }] as const),
  fc.constantFrom(...STEPS).map((step) => ["step.reopened", { step, reason: "" }] as const),
  fc
    .double({ min: 0, max: 50, noNaN: true })
    .map((value) => ["record.taken", { step: "ev1-volts", record: "volts", value }] as const),
  fc.constant(["plan.amended", { changes: BROUGHT, reason: "", needs: 2 }] as const),
  fc.constantFrom(["hold.called", {}] as const, ["hold.lifted", {}] as const),
);

describe("whatever is entered", () => {
  test.prop([fc.array(entered, { maxLength: 30 })])(
    "[PRA2] [PRA3] the guide says something, and the step it names is in work or was just spoken of",
    (entries) => {
      const log = practiceLog();
      for (const [index, [name, data]] of entries.entries())
        log.enter(name as never, data as never, 0.2 * (index + 1));
      const state = walkStateAt(log.ledger, minute(20));
      const lesson = lessonAt(state);
      expect(inWords(lesson.next)).toMatch(/\.$/);
      expect(inWords(lesson.next)).not.toMatch(/\{|undefined|NaN/);
      const working = state.lanes.flatMap(({ status, step }) => (status === "working" ? [step] : []));
      const onValue = ["practice/owed", "practice/outside", "practice/within"].includes(lesson.next.key);
      if (lesson.step !== null && !onValue) expect(working).toContain(lesson.step);
      if (state.phase === "running" && working.length > 0) expect(lesson.step).not.toBeNull();
    },
  );
});
