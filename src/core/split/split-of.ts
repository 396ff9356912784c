import { changesBetween } from "../changes/index.ts";
import type { Course } from "../course/index.ts";
import { waysOf } from "../place/index.ts";
import { windowMargins } from "../plan/index.ts";
import type { Change } from "../procedure/index.ts";
import type { CrewId, Duration, Metres, PlaceId, StepId, TaskId, WindowId } from "../units/index.ts";
import type { Split } from "./layout.ts";
import { Layout, splitAsWritten } from "./layout.ts";
import type { ProgramSolver } from "./mixed-program.ts";
import type { Offered } from "./offered.ts";
import { offered } from "./offered.ts";
import { proveSplit } from "./prove.ts";
import type { ProgramProof } from "./prove-by-program.ts";
import { proveByProgram } from "./prove-by-program.ts";
import { departuresOf, reduced, without } from "./reduced.ts";
import { searchSplits } from "./search.ts";
import { splitBound } from "./split-bound.ts";
import type { Laid, SplitCase } from "./split-case.ts";
import type { SplitModel } from "./split-model.ts";
import { splitModelOf } from "./split-model-of.ts";

/** What proves by a program, and after how many nodes of its search it stops. */
export interface SecondProof {
  readonly solver: ProgramSolver;
  readonly nodes: number;
}

/** How a split is asked for. */
export interface SplitOptions {
  /** How many splits are laid out before the search ends with what it has. */
  readonly tries: number;
  readonly seed: number;
  /** How many parts of splits are looked at for a proof; none when zero. */
  readonly parts: number;
  /** Proves by a program what is left open by then; `null` or absent to leave it open. */
  readonly second?: SecondProof | null;
}

/** One thing that a suggestion changes, and why. */
export type Suggestion = {
  /**
   * How much later the plan would be complete without this one alone; `null` when the others cannot be without it.
   */
  readonly gain: Duration | null;
} & (
  | {
      readonly kind: "performers";
      /** The steps that change hands together. */
      readonly steps: readonly StepId[];
      readonly from: readonly CrewId[];
      readonly to: readonly CrewId[];
    }
  | {
      readonly kind: "order";
      readonly task: TaskId;
      /** The task that it stands behind; `null` for the first place. */
      readonly behind: TaskId | null;
    }
);

/** A step that somebody else does, or that comes at another time. Times are PET. */
export interface MovedStep {
  readonly step: StepId;
  readonly from: readonly CrewId[];
  readonly to: readonly CrewId[];
  readonly before: Duration;
  readonly start: Duration;
  /** True when the step is on the critical path of the plan as it is: changing it relieves that chain. */
  readonly wasCritical: boolean;
}

/** What a suggestion costs beside the time that it gains. */
export interface SplitCost {
  /** How many steps are done by others. */
  readonly changedHands: number;
  /** The way that everybody goes together, before and after. */
  readonly metres: { readonly before: Metres; readonly after: Metres };
  /** The windows in which a step has less time left than before. */
  readonly tighter: readonly {
    readonly window: WindowId;
    readonly before: Duration;
    readonly after: Duration;
  }[];
}

/** The answer to who should do what, and in which order ([FIT3]). It is plain data, so that a worker can hand it on. */
export interface SplitAnswer {
  /**
   * `proven`: no split is complete earlier than this one. `best-found`: the bound says how much better one could be.
   * `unchanged`: nothing better than the file's was found. `no-plan`: the file cannot be planned, so that there is
   * nothing to be better than.
   */
  readonly status: "proven" | "best-found" | "unchanged" | "no-plan";
  /** True when no split is complete earlier than `finish`. */
  readonly isProven: boolean;
  /** PET at which the plan of the file is complete; `null` without a plan. */
  readonly before: Duration | null;
  /** PET at which the plan with the changes is complete; the same as `before` without any. */
  readonly finish: Duration | null;
  /** No split is complete earlier; `null` without a plan. */
  readonly bound: Duration | null;
  /** How much of the bound the finish is above it, from 0. */
  readonly gap: number;
  /** How many splits were laid out, and how many parts of splits were looked at for a proof. */
  readonly tried: number;
  readonly looked: number;
  /** What became of a second proof, and how many yes-or-no choices it had; `null` where none was asked for or needed. */
  readonly second: Pick<ProgramProof, "status" | "choices"> | null;
  /** True when the file leaves nothing to choose. */
  readonly hasNoChoice: boolean;
  readonly changes: readonly Change[];
  readonly suggestions: readonly Suggestion[];
  readonly moved: readonly MovedStep[];
  readonly cost: SplitCost | null;
  readonly criticalPath: { readonly before: readonly StepId[]; readonly after: readonly StepId[] };
}

