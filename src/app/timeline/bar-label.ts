import type { Outline } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import type { LaneBar } from "./lane-bar.ts";
import { performersOf } from "./step-words.ts";

/** What a screen reader says about a bar: the step, its planned times, and how it went. */
export function barLabel(outline: Outline, { entry, planned, flown }: LaneBar): string {
  return [
    words("timeline/bar", {
      number: entry.number,
      crew: performersOf(outline, entry),
      step: entry.step.do,
    }),
    planned
      ? words("timeline/bar-planned", { start: planned.start, finish: planned.finish })
      : words("timeline/bar-not-planned"),
    ...(flown ? [flownWords(flown)] : []),
  ].join(words("figures/between"));
}

function flownWords({ stage, start, finish }: NonNullable<LaneBar["flown"]>): string {
  switch (stage) {
    case "done":
      return words("timeline/bar-done", { start, finish });
    case "in-work":
      return words("timeline/bar-in-work", { start });
    case "skipped":
      return words("timeline/bar-skipped", { finish });
    case "planned":
      return words("timeline/bar-to-come");
  }
}
