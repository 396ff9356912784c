import { message } from "../../words/index.ts";
import type { Finding, LanguageText, Procedure, StrayWords } from "../procedure/index.ts";
import { finding, jsonPointer, languagesOf, textsInLanguage } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";

/** The longest piece of a text that a finding repeats. */
const MOST_LETTERS = 60;
const short = (text: string) => (text.length > MOST_LETTERS ? `${text.slice(0, MOST_LETTERS - 1)}…` : text);

/**
 * Findings on the texts of a procedure in other languages ([WRD4]): words for what is not there and texts that are older than those they translate are
 * cautions; how many texts a language lacks is advice.
 */
export function languageFindings(procedure: Procedure): Finding[] {
  const languages = languagesOf(procedure);
  if (languages.length === 0) return [];
  return languages.flatMap((language) => {
    const { texts, stray } = textsInLanguage(procedure, language);
    const older = texts.filter(({ standing }) => standing === "older");
    const missing = texts.filter(({ standing }) => standing === "missing").length;
    return [
      ...stray.map((one) => strayFinding(language, one)),
      ...older.map((text) => olderFinding(language, text)),
      ...(missing > 0
        ? [
            finding(
              "advice",
              "words/missing",
              jsonPointer(["words", language]),
              message("words/missing", { language, count: missing }),
              { things: [language] },
            ),
          ]
        : []),
    ];
  });
}

function strayFinding(language: string, { code, key, field }: StrayWords): Finding {
  const pointer = jsonPointer(["words", language, key, ...(field === null ? [] : [field])]);
  const said =
    code === "no-member"
      ? message("words/no-member", { language, key })
      : message(`words/${code}`, { language, key, field: field ?? "" });
  return finding("caution", `words/${code}`, pointer, said, { things: [language, key] });
}

function olderFinding(language: string, text: LanguageText): Finding {
  const { list, id, field, author, of } = text;
  const key = text.key ?? id;
  const said = message("words/older", {
    language,
    key,
    field,
    was: short(of ?? ""),
    is: short(author),
  });
  return finding("caution", "words/older", jsonPointer(["words", language, key, field]), said, {
    steps: list === "steps" ? [id as StepId] : [],
    things: [language, key],
  });
}
