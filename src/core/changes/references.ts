import type { Fields, ListName } from "../procedure/index.ts";
import { CHANGE_LISTS } from "../procedure/index.ts";
import { holdersOf, isFields, replacedAt } from "./members.ts";
import { withRenamedWords } from "./words-that-follow.ts";

/** At the end of a path: the keys of the object there are the names. */
const OF_KEYS = "{keys}";

/** In a path: every value of the object there. */
const OF_VALUES = "{values}";

/** In which list a member stands that names another, and under which fields; `*` stands for every entry of an array. */
interface Reference {
  readonly in: ListName;
  readonly path: readonly string[];
}

const locations = (...key: readonly string[]): readonly Reference[] => [
  { in: "items", path: ["start", ...key] },
  { in: "items", path: ["end", ...key] },
  { in: "steps", path: ["moves", "*", "to", ...key] },
];

/** What the blanks of a fragment were filled with. */
const inBlanks = (kind: string): Reference => ({ in: "steps", path: ["from", "blanks", OF_VALUES, kind] });

/** Everything in a file that names a member of a list. A reference of a newer format is one row more. */
const REFERENCE_TABLE: Readonly<Record<ListName, readonly Reference[]>> = {
  contingencies: [],
  tasks: [],
  steps: [
    { in: "steps", path: ["after", "*"] },
    { in: "steps", path: ["after", "*", "step"] },
    { in: "watches", path: ["from"] },
    { in: "watches", path: ["until"] },
  ],
  crew: [
    { in: "steps", path: ["by", "*"] },
    { in: "steps", path: ["confirm", "by"] },
    { in: "watches", path: ["by", "*"] },
    { in: "supplies", path: ["crew"] },
    { in: "steps", path: ["or", "*", "*"] },
    { in: "steps", path: ["or", "*", "by", "*"] },
    inBlanks("crew"),
    ...locations("crew"),
    ...locations("crews", "*"),
  ],
  places: [
    { in: "crew", path: ["start"] },
    { in: "crew", path: ["tether", "anchor"] },
    { in: "routes", path: ["between", "*"] },
    { in: "steps", path: ["at"] },
    { in: "steps", path: ["to"] },
    { in: "steps", path: ["anchor"] },
    inBlanks("place"),
    ...locations("place"),
  ],
  routes: [],
  items: [{ in: "steps", path: ["moves", "*", "item"] }, inBlanks("item"), ...locations("item")],
  windows: [{ in: "steps", path: ["within", "*"] }],
  supplies: [],
  watches: [],
  states: [
    { in: "steps", path: ["needs", OF_KEYS] },
    { in: "steps", path: ["sets", OF_KEYS] },
    { in: "routes", path: ["needs", OF_KEYS] },
  ],
  pictures: [{ in: "steps", path: ["pictures", "*"] }],
  words: [],
};

/** A value with the text at the path put through `replace`; the value itself where nothing comes out otherwise. */
function rewritten(value: unknown, path: readonly string[], replace: (text: string) => string): unknown {
  const [part, ...rest] = path;
  if (part === undefined) return typeof value === "string" ? replace(value) : value;
  if (part === "*") {
    if (!Array.isArray(value)) return value;
    const next = value.map((entry: unknown) => rewritten(entry, rest, replace));
    return next.some((entry, index) => entry !== value[index]) ? next : value;
  }
  if (part === OF_VALUES) {
    if (!isFields(value)) return value;
    const next = Object.entries(value).map(([key, one]) => [key, rewritten(one, rest, replace)] as const);
    return next.some(([key, one]) => one !== value[key]) ? Object.fromEntries(next) : value;
  }
  if (part === OF_KEYS) return isFields(value) ? withKeys(value, replace) : value;
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, part)) return value;
  const fields = value as Fields;
  const next = rewritten(fields[part], rest, replace);
  return next === fields[part] ? value : { ...fields, [part]: next };
}

/** An object with its keys put through `replace`; the object itself where nothing comes out otherwise. */
function withKeys(fields: Fields, replace: (text: string) => string): Fields {
  const keys = Object.keys(fields);
  return keys.every((key) => replace(key) === key)
    ? fields
    : Object.fromEntries(keys.map((key) => [replace(key), fields[key]]));
}

/** By the list a member stands in, the ways in which it may name a member of another. */
const waysIn = (of: ListName, within: ListName): readonly (readonly string[])[] =>
  REFERENCE_TABLE[of].filter((reference) => reference.in === within).map(({ path }) => path);

const STEPS_NAMED_IN = new Map(CHANGE_LISTS.map((list) => [list, waysIn("steps", list)]));

const isGone = (name: unknown, gone: ReadonlySet<string>) => typeof name === "string" && gone.has(name);

