import type { LinkState } from "../../core/link/index.ts";
import type { Said } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { LinkRow } from "../store/index.ts";
import type { LinkNotice, LinkStatus } from "./link-keeper.ts";
import { noticeMessage } from "./notice-message.ts";

/** The status of a walk that has no link. */
export function aloneStatus(device: string): LinkStatus {
  return {
    kind: "alone",
    role: null,
    hubName: null,
    device,
    key: null,
    unsent: 0,
    onlyHere: 0,
    fetching: null,
    heardAt: null,
    followers: [],
    beyond: [],
    clock: null,
    notices: [],
    words: null,
  };
}

/** The status of a walk that is linked by this page. */
export function ownStatus(row: LinkRow, state: LinkState): LinkStatus {
  const { kind, unsent, fetching, heardAt, followers, beyond } = state;
  return { ...keptStatus(row), kind, unsent, fetching, heardAt, followers, beyond, words: wordsOf(state) };
}

/** The status of a walk as another page said it, or `null` when none did. */
export function othersStatus(row: LinkRow, said: LinkStatus | null, unsent: number): LinkStatus {
  const kept = keptStatus(row);
  return said ? { ...said, ...kept } : { ...aloneStatus(row.device), ...kept, kind: "linking", unsent };
}

function keptStatus(row: LinkRow) {
  const notices: readonly LinkNotice[] = row.notices.map((notice) => ({
    key: notice.key,
    at: notice.at,
    words: noticeMessage(notice),
  }));
  const { role, hubName, device, clock, deviceKey = null, keyLack = null, onlyHere = [] } = row;
  const tied = row.isKeyCopyable === true ? "copyable" : "tied";
  const key: LinkStatus["key"] = deviceKey === null ? keyLack : tied;
  return { role, hubName, device, key, clock, notices, onlyHere: onlyHere.length };
}

function wordsOf({ kind, words, trouble, unreadable }: LinkState): Said | null {
  if (kind === "ended") return words;
  if (trouble !== null) return message("link/trouble-here", { trouble });
  if (words !== null) return words;
  return unreadable === 0 ? null : message("link/unreadable", { count: unreadable });
}
