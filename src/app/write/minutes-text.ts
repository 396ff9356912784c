import type { Duration } from "../../core/units/index.ts";
import { formatDuration, inMinutes, parseDuration } from "../../core/units/index.ts";

const MINUTE = 60_000;
/** More is taken for a mistake: ten days. */
const LONGEST = 10 * 24 * 60;

/** A duration of the file as minutes, as it is typed: `3`, `1.5`; hours with a colon from one hour on: `1:05`. The text itself where it is none. */
export function minutesText(written: string): string {
  const duration = parseDuration(written);
  if (duration === null) return written;
  const minutes = inMinutes(duration);
  if (minutes < 60 || !Number.isInteger(minutes)) return String(minutes);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

/** A duration that was typed as minutes, as hours and minutes with a colon, or as in the file; `null` for what is none. */
export function typedDuration(text: string): string | null {
  const typed = text.trim().replace(",", ".");
  if (parseDuration(typed) !== null) return typed;
  const [, hours, minutes] = /^(\d{1,3}):([0-5]\d(?:\.\d+)?)$/.exec(typed) ?? [];
  const total = hours === undefined ? Number(typed) : Number(hours) * 60 + Number(minutes);
  if (typed === "" || !Number.isFinite(total) || total < 0 || total > LONGEST) return null;
  return formatDuration((Math.round((total * MINUTE) / 1000) * 1000) as Duration);
}

type FileTime = string | { readonly low: string; readonly likely: string; readonly high: string };

/** A step's time as it is typed: `3`, or low, likely and high with strokes: `2/3/6`. */
export const timeText = (time: FileTime | undefined): string =>
  time === undefined
    ? ""
    : typeof time === "string"
      ? minutesText(time)
      : [time.low, time.likely, time.high].map(minutesText).join("/");

/** A step's time that was typed: one duration, or low, likely and high; `null` for what is none. */
export function typedTime(text: string): FileTime | null {
  const parts = text.split("/").map(typedDuration);
  const [low, likely, high] = parts;
  if (parts.some((part) => part === null)) return null;
  if (parts.length === 1) return low ?? null;
  return parts.length === 3 && low && likely && high ? { low, likely, high } : null;
}
