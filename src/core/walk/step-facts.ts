import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { custodyAtStart, isWithin, movedInTurn } from "../custody/index.ts";
import type { Entry, Fact } from "../log/index.ts";
import { deviceOf } from "../log/index.ts";
import type { OutlineStep, Step } from "../procedure/index.ts";
import type { Instant, StepId } from "../units/index.ts";
import type { Applied } from "./applied.ts";
import { applied, ignored } from "./applied.ts";
import { askedAgainFor } from "./asked-again.ts";
import { leftBy } from "./branch-left.ts";
import type { Deviation } from "./deviation.ts";
import { earlyDeviation, earlyMarks } from "./early-mark.ts";
import type { EarliestStart } from "./gate.ts";
import { blockersOf, earliestStart, readyAt, undecided } from "./gate.ts";
import { GrowingList } from "./growing-list.ts";
import { lanesAdvanced, lanesRewound } from "./lane-progress.ts";
import type { Ledger, StepProgress } from "./ledger.ts";
import { progressOf } from "./ledger.ts";
import { noStep } from "./no-step.ts";
import { outOfRangeText } from "./record-limits.ts";
import { skipReason } from "./skip-reason.ts";
import { withReading } from "./supply-readings.ts";

type FactNamed<Name extends Fact["name"]> = Extract<Fact, { name: Name }>;

/**
 * Returns the step that a fact names when it can be worked on under the decisions so far; otherwise the reason why it
 * cannot.
 */
function activeStep(
  ledger: Ledger,
  id: StepId,
): { entry: OutlineStep; problem: null } | { entry: null; problem: Message } {
  const entry = ledger.inForce.outline.step(id);
  if (!entry) return { entry: null, problem: noStep(ledger, id) };
  const open = undecided(ledger, entry);
  if (open !== null && entry.step.when)
    return { entry: null, problem: message("walk/undecided", { decision: open }) };
  if (!ledger.network.activity.active[entry.index] && leftBy(ledger, entry) === null) {
    return { entry: null, problem: message("walk/not-performed", { step: id }) };
  }
  return { entry, problem: null };
}

function changed(ledger: Ledger, step: StepId, change: Partial<StepProgress>): Ledger["steps"] {
  return ledger.steps.with(step, { ...progressOf(ledger, step), ...change });
}

function withStep(ledger: Ledger, step: StepId, change: Partial<StepProgress>): Ledger {
  return { ...ledger, steps: changed(ledger, step, change) };
}

const earlier = (a: Instant, b: Instant): Instant => (a < b ? a : b);

/**
 * Returns when a step that was completed at `finish` started: at its entered start, or else as soon as it was allowed
 * to start (`allowed`, `null` when it was not), but never after `finish`.
 */
function startBy(
  ledger: Ledger,
  entry: OutlineStep,
  allowed: EarliestStart | null,
  finish: Instant,
): Instant {
  const start = progressOf(ledger, entry.step.id).saidStart ?? allowed?.at;
  if (start) return earlier(start, finish);
  // The step was out of order, its branch was left or its windows are past: assume the performers worked on it since they became free.
  const free = entry.performers.flatMap((lane) => ledger.lanes[lane]?.free ?? []);
  const latest = free.reduce((most, next) => (next > most ? next : most), ledger.petZero ?? finish);
  return earlier(latest, finish);
}

/** `step.started`: records when the step started. */
export function stepStarted(ledger: Ledger, entry: Entry, fact: FactNamed<"step.started">): Applied {
  const active = activeStep(ledger, fact.step);
  if (!active.entry) return ignored(active.problem);
  if (progressOf(ledger, fact.step).status !== "open")
    return ignored(message("walk/already-complete", { step: fact.step }));
  const [blocker] = leftBy(ledger, active.entry) === null ? blockersOf(ledger, active.entry) : [];
  if (blocker) return ignored(message("walk/cannot-have-started", { step: fact.step, before: blocker.step }));
  return applied(withStep(ledger, fact.step, { saidStart: entry.at }));
}

