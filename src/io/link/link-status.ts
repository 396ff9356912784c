import type { ClockOffset, FarHub, Follower, LinkState, Role } from "../../core/log/index.ts";
import { UNLINKED } from "../../core/log/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { lengthText } from "../../core/units/index.ts";
import type { KeptNotice, LinkRow } from "../store/index.ts";

/** Something that came of the link and that the reader of this device must be told. */
export interface LinkNotice {
  readonly key: string;
  readonly at: Instant;
  readonly words: string;
}

/** How a walk on this device is linked with others. */
export interface LinkStatus {
  /** `alone`: shared with nobody; `ended`: the hub will not have this device any more. */
  readonly kind: "alone" | "linking" | "linked" | "ended";
  /** What this device may do; `null` while alone. */
  readonly role: Role | null;
  readonly hubName: string | null;
  readonly device: string;
  readonly unsent: number;
  readonly heardAt: Instant | null;
  readonly followers: readonly Follower[];
  readonly beyond: readonly FarHub[];
  readonly clock: ClockOffset | null;
  readonly notices: readonly LinkNotice[];
  /** Why it ended, or what is wrong; `null` when nothing is. */
  readonly words: string | null;
}

/** The status of a walk that is shared with nobody. */
export function aloneStatus(device: string): LinkStatus {
  return {
    kind: "alone",
    role: null,
    hubName: null,
    device,
    unsent: 0,
    heardAt: null,
    followers: [],
    beyond: [],
    clock: null,
    notices: [],
    words: null,
  };
}

/** The status of a walk from what is kept of its link and how that stands; `null` while it has not begun. */
export function statusOf(row: LinkRow, state: LinkState | null): LinkStatus {
  const { kind, unsent, heardAt, followers, beyond, words, trouble, unreadable, hello } = state ?? UNLINKED;
  const missing =
    unreadable === 0 ? null : `${unreadable} entries of the hub could not be read here and are missing.`;
  return {
    kind,
    role: hello?.role ?? row.role,
    hubName: row.hubName,
    device: row.device,
    unsent,
    heardAt,
    followers,
    beyond,
    clock: row.clock,
    notices: row.notices.map((notice) => ({ key: notice.key, at: notice.at, words: noticeWords(notice) })),
    words: trouble ?? (kind === "linked" ? missing : (words ?? missing)),
  };
}

function noticeWords({ kind, count, reason, ahead }: KeptNotice): string {
  const entries = count === 1 ? "1 entry" : `${count} entries`;
  switch (kind) {
    case "restamped":
      return `The hub's clock and this tablet's differ${ahead === null ? "" : ` by ${lengthText(Math.abs(ahead) as Duration)}`}: ${entries} made here got their place in the order by the hub's clock.`;
    case "anew":
      return `${entries} made here had a number that was taken already and got another.`;
    case "aside":
      return `${entries} made here ${count === 1 ? "was" : "were"} not accepted (${reason ?? "refused"}) and no longer ${count === 1 ? "counts" : "count"}.`;
  }
}
