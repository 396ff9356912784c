import type {
  AddChange,
  BringChange,
  Change,
  DropChange,
  FieldChange,
  Fields,
  HeadChange,
  ListName,
  MoveChange,
  ProcedureFile,
  RenameChange,
} from "../procedure/index.ts";
import { inFormatOfItsKeys } from "../procedure/index.ts";
import type { Applied, ChangeProblem } from "./change-problem.ts";
import { doubledId, findMember, idsWithin, isThere } from "./find-member.ts";
import { FILE_LISTS, heldBy, homesOf, idOf, keyFor, withId } from "./list-table.ts";
import type { Holder } from "./members.ts";
import { asListed, holdersOf, replacedAt, rollOf } from "./members.ts";
import { withoutSteps, withRenamed } from "./references.ts";
import { withoutWordsOfGone } from "./words-that-follow.ts";

/** A file after one change, or why it cannot be made. */
type Result =
  | { readonly root: Fields; readonly problem: null }
  | { readonly root: null; readonly problem: ChangeProblem };

const done = (root: Fields): Result => ({ root, problem: null });
const refused = (problem: ChangeProblem): Result => ({ root: null, problem });

/** The file with the members of one holder replaced. */
const withMembers = (root: Fields, { path }: Holder, members: readonly Fields[]): Fields =>
  replacedAt(root, path, () => asListed(path[0], members)) as Fields;

const without = (root: Fields, { holder, index }: { holder: Holder; index: number }): Fields =>
  withMembers(root, holder, holder.members.toSpliced(index, 1));

/** A file with a member put where a change says. */
function put(
  root: Fields,
  list: ListName,
  member: Fields,
  { behind, first }: Pick<AddChange, "behind" | "first">,
): Result {
  if ((behind === undefined) === (first === undefined)) return refused({ code: "no-place", list });
  if (behind !== undefined) {
    const found = findMember(root, list, behind);
    if (found.problem) return refused(found.problem);
    const { holder, index } = found;
    return done(withMembers(root, holder, holder.members.toSpliced(index + 1, 0, member)));
  }
  const isInFile = homesOf(list).includes("file");
  const parent = homesOf(list).find((home) => home !== "file");
  if (first === true ? !isInFile : parent === undefined) return refused({ code: "wrong-first", list });
  const holder = holdersOf(root, list).find(({ id }) => id === (first === true ? null : first));
  if (!holder) return refused({ code: "not-there", list: parent ?? list, id: String(first) });
  return done(withMembers(root, holder, [member, ...holder.members]));
}

function added(root: Fields, change: AddChange): Result {
  const { add, list = "steps" } = change;
  const seen = new Set<string>();
  for (const [in_, id] of idsWithin(list, add)) {
    if (id === null) return refused({ code: "no-id", list: in_ });
    const key = `${in_} ${keyFor(in_, id)}`;
    if (seen.has(key) || isThere(root, in_, id)) return refused({ code: "id-taken", list: in_, id });
    seen.add(key);
  }
  return put(root, list, add, change);
}

function dropped(root: Fields, { drop, list = "steps" }: DropChange): Result {
  const found = findMember(root, list, drop);
  if (found.problem) return refused(found.problem);
  const gone = idsWithin(list, found.member).flatMap(([in_, id]) => (in_ === "steps" && id ? id : []));
  const left = withoutWordsOfGone(without(root, found), root);
  return done(gone.length > 0 ? withoutSteps(left, new Set(gone)) : left);
}

function moved(root: Fields, change: MoveChange): Result {
  const { move, list = "steps", behind } = change;
  const found = findMember(root, list, move);
  if (found.problem) return refused(found.problem);
  if (behind !== undefined && keyFor(list, behind) === keyFor(list, idOf(list, found.member) ?? move))
    return refused({ code: "behind-itself", list });
  return put(without(root, found), list, found.member, change);
}

