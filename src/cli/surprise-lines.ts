import type { Outline } from "../core/procedure/index.ts";
import type { SurpriseReview, SurpriseSign } from "../core/training/index.ts";
import { effectMessage, expectedCrew } from "../core/training/index.ts";
import { inWords, words } from "../words/index.ts";
import { plainText } from "./plain-text.ts";

/** What a review tells of the surprises of a walk, in lines, those of one surprise set in under its first ([TRN3]). */
export function surpriseLines(outline: Outline, reviews: readonly SurpriseReview[]): readonly string[] {
  return reviews.flatMap((review) => {
    const { surprise, began, noticed, done, cost } = review;
    const { title, expect } = surprise;
    const what = { title: plainText(title), effect: plainText(inWords(effectMessage(outline, surprise))) };
    if (began === null) return [words("cli/surprise-never", what)];
    return [
      words("cli/surprise-came", { ...what, at: began }),
      `  ${words("cli/surprise-expected", {
        crew: expectedCrew(outline, surprise).map(plainText),
        time: expect.within,
        notice: plainText(expect.notice),
        act: plainText(expect.act),
      })}`,
      ...(noticed === null ? [`  ${words("cli/surprise-unnoticed")}`] : done.map(signLine)),
      ...(cost === null
        ? []
        : [
            `  ${words("cli/surprise-cost", { time: cost.finish, way: cost.finish < 0 ? "earlier" : "later" })}`,
          ]),
      ...(cost?.margin
        ? [`  ${words("cli/surprise-margin", { before: cost.margin.before, after: cost.margin.after })}`]
        : []),
      ...(cost?.supplies ?? []).map(
        ({ supply, before, after }) =>
          `  ${words("cli/surprise-supply", {
            supply: supply.label ?? supply.id,
            crew: expectedCall(outline, supply.crew),
            before: { value: before, unit: supply.unit },
            after: { value: after, unit: supply.unit },
          })}`,
      ),
    ];
  });
}

const expectedCall = (outline: Outline, crew: string) => outline.crew[outline.lane(crew)]?.call ?? crew;

function signLine({ at, actor, what, said }: SurpriseSign): string {
  const entered = { at, who: plainText(actor ?? ""), what: inWords(what) };
  const why = plainText(inWords(said));
  return `  ${why ? words("cli/surprise-sign-said", { ...entered, said: why }) : words("cli/surprise-sign", entered)}`;
}
