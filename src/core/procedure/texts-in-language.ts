import type { Procedure, ProcedureFile } from "./schema.ts";
import type { TextField, TextHolder, TextList, TextPart } from "./shown-texts.ts";
import { HEAD_KEY, listedKey, TEXT_FIELDS, textHolders, textsOfField } from "./shown-texts.ts";
import type { MemberWords } from "./words-schema.ts";

/** One text of a procedure beside what it is in another language. */
export interface LanguageText {
  readonly list: TextList;
  /** The id of the member; of the head `"."`. */
  readonly id: string;
  readonly field: TextField;
  readonly part: TextPart;
  /** The author's text. */
  readonly author: string;
  /** The text in the other language; `null` where there is none. */
  readonly text: string | null;
  /** The author's text as it was when it was translated; `null` where the file does not say. */
  readonly of: string | null;
  /** `older` where the author's text is another one than the one that was translated. */
  readonly standing: TextStanding;
  /** The key under which the words of the field stand in the file; `null` where there are none. */
  readonly key: string | null;
}

/** The words of a member, with the key that they stand under. */
interface Given {
  readonly words: MemberWords;
  readonly key: string;
}

/** How a text stands in another language. */
export type TextStanding = "there" | "older" | "missing";

/** Words of a language that have nothing to stand for ([WRD4]). */
export interface StrayWords {
  /** `no-member`: nothing has the id. `no-text`: it has no such text, or a text from another key already. `several`: more than one member has it. `too-many`: more texts than the list has. */
  readonly code: "no-member" | "no-text" | "several" | "too-many";
  readonly key: string;
  /** The field; `null` where nothing has the id. */
  readonly field: string | null;
}

/** All texts of a procedure in one other language. */
export interface LanguageTexts {
  /** In reading order, whether they have a text in the language or not. */
  readonly texts: readonly LanguageText[];
  readonly stray: readonly StrayWords[];
}

const hasText = (field: string, { list, member }: TextHolder): boolean =>
  (TEXT_FIELDS[list] as readonly string[]).includes(field) &&
  textsOfField(field as TextField, member).length > 0;

/** The members that a key may mean, by the key: an id, or a list and an id with a blank between. */
export function holdersByKey(holders: readonly TextHolder[]): ReadonlyMap<string, readonly TextHolder[]> {
  const byKey = new Map<string, TextHolder[]>();
  const note = (key: string, holder: TextHolder) => {
    const known = byKey.get(key);
    if (known) known.push(holder);
    else byKey.set(key, [holder]);
  };
  for (const holder of holders) {
    note(holder.id, holder);
    if (holder.list === "head") continue;
    if (holder.list === "supplies") note(String(holder.member["id"]), holder);
    note(listedKey(holder), holder);
  }
  return byKey;
}

/** The key under which a member's words are written: its id, with the list in front where a member of another list has the id too. */
export function wordsKey(
  { list, id }: Pick<TextHolder, "list" | "id">,
  byKey: ReadonlyMap<string, readonly TextHolder[]>,
): string {
  if (id === HEAD_KEY) return id;
  const others = (byKey.get(id) ?? []).filter((one) => one.list !== list || one.id !== id);
  return others.length > 0 ? listedKey({ list, id }) : id;
}

/** The texts of a procedure, as read or as written, beside those in another language ([WRD4]). */
export function textsInLanguage(procedure: Procedure | ProcedureFile, language: string): LanguageTexts {
  const holders = textHolders(procedure);
  const byKey = holdersByKey(holders);
  const all = procedure.words ?? {};
  const words = Object.hasOwn(all, language) ? (all[language] ?? {}) : {};
  const given = new Map<TextHolder, Map<string, Given>>();
  const stray: StrayWords[] = [];
  // What names its list counts before what may be meant for several.
  const entries = Object.entries(words).sort(([a], [b]) => Number(b.includes(" ")) - Number(a.includes(" ")));
  for (const [key, member] of entries) {
    const meant = byKey.get(key);
    if (!meant) {
      stray.push({ code: "no-member", key, field: null });
      continue;
    }
    const fields = new Set([...Object.keys(member), ...Object.keys(member.of ?? {})]);
    fields.delete("of");
    for (const field of fields) {
      const [holder, other] = meant.filter((one) => hasText(field, one) && !given.get(one)?.has(field));
      if (!holder) stray.push({ code: "no-text", key, field });
      else if (other) stray.push({ code: "several", key, field });
      else {
        const known = given.get(holder) ?? new Map<string, Given>();
        given.set(holder, known.set(field, { words: member, key }));
        if (exceeds(member, field as TextField, holder)) stray.push({ code: "too-many", key, field });
      }
    }
  }
  const texts = holders.flatMap((holder) =>
    TEXT_FIELDS[holder.list].flatMap((field) =>
      textsOfField(field, holder.member).map(([part, author]): LanguageText => {
        const { words, key = null } = given.get(holder)?.get(field) ?? {};
        const text = partOf(words?.[field], part);
        const of = partOf(words?.of?.[field], part);
        const standing = text === null ? "missing" : of !== null && of !== author ? "older" : "there";
        return { list: holder.list, id: holder.id, field, part, author, text, of, standing, key };
      }),
    ),
  );
  return { texts, stray };
}

/** The text of one part in the words of a field. */
function partOf(words: MemberWords[TextField], part: TextPart): string | null {
  if (typeof words === "string") return part === null ? words : null;
  if (Array.isArray(words)) return typeof part === "number" ? (words[part] ?? null) : null;
  const byId = (words ?? {}) as Readonly<Record<string, string>>;
  return typeof part === "string" && Object.hasOwn(byId, part) ? (byId[part] ?? null) : null;
}

/** Whether a field has words for more parts than the member has. */
function exceeds(words: MemberWords, field: TextField, { member }: TextHolder): boolean {
  const parts = textsOfField(field, member).map(([part]) => part);
  const given = words[field];
  if (typeof given !== "object") return false;
  return Array.isArray(given)
    ? given.length > parts.length
    : Object.keys(given).some((id) => !parts.includes(id));
}
