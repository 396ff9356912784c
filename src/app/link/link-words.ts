import type { FarHub, Follower } from "../../core/link/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { between, clockText, hourMinuteText } from "../../core/units/index.ts";
import type { LinkStatus } from "../../io/link/index.ts";
import type { StoreStatus } from "../../io/store/index.ts";
import { words } from "../../words/index.ts";
import type { KeptWords } from "../follow/index.ts";

/** The age of the last message from the other side from which it is shown, in ms. */
const FRESH = 20_000;

/** The length of a silence from which it needs the reader's attention, in ms. */
const LONG_SILENCE = 120_000;

/** The number of entries that are not sent yet, in words. */
export function unsentWords(unsent: number): string {
  return unsent === 0 ? words("link/all-sent") : words("link/not-sent", { count: unsent });
}

/** How far what the hub has of the walk is fetched, and what is not sent, in words. */
export function entriesWords({ fetching, unsent }: Pick<LinkStatus, "fetching" | "unsent">): string {
  if (fetching === null) return unsentWords(unsent);
  const fetched = words("link/fetched-of", { ...fetching });
  return unsent === 0 ? fetched : `${fetched} · ${unsentWords(unsent)}`;
}

/** What the reader is told about entries of other devices that the hub does not have. */
export function onlyHereWords(count: number): string {
  return words("link/only-here", { count });
}

/** How long ago the other side was last heard, in words. Both instants are by the same clock. */
export function heardWords(heardAt: Instant | null, now: Instant): string {
  if (heardAt === null) return words("link/never-heard");
  const ago = Math.max(0, between(heardAt, now)) as Duration;
  return ago < 60_000
    ? words("link/heard-seconds-ago", { seconds: Math.round(ago / 1000) })
    : words("link/heard-ago", { ago });
}

/** How the log is kept and linked, for the bar of the follow screen. `now` is by the clock of this device. */
export function linkWords(link: LinkStatus, store: StoreStatus, now: Instant): KeptWords {
  if (store.kind === "memory") {
    return {
      title: words("link/in-memory"),
      detail: words("link/export-before-closing"),
      alarming: true,
      usual: false,
    };
  }
  const ago = link.heardAt === null ? null : between(link.heardAt, now);
  switch (link.kind) {
    case "alone":
      return {
        title: words("link/bar-alone"),
        detail: words("link/kept-here"),
        alarming: false,
        usual: true,
      };
    case "linking":
      return {
        title: words("link/bar-linking", { heard: heardWords(link.heardAt, now) }),
        detail: unsentWords(link.unsent),
        alarming: link.unsent > 0 || ago === null || ago > LONG_SILENCE,
        usual: false,
      };
    case "linked":
      return {
        title:
          ago !== null && ago > FRESH
            ? words("link/bar-linked-heard", { heard: heardWords(link.heardAt, now) })
            : words("link/bar-linked"),
        detail: entriesWords(link),
        alarming: false,
        usual: link.fetching === null,
      };
    case "ended":
      return {
        title: words("link/bar-ended"),
        detail: words("link/kept-here-only"),
        alarming: true,
        usual: false,
      };
  }
}

/** An instant as a PET, or in UTC before the clock was started. */
export function momentWords(at: Instant, petZero: Instant | null): string {
  if (petZero === null) return words("link/at-utc", { at });
  const pet = between(petZero, at);
  return pet < 0 ? clockText(pet) : hourMinuteText(pet);
}

/** When the hub beyond has everything up to this long ago, in ms, it counts as having everything. */
const AS_GOOD_AS_NOW = 15_000;

/** The same limit for a follower, who reports how far it has read every half minute. */
const SEEN_AS_GOOD_AS_NOW = AS_GOOD_AS_NOW + 30_000;

/** True when a follower is another hub, which represents everybody beyond a gap. */
export const isHub = ({ role }: Follower) => role === "relay";

/** A follower's role, in words. */
export function roleWords(follower: Follower): string {
  return isHub(follower) ? words("link/another-hub") : words(`parts/role-${follower.role}`);
}

/** The time up to which a follower can have seen the walk, in words. */
export function seenWords(
  { present, seenUpTo, heardAt }: Follower,
  petZero: Instant | null,
  now: Instant,
): string {
  if (seenUpTo === null) return words(present ? "link/is-reading" : "link/seen-nothing");
  if (present && between(seenUpTo, now) < SEEN_AS_GOOD_AS_NOW) return words("link/seen-all");
  const moment = momentWords(seenUpTo, petZero);
  return words(present || heardAt === null ? "link/seen-up-to" : "link/away-seen-up-to", { moment });
}

/** The time up to which the hub beyond a gap can have seen the walk, in words. */
export function beyondWords(
  { name, state, sentUpTo, unsent, heardAt, words: why }: FarHub,
  petZero: Instant | null,
  now: Instant,
): string {
  if (state === "refused")
    return why === undefined || why === null
      ? words("link/hub-refused", { hub: name })
      : words("link/hub-takes-nothing", { hub: name, why });
  const isAsGoodAsAll =
    sentUpTo !== null && unsent === 0 && state === "linked" && between(sentUpTo, now) < AS_GOOD_AS_NOW;
  const got = isAsGoodAsAll ? words("link/hub-got-all", { hub: name }) : gotUpTo(name, sentUpTo, petZero);
  return [
    got,
    ...(unsent === 0 ? [] : [words("link/waiting-to-be-sent", { count: unsent })]),
    ...(state === "linked" ? [] : [heardWords(heardAt, now)]),
  ].join(" · ");
}

function gotUpTo(hub: string, sentUpTo: Instant | null, petZero: Instant | null): string {
  return sentUpTo === null
    ? words("link/hub-got-nothing", { hub })
    : words("link/hub-got-up-to", { hub, moment: momentWords(sentUpTo, petZero) });
}