/** A member of a list with the steps `gone` let go: entries and fields that name one are removed. The same object when it names none. */
export function lettingGo(list: ListName, member: Fields, gone: ReadonlySet<string>): Fields {
  let next = member;
  for (const [key = "", star, inner] of STEPS_NAMED_IN.get(list) ?? []) {
    const value = next[key];
    if (star === undefined) {
      if (isGone(value, gone)) {
        next = Object.fromEntries(Object.entries(next).filter(([other]) => other !== key));
      }
    } else if (Array.isArray(value)) {
      const nameOf = (entry: unknown) =>
        inner === undefined ? entry : isFields(entry) ? entry[inner] : undefined;
      if (!value.some((entry) => isGone(nameOf(entry), gone))) continue;
      next = { ...next, [key]: value.filter((entry) => !isGone(nameOf(entry), gone)) };
    }
  }
  return next;
}

/** A file with every member of some lists put through `change`; members that come out the same are shared with it. */
function eachMember(
  root: Fields,
  lists: ReadonlySet<ListName>,
  change: (list: ListName, member: Fields) => Fields,
): Fields {
  let next = root;
  for (const list of lists) {
    for (const { path, members } of holdersOf(next, list)) {
      let changed: Fields[] | null = null;
      for (const [index, member] of members.entries()) {
        const one = change(list, member);
        if (one === member) continue;
        changed ??= [...members];
        changed[index] = one;
      }
      const result = changed;
      if (result) next = replacedAt(next, path, () => result) as Fields;
    }
  }
  return next;
}

const naming = (of: ListName) => new Set(REFERENCE_TABLE[of].map(({ in: list }) => list));

/** A file in which nothing comes after the steps `gone` and no watch begins or ends with them. */
export function withoutSteps(root: Fields, gone: ReadonlySet<string>): Fields {
  return eachMember(root, naming("steps"), (list, member) => lettingGo(list, member, gone));
}

/** A file in which everything that named a member of a list by `from` names it by `to`, its words in other languages included. */
export function withRenamed(root: Fields, of: ListName, from: string, to: string): Fields {
  return withRenamedWords(withRenamedReferences(root, of, from, to), of, from, to);
}

function withRenamedReferences(root: Fields, of: ListName, from: string, to: string): Fields {
  const replace = (text: string) => (text === from ? to : text);
  const named = eachMember(
    root,
    naming(of),
    (list, member) =>
      waysIn(of, list).reduce<unknown>((value, path) => rewritten(value, path, replace), member) as Fields,
  );
  if (of === "supplies") return withRenamedSupply(named, from, to);
  // The picture under the map is named by the file itself, not by a member of a list.
  if (of === "pictures") return rewritten(named, ["site", "picture"], replace) as Fields;
  return of === "crew" ? withRenamedValues(named, replace) : named;
}

/**
 * A file in which the records bound to a supply name it by its new id: those of the steps whose first performer with a
 * supply of the old id is its owner ([OFF7]). The supply itself has its new id already.
 */
function withRenamedSupply(root: Fields, from: string, to: string): Fields {
  const [owner = "", old = ""] = from.split(" ");
  const [heir = owner, id = ""] = to.split(" ");
  if (heir !== owner || id === "" || id === old) return root;
  const [supplies] = holdersOf(root, "supplies");
  const owners = new Set(
    (supplies?.members ?? []).flatMap((one) => (one["id"] === old ? [one["crew"]] : [])),
  );
  owners.add(owner);
  return eachMember(root, new Set(["steps"]), (_, step) => {
    const by: unknown = step["by"];
    const first = Array.isArray(by) ? by.find((crew: unknown) => owners.has(crew)) : undefined;
    const replace = (text: string) => (text === old ? id : text);
    return first === owner ? (rewritten(step, ["records", "*", "supply"], replace) as Fields) : step;
  });
}

/** A file with the values of its states of crew members, which are ids, put through `replace`. */
function withRenamedValues(root: Fields, replace: (text: string) => string): Fields {
  const [states] = holdersOf(root, "states");
  const ofCrew = (states?.members ?? []).filter(({ values }) => values === "crew");
  if (ofCrew.length === 0) return root;
  const ids = ofCrew.flatMap(({ id }) => (typeof id === "string" ? id : []));
  return eachMember(root, new Set(["states", "steps", "routes"]), (list, member) => {
    const paths =
      list !== "states"
        ? ids.flatMap((id) => [
            ["needs", id],
            ["sets", id],
          ])
        : ofCrew.includes(member)
          ? [["start"], ["end"]]
          : [];
    return paths.reduce<unknown>((value, path) => rewritten(value, path, replace), member) as Fields;
  });
}