const removed = (fields: Fields, keys: readonly string[]): Fields =>
  keys.some((key) => Object.hasOwn(fields, key))
    ? Object.fromEntries(Object.entries(fields).filter(([key]) => !keys.includes(key)))
    : fields;

function changedFields(root: Fields, change: FieldChange): Result {
  const { list = "steps", set = {}, unset = [] } = change;
  const found = findMember(root, list, change.change);
  if (found.problem) return refused(found.problem);
  const { holder, index, member } = found;
  const id = idOf(list, member) ?? change.change;
  const fixed = member["id"] === undefined ? {} : { id: member["id"] };
  const next = { ...removed({ ...member, ...set }, unset), ...fixed };
  const nextId = idOf(list, next);
  if (nextId === null || keyFor(list, nextId) !== keyFor(list, id))
    return refused({ code: "id-stays", list, id });
  const after = withMembers(root, holder, holder.members.with(index, next));
  const held = heldBy(list);
  const problem = held !== null && Object.hasOwn(set, held) ? doubledId(after) : null;
  return problem ? refused(problem) : done(after);
}

function renamed(root: Fields, { rename, list = "steps", to }: RenameChange): Result {
  const found = findMember(root, list, rename);
  if (found.problem) return refused(found.problem);
  const { holder, index, member } = found;
  const from = idOf(list, member) ?? rename;
  const next = withId(list, member, to);
  const id = idOf(list, next);
  if (id === null) return refused({ code: "no-id", list });
  if (keyFor(list, id) !== keyFor(list, from) && rollOf(root, list).members.has(keyFor(list, id)))
    return refused({ code: "id-taken", list, id });
  return done(withRenamed(withMembers(root, holder, holder.members.with(index, next)), list, from, id));
}

function brought(root: Fields, { bring, behind }: BringChange): Result {
  const contingency = findMember(root, "contingencies", bring);
  if (contingency.problem) return refused(contingency.problem);
  const step = findMember(root, "steps", behind);
  const [home, task] = step.problem ? [] : step.holder.path;
  // The steps of a contingency are not in the plan, so that nothing can come after them there.
  if (home !== "tasks") return refused({ code: "not-there", list: "steps", id: behind });
  const { tasks } = contingency.member;
  const plan = (root["tasks"] as readonly Fields[]).toSpliced(
    Number(task) + 1,
    0,
    ...((tasks ?? []) as readonly Fields[]),
  );
  return done(withoutWordsOfGone({ ...without(root, contingency), tasks: plan }, root));
}

function headChanged(root: Fields, { head, unset = [] }: HeadChange): Result {
  const next = removed({ ...root, ...head }, unset);
  const problem = FILE_LISTS.some((list) => Object.hasOwn(head, list)) ? doubledId(next) : null;
  return problem ? refused(problem) : done(next);
}

function applied(root: Fields, change: Change): Result {
  if ("add" in change) return added(root, change);
  if ("drop" in change) return dropped(root, change);
  if ("move" in change) return moved(root, change);
  if ("change" in change) return changedFields(root, change);
  if ("rename" in change) return renamed(root, change);
  if ("bring" in change) return brought(root, change);
  return headChanged(root, change);
}

/**
 * A procedure file after changes, one after the other, or the first that cannot be applied ([CHG2]). Nothing is changed in place, and
 * what no change touches is shared with the file given. A file of format 1 into which a change brings a key of format 2 becomes one of
 * format 2. The result is not checked: what it leaves dangling is a finding of its reading.
 */
export function applyChanges(file: ProcedureFile, changes: readonly Change[]): Applied<ProcedureFile> {
  let root: Fields = file;
  for (const [index, change] of changes.entries()) {
    const result = applied(root, change);
    if (result.problem) return { file: null, problem: result.problem, index };
    root = result.root;
  }
  return { file: inFormatOfItsKeys(root as ProcedureFile), problem: null };
}
