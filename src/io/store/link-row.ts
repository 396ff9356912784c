import type { Cursor, RefusalReason } from "../../core/link/index.ts";
import type { ClockOffset, Role, WireEntry } from "../../core/log/index.ts";
import type { Duration, Instant, WalkId } from "../../core/units/index.ts";

/** Something about the link that its user should know and has not yet put away. */
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
  /** Who uses this device, as told to the hub. */
  readonly name: string;
  /** The device as the hub knows it: entries of its sources are sent. */
  readonly device: string;
  readonly joinedAt: Instant;
  /** How far the hub's log was read. */
  readonly cursor: Cursor | null;
  /** Offset here up to which everything that is to be sent was settled. */
  readonly pushed: number;
  /** How often it was begun anew to send everything, so that what was offered before settles nothing; missing for never. */
  readonly round?: number;
  readonly clock: ClockOffset | null;
  /** The offset that was entered in the log last, in ms. */
  readonly loggedOffset: Duration | null;
  readonly notices: readonly KeptNotice[];
  /** Keys of entries of other devices that the hub was not heard to have, and this one may not send; missing for none. */
  readonly onlyHere?: readonly string[];
}

/** What is known of a link on joining. */
export type NewLink = Pick<
  LinkRow,
  "walk" | "origin" | "hub" | "hubName" | "role" | "name" | "device" | "joinedAt"
>;

/** An entry that no longer counts, kept with the reason. */
export interface AsideEntry {
  readonly walk: WalkId;
  readonly wire: WireEntry;
  readonly reason: RefusalReason;
  readonly at: Instant;
}

/** The {@link LinkRow.round} in which everything is sent once more. */
export function nextRound(row: LinkRow | null): number {
  return (row?.round ?? 0) + 1;
}

/** The row after joining, anew or again: what was read and sent stays settled with the same hub. */
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
