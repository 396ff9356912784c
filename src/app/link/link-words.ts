import type { FarHub, Follower } from "../../core/link/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { between, clockText, formatInstant, hourMinuteText, lengthText } from "../../core/units/index.ts";
import type { LinkStatus } from "../../io/link/index.ts";
import type { StoreStatus } from "../../io/store/index.ts";
import type { KeptWords } from "../follow/index.ts";

/** From when on it is said how old the last word from the other side is, in ms. */
const FRESH = 20_000;

/** From when on silence asks for the reader's eye, in ms. */
const LONG_SILENCE = 120_000;

/** How many entries are not yet sent, in words. */
export function unsentWords(unsent: number): string {
  return unsent === 0 ? "all sent" : `${unsent} not sent`;
}

/** What a reader is told of entries of other devices that the hub has not got. */
export function onlyHereWords(count: number): string {
  const [are, them] =
    count === 1 ? ["1 entry of another device is", "it"] : [`${count} entries of other devices are`, "them"];
  return `${are} only on this tablet. To bring ${them} to the hub, leave it and share the walk again with the owner’s code.`;
}

/** How long ago the other side was last heard, in words; both by the same clock. */
export function heardWords(heardAt: Instant | null, now: Instant): string {
  if (heardAt === null) return "never heard";
  const ago = Math.max(0, between(heardAt, now)) as Duration;
  return ago < 60_000 ? `heard ${Math.round(ago / 1000)} s ago` : `heard ${lengthText(ago)} ago`;
}

/** How the log is kept and linked, for the bar of the follow screen; `now` by the clock of this device. */
export function linkWords(link: LinkStatus, store: StoreStatus, now: Instant): KeptWords {
  if (store.kind === "memory") {
    return { title: "In memory only", detail: "export before closing", alarming: true, usual: false };
  }
  const ago = link.heardAt === null ? null : between(link.heardAt, now);
  switch (link.kind) {
    case "alone":
      return { title: "Alone", detail: "kept here", alarming: false, usual: true };
    case "linking":
      return {
        title: `Linking · ${heardWords(link.heardAt, now)}`,
        detail: unsentWords(link.unsent),
        alarming: link.unsent > 0 || ago === null || ago > LONG_SILENCE,
        usual: false,
      };
    case "linked":
      return {
        title: ago !== null && ago > FRESH ? `Linked · ${heardWords(link.heardAt, now)}` : "Linked",
        detail: unsentWords(link.unsent),
        alarming: false,
        usual: true,
      };
    case "ended":
      return { title: "Link ended", detail: "kept here only", alarming: true, usual: false };
  }
}

/** An instant in PET, or in UTC before the clock was started. */
export function momentWords(at: Instant, petZero: Instant | null): string {
  if (petZero === null) return `${formatInstant(at).slice(11, 19)} UTC`;
  const pet = between(petZero, at);
  return pet < 0 ? clockText(pet) : hourMinuteText(pet);
}

/** When what the hub beyond has got up to is as good as all of it, in ms. */
const AS_GOOD_AS_NOW = 15_000;

/** The same for a follower, who tells how far it has read every half minute. */
const SEEN_AS_GOOD_AS_NOW = AS_GOOD_AS_NOW + 30_000;

/** Whether a follower is another hub, which stands for everybody beyond a gap. */
export const isHub = ({ role }: Follower) => role === "relay";

/** A follower's role, in words. */
export function roleWords(follower: Follower): string {
  return isHub(follower) ? "another hub" : follower.role;
}

/** What a follower can have seen, in words. */
export function seenWords(
  { present, seenUpTo, heardAt }: Follower,
  petZero: Instant | null,
  now: Instant,
): string {
  if (seenUpTo === null) return present ? "is reading" : "has seen nothing yet";
  if (present && between(seenUpTo, now) < SEEN_AS_GOOD_AS_NOW) return "has seen all";
  const upTo = `has seen all up to ${momentWords(seenUpTo, petZero)}`;
  return present || heardAt === null ? upTo : `away · ${upTo}`;
}

/** What the hub beyond a gap can have seen, in words. */
export function beyondWords(
  { name, state, sentUpTo, unsent, heardAt, words }: FarHub,
  petZero: Instant | null,
  now: Instant,
): string {
  if (state === "refused") return `${name} takes nothing: ${words ?? "it was refused"}`;
  const seen =
    sentUpTo === null
      ? "has got nothing yet"
      : unsent === 0 && state === "linked" && between(sentUpTo, now) < AS_GOOD_AS_NOW
        ? "has got all"
        : `has got all up to ${momentWords(sentUpTo, petZero)}`;
  const waiting = unsent === 0 ? "" : ` · ${unsent} waiting to be sent`;
  const silence = state === "linked" ? "" : ` · ${heardWords(heardAt, now)}`;
  return `${name} ${seen}${waiting}${silence}`;
}
