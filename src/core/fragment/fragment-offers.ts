import type { Message } from "../../words/index.ts";
import type { Conflict, Roll } from "../changes/index.ts";
import { applyChanges, changesBetween, mergeChanges, rollOf } from "../changes/index.ts";
import type { Change, FieldChange, Fields, ProcedureFile } from "../procedure/index.ts";
import type { BlankValues, Origin } from "./blank-values.ts";
import { blankProblem } from "./blank-values.ts";
import type { FragmentUse } from "./filled-in.ts";
import { free, originOf, partsOf } from "./filled-in.ts";
import type { Fragment } from "./fragment.ts";
import { groupsOf } from "./fragment.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

/** What another revision of a fragment comes to for one of its uses in a procedure ([WRT9]). */
export interface FragmentOffer {
  /** Names the use. */
  readonly use: string;
  /** The revision that was put in. */
  readonly revision: string;
  /** What would change; empty where nothing would, `null` where something has to be decided first. */
  readonly changes: readonly Change[] | null;
  /** What both the author and the fragment changed. */
  readonly conflicts: readonly Conflict[];
  /** Why the fragment cannot be filled, as where a blank is new; `null` when it can. */
  readonly problem: Message | null;
  /** True where the revision that was put in is not known: what the author made of the steps would be undone. */
  readonly isBlind: boolean;
}

/** What a fragment comes to for each of its uses of another revision; `known` are the revisions that are at hand. */
export function fragmentOffers(
  file: ProcedureFile,
  fragment: Fragment,
  known: readonly Fragment[],
): readonly FragmentOffer[] {
  return [...usesOf(file, fragment.id)]
    .filter(([, steps]) => steps.some(({ from }) => from.revision !== fragment.revision))
    .map(([use, steps]) => {
      const [first] = steps;
      const revision = first?.from.revision ?? "";
      const blanks: BlankValues = { ...usualTimes(fragment), ...first?.from.blanks };
      const older = known.find((one) => one.id === fragment.id && one.revision === revision) ?? null;
      const offer = { use, revision, isBlind: older === null };
      const problem = blankProblem(fragment, file, blanks);
      if (problem) return { ...offer, changes: null, conflicts: [], problem };
      const ids = new Map(steps.map(({ id, from }) => [from.part, id]));
      const asUse: Used = { use, blanks, ids, steps };
      const theirs = withParts(file, fragment, asUse, older);
      if (!older) return { ...offer, changes: changesBetween(file, theirs), conflicts: [], problem: null };
      const base = withParts(file, older, { ...asUse, blanks: first?.from.blanks ?? {} }, older);
      const merged = mergeChanges(base, file, theirs);
      return merged.file
        ? { ...offer, changes: changesBetween(file, merged.file), conflicts: [], problem: null }
        : { ...offer, changes: null, conflicts: merged.conflicts, problem: null };
    });
}

interface UsedStep {
  readonly id: string;
  readonly from: Origin;
  /** The task that it stands in now. */
  readonly task: string;
}

/** A use with its steps, in reading order; there is at least one. */
interface Used extends FragmentUse {
  readonly steps: readonly UsedStep[];
}

/** The steps of each use of a fragment, in reading order. */
function usesOf(file: ProcedureFile, fragment: string): ReadonlyMap<string, readonly UsedStep[]> {
  const uses = new Map<string, UsedStep[]>();
  for (const { id, member, holder } of rollOf(file, "steps").members.values()) {
    const from = originOf(member);
    if (from?.fragment !== fragment || holder === null) continue;
    uses.set(from.use, [...(uses.get(from.use) ?? []), { id, from, task: holder }]);
  }
  return uses;
}

const usualTimes = ({ blanks }: Fragment): BlankValues =>
  Object.fromEntries(
    blanks.flatMap(({ id, usual }) => (usual === undefined ? [] : [[id, { time: usual }] as const])),
  );

/**
 * A procedure in which a use has the parts of a fragment as that has them: parts that are there are as in the fragment, those that it
 * has not are gone, and so is a task in which nothing is left. New ones stand behind the part before them, in the task that has the rest
 * of theirs; what `older` had and the procedure has not was dropped by its author, and stays so. A part that stands in another task of
 * the fragment than before goes there, unless its author has moved it.
 */
