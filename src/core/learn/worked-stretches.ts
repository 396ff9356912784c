import type { CourseStep, Stretch } from "../course/index.ts";
import { keyOf } from "../log/index.ts";
import type { Duration, StepId } from "../units/index.ts";
import { between } from "../units/index.ts";
import { progressOf } from "../walk/index.ts";
import type { WalkRecord } from "./walk-record.ts";

/** How long a step was worked on. */
export interface WorkedTime {
  readonly time: Duration;
  readonly isReopened: boolean;
  readonly isHeld: boolean;
}

/**
 * Returns how long a step was worked on: from its start until it was done, and from each reopening until it was done again, less
 * the holds in between.
 */
export function workedStretches(record: WalkRecord, flown: CourseStep): WorkedTime {
  const { ledger } = record;
  const isReopened = progressOf(ledger, flown.step).reopened.length > 0;
  const stretches = isReopened ? stretchesOf(record, flown) : [startedStretch(record, flown)];
  const holds = ledger.holds.map(({ from, until }) => ({
    start: between(record.began, from),
    finish: until === null ? flown.finish : between(record.began, until),
  }));
  const held = stretches.reduce(
    (sum, one) => sum + holds.reduce((so, hold) => so + overlap(one, hold), 0),
    0,
  );
  const whole = stretches.reduce((sum, { start, finish }) => sum + (finish - start), 0);
  return { time: (whole - held) as Duration, isReopened, isHeld: held > 0 };
}

const overlap = (a: Stretch, b: Stretch): number =>
  Math.max(0, Math.min(a.finish, b.finish) - Math.max(a.start, b.start));

/** A skipped step starts and finishes with the skip: it was worked on from when it was said to begin. */
function startedStretch({ ledger, began }: WalkRecord, { step, start, finish, stage }: CourseStep): Stretch {
  const { saidStart } = progressOf(ledger, step);
  return stage === "skipped" && saidStart !== null
    ? { start: between(began, saidStart), finish }
    : { start, finish };
}

/** The stretches of a step that was opened again, from the entries that count. */
function stretchesOf({ folded, began }: WalkRecord, flown: CourseStep): readonly Stretch[] {
  const idle = new Set(folded.ignored.map((one) => keyOf({ wire: one })));
  const stretches: Stretch[] = [];
  let since: Duration | null = flown.start;
  for (const entry of folded.entries) {
    const { fact } = entry.read;
    if (!fact || !isMarkOf(fact, flown.step)) continue;
    const key = keyOf(entry);
    if (idle.has(key) || folded.struck.has(key)) continue;
    const at = between(began, folded.timeOf(entry));
    if (fact.name === "step.reopened") since = at;
    else {
      if (since !== null && at > since) stretches.push({ start: since, finish: at });
      since = null;
    }
  }
  // It was in work again when the walk was closed.
  if (since !== null && flown.finish > since) stretches.push({ start: since, finish: flown.finish });
  return stretches;
}

const MARKS: ReadonlySet<string> = new Set(["step.done", "step.skipped", "step.reopened"]);

const isMarkOf = (fact: { readonly name: string; readonly step?: unknown }, step: StepId): boolean =>
  MARKS.has(fact.name) && fact.step === step;
