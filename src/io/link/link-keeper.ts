import type {
  FarHub,
  Fetching,
  Follower,
  HubWalk,
  Invitation,
  OpenInvitation,
} from "../../core/link/index.ts";
import type { ClockOffset, Role } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { Message, Said } from "../../words/index.ts";
import type { KeyLack } from "../store/index.ts";

/** Something about a link that its reader is told until they put it away. */
export interface LinkNotice {
  readonly key: string;
  readonly at: Instant;
  readonly words: Message;
}

/** How a walk is linked with a hub, for a screen. */
export interface LinkStatus {
  /** `alone` without a hub; `linked` while the hub's stream is open; `ended` once the hub has turned this device away. */
  readonly kind: "alone" | "linking" | "linked" | "ended";
  /** `null` when alone. */
  readonly role: Role | null;
  readonly hubName: string | null;
  /** This device's source, as followers know it. */
  readonly device: string;
  /** Whether the hub tied this device's source to its key, one that could be copied or not, or why it could not; `null` when alone, and for a link of an earlier version. */
  readonly key: "tied" | "copyable" | KeyLack | null;
  /** How many entries the hub has not confirmed. */
  readonly unsent: number;
  /** How many entries of other devices the hub is not known to have: they came from a file, and this device may not send them. */
  readonly onlyHere: number;
  /** How far what the hub had stored is fetched; `null` when all of it is here. What the screens show lacks the rest. */
  readonly fetching: Fetching | null;
  /** When the hub was last heard, by the clock of this device. */
  readonly heardAt: Instant | null;
  readonly followers: readonly Follower[];
  readonly beyond: readonly FarHub[];
  /** The hub's clock minus this device's; `null` before they were compared. */
  readonly clock: ClockOffset | null;
  readonly notices: readonly LinkNotice[];
  /** Why it ended, or what is wrong; `null` when nothing is known to be. */
  readonly words: Said | null;
}

/** What came of joining or sharing. */
export type JoinOutcome =
  /** The code is the owner's, which opens every walk: one of these must be chosen. */
  | { readonly kind: "which"; readonly walks: readonly HubWalk[] }
  | { readonly kind: "joined"; readonly walk: WalkId; readonly role: Role }
  | { readonly kind: "refused"; readonly words: Said }
  | { readonly kind: "unreachable"; readonly words: Said };

/** What joining a walk takes. */
export interface Joining {
  /** Where the hub is, scheme, host and port; the one that serves the page unless given. */
  readonly hub?: string;
  /** Of an invitation, or the owner's. */
  readonly code: string;
  /** Who uses this device. */
  readonly name: string;
  /** With the owner's code: which walk. */
  readonly walk?: WalkId;
}

/** What sharing a walk takes. */
export interface Sharing {
  /** As in {@link Joining}. */
  readonly hub?: string;
  readonly walk: WalkId;
  /** As the hub's console shows it. */
  readonly ownerCode: string;
  /** Who uses this device. */
  readonly name: string;
}

/**
 * What came of bringing a walk back. `back`: it is linked, and what the hub has of it comes in. `not-a-member`: the hub does not know this
 * browser in it. `other-device`: it does, as a device that this one cannot go on as, since it has begun something else.
 */
export type Recovery = "back" | "not-a-member" | "other-device" | "unreachable";

/** The links of all walks of this device. */
export interface LinkKeeper {
  /** The hub that serves the page, scheme, host and port; `null` in a native shell, where each joining says which hub. */
  readonly home: string | null;
  /** How a walk is linked; the same object until it changes. */
  status(walk: WalkId): LinkStatus;
  /** Calls back after each change of {@link status}; returns a function that ends it. A walk that is watched is linked before others. */
  watch(walk: WalkId, onChange: () => void): () => void;
  /** Joins the walk that a code is for, or with the owner's code the one that is named, as its lead. */
  join(joining: Joining): Promise<JoinOutcome>;
  /** Brings a walk of this device to the hub, with all of its entries whoever made them, and joins it as its lead. */
  share(sharing: Sharing): Promise<JoinOutcome>;
  /** Brings a walk that this device has not got back from the hub, where the browser still has its membership. */
  recover(walk: WalkId): Promise<Recovery>;
  /** Makes a code for so many devices, one unless more, good for so many minutes; rejects with a sentence for the reader as message. */
  invite(walk: WalkId, role: Role, minutes: number, devices?: number): Promise<Invitation>;
  /** The codes by which devices can still join, without the codes themselves; rejects as {@link invite} does. */
  invitations(walk: WalkId): Promise<readonly OpenInvitation[]>;
  /** Ends one of them by its name; who came by it stays. Rejects as {@link invite} does. */
  endInvitation(walk: WalkId, name: string): Promise<void>;
  /** Takes another device off a walk; rejects as {@link invite} does. */
  withdraw(walk: WalkId, device: string): Promise<void>;
  /** Takes everybody but this device off a walk and ends all codes by which one can join; resolves with how many were taken off. */
  withdrawAll(walk: WalkId): Promise<number>;
  /** Ends the link of a walk, whether or not the hub can be told; what is here stays. */
  leave(walk: WalkId): Promise<void>;
  /** Puts a notice away, for good. */
  dismiss(walk: WalkId, noticeKey: string): void;
  /** Ends all links of this page; they begin again when it is loaded anew. */
  close(): void;
}
