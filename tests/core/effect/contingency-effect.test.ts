import { describe, expect, it } from "vitest";
import { contingencyEffect } from "../../../src/core/effect/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const MORE: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "lock" },
    { id: "ev2", call: "EV2", station: "outside", start: "lock" },
  ],
  places: [{ id: "lock", refuge: true }, { id: "tip" }],
  routes: [{ between: ["lock", "tip"], length: 20, time: "PT4M" }],
  limits: { elapsed: "PT2H" },
  contingencies: [
    { id: "stuck", title: "Stuck", tasks: [task("free", [step("bar", "ev1", 7)])] },
    { id: "both", title: "Both", tasks: [task("help", [step("aid", ["ev1", "ev2"], 10)])] },
  ],
};
const FILE = fileWith(
  [
    task("work", [step("out", "ev1", null, { to: "tip" }), step("bolt", "ev1", 10), step("stay", "ev2", 30)]),
    task("rest", [step("back", "ev1", null, { to: "lock" }), step("last", "ev2", 10)]),
  ],
  MORE,
);

function effectAt(log: LogWriter, at: number, id: string) {
  const state = walkStateAt(log.ledger, minute(at));
  const contingency = state.ledger.inForce.outline.procedure.contingencies.find((one) => one.id === id);
  if (!contingency) throw new Error("no such contingency");
  const effect = contingencyEffect(state, contingency);
  return (
    effect && [
      effect.behind,
      inMinutes(effect.ends),
      effect.home && inMinutes(effect.home),
      inMinutes(effect.finish),
      effect.margin && inMinutes(effect.margin),
    ]
  );
}

describe("what a contingency would come to", () => {
  it("[OFF4] is the forecast with it behind what its crew has in hand, with the return from its end", () => {
    const log = LogWriter.started(FILE).done(["out", 4]);
    expect(effectAt(log, 6, "stuck")).toEqual(["bolt", 21, 4, 40, 80]);
    // EV2 comes to a joint one only when its step is done.
    expect(effectAt(log, 6, "both")).toEqual(["stay", 40, 4, 50, 70]);
  });

  it("[OFF4] goes by the present state: later steps, decisions and delays count", () => {
    const log = LogWriter.started(FILE).done(["out", 4], ["bolt", 20]);
    expect(effectAt(log, 20, "stuck")?.slice(0, 2)).toEqual(["back", 31]);
    expect(effectAt(log.done(["back", 24]), 30, "stuck")?.slice(0, 3)).toEqual(["back", 37, 0]);
  });

  it("[OFF4] counts no time that somebody stood idle before it was brought in", () => {
    const log = LogWriter.started(FILE).done(["out", 4], ["bolt", 14], ["back", 18]);
    expect(effectAt(log, 25, "stuck")?.slice(0, 2)).toEqual(["back", 32]);
  });

  it("[OFF4] changes nothing of the walk", () => {
    const log = LogWriter.started(FILE).done(["out", 4]);
    const state = walkStateAt(log.ledger, minute(6));
    const before = JSON.stringify([...(state.forecast?.steps ?? [])]);
    effectAt(log, 6, "both");
    expect(JSON.stringify([...(state.forecast?.steps ?? [])])).toBe(before);
    expect(state.ledger.inForce.outline.step("aid")).toBeNull();
  });

  it("[OFF4] cannot be told before the clock is started, once the walk is closed, and where steps would wait for each other", () => {
    expect(effectAt(LogWriter.opened(FILE), 0, "stuck")).toBeNull();
    const closed = LogWriter.started(FILE).enter("walk.closed", { end: "aborted" }, 5);
    expect(effectAt(closed, 6, "stuck")).toBeNull();
    const ringed = fileWith([task("work", [step("a", "ev1", 5, { after: ["z"] }), step("z", "ev2", 5)])], {
      ...MORE,
      contingencies: [{ id: "stuck", title: "Stuck", tasks: [] }],
    });
    expect(effectAt(LogWriter.started(ringed), 1, "stuck")).toBeNull();
  });
});
