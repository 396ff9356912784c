import type { Message } from "../../words/index.ts";
import type { Conflict } from "../changes/index.ts";
import { applyChanges, changesBetween, mergeChanges, rollOf } from "../changes/index.ts";
import type { Change, Fields, ProcedureFile } from "../procedure/index.ts";
import type { BlankValues, Origin } from "./blank-values.ts";
import { blankProblem } from "./blank-values.ts";
import type { FragmentUse } from "./filled-in.ts";
import { originOf, partsOf } from "./filled-in.ts";
import type { Fragment } from "./fragment.ts";

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
      const asUse: FragmentUse = { use, blanks, ids };
      const theirs = withParts(file, fragment, asUse, older);
      if (!older) return { ...offer, changes: changesBetween(file, theirs), conflicts: [], problem: null };
      const base = withParts(file, older, { ...asUse, blanks: first?.from.blanks ?? {} }, null);
      const merged = mergeChanges(base, file, theirs);
      return merged.file
        ? { ...offer, changes: changesBetween(file, merged.file), conflicts: [], problem: null }
        : { ...offer, changes: null, conflicts: merged.conflicts, problem: null };
    });
}

interface UsedStep {
  readonly id: string;
  readonly from: Origin;
}

/** The steps of each use of a fragment, in reading order. */
function usesOf(file: ProcedureFile, fragment: string): ReadonlyMap<string, readonly UsedStep[]> {
  const uses = new Map<string, UsedStep[]>();
  for (const { id, member } of rollOf(file, "steps").members.values()) {
    const from = originOf(member);
    if (from?.fragment === fragment) uses.set(from.use, [...(uses.get(from.use) ?? []), { id, from }]);
  }
  return uses;
}

const usualTimes = ({ blanks }: Fragment): BlankValues =>
  Object.fromEntries(
    blanks.flatMap(({ id, usual }) => (usual === undefined ? [] : [[id, { time: usual }] as const])),
  );

/**
 * A procedure in which a use has the parts of a fragment as that has them: parts that are there are as in the fragment, those that it
 * has not are gone. New ones stand behind the part before them; one that `older` had and the procedure has not was dropped by its
 * author, and stays so.
 */
function withParts(
  file: ProcedureFile,
  fragment: Fragment,
  use: FragmentUse,
  older: Fragment | null,
): ProcedureFile {
  const parts = partsOf(fragment, file, use);
  const there = rollOf(file, "steps").members;
  const had = new Set(older?.steps.map((step) => step["id"]));
  const changes: Change[] = [];
  let before: string | null = null;
  for (const part of parts) {
    const name = part.from?.part ?? part.id;
    const member = there.get(part.id)?.member;
    if (use.ids.has(name) && member) {
      const unset = Object.keys(member).filter((key) => !Object.hasOwn(part, key));
      changes.push({ change: part.id, set: part as Fields, ...(unset.length > 0 && { unset }) });
    } else if (had.has(name)) continue;
    else {
      const [first] = use.ids.values();
      changes.push({ add: part as Fields, behind: before ?? first ?? "" });
    }
    before = part.id;
  }
  const left = new Set(parts.map(({ id }) => id));
  for (const id of use.ids.values()) if (!left.has(id)) changes.push({ drop: id });
  return applyChanges(file, changes).file ?? file;
}
