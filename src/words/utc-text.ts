import type { Instant } from "../core/units/index.ts";
import { dayOfYear, formatInstant } from "../core/units/index.ts";

/** The ways in which instants of UTC are told: with the date, or with the day of the year ([WRD6]). */
export const UTC_STYLES = ["plain", "day"] as const;

export type UtcStyle = (typeof UTC_STYLES)[number];

/** How much of an instant a form shows: whether its day in the plain style, and the characters of `11:29:07.000`. */
const FORMS: Readonly<Record<string, { readonly isDated: boolean; readonly length: number }>> = {
  minute: { isDated: true, length: 5 },
  second: { isDated: true, length: 8 },
  tenth: { isDated: true, length: 10 },
  "time-minute": { isDated: false, length: 5 },
  "time-second": { isDated: false, length: 8 },
};

/** A form of time that there is not: a mistake of ours. */
export class NoSuchFormError extends Error {
  override readonly name = "NoSuchFormError";
}

/**
 * An instant in figures of UTC, cut to the form: `2026-03-01 11:29` (`minute`), `11:29:07` (`time-second`); by day of the year
 * `2026-060 11:29` (an ordinal date of ISO 8601), `060/11:29:07`.
 */
export function utcText(instant: Instant, form: string, style: UtcStyle): string {
  const cut = FORMS[form];
  if (!cut) throw new NoSuchFormError(`${form} is no form of an instant`);
  const [date = "", time = ""] = formatInstant(instant).split("T");
  const shown = time.slice(0, cut.length);
  if (style === "plain") return cut.isDated ? `${date} ${shown}` : shown;
  const day = String(dayOfYear(instant)).padStart(3, "0");
  return cut.isDated ? `${date.slice(0, -6)}-${day} ${shown}` : `${day}/${shown}`;
}
