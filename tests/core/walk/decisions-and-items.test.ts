import { describe, expect, it } from "vitest";
import type { DecisionId, StepId } from "../../../src/core/units/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import {
  alertsOf,
  branchesOf,
  foldLog,
  isAskedAgain,
  overruledOf,
  paperMarks,
  walkStateAt,
} from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

const FILE = fileWith(
  [
    step("look", "ev1", 5, {
      decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
    }),
    step("force", "ev1", 20, { when: { bolt: "stuck" } }),
    step("turn", "ev1", 10, { when: { bolt: "free" } }),
    step("pack", "ev1", 300, { moves: [{ item: "key", to: { place: "lock" } }] }),
  ],
  {
    limits: { elapsed: "PT6H" },
    places: [{ id: "lock", refuge: true }],
    items: [{ id: "key", label: "Key", start: { crew: "ev1" } }],
  },
);

const BOLT = "bolt" as DecisionId;

/** The alerts on decisions and items: level, key, step, what is said. */
const told = (log: LogWriter, at: number) =>
  alertsOf(walkStateAt(log.ledger, minute(at)))
    .filter(({ alert }) => /^(decision|item) /.test(alert))
    .map(({ level, alert, step: id, text }) => [level, alert, id, inWords(text)]);

const decided = () =>
  LogWriter.started(FILE)
    .enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 5)
    .done(["look", 5]);

describe("a decision that is taken otherwise", () => {
  it("[OFF3] is an alert that names what was done on the branch left", () => {
    const log = decided().done(["force", 20]);
    expect(told(log, 21)).toEqual([]);
    log.enter("decision.taken", { decision: "bolt", outcome: "free" }, 22);
    expect(told(log, 23)).toEqual([
      [
        "look-soon",
        "decision bolt 2",
        "look",
        "Does it turn? free; before that it was stuck, and on that branch was done: 1.2 Do force",
      ],
    ]);
  });

  it("[OFF3] says so where nothing was done there, and is raised anew when it is taken otherwise again", () => {
    const log = decided().enter("decision.taken", { decision: "bolt", outcome: "free" }, 6);
    expect(told(log, 7)[0]?.[3]).toBe(
      "Does it turn? free; before that it was stuck, and nothing was done on that branch",
    );
    log.enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 8);
    expect(told(log, 9).map(([, alert]) => alert)).toEqual(["decision bolt 3"]);
  });

  it("[OFF3] is none once it is struck", () => {
    const log = decided().enter("decision.taken", { decision: "bolt", outcome: "free" }, 6).strike(0, 7);
    expect(told(log, 8)).toEqual([]);
  });

  it("[OFF3] is an alert while its step is open again and the outcome still in force", () => {
    const log = decided().enter("step.reopened", { step: "look", reason: "looked again" }, 8);
    expect(told(log, 9)).toEqual([
      [
        "look-soon",
        "decision bolt again 1",
        "look",
        "Does it turn? This is open again, and stuck stays in force until it is decided otherwise",
      ],
    ]);
    log.done(["look", 10]);
    expect(told(log, 11)).toEqual([]);
  });
});

