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
 * the holds in between. `holds` are those of the walk, as {@link holdsOf} gives them.
 */
export function workedStretches(
  record: WalkRecord,
  flown: CourseStep,
  holds: readonly Stretch[],
): WorkedTime {
  const isReopened = progressOf(record.ledger, flown.step).reopened.length > 0;
  const stretches = isReopened ? stretchesOf(record, flown) : [startedStretch(record, flown)];
  let [whole, held] = [0, 0];
  for (const one of stretches) {
    whole += one.finish - one.start;
    for (const hold of holds) held += overlap(one, hold);
  }
  return { time: (whole - held) as Duration, isReopened, isHeld: held > 0 };
}

/** The holds of a walk in PET. One that was not lifted has no end. */
export function holdsOf({ ledger, began }: WalkRecord): readonly Stretch[] {
  return ledger.holds.map(({ from, until }) => ({
    start: between(began, from),
    finish: until === null ? (Number.POSITIVE_INFINITY as Duration) : between(began, until),
  }));
}

const overlap = (a: Stretch, b: Stretch): number =>
  Math.max(0, Math.min(a.finish, b.finish) - Math.max(a.start, b.start));

/** A skipped step starts and finishes with the skip: it was worked on from when it was said to begin. */
function startedStretch({ ledger, began }: WalkRecord, flown: CourseStep): Stretch {
  if (flown.stage !== "skipped") return flown;
  const { saidStart } = progressOf(ledger, flown.step);
  return saidStart === null ? flown : { start: between(began, saidStart), finish: flown.finish };
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
