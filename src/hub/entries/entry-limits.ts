import type { Entry, Role } from "../../core/log/index.ts";

const KILO = 1_000;
const MEGA = 1_000_000;

/** A procedure's file has at most 10 MiB; what goes along with it in an entry is far less than the rest. */
const LONGEST_PROCEDURE = 10 * 1024 * 1024 + 512 * 1024;

/** The longest entry of a type, in characters of JSON: what the type needs at most, with every character written as two. */
const LONGEST: ReadonlyMap<string, number> = new Map([
  ["tetherline.walk.opened", LONGEST_PROCEDURE],
  ["tetherline.plan.amended", LONGEST_PROCEDURE],
  ["tetherline.revision.kept", LONGEST_PROCEDURE],
  ["tetherline.note.made", 48 * KILO],
  // An orbit file has at most 100,000 characters.
  ["tetherline.light.chosen", 216 * KILO],
  // It names every source of the walk with the numbers that it has of it.
  ["tetherline.checkpoint.made", 216 * KILO],
]);
/** Of any other type: a reason may have 4,000 characters. */
const LONGEST_OTHER = 16 * KILO;

/** How much a walk may come to, in characters of JSON, by those who lead it; a walk of a day has some millions. */
const LARGEST_WALK = 256 * MEGA;
/** How much of it a device that marks may write, and how much there may be when it does: the rest is for those who lead. */
const LARGEST_SHARE = 32 * MEGA;
const LARGEST_FOR_MARKERS = 128 * MEGA;

/** The longest entry of a type. */
export function longestOf({ wire: { type } }: Entry): number {
  return LONGEST.get(type) ?? LONGEST_OTHER;
}

/** How much may still be written to a walk by a role, in characters. */
export function roomFor(
  role: Role | "owner",
  written: { readonly walk: number; readonly own: number },
): number {
  if (role !== "marker" && role !== "trainer") return LARGEST_WALK - written.walk;
  return Math.min(LARGEST_SHARE - written.own, LARGEST_FOR_MARKERS - written.walk);
}
