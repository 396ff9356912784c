import { describe, expect, it } from "vitest";
import type { WriteAnswer } from "../../../src/app/write/answers.ts";
import { answerOn } from "../../../src/app/write/answers.ts";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { fileWith, procedureOf, step } from "../../core/procedure-builder.ts";

function answersOn(text: string): readonly WriteAnswer[] {
  const told: WriteAnswer[] = [];
  answerOn({ number: 7, text, start: null, light: null }, (answer) => told.push(answer));
  return told;
}

describe("what is said of a manuscript", () => {
  const file = fileWith([step("a", "ev1", 10), step("b", "ev2", 5, { after: ["a"] })], {
    limits: { elapsed: "PT20M" },
  });
  const text = JSON.stringify(file, null, 2);

  it("[WRT4] is its plan, then its findings, then its chance, as the plan and the checker have them", () => {
    const [plan, findings, within] = answersOn(text);
    const { timeline, margin } = planOf(outlineOf(procedureOf(file)));
    expect(plan).toMatchObject({ number: 7, plan: { finish: timeline?.course.finish, margin } });
    expect(findings).toEqual({ number: 7, findings: checkProcedureText(text).findings });
    expect(within).toEqual({ number: 7, within: 1 });
  });

  it("[WRT4] what cannot be read has findings, and no figures at all", () => {
    const dangling = JSON.stringify({
      ...file,
      tasks: [{ id: "t", title: "T", steps: [step("a", "nobody", 1)] }],
    });
    const [plan, findings, within] = answersOn(dangling);
    expect(plan).toMatchObject({ plan: { finish: null, margin: null } });
    expect(findings && "findings" in findings && findings.findings[0]?.code).toBe("file/no-such-reference");
    expect(within).toEqual({ number: 7, within: null });
  });
});
