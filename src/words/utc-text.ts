import type { Instant } from "../core/units/index.ts";
import { formatInstant } from "../core/units/index.ts";

/** How much of an instant is shown, by the value of `form`: characters of `2026-03-01T11:29:07.000Z`. */
const FORMS: Readonly<Record<string, readonly [from: number, to: number]>> = {
  minute: [0, 16],
  second: [0, 19],
  "time-minute": [11, 16],
  "time-second": [11, 19],
};

/** A form of time that there is not: a mistake of ours. */
export class NoSuchFormError extends Error {
  override readonly name = "NoSuchFormError";
}

/** An instant in figures of UTC, cut to the form: `2026-03-01 11:29` (`minute`), `11:29:07` (`time-second`). */
export function utcText(instant: Instant, form: string): string {
  const cut = FORMS[form];
  if (!cut) throw new NoSuchFormError(`${form} is no form of an instant`);
  return formatInstant(instant)
    .slice(...cut)
    .replace("T", " ");
}
