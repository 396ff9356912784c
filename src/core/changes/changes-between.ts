import type { Change, Fields, ListName, ProcedureFile } from "../procedure/index.ts";
import { applyChanges } from "./apply-changes.ts";
import { keptInOrder } from "./kept-order.ts";
import { FILE_LISTS, heldBy, homesOf, idOf, keyFor, LISTS } from "./list-table.ts";
import type { Placed, Roll } from "./members.ts";
import { ownFields, rollOf } from "./members.ts";
import { lettingGo } from "./references.ts";
import { sameJson } from "./same-json.ts";

interface Sides {
  readonly before: Roll;
  readonly after: Roll;
}
type Rolls = ReadonlyMap<ListName, Sides>;

/** A change that names no list is about steps, so the list is left out for steps. */
const inList = (list: ListName) => (list === "steps" ? {} : { list });

const EMPTY: Roll = { members: new Map(), orders: new Map(), doubled: false };

/** The rolls of every list on both sides. A list whose ids do not tell its members apart is left out: it is one whole value of the head. */
function rollsOf(before: Fields, after: Fields): Rolls {
  return new Map(
    LISTS.map((list) => {
      const sides = { before: rollOf(before, list), after: rollOf(after, list) };
      const isWhole = sides.before.doubled || sides.after.doubled;
      return [list, isWhole ? { before: EMPTY, after: EMPTY } : sides];
    }),
  );
}

const sidesOf = (rolls: Rolls, list: ListName): Sides => rolls.get(list) ?? { before: EMPTY, after: EMPTY };

/** The list that holds what a member holds: the contingencies for tasks that stand in one, the tasks for steps. */
const homeOf = (list: ListName): ListName | null =>
  homesOf(list).find((home): home is ListName => home !== "file") ?? null;

const isNew = (rolls: Rolls, list: ListName, key: string) => !sidesOf(rolls, list).before.members.has(key);

/** Whether a member comes with its new task or contingency, and needs no change of its own. */
function comesAlong(rolls: Rolls, list: ListName, { key, holder }: Placed): boolean {
  const home = homeOf(list);
  return holder !== null && home !== null && isNew(rolls, list, key) && isNew(rolls, home, holder);
}

/** A new member as it is added: what it holds comes along where it is new too; what was there before is moved in afterwards. */
function asAdded(rolls: Rolls, list: ListName, member: Fields): Fields {
  const held = heldBy(list);
  const inner = held === null ? undefined : member[held];
  if (held === null || !Array.isArray(inner)) return member;
  const fresh = (inner as readonly Fields[]).filter((one) =>
    isNew(rolls, held, keyFor(held, idOf(held, one) ?? "")),
  );
  return { ...member, [held]: fresh.map((one) => asAdded(rolls, held, one)) };
}

/** The changes that bring every member of a list to its place, new ones included. */
function placements(rolls: Rolls, list: ListName): Change[] {
  const { before, after } = sidesOf(rolls, list);
  const changes: Change[] = [];
  for (const [holder, order] of after.orders) {
    const isAlong = (key: string) => {
      const placed = after.members.get(key);
      return placed !== undefined && comesAlong(rolls, list, placed);
    };
    // A new holder starts with the members added along with it; any other starts with those it already held.
    const along = order.filter(isAlong);
    const kept = along.length > 0 ? new Set(along) : keptInOrder(before.orders.get(holder) ?? [], order);
    let behind: string | null = null;
    for (const key of order) {
      const placed = after.members.get(key);
      if (!placed) continue;
      const position = behind === null ? { first: holder ?? (true as const) } : { behind };
      if (!kept.has(key)) {
        const old = before.members.get(key);
        changes.push(
          old
            ? { move: old.id, ...inList(list), ...position }
            : { add: asAdded(rolls, list, placed.member), ...inList(list), ...position },
        );
      }
      behind = placed.id;
    }
  }
  return changes;
}

/** Drops of members whose holder stays; members of a dropped holder are dropped along with it. */
function drops(rolls: Rolls, list: ListName): Change[] {
  const { before, after } = sidesOf(rolls, list);
  const home = homeOf(list);
  return [...before.members.values()].flatMap(({ key, id, holder }): Change[] => {
    const staysIn = holder === null || home === null || sidesOf(rolls, home).after.members.has(holder);
    return after.members.has(key) || !staysIn ? [] : [{ drop: id, ...inList(list) }];
  });
}

