import type { Duration } from "../../core/units/index.ts";
import { formatDuration, inMinutes, inSeconds, parseDuration } from "../../core/units/index.ts";
import { readTime } from "../../core/write/index.ts";

/** More is taken for a mistake: ten days. */
const LONGEST = 10 * 24 * 60 * 60_000;

const twoDigits = (number: number) => String(number).padStart(2, "0");

/**
 * A duration of the file as it is typed: minutes, `3` or `1.5`; with colons, hours first, from one hour on and where its seconds are no
 * twentieth of a minute: `1:05`, `0:01:20`. The text itself where it is none.
 */
export function minutesText(written: string): string {
  const duration = parseDuration(written);
  if (duration === null) return written;
  const seconds = inSeconds(duration);
  if (!Number.isInteger(seconds)) return written;
  const clock = `${Math.floor(seconds / 3600)}:${twoDigits(Math.floor(seconds / 60) % 60)}`;
  if (seconds % 60 === 0) return seconds < 3600 ? String(seconds / 60) : clock;
  return seconds < 3600 && seconds % 3 === 0
    ? String(inMinutes(duration))
    : `${clock}:${twoDigits(seconds % 60)}`;
}

/**
 * A duration that was typed as minutes, as hours, minutes and seconds with colons, with units (`90 s`), or as in the file; `null` for what
 * is none. Rounded to the second.
 */
export function typedDuration(text: string): string | null {
  const typed = text.trim();
  if (parseDuration(typed) !== null) return typed;
  const time = readTime(typed, "minutes");
  if (time === null || time > LONGEST) return null;
  return formatDuration((Math.round(time / 1000) * 1000) as Duration);
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