/** `step.done`: marks the step done and moves its items ([WLK2]), also on a branch that was left ([WLK5]). */
export function stepDone(ledger: Ledger, entry: Entry, fact: FactNamed<"step.done">): Applied {
  const active = activeStep(ledger, fact.step);
  if (!active.entry) return ignored(active.problem);
  const { step } = active.entry;
  const before = progressOf(ledger, step.id);
  if (before.status === "done") return doneAgain(ledger, entry, step.id, before);
  if (before.status !== "open") return ignored(message(`walk/already-${before.status}`, { step: fact.step }));
  // Nothing is known of the order on a branch that was left meanwhile: who did the step could not know that it was.
  const isLeft = leftBy(ledger, active.entry) !== null;
  const [blocker] = isLeft ? [] : blockersOf(ledger, active.entry);
  const asked = blocker ? askingStep(ledger, active.entry) : null;
  if (blocker && !fact.outOfOrder)
    return ignored(
      asked === null
        ? message("walk/comes-after", { step: fact.step, before: blocker.step })
        : message("walk/asked-again-first", { step: fact.step, before: asked }),
    );
  const isFree = !blocker && !isLeft;
  const allowed = isFree ? earliestStart(ledger, active.entry, readyAt(ledger, active.entry)) : null;
  const early = isFree ? earlyMarks(ledger, active.entry, allowed, entry.at) : [];
  const orderReason = blocker ? (fact.reason?.trim() ?? "") : "";
  const steps = changed(ledger, step.id, {
    status: "done",
    start: startBy(ledger, active.entry, allowed, entry.at),
    finish: entry.at,
    outOfOrder: blocker !== undefined,
    orderReason,
    early,
    completedBy: { source: entry.wire.source, id: entry.wire.id, actor: entry.wire.actor ?? null },
  });
  const { custody, moves } = movedByStep(ledger, step, entry.at);
  const found = blocker
    ? [outOfOrder(step.id, asked ?? blocker.step, orderReason, entry.at, asked !== null)]
    : early.map((one) => earlyDeviation(step.id, one, entry.at));
  const deviations = found.length > 0 ? [...ledger.deviations, ...found] : ledger.deviations;
  return applied({ ...ledger, steps, lanes: lanesAdvanced(ledger, steps), custody, moves, deviations });
}

/** Returns the open step that asks again a decision on which a step hangs; `null` when none does. */
function askingStep(ledger: Ledger, entry: OutlineStep): StepId | null {
  const decision = askedAgainFor(ledger, entry);
  return decision && (ledger.inForce.outline.decision(decision)?.madeBy.step.id ?? null);
}

function outOfOrder(
  step: StepId,
  before: StepId,
  reason: string,
  at: Instant,
  isAskedAgain: boolean,
): Deviation {
  const text = reason
    ? message(isAskedAgain ? "walk/done-while-asked-again-because" : "walk/done-before-because", {
        step: before,
        reason,
      })
    : message(isAskedAgain ? "walk/done-while-asked-again" : "walk/done-before", { step: before });
  return { kind: "out-of-order", step, record: null, text, at };
}

/**
 * Returns the custody and the list of moves after a step has moved its items. A move that would put an item inside
 * itself is left out.
 */
function movedByStep(ledger: Ledger, step: Step, at: Instant): Pick<Ledger, "custody" | "moves"> {
  if (step.moves.length === 0) return ledger;
  const custody = new Map(ledger.custody);
  let { moves } = ledger;
  for (const { item, to } of step.moves) {
    if ("item" in to && isWithin(custody, to.item, item)) continue;
    custody.set(item, to);
    moves = moves.and({ at, item, to, step: step.id, actor: null, reason: "" });
  }
  return { custody, moves };
}

/**
 * Handles a second `step.done` for a step that is done. From another device it confirms the mark that counts and
 * changes nothing else; from the same device it is ignored.
 */
function doneAgain(ledger: Ledger, entry: Entry, id: StepId, before: StepProgress): Applied {
  const first = before.completedBy && deviceOf(before.completedBy.source);
  const device = deviceOf(entry.wire.source);
  if (device === first || before.alsoDone.some(({ source }) => deviceOf(source) === device)) {
    return ignored(message("walk/already-done", { step: id }));
  }
  const mark = { at: entry.at, actor: entry.wire.actor ?? null, source: entry.wire.source };
  return {
    ledger: withStep(ledger, id, { alsoDone: [...before.alsoDone, mark] }),
    ignored: message("walk/done-confirmed", { step: id }),
  };
}

/**
 * `step.skipped`: the step is complete at the time of the skip. This is a deviation unless the step is a get-ahead
 * ([PRO9]).
 */
export function stepSkipped(ledger: Ledger, entry: Entry, fact: FactNamed<"step.skipped">): Applied {
  const active = activeStep(ledger, fact.step);
  if (!active.entry) return ignored(active.problem);
  // A branch that was left has nothing more to be skipped.
  if (leftBy(ledger, active.entry) !== null)
    return ignored(message("walk/not-performed", { step: fact.step }));
  const { step, getAhead } = active.entry;
  const { status } = progressOf(ledger, step.id);
  if (status !== "open") return ignored(message(`walk/already-${status}`, { step: fact.step }));
  const steps = changed(ledger, step.id, {
    status: "skipped",
    start: entry.at,
    finish: entry.at,
    skipReason: fact.reason,
    leftOut: fact.leftOut ?? null,
    completedBy: { source: entry.wire.source, id: entry.wire.id, actor: entry.wire.actor ?? null },
  });
  const reason = skipReason(progressOf({ steps }, step.id));
  const text = reason ? message("walk/skipped-because", { reason }) : message("walk/skipped");
  const deviations = getAhead
    ? ledger.deviations
    : [...ledger.deviations, { kind: "skipped" as const, step: step.id, record: null, text, at: entry.at }];
  return applied({ ...ledger, steps, lanes: lanesAdvanced(ledger, steps), deviations });
}

/** The kinds of deviation that reopening a step removes. */
const UNDONE: ReadonlySet<Deviation["kind"]> = new Set<Deviation["kind"]>([
  "skipped",
  "out-of-order",
  "lag-not-over",
  "time-not-reached",
  "window-not-over",
  "hold-not-over",
]);

