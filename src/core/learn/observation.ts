import type { CourseStep } from "../course/index.ts";
import { keyOf } from "../log/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import { surprisedSteps } from "../training/index.ts";
import type { CrewId, Duration, StepId, WalkId } from "../units/index.ts";
import { inMinutes } from "../units/index.ts";
import { flownCourseOf } from "../walk/index.ts";
import type { WalkRecord } from "./walk-record.ts";
import { holdsOf, workedStretches } from "./worked-stretches.ts";

/** One performed step of one walk ([LRN1]). */
export interface Observation {
  readonly walk: WalkId;
  readonly mode: "live" | "rehearsal";
  /** The revision of the procedure as the walk was opened; `null` when it has none. */
  readonly revision: string | null;
  /** The step as it was in force in that walk. */
  readonly entry: OutlineStep;
  readonly who: readonly CrewId[];
  /** The minutes in which it was worked on, holds left out; above zero. */
  readonly minutes: number;
  /** When it was done or broken off, in PET. */
  readonly at: Duration;
  /** True when somebody entered when it began; otherwise that is inferred ([WLK2]). */
  readonly isStartSaid: boolean;
  /** True when it was opened again after it was done; what was worked on it then is counted too. */
  readonly isReopened: boolean;
  /** True when a hold lay in it, which is not counted. */
  readonly isHeld: boolean;
  /** True when it was broken off: it would have taken longer. */
  readonly isBrokenOff: boolean;
}

/** Steps tapped done at most so long after one another were tapped in one go. */
const ONE_GO = 5000;

/** What a walk tells of how long its steps take. */
export interface WalkEvidence {
  readonly observations: readonly Observation[];
  /** The steps that were tapped done in one go with others, and tell nothing each. */
  readonly inOneGo: readonly StepId[];
}

/**
 * Returns what a walk tells of how long its steps take ([LRN1]). A step planned to take no time is left out. A step is broken
 * off when it was in work as the walk was closed, or was skipped after somebody had entered that it began.
 */
export function evidenceOf(record: WalkRecord): WalkEvidence {
  const { ledger } = record;
  const { outline } = ledger.inForce;
  const flown = flownAtEnd(record);
  const begun = startsSaid(record);
  const surprised = surprisedSteps(ledger);
  const performed: Performed[] = [];
  for (const entry of outline.steps) {
    const one = flown.get(entry.step.id);
    if (!one || (ledger.whereabouts.times[entry.index]?.likely ?? 0) === 0) continue;
    // How long it took was a trainer's choice.
    if (surprised.has(entry.step.id)) continue;
    const isStartSaid = begun.has(entry.step.id);
    const isBrokenOff = one.stage !== "done";
    // Of a get-ahead that has only come up, and of what is skipped, nobody knows that it was begun unless it was said.
    if (isBrokenOff && !isStartSaid && (one.stage === "skipped" || entry.getAhead)) continue;
    performed.push({ entry, one, isStartSaid, isBrokenOff });
  }
  const inOneGo = tappedInOneGo(performed);
  const holds = holdsOf(record);
  const { walk, mode } = ledger.opened;
  const revision = ledger.opened.procedure.outline.procedure.revision ?? null;
  const observations: Observation[] = [];
  for (const { entry, one, isStartSaid, isBrokenOff } of performed) {
    if (inOneGo.has(entry.step.id)) continue;
    const { time, isReopened, isHeld } = workedStretches(record, one, holds);
    if (time <= 0) continue;
    observations.push({
      walk,
      mode,
      revision,
      entry,
      who: entry.step.by,
      minutes: inMinutes(time),
      at: one.finish,
      isStartSaid,
      isReopened,
      isHeld,
      isBrokenOff,
    });
  }
  return { observations, inOneGo: [...inOneGo] };
}

interface Performed {
  readonly entry: OutlineStep;
  readonly one: CourseStep;
  readonly isStartSaid: boolean;
  readonly isBrokenOff: boolean;
}

/** The steps that are done or skipped, and those that were in work when the walk was closed. */
function flownAtEnd({ ledger }: WalkRecord): ReadonlyMap<StepId, CourseStep> {
  const { closed } = ledger;
  // A closed walk has nothing in work: it is asked as it was right before.
  const before = closed ? { ...ledger, phase: closed.before, closed: null } : ledger;
  const { steps } = flownCourseOf(before, closed?.at ?? ledger.opened.at);
  return closed ? steps : new Map([...steps].filter(([, { stage }]) => stage !== "in-work"));
}

/** The steps of which an entry that counts says when they began. */
function startsSaid({ folded }: WalkRecord): ReadonlySet<StepId> {
  const idle = new Set(folded.ignored.map((one) => keyOf({ wire: one })));
  const begun = new Set<StepId>();
  for (const entry of folded.entries) {
    const { fact } = entry.read;
    if (fact?.name !== "step.started") continue;
    const key = keyOf(entry);
    if (!idle.has(key) && !folded.struck.has(key)) begun.add(fact.step);
  }
  return begun;
}

/** The done steps that were tapped within 5 s of the one before or behind them. */
function tappedInOneGo(performed: readonly Performed[]): ReadonlySet<StepId> {
  const taps = performed
    .filter(({ isBrokenOff }) => !isBrokenOff)
    .map(({ one }) => one)
    .sort((a, b) => a.finish - b.finish);
  const close = new Set<StepId>();
  for (const [at, one] of taps.entries()) {
    const before = taps[at - 1];
    if (before && one.finish - before.finish <= ONE_GO) close.add(before.step).add(one.step);
  }
  return close;
}
