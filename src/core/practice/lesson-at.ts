import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { OutlineStep, StepRecord } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";
import type { Ledger, StepProgress, TakenRecord, WalkState } from "../walk/index.ts";
import { progressOf } from "../walk/index.ts";
import { broughtIn } from "./brought-in.ts";
import { outsideValue, withinValue } from "./tried-values.ts";

/** What the guide beside a practice walk says at a moment ([PRA2]). */
export interface Lesson {
  /** What to do next, in a sentence or two. */
  readonly next: Message;
  /** What is to be known of something that was done otherwise than asked; `null` when there is nothing. */
  readonly aside: Message | null;
  /** The step that it is about; `null` when it is about the whole walk. */
  readonly step: StepId | null;
}

/** What the guide says of a practice walk at the instant of its state. It depends on nothing else ([PRA2]). */
export function lessonAt(state: WalkState): Lesson {
  const { ledger, phase } = state;
  const whole = (next: Message, aside: Message | null = null): Lesson => ({ next, aside, step: null });
  switch (phase) {
    case "prepared":
      return whole(message("practice/start"));
    case "held":
      return whole(message("practice/held"));
    case "closed":
      return whole(message(isAllComplete(ledger) ? "practice/closed" : "practice/closed-early"));
    case "running": {
      const aside = asideOf(ledger);
      const lesson = lessonOnValue(state) ?? lessonOnStep(state);
      if (lesson) return { ...lesson, aside: lesson.aside ?? aside };
      return whole(message(isAllComplete(ledger) ? "practice/close" : "practice/nobody-works"), aside);
    }
  }
}

/** The steps that are to be performed, as the walk stands. */
const performed = ({ inForce, network }: Ledger): readonly OutlineStep[] =>
  inForce.outline.steps.filter(({ index }) => network.activity.active[index]);

const isAllComplete = (ledger: Ledger): boolean =>
  performed(ledger).every(({ step }) => progressOf(ledger, step.id).status !== "open");

const callsOf = ({ inForce }: Ledger, { performers }: OutlineStep): readonly string[] =>
  performers.flatMap((lane) => inForce.outline.crew[lane]?.call ?? []);

/** The first step in work, in reading order; `null` when nobody works. */
function stepInWork({ ledger, lanes }: WalkState): OutlineStep | null {
  const working = new Set(lanes.flatMap(({ status, step }) => (status === "working" && step ? [step] : [])));
  return performed(ledger).find(({ step }) => working.has(step.id)) ?? null;
}

/** The step in work and how to go on with it, for a lesson that may be left as well. */
function goingOn(state: WalkState): Message {
  const entry = stepInWork(state);
  if (!entry) return message("practice/go-on-anyhow");
  const { number } = entry;
  return message("practice/or-go-on", { step: number, crew: callsOf(state.ledger, entry) });
}

/** The values that count of a step: the last one of each record. */
const lastOf = (record: StepRecord, { records }: StepProgress): TakenRecord | null =>
  records.findLast((taken) => taken.record === record.id) ?? null;

/**
 * What a value asks for that was entered last or is owed: a contingency when it lies outside its limits. Nothing once a
 * step behind it is complete, since the walk has gone on without.
 */
function lessonOnValue(state: WalkState): Lesson | null {
  const { ledger } = state;
  const steps = performed(ledger);
  const place = steps.findLastIndex(({ step }) => progressOf(ledger, step.id).status !== "open");
  // A value may be entered before its step is marked done, and is spoken of from then on.
  const begun = steps.findLastIndex(({ step }) => progressOf(ledger, step.id).records.length > 0);
  const entry = steps[Math.max(place, begun)];
  if (!entry) return null;
  const progress = progressOf(ledger, entry.step.id);
  const [record] = entry.step.records;
  if (!record || progress.status === "skipped") return null;
  const taken = lastOf(record, progress);
  const about = { step: entry.step.id, aside: null };
  const { label = record.id } = record;
  if (!taken) return { ...about, next: message("practice/owed", { step: entry.number, record: label }) };
  const [contingency] = ledger.inForce.outline.procedure.contingencies;
  if (taken.outOfRange && contingency)
    return {
      ...about,
      next: message("practice/outside", { contingency: contingency.title, else: goingOn(state) }),
    };
  const other = outsideValue(record);
  if (taken.outOfRange || other === null || hasSeenOutside(ledger)) return null;
  const value = { value: other, unit: record.unit };
  const next = { record: label, value, else: goingOn(state) };
  return { ...about, next: message("practice/within", next) };
}

