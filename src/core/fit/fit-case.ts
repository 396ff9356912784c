import { isAboutTheEnd, runFindings } from "../check/index.ts";
import type { Course } from "../course/index.ts";
import type { PlanOptions } from "../plan/index.ts";
import { planOf } from "../plan/index.ts";
import type { Finding, Outline, Task } from "../procedure/index.ts";
import { AS_EXPECTED, withoutTasks } from "../procedure/index.ts";
import type { Duration, Instant, StepId, TaskId } from "../units/index.ts";
import { NO_TIME } from "../units/index.ts";
import type { Ledger } from "../walk/index.ts";
import { forecastOf, lightInForce, progressOf } from "../walk/index.ts";

/** What is to be fitted under a limit: the work that is to be done, and the tasks that may be kept or left out ([FIT1]). */
export interface FitCase {
  readonly outline: Outline;
  /** The get-ahead tasks of which nothing has been done, in reading order. */
  readonly choices: readonly Task[];
  /** The PET from which on time is left: zero for a plan. */
  readonly now: Duration;
  /**
   * Lays out the work with these of the choices kept and the others left out. Returns `null` when it cannot be
   * planned: a step fits no window, or there is no way. Keeping another task never mends that.
   */
  courseWith(kept: ReadonlySet<TaskId>): Course | null;
  /** What these choices break that is not broken without any: custody, places, states, supplies. */
  problemsWith(kept: ReadonlySet<TaskId>): readonly Finding[];
  /** What is left outside, or is not where and as it should be at the end, with these choices. */
  leftWith(kept: ReadonlySet<TaskId>): readonly Finding[];
}

/** The case of a procedure that is still to be walked, without the tasks that are left out. Its get-aheads are the choices. */
export function planCase(
  whole: Outline,
  options: Omit<PlanOptions, "getAheads">,
  leftOut: ReadonlySet<TaskId> = new Set(),
): FitCase {
  const outline = withoutTasks(whole, leftOut);
  return {
    outline,
    choices: choicesOf(outline),
    now: NO_TIME,
    courseWith: (kept) => planOf(outline, { ...options, getAheads: kept }).timeline?.course ?? null,
    ...judgedBy(outline, options),
  };
}

/**
 * The case of a walk at an instant, in which nothing more is done of the tasks that are left out. What has happened
 * stays, and get-aheads of which no step is complete are the choices, also one whose first step has come up meanwhile.
 */
export function walkCase(ledger: Ledger, at: Instant, leftOut: ReadonlySet<TaskId> = new Set()): FitCase {
  const { outline } = ledger.inForce;
  const { start, light } = lightInForce(ledger);
  const isComplete = (step: StepId) => progressOf(ledger, step).status !== "open";
  const isUntouched = ({ id, steps }: Task) => !leftOut.has(id) && !steps.some((step) => isComplete(step.id));
  return {
    outline,
    choices: choicesOf(outline).filter(isUntouched),
    now: forecastOf(ledger, at, { kept: new Set(), leftOut })?.now ?? NO_TIME,
    courseWith: (kept) => forecastOf(ledger, at, { kept, leftOut }),
    ...judgedBy(withoutTasks(outline, leftOut), { start, light, outcomes: ledger.outcomes }),
  };
}

const choicesOf = ({ procedure }: Outline) =>
  procedure.tasks.filter(({ priority, steps }) => priority === "get-ahead" && steps.length > 0);

/** A supply that runs out is an error of a plan, and of get-aheads only a caution: here they are in the plan. */
const isProblem = ({ level, code }: Finding) => level === "error" || code.startsWith("supply/");

const keyOf = ({ code, pointer, things, steps }: Finding) => JSON.stringify([code, pointer, things, steps]);

/** Judges choices by the rules of the checker, which know nothing of what has happened in a walk. */
function judgedBy(outline: Outline, options: PlanOptions): Pick<FitCase, "problemsWith" | "leftWith"> {
  const findings = (kept: ReadonlySet<TaskId>) =>
    runFindings(outline, { outcomes: AS_EXPECTED, ...options, getAheads: kept });
  let without: ReadonlySet<string> | null = null;
  return {
    problemsWith: (kept) => {
      without ??= new Set(findings(new Set()).filter(isProblem).map(keyOf));
      return findings(kept).filter((one) => isProblem(one) && !without?.has(keyOf(one)));
    },
    leftWith: (kept) => findings(kept).filter(isAboutTheEnd),
  };
}
