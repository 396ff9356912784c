import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { DecisionId, Instant, StepId } from "../../../src/core/units/index.ts";
import type { Ledger, PaperMark } from "../../../src/core/walk/index.ts";
import { paperDrafts, paperMarks, paperSteps } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute, ZERO } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

const same = (at: Instant) => at;

const mark = (id: string, at: number | null, outcome?: string): PaperMark => ({
  step: id as StepId,
  at: at === null ? null : minute(at),
  decided: outcome === undefined ? null : { decision: "fits" as DecisionId, outcome },
});

/** EV1 a, then the joint step j, then c; EV2 b, then j; IV d, which names c. */
const file = fileWith([
  step("a", "ev1", 5),
  step("b", "ev2", 5),
  step("j", ["ev1", "ev2"], 5),
  step("c", "ev1", 5),
  step("d", "iv", 5, { after: ["c"] }),
]);

/** What comes before what in that procedure, written down by hand. */
const FOLLOWS: readonly (readonly [before: string, after: string])[] = [
  ["a", "j"],
  ["b", "j"],
  ["j", "c"],
  ["a", "c"],
  ["c", "d"],
];

function whyOf(ledger: Ledger, marks: readonly PaperMark[], now = 60): Record<string, string> {
  const checked = paperMarks(ledger, marks, minute(now));
  if (checked.kind === "taken") return {};
  return Object.fromEntries([...checked.why].map(([id, why]) => [id, inWords(why)]));
}

/** The walk after the marks were entered at the minute `now`; they must be taken. */
function entered(log: LogWriter, marks: readonly PaperMark[], now = 60, actor = "ev2"): LogWriter {
  const checked = paperMarks(log.ledger, marks, minute(now));
  if (checked.kind === "refused") throw new Error("refused");
  for (const { name, data, at, actor: by } of paperDrafts(checked.marks, same, actor))
    log.enter(name, data as never, (at - ZERO) / 60_000, { actor: by });
  return log;
}

describe("steps that were done on paper", () => {
  it("[PAP1] are entered in order of their times, with these times, by whoever enters them, and all count", () => {
    const log = entered(LogWriter.started(file), [
      mark("c", 30),
      mark("j", 20),
      mark("b", 12),
      mark("a", 10),
    ]);
    expect(log.folded.ignored).toEqual([]);
    const ledger = log.ledger;
    for (const [id, at] of [
      ["a", 10],
      ["b", 12],
      ["j", 20],
      ["c", 30],
    ] as const) {
      const progress = ledger.steps.get(id as StepId);
      expect(progress).toMatchObject({ status: "done", finish: minute(at), outOfOrder: false });
      expect(progress?.completedBy?.actor).toBe("ev2");
    }
    expect(log.deviations).toEqual([]);
    expect(ledger.lanes.map(({ next }) => next)).toEqual([null, null, "d"]);
  });

  it("[PAP1] at one time stand behind what they follow, whatever the order in which they were ticked", () => {
    const log = entered(
      LogWriter.started(file),
      ["d", "c", "j", "b", "a"].map((id) => mark(id, 9)),
    );
    expect(log.folded.ignored).toEqual([]);
    expect(paperSteps(log.ledger)).toEqual([]);
  });

  it("[PAP1] are taken when nothing comes before what it follows, and refused otherwise: none is lost, none half entered", () => {
    const ids = ["a", "b", "j", "c", "d"];
    const some = fc.record(
      Object.fromEntries(ids.map((id) => [id, fc.option(fc.integer({ min: 0, max: 4 }))])),
    );
    let taken = 0;
    fc.assert(
      fc.property(some, (times) => {
        const marks = ids.flatMap((id) => (times[id] == null ? [] : [mark(id, times[id])]));
        const isSound = FOLLOWS.every(([before, after]) => {
          const [first, second] = [times[before] ?? null, times[after] ?? null];
          return second === null || (first !== null && first <= second);
        });
        const log = LogWriter.started(file);
        expect(paperMarks(log.ledger, marks, minute(60)).kind).toBe(isSound ? "taken" : "refused");
        if (!isSound) return;
        taken += 1;
        entered(log, marks);
        expect(log.folded.ignored).toEqual([]);
        for (const { step: id, at } of marks) expect(log.ledger.steps.get(id)?.finish).toBe(at);
      }),
      { numRuns: 300 },
    );
    expect(taken).toBeGreaterThan(10);
  });

  it("[PAP1] are refused without a time, before PET 0 and later than now; now and PET 0 themselves are taken", () => {
    const { ledger } = LogWriter.started(file);
    expect(whyOf(ledger, [mark("a", null)])["a"]).toMatch(/^Write when it was done/);
    expect(whyOf(ledger, [mark("a", -1)])["a"]).toMatch(/before the clock was started, at 09:00:00 UTC/);
    expect(whyOf(ledger, [mark("a", 60.5)])["a"]).toMatch(/later than now, PET 1:00:00 or 10:00:00 UTC/);
    expect(whyOf(ledger, [mark("a", 0), mark("b", 60)])).toEqual({});
  });

  it("[PAP1] name the step they follow when it is not done, or was done later, here or on this paper", () => {
    const log = LogWriter.started(file).done(["a", 20]);
    expect(whyOf(log.ledger, [mark("j", 30)])).toEqual({
      j: expect.stringMatching(/^It follows step 1\.2 \(Do b\), which is not done/),
    });
    expect(whyOf(log.ledger, [mark("b", 5), mark("j", 15)])).toEqual({
      j: expect.stringMatching(/^It follows step 1\.1 \(Do a\), and that was done later, at PET 0:20:00/),
    });
    expect(whyOf(log.ledger, [mark("b", 25), mark("j", 22)])).toEqual({
      j: expect.stringMatching(/^It follows step 1\.2 \(Do b\), and that was done later, at PET 0:25:00/),
    });
  });

  it("[PAP1] may follow a step that was skipped afterwards, since a skip is entered when it is noticed", () => {
    const log = LogWriter.started(file).enter("step.skipped", { step: "a", reason: "no need" }, 40);
    expect(whyOf(log.ledger, [mark("b", 10), mark("j", 20)])).toEqual({});
  });

  it("[PAP1] that another device has marked meanwhile, or that nobody performs, are refused and marked once only", () => {
    const log = LogWriter.started(file).done(["a", 10]);
    expect(whyOf(log.ledger, [mark("a", 9), mark("gone", 9)])).toEqual({
      a: expect.stringMatching(/complete already/),
      gone: expect.stringMatching(/complete already, or is not performed/),
    });
  });

  it("[PAP1] before the end of a lag are entered, and are a deviation as any mark is", () => {
    const lagged = fileWith([
      step("a", "ev1", 5),
      step("b", "ev1", 5, { after: [{ step: "a", lag: "PT10M" }] }),
    ]);
    const log = entered(LogWriter.started(lagged), [mark("a", 10), mark("b", 12)]);
    expect(log.folded.ignored).toEqual([]);
    expect(log.deviations.map(({ kind, step: of }) => [kind, of])).toEqual([["lag-not-over", "b"]]);
  });
});

