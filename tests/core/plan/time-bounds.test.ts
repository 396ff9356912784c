import { describe, expect, it } from "vitest";
import { planOf, returnPlanAt, riskModelOf, sampleRisk } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { StepId } from "../../../src/core/units/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { forecastOf, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute, minutes } from "../log-writer.ts";
import { plannedStep } from "../planned-step.ts";
import { fileWith, outlineFrom, step, task } from "../procedure-builder.ts";
import { said } from "../said.ts";

const TWO = { format: "tetherline.procedure/2" } as const;
const plan = (steps: Parameters<typeof fileWith>[0], more: Partial<ProcedureFile> = {}) =>
  planOf(outlineFrom(steps, { ...TWO, ...more }));
const codes = (made: ReturnType<typeof plan>) => made.findings.map(({ code, level }) => `${level} ${code}`);

describe("a step that starts no earlier than a PET", () => {
  const STEPS = [step("a", "ev1", 5), step("b", "ev1", 3, { notBefore: "PT20M" }), step("c", "ev1", 2)];

  it("[PRO17] waits for it in the plan, the samples, the forecast and on the day", () => {
    const { timeline, network, whereabouts, windows } = plan(STEPS);
    const start = (id: string) => timeline && inMinutes(plannedStep(timeline, id)?.start ?? Number.NaN);
    expect([start("a"), start("b"), start("c")]).toEqual([0, 20, 23]);
    expect(timeline && plannedStep(timeline, "a")?.slack).toBe(minutes(15));
    expect(timeline?.criticalPath).toEqual(["b", "c"]);
    expect(sampleRisk(riskModelOf({ network, whereabouts, windows }), 3, 1).p50).toBe(minutes(25));
    const log = LogWriter.started(fileWith(STEPS, TWO)).done(["a", 4]);
    expect(forecastOf(log.ledger, minute(6))?.steps.get("b" as StepId)?.start).toBe(minutes(20));
    expect(walkStateAt(log.ledger, minute(10)).lanes[0]?.status).toBe("waiting");
    expect(walkStateAt(log.ledger, minute(21)).lanes[0]?.status).toBe("working");
  });

  it("[PRO17] [PLN6] waits for it on the way home too", () => {
    const { timeline } = plan(
      [
        task("work", [step("look", "ev1", 5, { at: "hatch" })]),
        task("home", [step("shut", "ev1", 4, { at: "hatch", notBefore: "PT30M" })], { closeout: true }),
      ],
      {
        crew: [{ id: "ev1", call: "EV1", station: "outside", start: "hatch" }],
        places: [{ id: "hatch", refuge: true }],
      },
    );
    const back = timeline && returnPlanAt(timeline.course, minutes(5));
    expect(back && inMinutes(back.total)).toBe(29);
  });
});

describe("what a plan breaks", () => {
  it("[PRO17] done too late is an error with by how much and who binds it; in time it bounds the slack", () => {
    const late = [step("a", "ev2", 9), step("b", "ev1", 3, { after: ["a"], doneBy: "PT10M" })];
    const made = plan(late);
    expect(codes(made)).toEqual(["error time/done-late"]);
    expect(made.findings[0]).toMatchObject({ pointer: "/tasks/0/steps/1/doneBy", steps: ["b", "a"] });
    expect(said(made.findings[0])).toMatch(/0:12:00: 2 min too late\. EV2 with "a" lets it start last\./);
    expect(made.timeline && plannedStep(made.timeline, "b")?.slack).toBe(0);
    const inTime = plan([step("long", "ev2", 60), step("b", "ev1", 3, { doneBy: "PT10M" })]);
    expect(codes(inTime)).toEqual([]);
    expect(inTime.timeline && plannedStep(inTime.timeline, "b")).toMatchObject({
      slack: minutes(7),
      latestFinish: minutes(10),
    });
  });

  it("[PRO17] started too long after another step is an error; within the time it bounds the slack", () => {
    const after = [{ step: "a", within: "PT5M" }];
    const made = plan([step("a", "ev2", 2), step("busy", "ev1", 9), step("b", "ev1", 1, { after })]);
    expect(codes(made)).toEqual(["error time/started-late"]);
    expect(said(made.findings[0])).toMatch(/starts 2 min too late\. EV1 with "busy" lets it start last\./);
    const near = plan([step("a", "ev2", 2), step("b", "ev1", 1, { after }), step("long", "iv", 40)]);
    expect(codes(near)).toEqual([]);
    expect(near.timeline && plannedStep(near.timeline, "b")?.latestStart).toBe(minutes(7));
  });

  it("[PRO17] people outside who are too far apart by the ways are an error at the moment they are furthest", () => {
    const more: Partial<ProcedureFile> = {
      crew: ["ev1", "ev2"].map((id) => ({ id, call: id.toUpperCase(), station: "outside", start: "hatch" })),
      places: [{ id: "hatch", refuge: true }, { id: "boom" }, { id: "tip" }],
      routes: [
        { between: ["hatch", "boom"], length: 10, time: "PT1M" },
        { between: ["boom", "tip"], length: 8, time: "PT1M" },
      ],
    };
    const steps = [
      step("out", "ev1", null, { to: "boom" }),
      step("up", "ev1", null, { to: "tip" }),
      step("stay", "ev2", 9, { at: "hatch" }),
    ];
    const made = plan(steps, { ...more, limits: { apart: 15 } });
    expect(codes(made)).toEqual(["error place/too-far-apart"]);
    expect(said(made.findings[0])).toMatch(
      /EV1 and EV2 are 18 m apart .* "up", PET 0:02:00: 3 m more than the 15 m/,
    );
    expect(codes(plan(steps, { ...more, limits: { apart: 18 } }))).toEqual([]);
  });
});