const NOTHING = {
  changes: [],
  suggestions: [],
  moved: [],
  cost: null,
  second: null,
} satisfies Partial<SplitAnswer>;

/**
 * Returns who should do what and in which order for the earliest finish ([FIT3]), as far as the authors of steps and
 * tasks say that they may change. Nothing is applied ([FIT4]). What is offered was planned and checked like any other
 * procedure, and keeps the fewest changes. The same seed gives the same answer; more tries never give a worse one.
 */
export function splitOf(
  splitCase: SplitCase,
  { tries, seed, parts, second = null }: SplitOptions,
): SplitAnswer {
  const { laid } = splitCase;
  if (!laid)
    return {
      ...NOTHING,
      status: "no-plan",
      isProven: false,
      before: null,
      finish: null,
      bound: null,
      gap: 0,
      tried: 0,
      looked: 0,
      hasNoChoice: false,
      criticalPath: { before: [], after: [] },
    };
  const { course, criticalPath: path } = laid;
  const before = course.finish;
  const model = splitModelOf(splitCase, course);
  const criticalPath = { before: path, after: path };
  if (model.groups.every(({ options }) => options.length < 2) && !model.tasks.some(({ isFree }) => isFree)) {
    const only = { before, finish: before, bound: before, gap: 0, tried: 0, looked: 0 };
    return { ...NOTHING, ...only, status: "unchanged", isProven: true, hasNoChoice: true, criticalPath };
  }
  const layout = new Layout(model);
  const least = splitBound(model, course.network);
  const offer = (split: Split) => offered(splitCase, model, split, layout);
  const searched = searchSplits({ model, seed, tries, bound: least, offer });
  let best = searched.best;
  const isSound = (split: Split) => {
    const one = offer(split);
    if (one) best = one;
    return one !== null;
  };
  const { network } = course;
  const proof = proveSplit({ model, network, cost: searched.cost, bound: least, parts, isSound });
  // A deadline that is missed already is no rule that a program could keep.
  const isWritten = second !== null && !proof.isProven && Number.isFinite(proof.cost) && !isLate(model, best);
  const program = isWritten
    ? proveByProgram({ ...second, model, network, cost: proof.cost, bound: least, isSound })
    : null;
  const known = Math.max(least, program?.bound ?? 0);
  const better = best && best.finish < before ? withFewest(best, model, offer) : null;
  const finish = better?.finish ?? before;
  const isExact = better?.isExact ?? layout.costOf(splitAsWritten(model)) === before;
  const isProven = finish <= least || ((proof.isProven || program?.status === "proven") && isExact);
  const bound = (isProven ? finish : Math.min(known, finish)) as Duration;
  return {
    ...NOTHING,
    status: better ? (isProven ? "proven" : "best-found") : "unchanged",
    isProven,
    before,
    finish,
    bound,
    gap: bound > 0 ? (finish - bound) / bound : 0,
    tried: searched.tried,
    looked: proof.looked,
    second: program && { status: program.status, choices: program.choices },
    hasNoChoice: false,
    ...(better ? described(splitCase, model, better, laid) : {}),
    criticalPath: { ...criticalPath, after: better?.laid.criticalPath ?? path },
  };
}

/** Whether the best that is known misses a deadline. */
function isLate(model: SplitModel, best: Offered | null): boolean {
  const layout = new Layout(model);
  layout.costOf(best?.split ?? splitAsWritten(model));
  return layout.late > 0;
}

