import type { Cursor, RefusalReason } from "../../core/link/index.ts";
import type { ClockOffset, Role, WireEntry } from "../../core/log/index.ts";
import type { Duration, Instant, WalkId } from "../../core/units/index.ts";
import type { KeyLack } from "./signing-key.ts";

/** Something about a link that its user should know, until the user puts it away. */
export interface KeptNotice {
  readonly key: string;
  readonly at: Instant;
  /** `restamped`: entries got hybrid times of the hub's clock. `aside`: entries no longer count. `anew`: entries got another number. */
  readonly kind: "restamped" | "aside" | "anew";
  /** Of how many entries. */
  readonly count: number;
  /** Why, for `aside`. */
  readonly reason: RefusalReason | null;
  /** The hub's clock less the device's at that time, for `restamped`; `null` when not known. */
  readonly clockOffset: Duration | null;
}

/** A walk that is shared through a hub, as kept. */
export interface LinkRow {
  readonly walk: WalkId;
  /** Where the hub is reached: scheme, host and port. */
  readonly origin: string;
  /** The name of the hub among hubs, and for its users. */
  readonly hub: string;
  readonly hubName: string;
  readonly role: Role;
  /** What this device shows the hub; `null` where the browser keeps it in a cookie, missing for a link of an earlier version. */
  readonly token?: string | null;
  /** Who uses this device, as told to the hub. */
  readonly name: string;
  /** The device as the hub knows it: entries of its sources are sent. */
  readonly device: string;
  readonly joinedAt: Instant;
  /** The key that the hub tied the device to, in base64url; `null` for none, missing for a link of an earlier version. */
  readonly deviceKey?: string | null;
  /** Whether that key could be copied off this device; missing for a link of an earlier version, whose keys could not. */
  readonly isKeyCopyable?: boolean;
  /** Why this device had no key to prove on joining; `null` when it had one. */
  readonly keyLack?: KeyLack | null;
  /** How far the hub's log was read. */
  readonly cursor: Cursor | null;
  /** The offset in this store up to which everything that is to be sent is settled. */
  readonly pushed: number;
  /** How often sending began anew with everything; missing for never. Answers to offers of an earlier round settle nothing. */
  readonly round?: number;
  readonly clock: ClockOffset | null;
  /** The offset that was entered in the log last, in ms. */
  readonly loggedOffset: Duration | null;
  readonly notices: readonly KeptNotice[];
  /** Keys of entries of other devices that the hub is not known to have. This device may not send them; missing for none. */
  readonly onlyHere?: readonly string[];
}

/** What is known of a link on joining. */
export type NewLink = Pick<
  LinkRow,
  | "walk"
  | "origin"
  | "token"
  | "hub"
  | "hubName"
  | "role"
  | "name"
  | "device"
  | "joinedAt"
  | "deviceKey"
  | "keyLack"
  | "isKeyCopyable"
>;

/** An entry that no longer counts, kept with the reason. */
export interface AsideEntry {
  readonly walk: WalkId;
  readonly wire: WireEntry;
  readonly reason: RefusalReason;
  readonly at: Instant;
}

/** The {@link LinkRow.round} that begins when everything is to be sent once more. */
export function nextRound(row: LinkRow | null): number {
  return (row?.round ?? 0) + 1;
}

/** The row after joining. When the hub is the same as before, what was read and sent stays settled. */
export function joinedRow(before: LinkRow | null, joining: NewLink): LinkRow {
  const isSameHub = before !== null && before.origin === joining.origin && before.hub === joining.hub;
  // Each joining is compared in the log.
  if (isSameHub) return { ...before, loggedOffset: null, ...joining };
  return {
    cursor: null,
    pushed: 0,
    round: nextRound(before),
    clock: null,
    loggedOffset: null,
    notices: before?.notices ?? [],
    ...joining,
  };
}
