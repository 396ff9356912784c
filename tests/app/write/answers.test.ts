import { describe, expect, it } from "vitest";
import type { WriteAnswer } from "../../../src/app/write/answers.ts";
import { AnswerMemory, answersOn, offersOn } from "../../../src/app/write/answers.ts";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import { waitsOf } from "../../../src/core/course/index.ts";
import { planOf, riskModelOf } from "../../../src/core/plan/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { fileWith, procedureOf, step } from "../../core/procedure-builder.ts";

function told(text: string, isDrawn = false): readonly WriteAnswer[] {
  return [...answersOn({ number: 7, text, start: null, light: null, isDrawn }, new AnswerMemory())].flatMap(
    (answer) => answer ?? [],
  );
}

describe("what is said of a manuscript", () => {
  const file = fileWith([step("a", "ev1", 10), step("b", "ev2", 5, { after: ["a"] })], {
    limits: { elapsed: "PT20M" },
  });
  const text = JSON.stringify(file, null, 2);

  it("[WRT4] is its plan with what its chance is sampled from, then its findings, as the plan and the checker have them", () => {
    const [plan, findings] = told(text);
    const { timeline, margin } = planOf(outlineOf(procedureOf(file)));
    expect(plan).toMatchObject({ number: 7, plan: { finish: timeline?.course.finish, margin } });
    expect(plan && "model" in plan && plan.model).toEqual(timeline && riskModelOf(timeline.course));
    expect(findings).toEqual({ number: 7, findings: checkProcedureText(text).findings, isTried: true });
  });

  it("[WRT4] [CHK1] findings come before their mends, which are tried one by one and left where nobody asks any more", () => {
    const ring = fileWith([step("a", "ev1", 10, { after: ["b"] }), step("b", "ev2", 5, { after: ["a"] })]);
    const ofRing = JSON.stringify(ring);
    const answers = [
      ...answersOn({ number: 7, text: ofRing, start: null, light: null, isDrawn: false }, new AnswerMemory()),
    ];
    const mends = answers.map((one) => one && "findings" in one && one.findings.map(({ mend }) => mend));
    expect(mends.slice(0, 3)).toEqual([false, [null], null]);
    expect(mends.at(-1)).toEqual(checkProcedureText(ofRing).findings.map(({ mend }) => mend));
    expect(checkProcedureText(ofRing).findings[0]?.mend).not.toBeNull();
  });

  it("[WRT4] without a limit there is no chance to be sampled", () => {
    const { limits: _, ...without } = file;
    const [plan] = told(JSON.stringify(without));
    expect(plan).toMatchObject({ plan: { margin: null }, model: null });
  });

  it("[WRT4] what cannot be read has findings, and no figures at all", () => {
    const dangling = JSON.stringify({
      ...file,
      tasks: [{ id: "t", title: "T", steps: [step("a", "nobody", 1)] }],
    });
    const [plan, findings] = told(dangling);
    expect(plan).toMatchObject({ plan: { finish: null, margin: null }, model: null });
    expect(findings && "findings" in findings && findings.findings[0]?.code).toBe("file/no-such-reference");
  });

  it("[WRT3] brings a timeline where one is drawn, with the waits and windows of the plan, as plain data", () => {
    const [answer] = told(text, true);
    const sent = structuredClone(answer && "plan" in answer ? answer.plan.timeline : null);
    const { timeline } = planOf(outlineOf(procedureOf(file)));
    expect(sent).toMatchObject({
      procedure: { id: file.id },
      timeline: { criticalPath: timeline?.criticalPath, course: { steps: timeline?.course.steps } },
      waits: timeline && waitsOf(timeline.course),
    });
    expect(told(text)[0]).toMatchObject({ plan: { timeline: null } });
  });

  it("[WRT4] says why nothing can be drawn: what keeps it from being planned, or from being read", () => {
    const ring = {
      ...file,
      tasks: fileWith([step("a", "ev1", 1, { after: ["b"] }), step("b", "ev2", 1, { after: ["a"] })]).tasks,
    };
    expect(told(JSON.stringify(ring), true)[0]).toMatchObject({
      plan: { timeline: { procedure: null, findings: [{ level: "error" }] } },
    });
    expect(told("{}", true)[0]).toMatchObject({
      plan: { timeline: { procedure: null, findings: expect.arrayContaining([expect.anything()]) } },
    });
  });

  it("[WRT3] offers what is possible when a step begins by the plan of this start, like all else on the screen", () => {
    const lamp = fileWith(
      [
        step("give", ["ev1", "ev2"], 5, { within: ["pass"], moves: [{ item: "lamp", to: { crew: "ev2" } }] }),
        step("wait", "iv", 30),
        step("look", "iv", 5),
      ],
      {
        items: [{ id: "lamp", start: { crew: "ev1" } }],
        windows: [
          {
            id: "pass",
            kind: "listed",
            spans: [{ from: "2031-04-02T10:00:00Z", to: "2031-04-02T11:00:00Z" }],
          },
        ],
      },
    );
    const holding = (start: string | null) => {
      const memory = new AnswerMemory();
      const at = start === null ? null : (Date.parse(start) as Instant);
      const request = { number: 7, text: JSON.stringify(lamp), start: at, light: null, isDrawn: false };
      answersOn(request, memory).next();
      const offers = offersOn({ number: 7, step: "look" }, memory)?.offers;
      return offers?.flatMap(({ crew, holds }) => (holds.length > 0 ? [crew] : []));
    };
    expect(holding("2031-04-02T09:00:00Z")).toEqual(["ev1"]);
    expect(holding("2031-04-02T10:00:00Z")).toEqual(["ev2"]);
  });

  it("[WRT3] offers are of the manuscript that is asked about, or not told yet; of a step that is not planned there are none", () => {
    const memory = new AnswerMemory();
    expect(offersOn({ number: 1, step: "b" }, memory)).toBeNull();
    answersOn({ number: 1, text, start: null, light: null, isDrawn: false }, memory).next();
    expect(offersOn({ number: 2, step: "b" }, memory)).toBeNull();
    expect(offersOn({ number: 1, step: "b" }, memory)?.offers?.map(({ crew }) => crew)).toEqual([
      "ev1",
      "ev2",
      "iv",
    ]);
    expect(offersOn({ number: 1, step: "nothing" }, memory)).toEqual({
      number: 1,
      step: "nothing",
      offers: null,
    });
    answersOn({ number: 2, text: "{}", start: null, light: null, isDrawn: false }, memory).next();
    expect(offersOn({ number: 2, step: "b" }, memory)?.offers).toBeNull();
  });
});
