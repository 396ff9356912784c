import { checkOutline } from "../check/index.ts";
import type { Course } from "../course/index.ts";
import { custodyAtStart } from "../custody/index.ts";
import type { Plan, PlanOptions } from "../plan/index.ts";
import { planOf } from "../plan/index.ts";
import type { Finding, Location, Outcomes, Outline, ProcedureFile } from "../procedure/index.ts";
import { AS_EXPECTED, outlineOf, parseProcedure } from "../procedure/index.ts";
import type { Duration, ItemId, StateId, StepId } from "../units/index.ts";
import { NO_TIME } from "../units/index.ts";

/** Work laid out in time: a plan, or the forecast of a walk. */
export interface Laid {
  readonly outline: Outline;
  readonly course: Course;
  /** The steps that the finish hangs on, the first one first. */
  readonly criticalPath: readonly StepId[];
}

/** How everything stands from where on time is left. */
export interface Standing {
  readonly items: ReadonlyMap<ItemId, Location>;
  readonly states: ReadonlyMap<StateId, string>;
}

/** Work of which the best split is asked: a procedure, or what is left of a walk ([FIT3]). */
export interface SplitCase {
  readonly file: ProcedureFile;
  readonly outline: Outline;
  /** The decisions that were taken; the others come out as expected. */
  readonly outcomes: Outcomes;
  /** The PET before which nothing more begins: zero for a plan. */
  readonly now: Duration;
  readonly standing: Standing;
  /** The steps that have begun. */
  readonly begun: ReadonlySet<StepId>;
  /** The steps that stay as they are, those that have begun among them. */
  readonly pinned: ReadonlySet<StepId>;
  /** The file as it is, with every open decision as expected and no get-ahead that is not begun; `null` without a plan. */
  readonly laid: Laid | null;
  /** True when a tether is too short in the file already. */
  readonly hasShortTether: boolean;
  /** Lays out the file of a split and checks it; `null` when it may not be offered. */
  judge(file: ProcedureFile): Laid | null;
}

/** The case of a procedure file, with the start and the light that it is planned with, and steps that are not to change. */
export function splitCase(
  { file, outline }: { readonly file: ProcedureFile; readonly outline: Outline },
  options: Required<Pick<PlanOptions, "start" | "light">>,
  pinned: ReadonlySet<StepId> = new Set(),
): SplitCase {
  const { procedure } = outline;
  const findings = checkOutline(outline, options);
  return {
    file,
    outline,
    outcomes: AS_EXPECTED,
    now: NO_TIME,
    standing: {
      items: custodyAtStart(procedure),
      states: new Map(procedure.states.map(({ id, start }) => [id, start])),
    },
    begun: new Set(),
    pinned,
    laid: laidIn(planOf(outline, options)),
    hasShortTether: findings.some(isAboutTether),
    judge: (next) => {
      const { procedure: read } = parseProcedure(next);
      if (!read) return null;
      const changed = outlineOf(read);
      const plan = planOf(changed, options);
      const laid = laidIn(plan);
      const isSound = laid && !hasNewFinding([...plan.findings, ...checkOutline(changed, options)], findings);
      return isSound ? laid : null;
    },
  };
}

const laidIn = ({ outline, timeline }: Plan): Laid | null =>
  timeline && { outline, course: timeline.course, criticalPath: timeline.criticalPath };

/** True for a finding about the length of a tether. */
export const isAboutTether = ({ code }: Finding): boolean => code.startsWith("tether/");

/** True when there is an error or a caution that was not there before. */
export function hasNewFinding(after: readonly Finding[], before: readonly Finding[]): boolean {
  const known = new Set(before.map(keyOf));
  return after.some((one) => one.level !== "advice" && !known.has(keyOf(one)));
}

/** What makes a finding the same before and after: what it is of, wherever it stands and whatever its figures are. */
const keyOf = ({ code, things, steps }: Finding) =>
  code === "time/over-limit" ? code : JSON.stringify([code, things, steps[0] ?? null]);
