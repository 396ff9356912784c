import { message } from "../../words/index.ts";
import { errorAt } from "./error-at.ts";
import type { Finding } from "./finding.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member, members, textOf } from "./raw-file.ts";
import type { RawStep } from "./raw-step.ts";
import { idOf, namedStep } from "./raw-step.ts";
import type { Resolve } from "./resolve-reference.ts";

/** A decision of a file that may have any shape. */
export interface RawDecision {
  /** The step that makes it. */
  readonly step: RawStep;
  readonly outcomes: readonly string[];
}

const outcomesOf = (decide: RawPart) =>
  entries(member(decide, "outcomes")).flatMap((part) => textOf(part) ?? []);

/** The decisions of a file by id. Where an id is used twice, the first decision counts. */
export function rawDecisions(steps: readonly RawStep[]): ReadonlyMap<string, RawDecision> {
  const decisions = new Map<string, RawDecision>();
  for (const step of steps) {
    const decide = member(step.part, "decide");
    const id = idOf(decide);
    if (id !== null && !decisions.has(id)) decisions.set(id, { step, outcomes: outcomesOf(decide) });
  }
  return decisions;
}

/** The errors in the decision that a step makes: an expected outcome that is not listed, or an outcome listed twice. */
export function decideFindings(step: RawStep): Finding[] {
  const decide = member(step.part, "decide");
  const outcomes = outcomesOf(decide);
  const expect = member(decide, "expect");
  const steps = namedStep(step);
  const found: Finding[] = [];
  if (textOf(expect) !== null && !outcomes.includes(String(expect.value))) {
    const said = message("decision/expected-not-there", { outcome: String(expect.value) });
    found.push(errorAt(expect, "decision/no-such-outcome", said, { steps }));
  }
  if (new Set(outcomes).size < outcomes.length) {
    const said = message("decision/outcome-twice");
    found.push(errorAt(member(decide, "outcomes"), "file/doubled-id", said, { steps }));
  }
  return found;
}

/**
 * The errors in the `when` of a step ([PRO4]): a decision that does not exist or is made only later or in another
 * contingency, or an outcome that the decision does not have.
 */
export function whenFindings(
  step: RawStep,
  decisions: ReadonlyMap<string, RawDecision>,
  resolve: Resolve,
): Finding[] {
  const steps = namedStep(step);
  return members(member(step.part, "when")).flatMap(([decision, outcome]) => {
    const made = decisions.get(decision);
    if (!made) return resolve("decision", { value: decision, path: outcome.path }, step);
    const isLater = made.step.index >= step.index;
    const isElsewhere = made.step.contingency !== null && made.step.contingency !== step.contingency;
    if (isLater || isElsewhere)
      return [errorAt(outcome, "decision/later", message("decision/later", { decision }), { steps })];
    if (textOf(outcome) === null || made.outcomes.includes(String(outcome.value))) return [];
    const said = message("decision/no-such-outcome", { outcome: String(outcome.value), decision });
    return [errorAt(outcome, "decision/no-such-outcome", said, { steps })];
  });
}
