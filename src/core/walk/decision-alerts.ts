import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { CrewId, DecisionId, Duration } from "../units/index.ts";
import { between } from "../units/index.ts";
import type { RaisedAlert } from "./alert.ts";
import { alertKey } from "./alert.ts";
import { isAskedAgain } from "./asked-again.ts";
import type { Ledger, TakenDecision } from "./ledger.ts";
import { progressOf } from "./ledger.ts";
import { isContrary } from "./settled-decision.ts";

/**
 * Returns an alert for each decision that was taken otherwise, with what was done on the branch that was left, and one for
 * each whose step is open again while its outcome is still in force ([WLK5]). Each further outcome and each further
 * reopening is an alert of its own.
 */
export function decisionAlerts(ledger: Ledger): readonly RaisedAlert[] {
  const ids = new Set(ledger.decisions.map(({ decision }) => decision));
  return [...ids].flatMap((id) => [...takenOtherwise(ledger, id), ...askedAgain(ledger, id)]);
}

const takingsOf = (ledger: Ledger, id: DecisionId): readonly TakenDecision[] =>
  ledger.decisions.filter(({ decision }) => decision === id);

function takenOtherwise(ledger: Ledger, id: DecisionId): readonly RaisedAlert[] {
  const { outline } = ledger.inForce;
  const takings = takingsOf(ledger, id);
  const last = takings.at(-1);
  const made = outline.decision(id);
  if (!last || last.was === null || !made) return [];
  if (ledger.settled.get(id)?.takings === takings.length) return [];
  const { was, outcome } = last;
  const before = takings.at(-2);
  const done = outline.steps.flatMap(({ number, step }) =>
    step.when?.[id] === was && progressOf(ledger, step.id).status === "done" ? [`${number} ${step.do}`] : [],
  );
  const told = { ask: made.decision.ask, outcome, was };
  return [
    {
      ...about(ledger, id),
      alert: alertKey("decision", id, takings.length),
      since: inPet(ledger, last.at),
      text:
        before && isContrary(ledger, id)
          ? contrary(ledger, { ...told, steps: done }, [before, last])
          : done.length > 0
            ? message("alert/decided-otherwise-after", { ...told, steps: done })
            : message("alert/decided-otherwise", told),
    },
  ];
}

/** Two devices decided differently, perhaps apart: both are named, so that whoever leads can ask them. */
function contrary(
  { inForce: { outline } }: Ledger,
  { steps, ...told }: { ask: string; outcome: string; was: string; steps: readonly string[] },
  [before, last]: readonly [TakenDecision, TakenDecision],
): Message {
  const named = ({ actor, device }: TakenDecision) =>
    actor === null ? device : (outline.crewMember(actor as CrewId)?.call ?? actor);
  const both = { ...told, who: named(last), other: named(before) };
  return steps.length > 0
    ? message("alert/decided-contrary-after", { ...both, steps })
    : message("alert/decided-contrary", both);
}

function askedAgain(ledger: Ledger, id: DecisionId): readonly RaisedAlert[] {
  const made = ledger.inForce.outline.decision(id);
  const outcome = ledger.outcomes.get(id);
  if (!made || outcome === undefined || !isAskedAgain(ledger, id)) return [];
  const { reopened } = progressOf(ledger, made.madeBy.step.id);
  const last = reopened.at(-1);
  if (!last) return [];
  return [
    {
      ...about(ledger, id),
      crew: concernedBy(ledger, id),
      alert: alertKey("decision", id, "again", reopened.length),
      since: inPet(ledger, last.at),
      text: message("alert/asked-again", { ask: made.decision.ask, outcome }),
    },
  ];
}

/** Who takes a decision, and whoever has a step of the branch in force before them. */
function concernedBy(ledger: Ledger, id: DecisionId): readonly CrewId[] {
  const { outline } = ledger.inForce;
  const outcome = ledger.outcomes.get(id);
  const branch = outline.steps.filter(
    ({ step }) => step.when?.[id] === outcome && progressOf(ledger, step.id).status === "open",
  );
  const decider = outline.decision(id)?.madeBy.step.by ?? [];
  return [...new Set([...decider, ...branch.flatMap(({ step }) => step.by)])];
}

/** What every alert on a decision has in common: it concerns everybody, and leads to the step that decides. */
function about({ inForce: { outline } }: Ledger, id: DecisionId) {
  const step = outline.decision(id)?.madeBy.step.id ?? null;
  return { level: "look-soon", about: step, crew: [], step } as const;
}

const inPet = ({ petZero, opened }: Ledger, at: TakenDecision["at"]): Duration =>
  between(petZero ?? opened.at, at);
