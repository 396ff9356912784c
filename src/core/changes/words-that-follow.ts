import type { Fields, ListName, ProcedureFile, TextHolder, TextList } from "../procedure/index.ts";
import { holdersByKey, listedKey, TEXT_FIELDS, textHolders, wordsKey } from "../procedure/index.ts";

type Entries = Readonly<Record<string, Fields>>;

const wordsIn = (root: Fields): Readonly<Record<string, Entries>> | null => {
  const { words } = root;
  return typeof words === "object" && words !== null ? (words as Readonly<Record<string, Entries>>) : null;
};

/** The texts of an entry, and those that they were made of, parted into what a list has a text for and the rest. */
function parted(entry: Fields, fields: ReadonlySet<string>): { readonly own: Fields; readonly rest: Fields } {
  const { of, ...texts } = entry;
  const pick = (from: Fields, isOwn: boolean) =>
    Object.fromEntries(Object.entries(from).filter(([field]) => fields.has(field) === isOwn));
  const withOf = (isOwn: boolean): Fields => {
    const ofs = pick((of ?? {}) as Fields, isOwn);
    return { ...pick(texts, isOwn), ...(Object.keys(ofs).length > 0 ? { of: ofs } : {}) };
  };
  return { own: withOf(true), rest: withOf(false) };
}

/** The fields that only this list has a text for, among everything that a key may mean. */
const fieldsOf = (list: TextList, others: readonly TextHolder[]): ReadonlySet<string> => {
  const shared = new Set<string>(others.flatMap((other) => TEXT_FIELDS[other.list]));
  return new Set(TEXT_FIELDS[list].filter((field) => !shared.has(field)));
};

/** A file with the words of every language put through `change`; a language that has none left goes. The same object where none come out otherwise. */
function eachEntry(root: Fields, change: (entries: Entries) => Entries): Fields {
  const words = wordsIn(root);
  if (!words) return root;
  const next = Object.entries(words).flatMap(([language, entries]): [string, Entries][] => {
    const changed = change(entries);
    if (changed === entries) return [[language, entries]];
    return Object.keys(changed).length > 0 ? [[language, changed]] : [];
  });
  const isSame = next.length === Object.keys(words).length && next.every(([tag, one]) => words[tag] === one);
  return isSame ? root : { ...root, words: Object.fromEntries(next) };
}

/** A file without the words of what `before` had and it has no more ([WRD4]). */
export function withoutWordsOfGone(root: Fields, before: Fields): Fields {
  if (!wordsIn(root)) return root;
  const left = textHolders(root as unknown as ProcedureFile);
  const there = new Set(left.map(listedKey));
  const gone = textHolders(before as unknown as ProcedureFile).filter((one) => !there.has(listedKey(one)));
  if (gone.length === 0) return root;
  const [byKey, goneByKey] = [holdersByKey(left), holdersByKey(gone)];
  return eachEntry(root, (entries) => {
    const kept = Object.entries(entries).flatMap(([key, entry]): [string, Fields][] => {
      const meant = goneByKey.get(key);
      if (!meant) return [[key, entry]];
      const others = byKey.get(key) ?? [];
      const fields = new Set(meant.flatMap(({ list }) => [...fieldsOf(list, others)]));
      const { rest } = parted(entry, fields);
      return Object.keys(rest).length > 0 ? [[key, rest]] : [];
    });
    return kept.length < Object.keys(entries).length || kept.some(([key, entry]) => entries[key] !== entry)
      ? Object.fromEntries(kept)
      : entries;
  });
}

/** A file in which the words of a member of a list that was called `from`, and is called `to` by now, follow it. */
export function withRenamedWords(root: Fields, list: ListName, from: string, to: string): Fields {
  if (!wordsIn(root) || list === "routes" || list === "words") return root;
  const holders = textHolders(root as unknown as ProcedureFile);
  const supplies = holders.filter((one) => one.list === "supplies");
  const renames: (readonly [TextList, string, string])[] = [[list, from, to]];
  // The id of a supply has that of its crew member in front.
  if (list === "crew")
    for (const { id } of supplies)
      if (id.startsWith(`${to} `)) renames.push(["supplies", `${from}${id.slice(to.length)}`, id]);
  const byKey = holdersByKey(holders);
  return eachEntry(root, (entries) =>
    renames.reduce<Entries>((next, [of, was, is]) => renamedIn(next, of, was, is, byKey), entries),
  );
}

function renamedIn(
  entries: Entries,
  list: TextList,
  from: string,
  to: string,
  byKey: ReadonlyMap<string, readonly TextHolder[]>,
): Entries {
  const listed = listedKey({ list, id: from });
  return [listed, from].reduce<Entries>((next, key) => {
    const entry = Object.hasOwn(next, key) ? next[key] : undefined;
    if (!entry) return next;
    const { own, rest } = parted(entry, fieldsOf(list, byKey.get(key) ?? []));
    if (Object.keys(own).length === 0) return next;
    const target = key === listed ? listedKey({ list, id: to }) : wordsKey({ list, id: to }, byKey);
    const isThere = Object.hasOwn(next, target);
    // In its place among the others, so that the lines of a file stay where they are.
    return Object.fromEntries(
      Object.entries(next).flatMap(([one, texts]): [string, Fields][] => {
        if (one === target) return [[one, bothOf(texts, own)]];
        if (one !== key) return [[one, texts]];
        return [
          ...(Object.keys(rest).length > 0 ? [[key, rest] as [string, Fields]] : []),
          ...(isThere ? [] : [[target, own] as [string, Fields]]),
        ];
      }),
    );
  }, entries);
}

/** The texts of two entries in one. */
function bothOf(entry: Fields, more: Fields): Fields {
  const of = { ...(entry["of"] as Fields | undefined), ...(more["of"] as Fields | undefined) };
  return { ...entry, ...more, ...(Object.keys(of).length > 0 ? { of } : {}) };
}
