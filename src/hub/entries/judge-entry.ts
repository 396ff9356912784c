import type { RefusalReason } from "../../core/link/index.ts";
import type { Entry, Role } from "../../core/log/index.ts";
import {
  deviceOf,
  isFromNewerVersion,
  isTooFarAhead,
  readEntry,
  roleRefusal,
  wallOf,
} from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { isSealedBy } from "../admission/index.ts";
import { longestOf } from "./entry-limits.ts";

/** Who offers entries: a device in its role, or `null` for the hub's owner, who brings back whole logs. */
export type Offerer = { readonly role: Role; readonly device: string } | null;

/** Why a value may not be kept. */
export interface RefusedOffer {
  readonly source: string | null;
  readonly id: string | null;
  readonly reason: RefusalReason;
  readonly words: Message;
}

/** An entry that may be kept, or why a value may not be. With both, the entry is refused unless it is already kept. */
export type Judgement =
  | { readonly entry: Entry; readonly refusal: RefusedOffer | null }
  | { readonly entry: null; readonly refusal: RefusedOffer };

const DAY = 24 * 3_600_000;
/** How far ahead a device's own clock may be, in ms: many are wrong, which the comparison of clocks corrects; more is no time of any walk. */
const FARTHEST_TIME = 366 * DAY;
/** Halves of characters and control characters would not come back from every store as they went in. */
const UNSTEADY = /[\p{Cc}\p{Cs}]/u;

const textOf = (value: unknown, key: "source" | "id"): string | null => {
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return null;
  const text: unknown = (value as Record<string, unknown>)[key];
  return typeof text === "string" ? text : null;
};

/** What entries are judged by beside themselves. */
export interface JudgedBy {
  readonly walk: WalkId;
  readonly offerer: Offerer;
  /** By the hub's clock. */
  readonly now: Instant;
  /** The longest entry that the store takes, in characters. */
  readonly longest: number;
  /** Whether a device was admitted by this hub, so that no other hub brings entries of it. */
  readonly isOwn: (walk: WalkId, device: string) => boolean;
  /** The key that a device is tied to in a walk; `null` for none. */
  readonly keyOf: (walk: WalkId, device: string) => string | null;
}

/** Judges a value offered as an entry of a walk. */
export function judgeEntry(value: unknown, by: JudgedBy): Judgement {
  const { walk, offerer, now, longest } = by;
  const refused = (reason: RefusalReason, words: Message, known: Entry | null = null): Judgement => ({
    entry: known,
    refusal: { source: textOf(value, "source"), id: textOf(value, "id"), reason, words },
  });
  const { entry, problem } = readEntry(value);
  if (!entry) return refused("not-an-entry", message("judge/no-entry", { why: problem }));
  const { source, id, subject } = entry.wire;
  if (UNSTEADY.test(source) || UNSTEADY.test(id)) {
    return refused("not-an-entry", message("judge/control-characters"));
  }
  if (subject !== walk) return refused("other-walk", message("judge/other-walk"));
  if (entry.read.problem !== null && !isFromNewerVersion(entry.wire)) {
    return refused("not-an-entry", message("judge/no-entry", { why: entry.read.problem }));
  }
  const mayNot = offerer && roleRefusal(entry, offerer.role, offerer.device);
  if (mayNot) return refused(mayNot.reason, message("judge/not-by-role", { why: mayNot.words }));
  const device = deviceOf(source);
  if (offerer?.role === "relay" && device !== offerer.device && by.isOwn(walk, device)) {
    return refused("other-source", message("judge/own-device"), entry);
  }
  const key = by.keyOf(walk, device);
  // An entry without a seal is taken: nothing that was marked may be lost for the want of one.
  if (key !== null && isSealedBy(key, entry) === false) {
    return refused("other-source", message("judge/seal-does-not-fit"), entry);
  }
  const length = JSON.stringify(entry.wire).length;
  const most = Math.min(longest, longestOf(entry));
  if (length > most) return refused("limit", message("judge/too-long", { length, most }), entry);
  if (isTooFarAhead(entry.hlc, now)) {
    // What is kept was not ahead when it came: it is the hub's clock that was set back.
    return refused(
      "ahead",
      message("judge/ahead", { seconds: Math.round((wallOf(entry.hlc) - now) / 1000) }),
      entry,
    );
  }
  if (entry.at - now > FARTHEST_TIME) {
    return refused("ahead", message("judge/time-ahead", { days: Math.round((entry.at - now) / DAY) }), entry);
  }
  return { entry, refusal: null };
}