function withParts(
  file: ProcedureFile,
  fragment: Fragment,
  use: Used,
  older: Fragment | null,
): ProcedureFile {
  const { members: there, orders } = rollOf(file, "steps");
  const tasks = rollOf(file, "tasks").members;
  const usedOf = new Map(use.steps.map((one) => [one.from.part, one]));
  const hadSteps = new Set((older ? groupsOf(older) : []).flatMap(({ steps }) => steps.map(({ id }) => id)));
  const hadTasks = new Set(older?.tasks?.map(({ id }) => id));
  const firsts = firstsOf(use, orders);
  const takenTasks = new Set(tasks.keys());
  const groups = partsOf(fragment, file, use);
  const isGone = (part: FileStep) => hadSteps.has(nameOf(part)) && !usedOf.has(nameOf(part));
  const gone = new Set(groups.flatMap(({ steps }) => steps.filter(isGone).map(({ id }) => id)));
  const changes: Change[] = [];
  const kept = new Set<string>();
  let before: string | null = null;
  let taskBefore = use.steps[0]?.task ?? "";
  for (const { task, steps: parts } of groups) {
    const first = task ? (firsts.get(task.id) ?? null) : (use.steps[0] ?? null);
    let home = first?.task ?? null;
    if (task && home === null) {
      // Its author has dropped it as a whole.
      if (hadTasks.has(task.id)) continue;
      home = free(task.id, takenTasks);
      takenTasks.add(home);
      changes.push({ add: { ...task, id: home, steps: [] }, list: "tasks", behind: taskBefore });
    } else if (task && home !== null) {
      const { id: _, ...set } = task;
      const { id: __, steps: ___, ...own } = tasks.get(home)?.member ?? {};
      changes.push({ change: home, list: "tasks", ...replacing(own, set) });
    }
    if (task) before = null;
    const inHome = orders.get(home) ?? [];
    const stepBefore = inHome[inHome.indexOf(first?.id ?? "") - 1] ?? null;
    for (const part of parts) {
      const used = usedOf.get(nameOf(part));
      const behind = before ?? stepBefore;
      const place = behind === null ? { first: home ?? "" } : { behind };
      const member = there.get(part.id)?.member;
      if (used && member) {
        kept.add(part.id);
        changes.push({ change: part.id, ...replacing(member, part as Fields) });
        const isWhereItWas = used.task === firsts.get(used.from.task)?.task;
        if (task && used.from.task !== task.id && isWhereItWas) changes.push({ move: part.id, ...place });
      } else if (gone.has(part.id)) continue;
      else changes.push({ add: withoutAfter(part, gone), ...place });
      before = part.id;
    }
    taskBefore = home ?? taskBefore;
  }
  for (const { id } of use.steps) if (!kept.has(id)) changes.push({ drop: id });
  const next = applyChanges(file, changes).file ?? file;
  const isEmpty = (id: string) => rollOf(next, "steps").orders.get(id)?.length === 0;
  const emptied = [...new Set(use.steps.map(({ task }) => task))].filter(isEmpty);
  return (
    applyChanges(
      next,
      emptied.map((drop): Change => ({ drop, list: "tasks" })),
    ).file ?? next
  );
}

const nameOf = ({ id, from }: FileStep) => from?.part ?? id;

/** A new part that comes after none of those which its author dropped. */
const withoutAfter = ({ after, ...part }: FileStep, gone: ReadonlySet<string>): Fields => ({
  ...part,
  ...(after && { after: after.filter((one) => !gone.has(typeof one === "string" ? one : one.step)) }),
});

/**
 * By the tasks of a fragment, the first of the steps of each that stand where most of them do; where that are several tasks of the
 * procedure, in the one with the fewest others. Steps of a fragment without tasks stand under `undefined`.
 */
function firstsOf({ steps }: Used, orders: Roll["orders"]): ReadonlyMap<string | undefined, UsedStep> {
  const firsts = new Map<string | undefined, UsedStep>();
  for (const of of new Set(steps.map(({ from }) => from.task))) {
    const own = steps.filter(({ from }) => from.task === of);
    const weight = ({ task }: UsedStep) => {
      const count = own.filter((one) => one.task === task).length;
      return { count, others: (orders.get(task)?.length ?? 0) - count };
    };
    const first = own.reduce((best, one) => {
      const [a, b] = [weight(best), weight(one)];
      return b.count > a.count || (b.count === a.count && b.others < a.others) ? one : best;
    });
    firsts.set(of, first);
  }
  return firsts;
}

/** What makes the fields of a member those of another. */
function replacing(member: Fields, set: Fields): Pick<FieldChange, "set" | "unset"> {
  const unset = Object.keys(member).filter((key) => !Object.hasOwn(set, key));
  return { set, ...(unset.length > 0 && { unset }) };
}
