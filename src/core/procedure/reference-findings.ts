import { afterFindings } from "./after-findings.ts";
import { decideFindings, rawDecisions, whenFindings } from "./decision-findings.ts";
import { declaredIds, doubledIdFindings } from "./declared-ids.ts";
import type { Finding } from "./finding.ts";
import { languageFindings } from "./language-findings.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member } from "./raw-file.ts";
import { rawSteps } from "./raw-step.ts";
import { resolverOf } from "./resolve-reference.ts";
import { rawStates, stateFindings, stateValueFindings } from "./state-references.ts";
import { stepFindings } from "./step-findings.ts";
import { thingFindings } from "./thing-findings.ts";

/**
 * Every error in a file that its schema cannot express: ids used twice, references that do not resolve ([PRO10]),
 * decisions used before they are made ([PRO4]), values that a state does not have ([PRO13]), durations out of order ([PRO6]), bags inside themselves ([PRO8]),
 * steps that depend on a get-ahead ([PRO9]), and languages that are none ([WRD4]). It works on a file of any shape, so that all errors are reported together.
 */
export function referenceFindings(file: unknown): Finding[] {
  const root: RawPart = { value: file, path: [] };
  const steps = rawSteps(root);
  const resolve = resolverOf(root, declaredIds(root, steps));
  const decisions = rawDecisions(steps);
  const states = rawStates(root);
  const byId = new Map(steps.flatMap((step) => (step.id === null ? [] : [[step.id, step] as const])));
  return [
    ...doubledIdFindings(root, steps),
    ...thingFindings(root, resolve),
    ...languageFindings(root),
    ...stateFindings(root, states),
    ...entries(member(root, "routes")).flatMap((route) =>
      stateValueFindings(member(route, "needs"), states, resolve),
    ),
    ...steps.flatMap(decideFindings),
    ...steps.flatMap((step) => [
      ...stepFindings(step, resolve),
      ...afterFindings(step, byId, resolve),
      ...whenFindings(step, decisions, resolve),
      ...["needs", "sets"].flatMap((key) =>
        stateValueFindings(member(step.part, key), states, resolve, step),
      ),
    ]),
  ];
}