describe("a decision that is asked again", () => {
  const GROUND = "/devices/ground";
  const BRANCHED = fileWith([
    step("look", "ev1", 5, {
      decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
    }),
    step("force", "ev2", 20, { when: { bolt: "stuck" } }),
    step("turn", "ev2", 10, { when: { bolt: "free" } }),
    step("pack", "ev2", 30),
  ]);
  const reopened = (more: { source?: string } = {}) =>
    LogWriter.started(BRANCHED)
      .enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 5)
      .done(["look", 5])
      .enter("step.reopened", { step: "look", reason: "looked again" }, 8, more);
  const laneOf = (log: LogWriter, at: number) => {
    const { status, step: next, waitingOn } = walkStateAt(log.ledger, minute(at)).lanes[1] ?? {};
    return [status, next, waitingOn?.flatMap((one) => (one.kind === "crew" ? [one.crew, one.step] : []))];
  };

  it("[WLK5] lets nobody go on into its branch: the crew there waits for whoever decides", () => {
    const log = LogWriter.started(BRANCHED)
      .enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 5)
      .done(["look", 5]);
    expect(laneOf(log, 7)).toEqual(["working", "force", []]);
    log.enter("step.reopened", { step: "look", reason: "looked again" }, 8);
    expect(laneOf(log, 9)).toEqual(["waiting", "force", ["ev1", "look"]]);
    expect(log.ledger.outcomes.get(BOLT)).toBe("stuck");
    expect(laneOf(log.done(["look", 10]), 11)).toEqual(["working", "force", []]);
  });

  it("[WLK5] goes on with the other branch once it is decided otherwise", () => {
    const log = reopened().enter("decision.taken", { decision: "bolt", outcome: "free" }, 10);
    expect(laneOf(log, 10)).toEqual(["working", "turn", []]);
    expect(isAskedAgain(log.ledger, BOLT)).toBe(false);
  });

  it("[WLK5] [LOG4] a mark on its branch has no effect, and out of order it is a deviation with its reason", () => {
    const log = reopened().done(["force", 9]);
    expect(log.reasons).toEqual(['"force" hangs on the decision of "look", which is open again']);
    log.enter("step.started", { step: "force" }, 9);
    expect(log.reasons).toHaveLength(2);
    log.enter("step.done", { step: "force", outOfOrder: true, reason: "under way" }, 10);
    expect(log.deviations).toEqual([
      {
        kind: "out-of-order",
        step: "force",
        text: 'Done while the decision of "look" was open again: under way',
      },
    ]);
  });

  it("[WLK5] a step behind the branch waits for the branch, and one may be skipped", () => {
    const log = reopened().done(["pack", 9]).enter("step.skipped", { step: "force", reason: "no time" }, 10);
    expect(log.reasons).toHaveLength(1);
    expect(laneOf(log, 11)).toEqual(["working", "pack", []]);
  });

  it("[WLK5] is over when the reopening is struck, and a mark made meanwhile counts then", () => {
    const log = reopened().done(["force", 9]);
    log.strike(1, 12);
    expect(log.reasons).toEqual([]);
    expect(isAskedAgain(log.ledger, BOLT)).toBe(false);
  });

  it("[WLK5] [LOG3] is told to the device that marked its branch without knowing, whatever arrives first", () => {
    const log = reopened({ source: GROUND }).done(["force", 9]);
    for (const entries of [log.entries, log.entries.toReversed()]) {
      const folded = foldLog(entries);
      expect(overruledOf(folded, "/devices/iv-tablet")).toEqual([
        expect.objectContaining({ step: "force", lost: "done", stands: "open", by: null }),
      ]);
      expect(overruledOf(folded, GROUND)).toEqual([]);
    }
    log.enter("step.done", { step: "force", outOfOrder: true, reason: "it was done" }, 10);
    expect(overruledOf(log.folded, "/devices/iv-tablet")).toEqual([]);
  });

  it("[PAP1] a step of its branch is taken from paper only together with the step that decides", () => {
    const { ledger } = reopened();
    const force = { step: "force" as StepId, at: minute(20), decided: null };
    const look = {
      step: "look" as StepId,
      at: minute(10),
      decided: { decision: BOLT, outcome: "stuck" },
    };
    expect(paperMarks(ledger, [force], minute(30)).kind).toBe("refused");
    expect(paperMarks(ledger, [force, look], minute(30)).kind).toBe("taken");
    expect(paperMarks(ledger, [force, { ...look, at: minute(25) }], minute(30)).kind).toBe("refused");
  });

  it("[OFF3] is an alert to whoever decides and whoever has steps of the branch in force", () => {
    const alert = alertsOf(walkStateAt(reopened().ledger, minute(9))).find(({ about }) => about === "look");
    expect(alert?.crew).toEqual(["ev1", "ev2"]);
  });
});

