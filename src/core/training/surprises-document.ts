import type { Say } from "../../words/index.ts";
import { inSeconds } from "../units/index.ts";
import type { SurpriseReview } from "./surprise-review.ts";
import type { SurpriseSign } from "./surprise-signs.ts";
import { surpriseText } from "./surprise-text.ts";

/** The surprises of a review as JSON, times in seconds of PET. `say` words what the program says. */
export function surprisesDocument(reviews: readonly SurpriseReview[], say: Say): readonly object[] {
  const sign = ({ at, actor, what, said }: SurpriseSign) => ({
    at: inSeconds(at),
    actor,
    what: say(what),
    said: say(said),
  });
  return reviews.map(({ surprise, isFired, began, over, noticed, isWithin, done, cost }) => ({
    surprise: JSON.parse(surpriseText(surprise)) as unknown,
    fired: isFired,
    began: began === null ? null : inSeconds(began),
    over: over === null ? null : inSeconds(over),
    noticed: noticed === null ? null : sign(noticed),
    within: isWithin,
    done: done.map(sign),
    cost:
      cost === null
        ? null
        : {
            finish: inSeconds(cost.finish),
            margin:
              cost.margin === null
                ? null
                : { before: inSeconds(cost.margin.before), after: inSeconds(cost.margin.after) },
            supplies: cost.supplies.map(({ supply, before, after }) => ({
              crew: supply.crew,
              supply: supply.id,
              unit: supply.unit,
              before,
              after,
            })),
          },
  }));
}
