import { readdirSync, readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  amendmentEffect,
  backToPlanChanges,
  bringChanges,
  broughtContingencies,
} from "../../../src/core/effect/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { forecastOf, forecastRisk, walkStateAt } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const MORE: Partial<ProcedureFile> = {
  format: "tetherline.procedure/2",
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "lock" },
    { id: "ev2", call: "EV2", station: "outside", start: "lock" },
  ],
  places: [{ id: "lock", refuge: true }, { id: "tip" }],
  routes: [{ between: ["lock", "tip"], length: 20, time: "PT4M" }],
  items: [{ id: "bag", start: { crew: "ev1" } }],
  limits: { elapsed: "PT60M" },
  windows: [{ id: "dark", kind: "listed", spans: [{ from: "PT0M", to: "PT50M" }] }],
  supplies: [{ crew: "ev1", id: "oxygen", unit: "kPa", full: 100, redline: 0, perHour: 80 }],
  contingencies: [
    {
      id: "stuck",
      title: "Stuck",
      tasks: [task("free", [step("bar", "ev1", 7), step("pull", "ev1", 3)])],
    },
    { id: "both", title: "Both", tasks: [task("help", [step("aid", ["ev1", "ev2"], 10)])] },
  ],
};
/** By likely times: out 0–4, bolt 4–14, tape 14–19, back 19–23; EV2: stay 0–30, last 30–40. */
const FILE = fileWith(
  [
    task("work", [
      step("out", "ev1", null, { to: "tip" }),
      step("bolt", "ev1", 10),
      step("stay", "ev2", 30),
      step("tape", "ev1", null, { time: { low: "PT4M", likely: "PT5M", high: "PT9M" }, within: ["dark"] }),
    ]),
    task("rest", [step("back", "ev1", null, { to: "lock" }), step("last", "ev2", 10)]),
  ],
  MORE,
);

function judged(log: LogWriter, at: number, changes: readonly Change[], thorough = false) {
  return amendmentEffect(walkStateAt(log.ledger, minute(at)), changes, { thorough });
}

function effectAt(log: LogWriter, at: number, ...changes: Change[]) {
  const { effect, refusal } = judged(log, at, changes);
  if (!effect) throw new Error(inWords(refusal));
  return effect;
}

const amend = (log: LogWriter, at: number, changes: readonly Change[]) =>
  log.enter("plan.amended", { changes: [...changes], reason: "", needs: 2 }, at);

const inMin = (value: number | null) => value && inMinutes(value as never);