/** What has to be set and removed for one object to have the fields of another; `null` when nothing has. */
export function fieldsBetween(
  before: Fields,
  after: Fields,
): { readonly set: Fields; readonly unset: readonly string[] } | null {
  const set = Object.fromEntries(
    Object.entries(after).filter(
      ([key, value]) => !Object.hasOwn(before, key) || !sameJson(before[key], value),
    ),
  );
  const unset = Object.keys(before).filter((key) => !Object.hasOwn(after, key));
  return Object.keys(set).length > 0 || unset.length > 0 ? { set, unset } : null;
}

/** The fields that change in the members of a list that are there on both sides, once the steps `gone` are let go. */
function fieldChanges(rolls: Rolls, list: ListName, gone: ReadonlySet<string>): Change[] {
  const { before, after } = sidesOf(rolls, list);
  return [...after.members.values()].flatMap((placed): Change[] => {
    const { key, member } = placed;
    // A drop that comes after a new member was added reaches into that one too.
    const old = before.members.get(key) ?? placed;
    const left = gone.size > 0 ? lettingGo(list, old.member, gone) : old.member;
    if (left === member) return [];
    const between = fieldsBetween(ownFields(list, left), ownFields(list, member));
    if (!between) return [];
    const { set, unset } = between;
    return [
      {
        change: old.id,
        ...inList(list),
        ...(Object.keys(set).length > 0 ? { set } : {}),
        ...(unset.length > 0 ? { unset } : {}),
      },
    ];
  });
}

/** The change of the head: its own fields, lists that are one whole value, and whether an empty list is in the file at all. */
function headChange(before: Fields, after: Fields, rolls: Rolls): Change[] {
  const head = (root: Fields, other: Fields) =>
    Object.fromEntries(
      Object.entries(root).filter(([key]) => {
        const list = FILE_LISTS.find((one) => one === key);
        if (list === undefined) return true;
        const { before: old, after: next } = sidesOf(rolls, list);
        if (old === EMPTY && next === EMPTY) return true;
        // What is added makes the list, and what is dropped leaves an empty one.
        return !Object.hasOwn(other, key) && isEmpty(after[key]);
      }),
    );
  const between = fieldsBetween(head(before, after), head(after, before));
  if (!between) return [];
  const { set, unset } = between;
  return [{ head: set, ...(unset.length > 0 ? { unset } : {}) }];
}

const isEmpty = (value: unknown) =>
  value === undefined || (typeof value === "object" && value !== null && Object.keys(value).length === 0);

/**
 * The changes that make `after` of `before` ([CHG3]): none only when they are equal, the order of keys aside. What keeps its order is
 * a longest common subsequence, so that the fewest members move; a step that goes to another task is one move. Members are told apart
 * by id alone: one that was renamed goes and comes. O(n log n) in the number of members.
 */
export function changesBetween(before: ProcedureFile, after: ProcedureFile): Change[] {
  if (before === after) return [];
  const rolls = rollsOf(before, after);
  const steps = sidesOf(rolls, "steps");
  const lists = LISTS.filter((list) => list !== "words");
  const gone = new Set([...steps.before.members.keys()].filter((key) => !steps.after.members.has(key)));
  const inTurn = lists.toReversed();
  // Drop before reordering, except for holders, which may still contain a member that stays.
  const holders = LISTS.filter((list) => heldBy(list) !== null);
  const changes = [
    ...inTurn.filter((list) => !holders.includes(list)).flatMap((list) => drops(rolls, list)),
    ...lists.flatMap((list) => placements(rolls, list)),
    ...holders.toReversed().flatMap((list) => drops(rolls, list)),
    ...lists.flatMap((list) => fieldChanges(rolls, list, gone)),
  ];
  return [...changes, ...wordChanges(before, after, changes), ...headChange(before, after, rolls)];
}

/** The changes of the words in other languages, once the changes before them were made: what is dropped takes its words along. */
function wordChanges(before: ProcedureFile, after: ProcedureFile, changes: readonly Change[]): Change[] {
  const isLess = before.words !== undefined && changes.some((change) => "drop" in change);
  const left = (isLess ? applyChanges(before, changes).file : null) ?? before;
  const sides = { before: rollOf(left, "words"), after: rollOf(after, "words") };
  const rolls: Rolls = new Map([["words", sides]]);
  return [
    ...drops(rolls, "words"),
    ...placements(rolls, "words"),
    ...fieldChanges(rolls, "words", new Set()),
  ];
}
