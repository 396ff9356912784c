import { keyOf } from "../log/index.ts";
import type { Folded } from "../walk/index.ts";
import { strikeReason } from "../walk/index.ts";
import type { StruckReview } from "./review.ts";

/** Returns the struck entries of a log, in the order in which they were struck. */
export function struckOf({ entries, struck, timeOf }: Folded): StruckReview[] {
  return entries
    .flatMap((entry): StruckReview[] => {
      const strike = struck.get(keyOf(entry));
      if (!strike) return [];
      const { fact } = entry.read;
      return [
        {
          source: entry.wire.source,
          id: entry.wire.id,
          what: entry.wire.type.replace(/^tetherline\./, ""),
          step: fact && "step" in fact ? (fact.step ?? null) : null,
          at: timeOf(entry),
          struckAt: timeOf(strike),
          struckBy: strike.wire.actor ?? null,
          reason: strikeReason(strike),
        },
      ];
    })
    .sort((a, b) => a.struckAt - b.struckAt);
}
