import type { Fields } from "../procedure/index.ts";

/**
 * The words of a file in other languages stand in objects: by language, by key, by field. Changes know them as members of a list, with
 * language and key for their id (`"fr iv-door"`), and the field `of` in parts (`"of do"`), so that two who put different texts of one step into words
 * do not touch the same field.
 */
const OF = "of";

const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** The words of a file as members of a list, in the order of their ids. A language without any text is a member of its own. */
export function wordsMembers(words: unknown): Fields[] {
  if (!isFields(words)) return [];
  const members = Object.entries(words).flatMap(([language, byKey]): Fields[] => {
    const entries = isFields(byKey) ? Object.entries(byKey) : [];
    return entries.length === 0
      ? [{ id: language }]
      : entries.map(([key, texts]) => ({ id: `${language} ${key}`, ...inParts(texts) }));
  });
  return members.sort((a, b) => (String(a["id"]) < String(b["id"]) ? -1 : 1));
}

function inParts(texts: unknown): Fields {
  if (!isFields(texts)) return {};
  return Object.fromEntries(
    Object.entries(texts).flatMap(([field, value]): [string, unknown][] =>
      field === OF && isFields(value) && Object.keys(value).length > 0
        ? Object.entries(value).map(([of, text]) => [`${OF} ${of}`, text])
        : [[field, value]],
    ),
  );
}

/** The words of a file that have these members: the reverse of {@link wordsMembers}. */
export function wordsOf(members: readonly Fields[]): Fields {
  const languages = new Map<string, [string, unknown][]>();
  for (const { id, ...fields } of members) {
    const [language = "", ...key] = String(id).split(" ");
    const known = languages.get(language) ?? [];
    if (key.length > 0) known.push([key.join(" "), inOne(fields)]);
    languages.set(language, known);
  }
  return Object.fromEntries([...languages].map(([language, keys]) => [language, Object.fromEntries(keys)]));
}

function inOne(fields: Fields): Fields {
  const parts = Object.entries(fields);
  const of = parts.flatMap(([field, value]): [string, unknown][] =>
    field.startsWith(`${OF} `) ? [[field.slice(OF.length + 1), value]] : [],
  );
  const own = parts.filter(([field]) => !field.startsWith(`${OF} `));
  return Object.fromEntries(of.length > 0 ? [...own, [OF, Object.fromEntries(of)]] : own);
}
