import { describe, expect, it } from "vitest";
import type { StepId } from "../../../src/core/units/index.ts";
import { alertsOf, deviationsAt, foldLog, walkStateAt } from "../../../src/core/walk/index.ts";
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
        "Does it turn? Ground decided free, which counts; IV had decided stuck, and nothing was done on that branch. The lead says which holds, by deciding it anew if need be",
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
