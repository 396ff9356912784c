import type { Change, LanguageText, ProcedureFile, TextField, TextList } from "../procedure/index.ts";
import { holdersByKey, textHolders, textsInLanguage, wordsKey } from "../procedure/index.ts";

/** The field by which a change names the author's text that was translated. */
const ofField = (field: string): string => ["of", field].join(" ");

/** A text of a procedure, as the one that is put into another language. */
export type TextPlace = Pick<LanguageText, "list" | "id" | "field" | "part">;

/**
 * The changes that give a text of a procedure its text in a language, together with the author's text that was translated ([WRD4]); `null` takes it
 * out. None where nothing would change, and none for a text that is not there.
 */
export function languageTextChanges(
  file: ProcedureFile,
  language: string,
  place: TextPlace,
  value: string | null,
): readonly Change[] {
  const siblings = textsInLanguage(file, language).texts.filter(
    ({ list, id, field }) => list === place.list && id === place.id && field === place.field,
  );
  const old = siblings.find(({ part }) => part === place.part);
  if (!old || (old.text === value && (value === null || old.of === old.author))) return [];
  const next = siblings.map((one) => (one === old ? { ...one, text: value, of: value && one.author } : one));
  const key = old.key ?? wordsKey(place, holdersByKey(textHolders(file)));
  const id = `${language} ${key}`;
  const set = {
    ...asField(place.field, next, ({ text }) => text),
    ...prefixed(asField(place.field, next, ({ of }) => of)),
  };
  const entry = ownEntry(file, language, key);
  if (!entry) return Object.keys(set).length > 0 ? [{ add: { id, ...set }, list: "words", first: true }] : [];
  const fields = [place.field, ofField(place.field)].filter((field) => isIn(entry, field));
  const unset = fields.filter((field) => !Object.hasOwn(set, field));
  const others = Object.keys(entry).some((field) => field !== "of" && field !== place.field);
  if (Object.keys(set).length === 0 && !others) return [{ drop: id, list: "words" }];
  return [
    {
      change: id,
      list: "words",
      ...(Object.keys(set).length > 0 ? { set } : {}),
      ...(unset.length > 0 ? { unset } : {}),
    },
  ];
}

/** The changes that bring a language into a file that has no texts in it yet. */
export const languageAdded = (language: string): Change => ({
  add: { id: language },
  list: "words",
  first: true,
});

/** The changes that take a language out of a file with all its texts. */
export function languageDropped(file: ProcedureFile, language: string): readonly Change[] {
  const keys = Object.keys(file.words?.[language] ?? {});
  const ids = keys.length === 0 ? [language] : keys.map((key) => `${language} ${key}`);
  return ids.map((id) => ({ drop: id, list: "words" }));
}

type Entry = NonNullable<ProcedureFile["words"]>[string][string];

const ownEntry = (file: ProcedureFile, language: string, key: string): Entry | null => {
  const members = file.words?.[language];
  return members && Object.hasOwn(members, key) ? (members[key] ?? null) : null;
};

const isIn = (entry: Entry, field: string): boolean =>
  field.startsWith("of ") ? Object.hasOwn(entry.of ?? {}, field.slice(3)) : Object.hasOwn(entry, field);

/** The texts of a field as the words of a file have them: one, a list with gaps, or by the ids of records; nothing where there is none. */
function asField(
  field: TextField,
  texts: readonly LanguageText[],
  textOf: (text: LanguageText) => string | null,
): Readonly<Record<string, unknown>> {
  const all = texts.map((one) => [one.part, textOf(one)] as const);
  if (all.every(([, text]) => text === null)) return {};
  if (field === "alerts" || field === "check") {
    const last = all.findLastIndex(([, text]) => text !== null);
    return { [field]: all.slice(0, last + 1).map(([, text]) => text) };
  }
  if (field === "records") return { [field]: Object.fromEntries(all.filter(([, text]) => text !== null)) };
  return { [field]: all[0]?.[1] };
}

const prefixed = (fields: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> =>
  Object.fromEntries(Object.entries(fields).map(([field, value]) => [ofField(field), value]));

/** The texts of a file in a language that still want one, or whose author's text has changed since. */
export const openTexts = (texts: readonly LanguageText[]): readonly LanguageText[] =>
  texts.filter(({ standing }) => standing !== "there");

/** Tells the texts of a file apart. */
export const placeName = ({ list, id, field, part }: TextPlace): string =>
  JSON.stringify([list, id, field, part] satisfies [TextList, string, TextField, unknown]);
