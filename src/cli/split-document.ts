import type { SplitAnswer, Suggestion } from "../core/split/index.ts";
import type { Duration } from "../core/units/index.ts";
import { inSeconds } from "../core/units/index.ts";

const seconds = (time: Duration | null) => (time === null ? null : inSeconds(time));

const suggestionDocument = ({ gain, ...suggestion }: Suggestion) => ({ ...suggestion, gain: seconds(gain) });

/** The best split as one JSON document. Times are in seconds, ways in metres. */
export function splitDocument(answer: SplitAnswer): object {
  const { status, isProven, before, finish, bound, changes, suggestions, moved, cost, ...counts } = answer;
  return {
    before: seconds(before),
    finish: seconds(finish),
    bound: seconds(bound),
    proven: isProven,
    status: status.replaceAll("-", " "),
    changes,
    suggestions: suggestions.map(suggestionDocument),
    moved: moved.map((step) => ({ ...step, before: seconds(step.before), start: seconds(step.start) })),
    cost: cost && {
      ...cost,
      tighter: cost.tighter.map((window) => ({
        ...window,
        before: seconds(window.before),
        after: seconds(window.after),
      })),
    },
    ...counts,
  };
}
