import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deviceOf } from "../../../src/core/log/index.ts";
import type { DecisionId, StepId } from "../../../src/core/units/index.ts";
import {
  alertsOf,
  deviationsAt,
  foldLog,
  isContrary,
  overruledOf,
  settledOf,
  walkStateAt,
} from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

const FILE = fileWith([
  step("look", "ev1", 5, {
    decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
  }),
  step("force", "ev1", 20, { when: { bolt: "stuck" } }),
  step("pry", "ev1", 20, { when: { bolt: "stuck" } }),
  step("turn", "ev1", 10, { when: { bolt: "free" } }),
  step("pack", "ev1", 30),
]);
const GROUND = { source: "/devices/ground", actor: "Ground" };

/** Inside decides at minute 5 that it is stuck; apart from it the ground decides at minute 6 that it is free. */
const apart = () =>
  LogWriter.started(FILE)
    .enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 5)
    .done(["look", 5])
    .enter("decision.taken", { decision: "bolt", outcome: "free" }, 6, GROUND)
    .enter("step.done", { step: "look" }, 6, GROUND);

const BOLT = "bolt" as DecisionId;
/** The lead says which outcome holds. */
const settled = (log: LogWriter, outcome: string, at: number) =>
  log.enter("decision.taken", { decision: "bolt", outcome, settles: true }, at, {
    source: "/devices/lead",
    actor: "Lead",
  });

const alerts = (log: LogWriter, at: number) =>
  alertsOf(walkStateAt(log.ledger, minute(at)))
    .filter(({ alert }) => alert.startsWith("decision "))
    .map(({ crew, text }) => [crew, inWords(text)]);
const left = (log: LogWriter, at: number) =>
  deviationsAt(log.folded, walkStateAt(log.ledger, minute(at)))
    .filter(({ kind }) => kind === "branch-left")
    .map(({ step: id, text, at: when }) => [id, inWords(text), (when - minute(0)) / 60_000]);
const status = (log: LogWriter, id: string) => log.ledger.steps.get(id as StepId)?.status;