describe("an item that is with somebody else", () => {
  it("[OFF3] is an alert at the next step that moves it, until that is done or the item is back", () => {
    const log = LogWriter.started(FILE).enter(
      "item.moved",
      { item: "key", to: { crew: "ev2" }, reason: "" },
      2,
    );
    expect(told(log, 3)).toEqual([
      ["look-soon", "item key 1", "pack", "Key is with EV2, and EV1 needs it for 1.4 Do pack"],
    ]);
    log.enter("item.moved", { item: "key", to: { crew: "ev1" }, reason: "back" }, 4);
    expect(told(log, 5)).toEqual([]);
    log.enter("item.moved", { item: "key", to: { crew: "iv" }, reason: "" }, 6);
    expect(told(log, 7).map(([, alert]) => alert)).toEqual(["item key 3"]);
  });

  it("[OFF3] is none where its own crew member has it, or nobody", () => {
    const own = LogWriter.started(FILE).enter(
      "item.moved",
      { item: "key", to: { crew: "ev1" }, reason: "" },
      2,
    );
    expect(told(own, 3)).toEqual([]);
    const laid = LogWriter.started(FILE).enter(
      "item.moved",
      { item: "key", to: { place: "lock" }, reason: "" },
      2,
    );
    expect(told(laid, 3)).toEqual([]);
  });
});

describe("the branches of a decision", () => {
  it("[WLK8] tell of each outcome the steps, the finish and the margin as if it were taken now", () => {
    const log = LogWriter.started(FILE);
    const branches = branchesOf(walkStateAt(log.ledger, minute(1)), BOLT);
    expect(
      branches.map(({ outcome, isExpected, isInForce, steps, finish, margin }) => [
        outcome,
        isExpected,
        isInForce,
        steps,
        inMinutes(finish ?? 0),
        inMinutes(margin ?? 0),
      ]),
    ).toEqual([
      ["free", true, false, ["turn"], 315, 45],
      ["stuck", false, false, ["force"], 325, 35],
    ]);
  });

  it("[WLK8] are those of the forecast once one of them is taken, and the other can still be asked for", () => {
    const log = decided();
    const state = walkStateAt(log.ledger, minute(6));
    const [free, stuck] = branchesOf(state, BOLT);
    expect([stuck?.isInForce, stuck?.finish]).toEqual([true, state.forecast?.finish]);
    // Taken a minute later, the other branch would begin then.
    expect(inMinutes(free?.finish ?? 0)).toBe(316);
    log.enter("decision.taken", { decision: "bolt", outcome: "free" }, 6);
    expect(walkStateAt(log.ledger, minute(6)).forecast?.finish).toBe(free?.finish);
  });

  it("[WLK8] tell where their steps are done, and when the next joint step could begin", () => {
    const log = LogWriter.started(
      fileWith(
        [
          step("look", "ev1", 5, {
            decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
          }),
          step("force", "ev2", 20, { at: "truss", when: { bolt: "stuck" } }),
          step("fetch", "ev2", 10, { to: "lock", when: { bolt: "stuck" } }),
          step("others", ["ev1", "iv"], 5),
          step("stow", "ev1", 5),
          step("close", ["ev1", "ev2"], 5),
        ],
        {
          places: [{ id: "lock", refuge: true }, { id: "truss" }],
          routes: [{ between: ["lock", "truss"], length: 5, time: "PT1M" }],
        },
      ),
    );
    const branches = branchesOf(walkStateAt(log.ledger, minute(1)), BOLT);
    expect(branches.map(({ places, joint }) => [places, joint?.step, inMinutes(joint?.start ?? 0)])).toEqual([
      [[], "others", 5],
      [["truss", "lock"], "others", 5],
    ]);
    log.done(["look", 5], ["others", 10]);
    const later = branchesOf(walkStateAt(log.ledger, minute(10)), BOLT);
    expect(later.map(({ joint }) => joint && [joint.step, inMinutes(joint.start)])).toEqual([
      ["close", 15],
      ["close", 40],
    ]);
    log.enter("decision.taken", { decision: "bolt", outcome: "free" }, 10).done(["stow", 15]);
    expect(branchesOf(walkStateAt(log.ledger, minute(16)), BOLT)[0]?.joint).toBeNull();
  });

  it("[WLK8] have no times before the clock is started, and there are none of an unknown decision", () => {
    const state = walkStateAt(LogWriter.opened(FILE).ledger, minute(0));
    expect(branchesOf(state, BOLT).map(({ finish, margin }) => [finish, margin])).toEqual([
      [null, null],
      [null, null],
    ]);
    expect(branchesOf(state, "nothing" as DecisionId)).toEqual([]);
  });
});