describe("a decision on paper", () => {
  const decided = fileWith([
    step("try", "ev1", 5, { decide: { id: "fits", ask: "Fits?", outcomes: ["yes", "no"], expect: "yes" } }),
    step("bolt", "ev1", 5, { when: { fits: "yes" } }),
    step("stow", "ev1", 5, { when: { fits: "no" } }),
    step("home", "ev1", 5),
  ]);

  it("[PAP1] is entered with its outcome, before the step that made it; without one it is refused", () => {
    const log = LogWriter.started(decided);
    expect(whyOf(log.ledger, [mark("try", 5)])).toEqual({ try: "Choose how it came out." });
    expect(whyOf(log.ledger, [mark("try", 5, "perhaps")])).toEqual({ try: "Choose how it came out." });
    entered(log, [mark("try", 5, "no")]);
    expect(log.folded.ignored).toEqual([]);
    expect(log.ledger.outcomes.get("fits" as DecisionId)).toBe("no");
    expect(paperSteps(log.ledger).map((entry) => entry.step.id)).toEqual(["stow", "home"]);
  });

  it("[PAP1] keeps the steps of its branches out until it is taken, and what follows it when it came out otherwise", () => {
    const log = LogWriter.started(decided);
    expect(paperSteps(log.ledger).map((entry) => entry.step.id)).toEqual(["try", "home"]);
    expect(whyOf(log.ledger, [mark("try", 5, "no"), mark("home", 20)])).toEqual({
      home: expect.stringMatching(/^It follows step 1\.1 \(Do try\), which did not come out as expected/),
    });
    // As expected, it is the step of the branch that is missing.
    expect(whyOf(log.ledger, [mark("try", 5, "yes"), mark("home", 20)])).toEqual({
      home: expect.stringMatching(/^It follows step 1\.2 \(Do bolt\), which is not done/),
    });
    entered(log, [mark("try", 5, "no")]);
    entered(log, [mark("stow", 9), mark("home", 20)]);
    expect(log.folded.ignored).toEqual([]);
    expect(paperSteps(log.ledger)).toEqual([]);
  });
});

it("[PAP1] times go into the log by the clock of the device that enters them", () => {
  const shifted = (at: Instant) => (at - 5_000) as Instant;
  const [draft] = paperDrafts([{ step: "a" as StepId, at: minute(10), decided: null }], shifted, "iv");
  expect(draft).toEqual({ name: "step.done", data: { step: "a" }, at: minute(10) - 5_000, actor: "iv" });
});
