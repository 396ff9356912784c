import type { Duration, Instant } from "../units/index.ts";
import { later } from "../units/index.ts";

/** The clock by which times stand on a sheet of paper. */
export type PaperClock = "pet" | "utc";

const DAY = 86_400_000;

/** Hours and minutes, with seconds where they were noted. A tablet's number keys have no colon, so a point counts too. */
const TIME = /^(\d{1,3})[:.,]([0-5]\d)(?:[:.,]([0-5]\d))?$/;

/**
 * The instant of a time as it was written on paper: `1:05` or `1:05:30`, in PET or UTC. A UTC time has no date, and is
 * taken as the latest such time up to `now`; where that lies before PET 0, as whichever of it and the next one is less far
 * outside the walk. Returns `null` for a text that is no time.
 */
export function paperTime(text: string, clock: PaperClock, petZero: Instant, now: Instant): Instant | null {
  const [, hours, minutes, seconds = "0"] = TIME.exec(text.trim()) ?? [];
  if (hours === undefined || minutes === undefined) return null;
  const time = ((Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds)) * 1000;
  if (clock === "pet") return later(petZero, time as Duration);
  if (time >= DAY) return null;
  const today = Math.floor(now / DAY) * DAY + time;
  const last = today > now ? today - DAY : today;
  const isOutside = last < petZero && petZero - last > last + DAY - now;
  return (isOutside ? last + DAY : last) as Instant;
}