describe("what an amendment would come to", () => {
  it("[AMD3] is told from the present state: finish, margin, windows, supplies and the way home", () => {
    const log = LogWriter.started(FILE).done(["out", 4]);
    const { outlook, windows, supplies, home, turnBack, steps, grave, withinLimit } = effectAt(
      log,
      10,
      { add: step("shim", "ev1", 20, { at: "tip" }), behind: "bolt" },
      { change: "last", set: { time: "PT16M" } },
    );
    expect(
      [outlook.before, outlook.after].map(({ forecast, planned, half }) => [
        inMin(planned.finish),
        inMin(forecast.finish),
        inMin(forecast.margin),
        half,
      ]),
    ).toEqual([
      [40, 40, 20, null],
      [40, 46, 14, null],
    ]);
    expect(withinLimit).toEqual({ before: null, after: null });
    expect(
      windows.map(({ window, margin: { before, after } }) => [
        window,
        inMin(before?.margin ?? null),
        inMin(after?.margin ?? null),
      ]),
    ).toEqual([["dark", 31, 11]]);
    expect(supplies.map(({ supply, left }) => [supply.id, inMin(left.before), inMin(left.after)])).toEqual([
      ["oxygen", 52, 32],
    ]);
    expect([home, turnBack].map(({ before, after }) => [inMin(before), inMin(after)])).toEqual([
      [4, 4],
      [56, 56],
    ]);
    expect(steps).toEqual([
      { step: "shim", how: "added" },
      { step: "last", how: "changed" },
    ]);
    expect(grave).toEqual([]);
  });

  it("[AMD3] takes samples when asked, the same on every device", () => {
    const log = LogWriter.started(FILE).done(["out", 4]);
    const state = walkStateAt(log.ledger, minute(10));
    const changes: Change[] = [{ add: step("shim", "ev1", 43, { at: "tip" }), behind: "tape" }];
    const { effect } = amendmentEffect(state, changes, { thorough: true });
    const risk = forecastRisk(state);
    expect(effect?.withinLimit.before).toBe(risk?.withinLimit);
    expect(effect?.outlook.before.half?.finish).toBe(Math.ceil(risk?.p50 ?? 0));
    expect(effect?.withinLimit.before).toBe(1);
    expect(effect?.withinLimit.after).toBeLessThan(0.2);
    expect(effect?.outlook.after.nineInTen?.finish).toBeGreaterThan(effect?.outlook.after.half?.finish ?? 0);
  });

  it("[AMD3] makes grave what the checker finds wrong with it, and did not without", () => {
    const log = LogWriter.started(FILE).done(["out", 4]);
    const { findings, grave } = effectAt(log, 10, {
      change: "last",
      set: { moves: [{ item: "bag", to: { crew: "ev2" } }] },
    });
    expect(findings.new.map(({ level }) => level)).toContain("error");
    expect(grave.map((one) => inWords(one))).toEqual(
      findings.new.flatMap(({ level, message: says }) => (level === "error" ? [inWords(says)] : [])),
    );
    expect(findings.gone).toEqual([]);
  });

  it("[AMD3] makes a plan that was over its limit already grave where it is over by more, and not where it is over by less", () => {
    const late = LogWriter.started({ ...FILE, limits: { elapsed: "PT20M" } }).done(["out", 4]);
    const shorter = effectAt(late, 10, { change: "last", set: { time: "PT1M" } });
    expect(shorter.findings.new.map(({ code }) => code)).toContain("time/over-limit");
    expect(shorter.grave).toEqual([]);
    const longer = effectAt(late, 10, { add: step("shim", "ev1", 43, { at: "tip" }), behind: "tape" });
    expect(longer.grave.map(({ key }) => key)).toContain("time/over-limit");
  });

  it("[AMD3] makes grave a forecast over the limit, beyond a redline, outside every window, and without a way home", () => {
    const log = LogWriter.started(FILE).done(["out", 4]);
    const graveOf = (...changes: Change[]) => effectAt(log, 10, ...changes).grave.map((one) => inWords(one));
    expect(graveOf({ add: step("shim", "ev1", 60, { at: "tip" }), behind: "tape" }).slice(0, 2)).toEqual([
      "By likely times the walk ends after its limit: the margin is −23 min.",
      "EV1: oxygen is at its redline before the last step is done; the margin is −8 min.",
    ]);
    expect(graveOf({ add: step("shim", "ev1", 36, { at: "tip" }), behind: "bolt" })).toContain(
      '"tape" fits no window any more.',
    );
    expect(graveOf({ change: "tip", list: "places", set: { label: "Tip" } })).toEqual([]);
    expect(graveOf({ change: "tip lock", list: "routes", unset: ["time"] })).toContain(
      "The way home cannot be told any more.",
    );
  });

  it("[AMD3] [WLK6] is a refusal for what could not be entered, a deadlock among it", () => {
    const log = LogWriter.started(FILE).done(["out", 4]);
    const refusal = (...changes: Change[]) => {
      const { refusal: why } = judged(log, 10, changes);
      return why && inWords(why);
    };
    expect(refusal({ drop: "bolt" })).toBe(
      '"bolt" has begun or is complete, and cannot be taken out of the plan',
    );
    expect(refusal({ change: "tape", set: { after: ["back"] } })).toMatch(/^no order of the remaining steps/);
    log.enter("walk.closed", { end: "aborted" }, 11);
    expect(judged(log, 12, [{ drop: "last" }]).refusal?.key).toBe("walk/is-closed");
  });

  it("[AMD3] is what comes of it once it is entered", () => {
    const log = LogWriter.started(FILE).done(["out", 4]);
    const changes: Change[] = [{ add: step("shim", "ev1", 20, { at: "tip" }), behind: "bolt" }];
    const { ledger, steps } = effectAt(log, 10, ...changes);
    amend(log, 10, changes);
    const timesOf = (one: typeof ledger) => [...(forecastOf(one, minute(12))?.steps ?? [])];
    expect(timesOf(log.ledger)).toEqual(timesOf(ledger));
    expect(log.ledger.amendments[0]?.steps).toEqual(steps);
  });

  it("[AMD3] can be told before the clock is started", () => {
    const { outlook } = effectAt(LogWriter.opened(FILE), 0, { drop: "last" });
    expect(inMin(outlook.after.forecast.finish)).toBe(30);
  });
});

