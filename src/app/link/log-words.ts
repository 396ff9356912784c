import { LIBRARY } from "../../core/library/index.ts";
import type { Role } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { LinkStatus } from "../../io/link/index.ts";
import { words } from "../../words/index.ts";
import { onlyHereWords } from "./link-words.ts";

type Offered = Exclude<Role, "relay">;

/** What a link panel says otherwise of a walk than of a library, which goes between devices and hubs in the same way. */
interface LogWords {
  /** The roles that others may be let in with, the likeliest first. */
  readonly offered: readonly Offered[];
  readonly mayWith: (role: Offered) => string;
  readonly takeOff: (follower: string) => string;
  readonly takeAllOffQuestion: () => string;
  readonly takeAllOffHow: (others: number) => string;
  readonly allTakenOff: (count: number) => string;
  readonly key: (key: NonNullable<LinkStatus["key"]>) => string;
  readonly onlyHere: (count: number) => string;
  readonly scanOrOpen: (host: string) => string;
}

const OF_WALK: LogWords = {
  offered: ["marker", "watcher", "lead", "trainer"],
  mayWith: (role) => words(`link/offer-${role}-may`),
  takeOff: (follower) =>
    follower === "" ? words("link/take-unnamed-off") : words("link/take-follower-off", { follower }),
  takeAllOffQuestion: () => words("link/take-all-off-question"),
  takeAllOffHow: (others) => words("link/take-all-off-how", { others }),
  allTakenOff: (count) => words("link/all-taken-off", { count }),
  key: (key) => words(`link/key-${key}`),
  onlyHere: onlyHereWords,
  scanOrOpen: (host) => words("link/scan-or-open", { host }),
};

const OF_LIBRARY: LogWords = {
  // A marker may do no more than a watcher in a library, and nothing is rehearsed there.
  offered: ["watcher", "lead"],
  mayWith: (role) => words(role === "lead" ? "library-link/lead-may" : "library-link/reader-may"),
  takeOff: (follower) =>
    follower === ""
      ? words("library-link/take-unnamed-off")
      : words("library-link/take-follower-off", { follower }),
  takeAllOffQuestion: () => words("library-link/take-all-off-question"),
  takeAllOffHow: (others) => words("library-link/take-all-off-how", { others }),
  allTakenOff: (count) => words("library-link/all-taken-off", { count }),
  key: (key) => words(`library-link/key-${key}`),
  onlyHere: (count) => words("library-link/only-here", { count }),
  scanOrOpen: (host) => words("library-link/scan-or-open", { host }),
};

/** The words of the link of a log. */
export const logWords = (walk: WalkId): LogWords => (walk === LIBRARY ? OF_LIBRARY : OF_WALK);