describe("[WLK5] a decision that two devices take differently", () => {
  it("is told everybody with both who decided, and what was done on the branch that does not count", () => {
    expect(alerts(apart(), 7)).toEqual([
      [
        [],
        "Does it turn? Ground decided free, which counts; IV had decided stuck, and nothing was done on that branch. The lead says which holds",
      ],
    ]);
    const worked = apart().done(["force", 25]);
    expect(alerts(worked, 26)[0]?.[1]).toContain("and on that branch was done: 1.2 Do force. The lead says");
  });

  it("keeps what was done on the branch left by who had not heard of it, as a deviation and not as without effect", () => {
    const log = apart().done(["force", 25], ["pry", 45]);
    expect([status(log, "force"), status(log, "pry")]).toEqual(["done", "done"]);
    expect(left(log, 46)).toEqual([
      ["force", "Done on the branch that was left: Does it turn? free, and it needs stuck", 25],
      ["pry", "Done on the branch that was left: Does it turn? free, and it needs stuck", 45],
    ]);
    const { ignored } = log.folded;
    expect(ignored.map(({ reason }) => reason.key)).toEqual(["walk/done-confirmed"]);
  });

  it("is settled by the lead's taking it anew: what was done on the branch in force is no deviation then", () => {
    const log = apart().done(["force", 25]);
    log.enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 30, {
      source: "/devices/lead",
      actor: "Lead",
    });
    expect(left(log, 31)).toEqual([]);
    expect(alerts(log, 31)[0]?.[1]).toContain("Lead decided stuck, which counts; Ground had decided free");
    log.done(["pry", 50]);
    expect(status(log, "pry")).toBe("done");
  });

  it("is settled by the lead's saying that what counts holds: nobody is asked any more, and what was done stays a deviation", () => {
    const log = settled(apart().done(["force", 25]), "free", 30);
    expect(alerts(log, 31)).toEqual([]);
    expect(log.folded.ignored.map(({ reason }) => reason.key)).toEqual(["walk/done-confirmed"]);
    expect(log.ledger.outcomes.get(BOLT)).toBe("free");
    expect(left(log, 31).map(([id]) => id)).toEqual(["force"]);
    expect([isContrary(apart().ledger, BOLT), isContrary(log.ledger, BOLT)]).toEqual([true, false]);
    expect(settledOf(log.ledger, BOLT)).toMatchObject({ outcome: "free", actor: "Lead" });
  });

  it("is settled by the lead's saying that the other one holds, which is in force from then on", () => {
    const log = settled(apart().done(["force", 25]), "stuck", 30);
    expect([alerts(log, 31), left(log, 31)]).toEqual([[], []]);
    log.done(["pry", 50]);
    expect(status(log, "pry")).toBe("done");
  });

  it("once settled stays so, whatever a device decides that had not heard of it, which is told that", () => {
    const log = settled(apart(), "free", 30).enter(
      "decision.taken",
      { decision: "bolt", outcome: "stuck" },
      31,
    );
    expect(log.ledger.outcomes.get(BOLT)).toBe("free");
    const { ignored } = log.folded;
    expect(ignored.at(-1)?.reason).toMatchObject({ key: "walk/decision-settled" });
    const [lost] = overruledOf(log.folded, deviceOf(log.entries.at(-1)?.wire.source ?? ""));
    expect(lost).toMatchObject({ step: "look", lost: "decided", stands: "settled", by: "Lead" });
    expect(overruledOf(log.folded, "/devices/ground")).toEqual([]);
    settled(log, "stuck", 32);
    expect(log.ledger.outcomes.get(BOLT)).toBe("stuck");
    settled(log, "stuck", 33);
    expect(log.folded.ignored.at(-1)?.reason.key).toBe("walk/already-decided");
  });

  it("is anybody's to decide again once its step is open again, or what settled it is struck", () => {
    const log = settled(apart(), "free", 30).enter(
      "step.reopened",
      { step: "look", reason: "looked wrong" },
      31,
    );
    expect(settledOf(log.ledger, BOLT)).toBeNull();
    expect(isContrary(log.ledger, BOLT)).toBe(false);
    log.enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 32);
    expect(log.ledger.outcomes.get(BOLT)).toBe("stuck");
    expect(alerts(log, 33)[0]?.[1]).toContain("which counts; Ground had decided free");
    const struck = settled(apart(), "stuck", 30);
    struck.strike(0, 31);
    expect([settledOf(struck.ledger, BOLT), struck.ledger.outcomes.get(BOLT)]).toEqual([null, "free"]);
    expect(alerts(struck, 32)).toHaveLength(1);
  });

  it("is decided by what settles it where nobody had decided yet, and not by an outcome there is not", () => {
    const log = settled(LogWriter.started(FILE), "stuck", 3);
    expect([log.ledger.outcomes.get(BOLT), settledOf(log.ledger, BOLT)?.takings]).toEqual(["stuck", 1]);
    settled(log, "lost", 4);
    expect(log.folded.ignored.at(-1)?.reason.key).toBe("walk/no-outcome");
  });

  it("comes out the same in whatever order what is decided, settled and opened again arrives", () => {
    const what = fc.constantFrom("stuck", "free", "settle stuck", "settle free", "reopen", "done");
    const said = fc.tuple(what, fc.constantFrom("/devices/iv", "/devices/ground", "/devices/lead"));
    fc.assert(
      fc.property(fc.array(said, { maxLength: 10 }), fc.infiniteStream(fc.nat()), (all, order) => {
        const log = LogWriter.started(FILE);
        for (const [index, [act, source]] of all.entries()) {
          const from = { source, actor: source };
          const [word = "", outcome = word] = act.split(" ");
          if (word === "done") log.enter("step.done", { step: "look" }, 5 + index, from);
          else if (word === "reopen")
            log.enter("step.reopened", { step: "look", reason: "again" }, 5 + index, from);
          else
            log.enter(
              "decision.taken",
              { decision: "bolt", outcome, ...(word === "settle" ? { settles: true as const } : {}) },
              5 + index,
              from,
            );
        }
        const { ledger, entries } = log;
        const shuffled = entries
          .map((entry) => ({ entry, at: order.next().value }))
          .toSorted((a, b) => a.at - b.at)
          .map(({ entry }) => entry);
        const other = foldLog(shuffled).ledger;
        expect([other?.settled, other?.outcomes, other?.decisions]).toEqual([
          ledger.settled,
          ledger.outcomes,
          ledger.decisions,
        ]);
        // While it is settled, what the lead said is what counts.
        const holds = settledOf(ledger, BOLT);
        if (holds) expect(ledger.outcomes.get(BOLT)).toBe(holds.outcome);
      }),
      { numRuns: 100 },
    );
  });

  it("comes out the same in whatever order the entries arrive", () => {
    const { entries, ledger } = apart().done(["force", 25]);
    const turned = foldLog([...entries].reverse()).ledger;
    expect(turned?.steps.get("force" as StepId)).toEqual(ledger.steps.get("force" as StepId));
    expect(turned?.decisions).toEqual(ledger.decisions);
  });

  it("leaves nothing to be skipped on the branch left, and nothing done on one that never was in force", () => {
    const log = apart().enter("step.skipped", { step: "force", reason: "free" }, 8);
    expect(status(log, "force")).toBe("open");
    const once = LogWriter.started(FILE)
      .enter("decision.taken", { decision: "bolt", outcome: "free" }, 5)
      .done(["look", 5], ["force", 20]);
    expect(status(once, "force")).toBe("open");
  });

  it("taken otherwise on the same device names nobody, and what was done is a deviation all the same", () => {
    const log = LogWriter.started(FILE)
      .enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 5)
      .done(["look", 5], ["force", 25])
      .enter("decision.taken", { decision: "bolt", outcome: "free" }, 26);
    expect(alerts(log, 27)[0]?.[1]).not.toContain("decided");
    expect(left(log, 27).map(([id]) => id)).toEqual(["force"]);
    log.strike(0, 28);
    expect(left(log, 29)).toEqual([]);
  });
});
