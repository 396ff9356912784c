import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Draft } from "../log/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { DecisionId, Instant, StepId } from "../units/index.ts";
import { between } from "../units/index.ts";
import { askedAgainFor } from "./asked-again.ts";
import { undecided } from "./gate.ts";
import type { Ledger } from "./ledger.ts";
import { isComplete, progressOf } from "./ledger.ts";

/** A step that was ticked on paper. */
export interface PaperMark {
  readonly step: StepId;
  /** When it was done; `null` when no time was written that could be read. */
  readonly at: Instant | null;
  /** The decision that the step makes, and how it came out; `null` when it makes none or nobody said. */
  readonly decided: { readonly decision: DecisionId; readonly outcome: string } | null;
}

/** A mark with its time, ready to be entered. */
export type TimedMark = PaperMark & { readonly at: Instant };

/** What becomes of ticked steps: all of them in the order of their entries, or none and why, by step. */
export type PaperMarks =
  | { readonly kind: "taken"; readonly marks: readonly TimedMark[] }
  | { readonly kind: "refused"; readonly why: ReadonlyMap<StepId, Message> };

/** The steps that can be entered from paper, in reading order: open, performed, and hanging on no open decision. */
export function paperSteps(ledger: Ledger): readonly OutlineStep[] {
  const { active } = ledger.network.activity;
  return ledger.inForce.outline.steps.filter(
    (entry) => active[entry.index] && !isComplete(ledger, entry.step.id) && undecided(ledger, entry) === null,
  );
}

/**
 * Checks what was ticked on paper against the walk, and puts it in order of time ([PAP1]). Refused is a time that is
 * missing, before PET 0, after `now`, or before that of a step it follows, and a step that follows one which is neither
 * done nor ticked. One refusal keeps all of them out, since the others may depend on it.
 */
export function paperMarks(ledger: Ledger, marks: readonly PaperMark[], now: Instant): PaperMarks {
  const why = new Map<StepId, Message>();
  const timed: TimedMark[] = [];
  const check = refusalOf(ledger, marks, now);
  for (const mark of marks) {
    const refusal = check(mark);
    if (refusal !== null) why.set(mark.step, refusal);
    else if (mark.at !== null) timed.push({ ...mark, at: mark.at });
  }
  if (why.size > 0) return { kind: "refused", why };
  const rank = new Map(ledger.network.order.map((index, place) => [index, place]));
  const rankOf = ({ step }: PaperMark) => rank.get(ledger.inForce.outline.step(step)?.index ?? -1) ?? 0;
  return { kind: "taken", marks: timed.sort((a, b) => a.at - b.at || rankOf(a) - rankOf(b)) };
}

/**
 * The entries of marks, in their order: the outcome of a decision before the step that makes it. `ownTime` converts a time
 * of the walk's clock to that of the device which enters them for `actor`.
 */
export function paperDrafts(
  marks: readonly TimedMark[],
  ownTime: (at: Instant) => Instant,
  actor: string,
): readonly Draft[] {
  return marks.flatMap(({ step, at: then, decided }): Draft[] => {
    const at = ownTime(then);
    const done: Draft = { name: "step.done", data: { step }, at, actor };
    return decided ? [{ name: "decision.taken", data: decided, at, actor }, done] : [done];
  });
}

/**
 * The steps that must be complete before a step: those before it in its lanes, those it names, and the one that asks
 * again a decision on which it hangs.
 */
function predecessorsOf(ledger: Ledger, entry: OutlineStep): readonly OutlineStep[] {
  const { network } = ledger;
  const { index, performers } = entry;
  const before = new Set((network.before[index] ?? []).map(({ from }) => from));
  for (const lane of performers) {
    for (const one of network.lanes[lane] ?? []) {
      if (one === index) break;
      before.add(one);
    }
  }
  const asked = askedAgainFor(ledger, entry);
  const asking = asked === null ? undefined : ledger.inForce.outline.decision(asked)?.madeBy.index;
  if (asking !== undefined) before.add(asking);
  return [...before].sort((a, b) => a - b).flatMap((from) => network.outline.steps[from] ?? []);
}

function refusalOf(ledger: Ledger, marks: readonly PaperMark[], now: Instant) {
  const petZero = ledger.petZero ?? ledger.opened.at;
  const byStep = new Map(marks.map((mark) => [mark.step, mark]));
  const enterable = new Map(paperSteps(ledger).map((entry) => [entry.step.id, entry]));
  const turned = stepsBehindTurns(ledger, byStep);
  return (mark: PaperMark): Message | null => {
    const entry = enterable.get(mark.step);
    if (!entry) return message("paper/not-open");
    const { at } = mark;
    if (at === null) return message("paper/no-time");
    if (at < petZero) return message("paper/before-zero", { zero: petZero });
    if (at > now) return message("paper/in-future", { now: between(petZero, now), utc: now });
    if (entry.step.decide && !entry.step.decide.outcomes.includes(mark.decided?.outcome ?? ""))
      return message("paper/needs-outcome");
    const decider = turned.get(mark.step);
    if (decider) return message("paper/hangs-on", { number: decider.number, step: decider.step.do });
    for (const before of predecessorsOf(ledger, entry)) {
      const said = { number: before.number, step: before.step.do };
      const { status, finish } = progressOf(ledger, before.step.id);
      // A step may be skipped long after its turn, so that the time of a skip forbids nothing.
      const done = status === "done" ? finish : (byStep.get(before.step.id)?.at ?? null);
      if (status === "open" && !byStep.has(before.step.id)) return message("paper/after-open", said);
      if (status !== "skipped" && done !== null && done > at)
        return message("paper/after-later", { ...said, at: between(petZero, done) });
    }
    return null;
  };
}

/**
 * The ticked steps that follow a ticked decision which did not come out as expected, each with the step that made it.
 * Which steps are performed, and in what order, is known only once that decision is entered.
 */
function stepsBehindTurns(
  ledger: Ledger,
  byStep: ReadonlyMap<StepId, PaperMark>,
): ReadonlyMap<StepId, OutlineStep> {
  const behind = new Map<StepId, OutlineStep>();
  const isTurn = ({ step: { id, decide } }: OutlineStep) => {
    const outcome = byStep.get(id)?.decided?.outcome ?? null;
    return decide && outcome !== null && outcome !== (ledger.outcomes.get(decide.id) ?? decide.expect);
  };
  for (const index of ledger.network.order) {
    const entry = ledger.network.outline.steps[index];
    if (!entry || !byStep.has(entry.step.id)) continue;
    for (const before of predecessorsOf(ledger, entry)) {
      const decider = isTurn(before) ? before : behind.get(before.step.id);
      if (decider) behind.set(entry.step.id, decider);
    }
  }
  return behind;
}
