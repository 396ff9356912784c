import { formatDuration } from "../units/index.ts";
import type { Surprise } from "./surprises-file.ts";

/** A surprise as JSON, its times written as in a file of surprises. */
export function surpriseText({ when, does, expect, ...rest }: Surprise): string {
  const said = {
    ...rest,
    when:
      "pet" in when
        ? { pet: formatDuration(when.pet) }
        : "from" in when
          ? { from: formatDuration(when.from), to: formatDuration(when.to) }
          : when,
    does: "for" in does ? { ...does, for: formatDuration(does.for) } : does,
    expect: { ...expect, within: formatDuration(expect.within) },
  };
  return JSON.stringify(said);
}
