import { keyOf } from "../log/index.ts";
import type { Folded } from "../walk/index.ts";
import type { StruckReview } from "./review.ts";

/** The struck entries of a log, in the order in which they were struck. */
export function struckOf({ entries, struck }: Folded): StruckReview[] {
  return entries
    .flatMap((entry): StruckReview[] => {
      const strike = struck.get(keyOf(entry));
      if (!strike) return [];
      const { fact } = entry.read;
      const { fact: said } = strike.read;
      return [
        {
          source: entry.wire.source,
          id: entry.wire.id,
          what: entry.wire.type.replace(/^tetherline\./, ""),
          step: fact && "step" in fact ? (fact.step ?? null) : null,
          at: entry.at,
          struckAt: strike.at,
          struckBy: strike.wire.actor ?? null,
          reason: said?.name === "entry.struck" ? (said.reason ?? "") : "",
        },
      ];
    })
    .sort((a, b) => a.struckAt - b.struckAt);
}
