import type { Instant } from "../units/index.ts";
import { parseInstant } from "../units/index.ts";

/** An epoch, as whole milliseconds and the remaining fraction of one. */
export interface Epoch {
  readonly epoch: Instant;
  readonly epochRest: number;
}

const CALENDAR = /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2}:\d{2})(\.\d+)?Z?$/;
const ORDINAL = /^(\d{4})-(\d{3})T(\d{2}:\d{2}:\d{2})(\.\d+)?Z?$/;
const DAY = 86_400_000;

/**
 * Reads a date-time of CCSDS 502.0-B-3, 7.5.10 (calendar or ordinal, UTC). Returns `null` when the text is not one, or
 * names a day that does not exist.
 */
export function readEpoch(text: string): Epoch | null {
  const calendar = CALENDAR.exec(text);
  if (calendar) return withFraction(`${calendar[1]}T${calendar[2]}Z`, 0, calendar[3]);
  const ordinal = ORDINAL.exec(text);
  if (!ordinal) return null;
  const [, year, day, time, fraction] = ordinal;
  const days = Number(day) - 1;
  const epoch = withFraction(`${year}-01-01T${time}Z`, days * DAY, fraction);
  const isDay = days >= 0 && epoch !== null && new Date(epoch.epoch).getUTCFullYear() === Number(year);
  return isDay ? epoch : null;
}

function withFraction(seconds: string, later: number, fraction: string | undefined): Epoch | null {
  const whole = parseInstant(seconds);
  if (whole === null) return null;
  return splitEpoch(whole + later, Number(`0${fraction ?? ""}`) * 1000);
}

/** The epoch that is `after` milliseconds, with any fraction, later than `instant`. */
export function splitEpoch(instant: number, after: number): Epoch {
  const whole = Math.floor(after);
  return { epoch: (instant + whole) as Instant, epochRest: after - whole };
}
