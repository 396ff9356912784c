import type { Fields } from "./change.ts";
import { differingTexts, textName } from "./differing-texts.ts";
import { directionOf, languageAtHand } from "./language-tag.ts";
import type { Procedure } from "./schema.ts";
import type { TextField, TextList, TextPart } from "./shown-texts.ts";
import { listedKey, withTexts } from "./shown-texts.ts";
import type { LanguageText, TextStanding } from "./texts-in-language.ts";
import { textsInLanguage } from "./texts-in-language.ts";

/** A procedure with its texts in one language, and how each text stands in it. */
export interface InLanguage {
  /** The same procedure, id by id and in the same order: only texts differ. */
  readonly procedure: Procedure;
  /** The tag of the language; `null` for the author's. */
  readonly language: string | null;
  /** How many texts are the author's for want of others, and how many are older than the texts they translate. */
  readonly missing: number;
  readonly older: number;
  /** How the texts of a field stand: the worst of its parts counts, or of the one part that is named. */
  standing(list: TextList, id: string, field: TextField, part?: TextPart): TextStanding;
}

/** The languages in which a procedure carries texts beside the author's, in the order of its file. */
export const languagesOf = (procedure: Pick<Procedure, "words">): readonly string[] =>
  Object.keys(procedure.words ?? {});

const AS_WRITTEN: InLanguage["standing"] = () => "there";

/**
 * A procedure with the texts that it carries in a language ([WRD4]); where one is missing, the author's stands. With `null`, or a language that it does not
 * carry, it is the same object, as written. `marking` puts marks into the texts themselves, labels aside. `beside` is another revision that is shown in the
 * language beside it: a text that both have and that differs is told as written, since translations may hide what differs, and so is all of a procedure
 * that carries no such language.
 */
export function inLanguage(
  procedure: Procedure,
  language: string | null,
  marking: Marking | null = null,
  beside: Procedure | null = null,
): InLanguage {
  const tag = language && tagIn(procedure, language, beside);
  if (tag === null) return { procedure, language: null, missing: 0, older: 0, standing: AS_WRITTEN };
  const { texts } = textsInLanguage(procedure, tag);
  const byMember = new Map<string, LanguageText[]>();
  const isolates = directionOf(tag) === "rtl";
  const differing = beside && differingTexts(procedure, beside);
  for (const found of texts) {
    const one: LanguageText = differing?.has(textName(found))
      ? { ...found, text: null, standing: "missing" }
      : found;
    const own = isolates && one.text !== null ? { ...one, text: isolated(one.text) } : one;
    const text = marking && one.standing !== "there" && !UNMARKED.has(one.field) ? marked(own, marking) : own;
    const name = listedKey(text);
    const known = byMember.get(name);
    if (known) known.push(text);
    else byMember.set(name, [text]);
  }
  return {
    procedure: inWordsOf(procedure, byMember),
    language: tag,
    missing: texts.filter((one) => one.standing === "missing").length,
    older: texts.filter((one) => one.standing === "older").length,
    standing: (list, id, field, part) =>
      worstOf(
        (byMember.get(listedKey({ list, id })) ?? []).filter(
          (one) => one.field === field && (part === undefined || one.part === part),
        ),
      ),
  };
}

/** The tag of the texts that are asked of a procedure in a language; `null` where they are the author's. Beside another one it may be one that it does not carry. */
function tagIn(procedure: Procedure, language: string, beside: Procedure | null): string | null {
  const own = languagesOf(procedure);
  if (own.includes(language)) return language;
  if (!beside || (procedure.language && languageAtHand(language, [procedure.language]))) return null;
  return languageAtHand(language, own) ?? language;
}

const marked = (one: LanguageText, marking: Marking): LanguageText => ({
  ...one,
  text: marking(one.text ?? one.author, one.standing),
});

/** Letters of the scripts from right to left; a call sign such as EV1 has none. */
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufeff]/;

/**
 * A text from right to left as it stands in a sentence of another language: isolated (UAX #9), so that it does not turn the order of the
 * figures beside it.
 */
const isolated = (text: string): string => (!RIGHT_TO_LEFT.test(text) ? text : `\u2068${text}\u2069`);

const STANDINGS: readonly TextStanding[] = ["missing", "older", "there"];

const worstOf = (texts: readonly LanguageText[]): TextStanding =>
  STANDINGS.find((standing) => texts.some((one) => one.standing === standing)) ?? "there";

/** How a text is told that stands where no mark can stand beside it: with the mark in it. */
export type Marking = (text: string, standing: TextStanding) => string;

/** Labels stand within sentences and on the map, where a mark would be taken for a part of the name. */
const UNMARKED: ReadonlySet<TextField> = new Set(["label", "call", "size", "records"]);

/** A member with its texts in another language; the same object where it has none. */
function inOtherWords<Member extends object>(
  list: TextList,
  id: string,
  member: Member,
  byMember: ReadonlyMap<string, readonly LanguageText[]>,
): Member {
  const texts = (byMember.get(listedKey({ list, id })) ?? []).filter((one) => one.text !== null);
  const fields = new Set(texts.map(({ field }) => field));
  return [...fields].reduce<Fields>(
    (next, field) =>
      withTexts(
        next,
        field,
        (part) => texts.find((one) => one.field === field && one.part === part)?.text ?? null,
      ),
    member as Fields,
  ) as Member;
}

function inWordsOf(procedure: Procedure, byMember: ReadonlyMap<string, readonly LanguageText[]>): Procedure {
  const each = <Member extends { readonly id: string }>(
    list: TextList,
    members: readonly Member[],
  ): Member[] => members.map((member) => inOtherWords(list, member.id, member, byMember));
  const tasks = (members: Procedure["tasks"]): Procedure["tasks"] =>
    each("tasks", members).map((task) => ({
      ...task,
      steps: each("steps", task.steps).map((step) =>
        step.decide
          ? { ...step, decide: inOtherWords("decisions", step.decide.id, step.decide, byMember) }
          : step,
      ),
    }));
  return {
    ...inOtherWords("head", ".", procedure, byMember),
    tasks: tasks(procedure.tasks),
    contingencies: each("contingencies", procedure.contingencies).map((one) => ({
      ...one,
      tasks: tasks(one.tasks),
    })),
    crew: each("crew", procedure.crew),
    places: each("places", procedure.places),
    items: each("items", procedure.items),
    states: each("states", procedure.states),
    windows: each("windows", procedure.windows),
    supplies: procedure.supplies.map((supply) =>
      inOtherWords("supplies", `${supply.crew} ${supply.id}`, supply, byMember),
    ),
    watches: each("watches", procedure.watches),
    pictures: each("pictures", procedure.pictures),
  };
}
