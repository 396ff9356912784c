import { planOf } from "../plan/index.ts";
import type { Finding, Outcomes, Outline, ReadProcedure } from "../procedure/index.ts";
import { finding, outlineOf, readProcedure, scenariosOf } from "../procedure/index.ts";
import { custodyFindings } from "./custody-findings.ts";
import { textFindings } from "./text-findings.ts";

const LEVELS = { error: 0, caution: 1, advice: 2 } as const;

/** What the checker found, and the procedure where it could be read. */
export interface Checked extends ReadProcedure {
  /** The procedure laid out; `null` when it could not be read. */
  readonly outline: Outline | null;
}

/** Checks a laid-out procedure in every scenario ([ORD4]), with get-ahead tasks left out and done. Each finding once. */
export function checkOutline(outline: Outline): Finding[] {
  const scenarios = scenariosOf(outline);
  const found = new Map<string, Finding>();
  const take = (findings: readonly Finding[], outcomes: Outcomes) => {
    for (const one of findings) {
      const key = JSON.stringify([one.code, one.pointer, one.things]);
      if (!found.has(key))
        found.set(
          key,
          outcomes.size === 0 ? one : { ...one, message: `${one.message} ${scenarioWords(outcomes)}` },
        );
    }
  };
  const hasGetAheads = outline.procedure.tasks.some(({ priority }) => priority === "get-ahead");
  for (const outcomes of scenarios.outcomes) {
    for (const getAheads of hasGetAheads ? [false, true] : [false]) {
      const plan = planOf(outline, { outcomes, getAheads });
      // Get-aheads are only done if time allows, so that they go over the limit is no finding.
      take(
        getAheads ? plan.findings.filter(({ code }) => code !== "time/over-limit") : plan.findings,
        outcomes,
      );
      if (plan.network.ring.length === 0) take(custodyFindings(plan), outcomes);
    }
  }
  const incomplete = scenarios.complete
    ? []
    : [
        finding(
          "caution",
          "order/not-all-scenarios",
          "",
          `There are more combinations of outcomes than can be checked one by one; every single and pairwise departure from the expected ones was checked (${scenarios.outcomes.length}).`,
        ),
      ];
  return [...found.values(), ...textFindings(outline), ...incomplete].sort(
    (a, b) => LEVELS[a.level] - LEVELS[b.level],
  );
}

const scenarioWords = (outcomes: Outcomes) =>
  `(When ${[...outcomes].map(([decision, outcome]) => `"${decision}" comes out "${outcome}"`).join(" and ")}.)`;

/** Checks the text of a procedure file: everything the checker has to say, each finding with its place in the file. Never throws. */
export function checkProcedureText(text: string): Checked {
  const read = readProcedure(text);
  if (!read.procedure) return { ...read, outline: null };
  const outline = outlineOf(read.procedure);
  return { ...read, outline, findings: [...read.findings, ...read.locate(checkOutline(outline))] };
}
