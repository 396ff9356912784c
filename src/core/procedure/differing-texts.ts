import type { Procedure } from "./schema.ts";
import { listedKey, TEXT_FIELDS, textHolders, textsOfField } from "./shown-texts.ts";
import type { LanguageText } from "./texts-in-language.ts";

/** What a text is told from all others of its procedure by. */
export const textName = (text: Pick<LanguageText, "list" | "id" | "field" | "part">): string =>
  `${listedKey(text)} ${text.field} ${text.part ?? ""}`;

/** The names of the texts that both of two procedures have, and of which their authors wrote different ones. */
export function differingTexts(one: Procedure, other: Procedure): ReadonlySet<string> {
  const theirs = authorTexts(other);
  return new Set(
    [...authorTexts(one)].flatMap(([name, text]) => {
      const their = theirs.get(name);
      return their === undefined || their === text ? [] : [name];
    }),
  );
}

const authorTexts = (procedure: Procedure): ReadonlyMap<string, string> =>
  new Map(
    textHolders(procedure).flatMap(({ list, id, member }) =>
      TEXT_FIELDS[list].flatMap((field) =>
        textsOfField(field, member).map(
          ([part, text]) => [textName({ list, id, field, part }), text] as const,
        ),
      ),
    ),
  );