/**
 * `step.reopened`: the step is open again. A step that was done keeps its start; items that it moved go back to where
 * they were.
 */
export function stepReopened(ledger: Ledger, entry: Entry, fact: FactNamed<"step.reopened">): Applied {
  const active = activeStep(ledger, fact.step);
  if (!active.entry) return ignored(active.problem);
  const before = progressOf(ledger, fact.step);
  if (before.status === "open") return ignored(message("walk/step-open", { step: fact.step }));
  const steps = changed(ledger, fact.step, {
    status: "open",
    saidStart: before.status === "done" ? before.start : entry.at,
    start: null,
    finish: null,
    outOfOrder: false,
    orderReason: "",
    early: [],
    skipReason: "",
    leftOut: null,
    reopened: [...before.reopened, { at: entry.at, reason: fact.reason }],
    // Reopening undoes the confirmation and the counting but keeps the records that were taken.
    confirmed: null,
    counted: [],
    completedBy: null,
    alsoDone: [],
  });
  const { moves, custody } = withoutMovesOf(ledger, active.entry);
  const deviations = ledger.deviations.filter((one) => one.step !== fact.step || !UNDONE.has(one.kind));
  const lanes = lanesRewound(ledger, steps);
  return applied({ ...ledger, moves, custody, steps, lanes, deviations });
}

/** Returns the moves and the custody as if the step had not moved anything and only the other moves had been made. */
function withoutMovesOf(
  { inForce, moves, custody }: Ledger,
  { step: { id, moves: own } }: OutlineStep,
): Pick<Ledger, "moves" | "custody"> {
  if (own.length === 0) return { moves, custody };
  const others = moves.toArray().filter(({ step }) => step !== id);
  return {
    moves: GrowingList.of(others),
    custody: movedInTurn(custodyAtStart(inForce.outline.procedure), others),
  };
}

/**
 * `record.taken`: stores the value, and flags it when it is outside the closed range min..max ([WLK7]). A value within
 * the range makes earlier ones of the same record good ([OFF2]).
 */
export function recordTaken(ledger: Ledger, entry: Entry, fact: FactNamed<"record.taken">): Applied {
  const active = activeStep(ledger, fact.step);
  if (!active.entry) return ignored(active.problem);
  const { step } = active.entry;
  const record = step.records.find(({ id }) => id === fact.record);
  if (!record) return ignored(message("walk/no-record", { step: fact.step, record: fact.record }));
  const text = outOfRangeText(record, fact.value);
  const taken = {
    record: fact.record,
    value: fact.value,
    at: entry.at,
    actor: entry.wire.actor ?? null,
    outOfRange: text !== null,
  };
  const next = {
    ...withStep(ledger, step.id, { records: [...progressOf(ledger, step.id).records, taken] }),
    readings: withReading(ledger, step, record, taken),
  };
  if (text === null) return applied({ ...next, deviations: corrected(next.deviations, step.id, fact) });
  const deviation: Deviation = {
    kind: "record-out-of-range",
    step: step.id,
    record: fact.record,
    text,
    at: entry.at,
  };
  return applied({ ...next, deviations: [...next.deviations, deviation] });
}

/** Returns the deviations after a record of a step was taken within its limits. */
function corrected(
  deviations: Ledger["deviations"],
  step: StepId,
  { record, value }: FactNamed<"record.taken">,
): Ledger["deviations"] {
  const isOpen = (one: Deviation) =>
    one.kind === "record-out-of-range" && one.step === step && one.record === record;
  if (!deviations.some(isOpen)) return deviations;
  return deviations.map((one) =>
    isOpen(one)
      ? {
          ...one,
          kind: "record-corrected" as const,
          text: message("walk/corrected", { was: one.text, value }),
        }
      : one,
  );
}

/** `confirm.given`: stores the confirmation of a step that asks for one. */
export function confirmGiven(ledger: Ledger, entry: Entry, fact: FactNamed<"confirm.given">): Applied {
  const active = activeStep(ledger, fact.step);
  if (!active.entry) return ignored(active.problem);
  const { step } = active.entry;
  if (!step.confirm) return ignored(message("walk/asks-no-confirmation", { step: fact.step }));
  if (progressOf(ledger, step.id).confirmed)
    return ignored(message("walk/already-confirmed", { step: fact.step }));
  return applied(withStep(ledger, step.id, { confirmed: { at: entry.at, actor: entry.wire.actor ?? null } }));
}

/** `check.counted`: stores that something of the list that a step counts off was counted ([OFF2]). */
export function checkCounted(ledger: Ledger, fact: FactNamed<"check.counted">): Applied {
  const active = activeStep(ledger, fact.step);
  if (!active.entry) return ignored(active.problem);
  const { step } = active.entry;
  if (fact.check >= step.check.length) return ignored(message("walk/no-check", { step: fact.step }));
  const { counted } = progressOf(ledger, step.id);
  if (counted.includes(fact.check)) return ignored(message("walk/already-counted", { step: fact.step }));
  return applied(withStep(ledger, step.id, { counted: [...counted, fact.check] }));
}
