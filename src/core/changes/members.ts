import type { Fields, ListName, PathPart } from "../procedure/index.ts";
import { heldBy, homesOf, idOf, keyFor } from "./list-table.ts";
import { wordsMembers, wordsOf } from "./words-members.ts";

/** Whether a JSON value is an object, and no list. */
export const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** One array of members: the plan's tasks, the tasks of a contingency, the steps of a task, the crew … */
export interface Holder {
  /** The way to the array from the root of the file. */
  readonly path: readonly PathPart[];
  /** The id of the task or contingency it stands in; `null` for what stands in the file itself. */
  readonly id: string | null;
  /** In their order; none where the array is left out of the file. */
  readonly members: readonly Fields[];
}

const listIn = (fields: Fields, list: ListName): readonly Fields[] => {
  const value = fields[list];
  return Array.isArray(value) ? (value as readonly Fields[]) : [];
};

/** Every array in which members of a list stand, in reading order, contingencies last. */
export function holdersOf(root: Fields, list: ListName): Holder[] {
  return homesOf(list).flatMap((home): Holder[] => {
    if (list === "words") return [{ path: [list], id: null, members: wordsMembers(root[list]) }];
    if (home === "file") return [{ path: [list], id: null, members: listIn(root, list) }];
    return holdersOf(root, home).flatMap(({ path, members }) =>
      members.map((member, index) => ({
        path: [...path, index, list],
        id: idOf(home, member),
        members: listIn(member, list),
      })),
    );
  });
}

/** What stands in the file where these are the members of a list: the words stand in objects, all others in the list itself. */
export const asListed = (list: unknown, members: readonly Fields[]): unknown =>
  list === "words" ? wordsOf(members) : members;

/** A member with where it stands. */
export interface Placed {
  /** The id in the form in which two ids of the same member are equal. */
  readonly key: string;
  /** The id as written. */
  readonly id: string;
  /** The id of the task or contingency it stands in; `null` for what stands in the file itself. */
  readonly holder: string | null;
  readonly member: Fields;
}

/** The members of one list over a whole file. */
export interface Roll {
  readonly members: ReadonlyMap<string, Placed>;
  /** The keys of each holder's members in order, by the holder's id. */
  readonly orders: ReadonlyMap<string | null, readonly string[]>;
  /** True when two members have one id, so that ids do not tell them apart. */
  readonly doubled: boolean;
}

/** Calls the roll of one list. */
export function rollOf(root: Fields, list: ListName): Roll {
  const members = new Map<string, Placed>();
  const orders = new Map<string | null, readonly string[]>();
  let count = 0;
  for (const { id: holder, members: inHolder } of holdersOf(root, list)) {
    const keys = inHolder.map((member) => {
      const id = idOf(list, member) ?? "";
      const key = keyFor(list, id);
      members.set(key, { key, id, holder, member });
      return key;
    });
    count += keys.length;
    orders.set(holder, keys);
  }
  return { members, orders, doubled: members.size < count };
}

/** A member's own fields: those of the lists it holds are left out. */
export function ownFields(list: ListName, member: Fields): Fields {
  const held = heldBy(list);
  if (held === null) return member;
  return Object.fromEntries(Object.entries(member).filter(([key]) => key !== held));
}

/** A JSON value with the value at a path replaced; what is off the path is shared, nothing is changed in place. */
export function replacedAt(
  value: unknown,
  path: readonly PathPart[],
  replace: (old: unknown) => unknown,
): unknown {
  const [part, ...rest] = path;
  if (part === undefined) return replace(value);
  if (Array.isArray(value)) {
    return value.map((entry: unknown, index) => (index === part ? replacedAt(entry, rest, replace) : entry));
  }
  const fields = (value ?? {}) as Fields;
  return { ...fields, [part]: replacedAt(fields[part], rest, replace) };
}