describe("a contingency that is brought in", () => {
  const bring = (log: LogWriter, at: number, id: string) => {
    const contingency = log.ledger.inForce.outline.procedure.contingencies.find((one) => one.id === id);
    return contingency ? bringChanges(log.ledger, contingency, minute(at)) : null;
  };
  const idsOf = (log: LogWriter) => log.ledger.inForce.outline.steps.map(({ step: { id } }) => id);

  it("[CHG1] [OFF4] stands behind the step in hand, and what its crew has left of the work behind it", () => {
    const log = LogWriter.started(FILE).done(["out", 4]);
    const bringing = bring(log, 6, "stuck");
    expect(bringing).toEqual({
      behind: "bolt",
      changes: [
        { bring: "stuck", behind: "bolt" },
        { add: { id: "work-rest", title: "Task work", steps: [] }, list: "tasks", behind: "free" },
        { move: "tape", first: "work-rest" },
      ],
    });
    amend(log, 6, bringing?.changes ?? []);
    expect(log.reasons).toEqual([]);
    expect(idsOf(log)).toEqual(["out", "bolt", "stay", "bar", "pull", "tape", "back", "last"]);
    expect(bring(log, 7, "stuck")).toBeNull();
  });

  it("[OFF4] interrupts both when one of its crew is further on in the plan", () => {
    const log = LogWriter.started(FILE).done(["stay", 8], ["out", 9]);
    // EV2 is at `last`, in the task behind that of EV1.
    const bringing = bring(log, 10, "both");
    expect(bringing?.behind).toBe("last");
    amend(log, 10, bringing?.changes ?? []);
    expect(log.reasons).toEqual([]);
    expect(idsOf(log)).toEqual(["out", "bolt", "stay", "last", "aid", "tape", "back"]);
    expect(inMin(forecastOf(log.ledger, minute(10))?.steps.get("aid" as never)?.start ?? null)).toBe(19);
  });

  it("[CHG4] is taken out again, whole while nothing of it is begun, and can be brought in anew", () => {
    const log = LogWriter.started(FILE).done(["out", 4]);
    amend(log, 6, bring(log, 6, "stuck")?.changes ?? []);
    const [brought] = broughtContingencies(log.ledger);
    expect(brought?.steps).toEqual(["bar", "pull"]);
    const back = brought && backToPlanChanges(log.ledger, brought, minute(7));
    amend(log, 7, back ?? []);
    expect(log.reasons).toEqual([]);
    expect(idsOf(log)).toEqual(["out", "bolt", "stay", "tape", "back", "last"]);
    expect(log.ledger.inForce.file.contingencies?.map(({ id }) => id).sort()).toEqual(["both", "stuck"]);
    expect(broughtContingencies(log.ledger)).toEqual([]);
    // What was put off for it stands in its task again.
    const tasks = ({ tasks: all }: ProcedureFile) =>
      all.map(({ id, steps }) => [id, steps.map((one) => one.id)]);
    expect(tasks(log.ledger.inForce.file)).toEqual(tasks(FILE));
    amend(log, 8, bring(log, 8, "stuck")?.changes ?? []);
    expect(log.reasons).toEqual([]);
    expect(broughtContingencies(log.ledger).map(({ contingency }) => contingency.id)).toEqual(["stuck"]);
  });

  it("[CHG4] keeps what is done or in work of it, and nothing is left to take out then", () => {
    const log = LogWriter.started(FILE).done(["out", 4]);
    amend(log, 6, bring(log, 6, "stuck")?.changes ?? []);
    log.done(["bolt", 14]);
    const changesAt = (at: number) => {
      const [brought] = broughtContingencies(log.ledger);
      return brought ? backToPlanChanges(log.ledger, brought, minute(at)) : null;
    };
    expect(changesAt(15)).toEqual([{ drop: "pull" }]);
    log.done(["bar", 20]);
    expect(changesAt(21)).toBeNull();
  });

  const files = readdirSync("procedures").filter((name) => name.endsWith(".procedure.json"));
  const fileOf = (name: string) => JSON.parse(readFileSync(`procedures/${name}`, "utf8")) as ProcedureFile;
  const withContingencies = files.filter((name) => (fileOf(name).contingencies ?? []).length > 0);

  test.prop([fc.constantFrom(...withContingencies), fc.nat(), fc.nat({ max: 30 }), fc.nat()], {
    numRuns: 40,
  })(
    "[OFF4] [AMD1] comes next for its crew in every bundled procedure, wherever the walk is, and can be taken out",
    (name, which, count, at) => {
      const log = LogWriter.started(fileOf(name));
      let now = 0;
      for (let done = 0; done < count; done += 1) {
        const { ledger } = log;
        const next = walkStateAt(ledger, minute(now)).lanes.find(({ status }) => status === "working")?.step;
        if (!next) break;
        now += 3;
        log.done([next, now]);
      }
      const { contingencies } = log.ledger.inForce.outline.procedure;
      const contingency = contingencies[which % contingencies.length];
      if (!contingency) throw new Error("no contingency");
      now += at % 5;
      const bringing = bringChanges(log.ledger, contingency, minute(now));
      amend(log, now, bringing?.changes ?? []);
      expect(log.reasons).toEqual([]);
      const [brought] = broughtContingencies(log.ledger);
      expect(brought?.contingency.id).toBe(contingency.id);
      const back = brought && backToPlanChanges(log.ledger, brought, minute(now));
      if (back) amend(log, now, back);
      expect(log.reasons).toEqual([]);
      // What is left of it is in work.
      const working = walkStateAt(log.ledger, minute(now)).lanes.map(({ step: one }) => one);
      for (const { steps } of broughtContingencies(log.ledger))
        for (const one of steps) expect(working).toContain(one);
    },
  );
});

describe("a source of light that is chosen in mid-walk", () => {
  it("[AMD3] counts for the findings from then on", () => {
    const dark = fileWith([step("a", "ev1", 10), step("weld", "ev1", 10, { within: ["night"] })], {
      windows: [{ id: "night", label: "Darkness", kind: "darkness" }],
    });
    const findings = (log: LogWriter) => {
      const { same, gone } = effectAt(log, 6, { change: "a", set: { time: "PT12M" } }).findings;
      const said = (list: typeof same) => list.map(({ message }) => inWords(message)).join();
      return { same: said(same), gone: said(gone) };
    };
    const log = LogWriter.started(dark);
    expect(findings(log).same).toContain("without an orbit");
    const orbit = readFileSync("procedures/osier-ranging-head.orbit.txt", "utf8");
    log.enter("light.chosen", { light: { orbit } }, 5);
    expect(findings(log)).toEqual({
      same: expect.not.stringContaining("without an orbit"),
      gone: expect.not.stringContaining("without an orbit"),
    });
  });
});
