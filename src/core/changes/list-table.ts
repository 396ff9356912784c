import type { Fields, ListName } from "../procedure/index.ts";
import { CHANGE_LISTS } from "../procedure/index.ts";

/** What the vocabulary of changes knows of one list. A list of a newer format is one row more. */
interface ListRow {
  /** Where the list stands: in the file itself, in each member of another list, or in both. */
  readonly within: readonly ("file" | ListName)[];
  /** What makes a member's id; its field `id` unless given. `null` where the member has none. */
  readonly idOf?: (member: Fields) => string | null;
  /** The form of an id in which two that mean the same member are equal; the id itself unless given. */
  readonly keyOf?: (id: string) => string;
  /** The fields of a member that has another id; `{id}` unless given. */
  readonly withId?: (member: Fields, id: string) => Fields;
}

const IN_FILE = ["file"] as const;
/** What stands between two ids, whatever it is; ids hold small letters, digits and hyphens only. */
const BETWEEN_IDS = /[^a-z0-9-]+/;

const routeId = ({ between }: Fields) => (Array.isArray(between) ? between.join(" ") : null);
const supplyId = ({ crew, id }: Fields) =>
  typeof crew === "string" && typeof id === "string" ? `${crew} ${id}` : null;

/** Of the words of a member the language and the key; of a language that has none yet the language alone. */
function wordsId({ id, ...texts }: Fields): string | null {
  if (typeof id !== "string") return null;
  return id.includes(" ") || Object.keys(texts).length === 0 ? id : null;
}

function renamedSupply(member: Fields, id: string): Fields {
  const [first = "", second] = id.split(BETWEEN_IDS);
  return second === undefined ? { ...member, id: first } : { ...member, crew: first, id: second };
}

const LIST_TABLE: Readonly<Record<ListName, ListRow>> = {
  contingencies: { within: IN_FILE },
  tasks: { within: ["file", "contingencies"] },
  steps: { within: ["tasks"] },
  crew: { within: IN_FILE },
  places: { within: IN_FILE },
  routes: {
    within: IN_FILE,
    idOf: routeId,
    keyOf: (id) => id.split(BETWEEN_IDS).sort().join(" "),
    withId: (member, id) => ({ ...member, between: id.split(BETWEEN_IDS) }),
  },
  items: { within: IN_FILE },
  windows: { within: IN_FILE },
  supplies: {
    within: IN_FILE,
    idOf: supplyId,
    keyOf: (id) => id.split(BETWEEN_IDS).join(" "),
    withId: renamedSupply,
  },
  watches: { within: IN_FILE },
  states: { within: IN_FILE },
  pictures: { within: IN_FILE },
  words: { within: IN_FILE, idOf: wordsId },
};

/** The lists whose members hold other lists come before those they hold. */
export const LISTS: readonly ListName[] = ["contingencies", "tasks", "steps"].concat(
  CHANGE_LISTS.filter((list) => !["contingencies", "tasks", "steps"].includes(list)),
) as ListName[];

/** The lists that stand in the file itself. */
export const FILE_LISTS: readonly ListName[] = CHANGE_LISTS.filter((list) =>
  LIST_TABLE[list].within.includes("file"),
);

/** Where a list stands: in the file, in the members of other lists. */
export const homesOf = (list: ListName): readonly ("file" | ListName)[] => LIST_TABLE[list].within;

/** The list that each member of this one holds; `null` for most. */
export const heldBy = (list: ListName): ListName | null =>
  CHANGE_LISTS.find((other) => LIST_TABLE[other].within.includes(list)) ?? null;

/** The id of a member as it is written in a change; `null` where it has none. */
export function idOf(list: ListName, member: Fields): string | null {
  // A whole value that a change sets may hold anything.
  if (typeof member !== "object" || member === null) return null;
  const own = LIST_TABLE[list].idOf;
  if (own) return own(member);
  return typeof member["id"] === "string" ? member["id"] : null;
}

/** The form of an id in which two that mean the same member are equal. */
export const keyFor = (list: ListName, id: string): string => LIST_TABLE[list].keyOf?.(id) ?? id;

/** A member under another id. */
export const withId = (list: ListName, member: Fields, id: string): Fields =>
  LIST_TABLE[list].withId?.(member, id) ?? { ...member, id };

/** Tells the members with an id from all others. */
export function hasId(list: ListName, id: string): (member: Fields) => boolean {
  if (!LIST_TABLE[list].idOf) return (member) => member["id"] === id;
  const key = keyFor(list, id);
  return (member) => {
    const own = idOf(list, member);
    return own !== null && keyFor(list, own) === key;
  };
}