const hasSeenOutside = (ledger: Ledger): boolean =>
  performed(ledger).some(({ step }) =>
    progressOf(ledger, step.id).records.some(({ outOfRange }) => outOfRange),
  );

/** What the first step in work asks for; `null` when nobody works. */
function lessonOnStep(state: WalkState): Lesson | null {
  const { ledger } = state;
  const entry = stepInWork(state);
  if (!entry) return null;
  const { step, number } = entry;
  const crew = callsOf(ledger, entry);
  const progress = progressOf(ledger, step.id);
  const about = { step: step.id, aside: null };
  const [record] = step.records;
  if (record && lastOf(record, progress) === null) {
    const outside = hasSeenOutside(ledger) ? null : outsideValue(record);
    const asked = { step: number, record: record.label ?? record.id };
    const { unit } = record;
    return {
      ...about,
      next:
        outside === null
          ? message("practice/value", { ...asked, value: { value: withinValue(record), unit } })
          : message("practice/value-outside", { ...asked, value: { value: outside, unit } }),
    };
  }
  if (step.confirm && !progress.confirmed && step.by.length > 1)
    return { ...about, next: message("practice/joint-confirm", { step: number, crew }) };
  if (step.by.length > 1) return { ...about, next: message("practice/joint", { step: number, crew }) };
  if (isOfContingency(ledger, entry))
    return { ...about, next: message("practice/brought", { step: number, crew, action: step.do }) };
  const waits = waitAtJointStep(state);
  if (waits) return { ...about, next: message("practice/waits", { ...waits, step: number, crew }) };
  const isFirst = performed(ledger).every((one) => progressOf(ledger, one.step.id).status === "open");
  return {
    ...about,
    next: isFirst
      ? message("practice/first", { step: number, crew })
      : message("practice/go-on", { step: number, crew, action: step.do }),
  };
}

/** Who has reached a joint step and waits there, and for whom; `null` when nobody does. */
function waitAtJointStep({ ledger, lanes }: WalkState) {
  const { outline } = ledger.inForce;
  for (const { status, step, crew, waitingOn } of lanes) {
    const entry = step === null ? null : outline.step(step);
    if (status !== "waiting" || !entry || entry.step.by.length < 2) continue;
    const missing = waitingOn.find(({ kind }) => kind === "crew");
    if (missing?.kind !== "crew") continue;
    const call = (id: typeof crew) => outline.crewMember(id)?.call ?? id;
    return { waiting: call(crew), missing: call(missing.crew), joint: entry.number };
  }
  return null;
}

const isOfContingency = (ledger: Ledger, { task }: OutlineStep): boolean =>
  broughtIn(ledger).some(({ tasks }) => tasks.some(({ id }) => id === task.id));

/** What is to be known of the step that was completed last, or of one that is open again. */
function asideOf(ledger: Ledger): Message | null {
  const steps = performed(ledger);
  const again = steps.find(({ step }) => {
    const { status, reopened } = progressOf(ledger, step.id);
    return status === "open" && reopened.length > 0;
  });
  if (again) return message("practice/open-again", { step: again.number });
  const last = steps.reduce<{ entry: OutlineStep; progress: StepProgress } | null>((latest, entry) => {
    const progress = progressOf(ledger, entry.step.id);
    if (progress.finish === null) return latest;
    return latest?.progress.finish != null && latest.progress.finish > progress.finish
      ? latest
      : { entry, progress };
  }, null);
  if (last?.progress.status === "skipped") return message("practice/skipped", { step: last.entry.number });
  if (last?.progress.outOfOrder) return message("practice/out-of-order", { step: last.entry.number });
  return null;
}