/** The same finish with the fewest changes. */
function withFewest(best: Offered, model: SplitModel, offer: (split: Split) => Offered | null): Offered {
  const fewer = offer(reduced(model, best.split));
  return fewer && fewer.finish <= best.finish ? fewer : best;
}

/** What an offer changes, why, and at what cost. */
function described(
  splitCase: SplitCase,
  model: SplitModel,
  { split, file, laid: { outline, course } }: Offered,
  { outline: old, course: oldCourse, criticalPath }: Laid,
) {
  const layout = new Layout(model);
  const cost = layout.costOf(split);
  const suggestions = departuresOf(model, split).map((departure): Suggestion => {
    const back = without(model, split, departure);
    const costs = back && layout.costOf(back);
    const gain = costs === null || !Number.isFinite(costs) ? null : ((costs - cost) as Duration);
    if (departure.kind === "task") {
      const place = split.order.indexOf(departure.task);
      const tasks = splitCase.file.tasks;
      return {
        kind: "order",
        gain,
        task: tasks[departure.task]?.id as TaskId,
        behind: (tasks[split.order[place - 1] ?? -1]?.id ?? null) as TaskId | null,
      };
    }
    const { steps, options } = model.groups[departure.group] ?? { steps: [], options: [] };
    const option = options[split.choice[departure.group] ?? 0] ?? [];
    const changed = steps.filter((_, seat) => option[seat] !== 0).flatMap((step) => model.steps[step] ?? []);
    const [first] = changed;
    return {
      kind: "performers",
      gain,
      steps: changed.map(({ id }) => id),
      from: first ? (old.step(first.id)?.step.by ?? []) : [],
      to: first ? (outline.step(first.id)?.step.by ?? []) : [],
    };
  });
  const path = new Set(criticalPath);
  const moved = [...course.steps.values()].flatMap(({ step, start }): MovedStep[] => {
    const was = oldCourse.steps.get(step);
    const [from, to] = [old.step(step)?.step.by, outline.step(step)?.step.by];
    if (!was || !from || !to || (was.start === start && from.join(" ") === to.join(" "))) return [];
    return [{ step, from, to, before: was.start, start, wasCritical: path.has(step) }];
  });
  return {
    changes: changesBetween(splitCase.file, file),
    suggestions,
    moved,
    cost: {
      changedHands: moved.filter(({ from, to }) => from.join(" ") !== to.join(" ")).length,
      metres: { before: metresOf(oldCourse), after: metresOf(course) },
      tighter: tighterWindows(oldCourse, course),
    },
  };
}

/** The metres that everybody goes in a plan, along the quickest ways. */
function metresOf({ outline, network, whereabouts }: Course): Metres {
  const ways = waysOf(outline.procedure);
  const lengthOf = (from: PlaceId, to: PlaceId) => {
    const places = (ways.quickest(from, to) ?? ways.shortest(from, to))?.places ?? [];
    return places
      .slice(1)
      .reduce((sum, place, index) => sum + (ways.leg(places[index] as PlaceId, place) ?? 0), 0);
  };
  return outline.steps.reduce((sum, { index, step: { to } }) => {
    if (to === undefined || !network.activity.active[index]) return sum;
    const from = whereabouts.from[index] ?? [];
    return from.reduce((metres, place) => metres + (place === null ? 0 : lengthOf(place, to)), sum);
  }, 0) as Metres;
}

function tighterWindows(before: Course, after: Course): SplitCost["tighter"] {
  const marginsOf = ({ outline, windows, steps }: Course) =>
    windowMargins(outline, windows, ({ step }) => {
      const one = steps.get(step.id);
      return one?.stage === "planned" ? one : null;
    });
  const old = new Map(marginsOf(before).map(({ window, margin }) => [window, margin]));
  return marginsOf(after).flatMap(({ window, margin }) => {
    const was = old.get(window);
    return was !== undefined && margin < was ? [{ window, before: was, after: margin }] : [];
  });
}
