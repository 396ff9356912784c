import type { RefusalReason } from "../../core/link/index.ts";
import type { Entry, Role } from "../../core/log/index.ts";
import { isKnownType, isTooFarAhead, readEntry, roleRefusal, wallOf } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";

/** Who offers entries: a device in its role, or `null` for the hub's owner, who brings back whole logs. */
export type Offerer = { readonly role: Role; readonly device: string } | null;

/** Why a value may not be kept. */
export interface RefusedOffer {
  readonly source: string | null;
  readonly id: string | null;
  readonly reason: RefusalReason;
  readonly words: string;
}

/** An entry that may be kept, or why a value may not be. With both, an entry that may not be kept unless it is kept already. */
export type Judgement =
  | { readonly entry: Entry; readonly refusal: RefusedOffer | null }
  | { readonly entry: null; readonly refusal: RefusedOffer };

/** Halves of characters and control characters would not come back from every store as they went in. */
const UNSTEADY = /[\p{Cc}\p{Cs}]/u;

const textOf = (value: unknown, key: "source" | "id"): string | null => {
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return null;
  const text: unknown = (value as Record<string, unknown>)[key];
  return typeof text === "string" ? text : null;
};

/** Judges a value offered as an entry of a walk at `now`, by the hub's clock. */
export function judgeEntry(value: unknown, walk: WalkId, offerer: Offerer, now: Instant): Judgement {
  const refused = (reason: RefusalReason, words: string, known: Entry | null = null): Judgement => ({
    entry: known,
    refusal: { source: textOf(value, "source"), id: textOf(value, "id"), reason, words },
  });
  const { entry, problem } = readEntry(value);
  if (!entry) return refused("not-an-entry", `It is no entry: ${problem}.`);
  const { type, source, id, subject } = entry.wire;
  if (UNSTEADY.test(source) || UNSTEADY.test(id)) {
    return refused("not-an-entry", "It is no entry: its source or id has control characters.");
  }
  if (subject !== walk) return refused("other-walk", "Its subject is not the walk that it was sent to.");
  if (isKnownType(type) && entry.read.problem !== null) {
    return refused("not-an-entry", `It is no entry: ${entry.read.problem}.`);
  }
  const mayNot = offerer && roleRefusal(entry, offerer.role, offerer.device);
  if (mayNot) return refused(mayNot.reason, `It may not be written: ${mayNot.words}.`);
  if (isTooFarAhead(entry.hlc, now)) {
    // What is kept was not ahead when it came: it is the hub's clock that was set back.
    return refused(
      "ahead",
      `Its hlc is ${Math.round((wallOf(entry.hlc) - now) / 1000)} s ahead of the hub's clock: set the device's clock and stamp it anew.`,
      entry,
    );
  }
  return { entry, refusal: null };
}
