import type { Fit, FittedSet } from "../core/fit/index.ts";
import type { Duration } from "../core/units/index.ts";
import { inSeconds } from "../core/units/index.ts";
import { inWords } from "../words/index.ts";

const seconds = (time: Duration | null) => (time === null ? null : inSeconds(time));

const setDocument = ({ left, finish, margin, ...set }: FittedSet) => ({
  ...set,
  finish: inSeconds(finish),
  margin: seconds(margin),
  left: left.map(({ code, message, things }) => ({ code, things, message: inWords(message) })),
});

/** What fits, as one JSON document. Times are in seconds, shares from 0 to 1. `shortBy` is only there when nothing fits. */
export function fitDocument({ verdict, shortBy, sets, fewest, bound, tried, essential }: Fit): object {
  return {
    verdict: verdict.replaceAll("-", " "),
    ...(verdict === "does-not-fit" ? { shortBy: seconds(shortBy) } : {}),
    sets: sets.map(setDocument),
    fewest: fewest && setDocument(fewest),
    bound,
    tried,
    essential: essential && setDocument(essential),
  };
}
