import type { Wait } from "../core/course/index.ts";
import type { Outline } from "../core/procedure/index.ts";
import { minus } from "../core/units/index.ts";
import { words } from "../words/index.ts";
import { plainText } from "./plain-text.ts";

/** A wait as tables have room for it: who, how long, and for what, by id: `EV2 6 min for EV1`. */
export function waitText(outline: Outline, { crew, from, to, on }: Wait): string {
  const callOf = (id: string) => plainText(outline.crew[outline.lane(id)]?.call ?? id);
  const waiting = { who: callOf(crew), time: minus(to, from) };
  if (on === null) return words("cli/wait-none", waiting);
  if ("hold" in on) return words("cli/wait-hold", waiting);
  if ("crew" in on)
    return on.crew.length === 0
      ? words("cli/wait-none", waiting)
      : words("cli/wait-crew", { ...waiting, crew: on.crew.map(callOf) });
  if ("notBefore" in on) return words("cli/wait-not-before", { ...waiting, until: on.notBefore });
  return "window" in on
    ? words("cli/wait-window", { ...waiting, window: on.window })
    : words("cli/wait-lag", { ...waiting, step: on.lag });
}
