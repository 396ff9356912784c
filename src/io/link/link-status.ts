import type { LinkState } from "../../core/link/index.ts";
import type { LinkRow } from "../store/index.ts";
import type { LinkNotice, LinkStatus } from "./link-keeper.ts";
import { noticeWords } from "./notice-words.ts";

/** The status of a walk that has no link. */
export function aloneStatus(device: string): LinkStatus {
  return {
    kind: "alone",
    role: null,
    hubName: null,
    device,
    unsent: 0,
    onlyHere: 0,
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
  const { kind, unsent, heardAt, followers, beyond } = state;
  return { ...keptStatus(row), kind, unsent, heardAt, followers, beyond, words: wordsOf(state) };
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
    words: noticeWords(notice),
  }));
  const { role, hubName, device, clock, onlyHere = [] } = row;
  return { role, hubName, device, clock, notices, onlyHere: onlyHere.length };
}

function wordsOf({ kind, words, trouble, unreadable }: LinkState): string | null {
  if (kind === "ended") return words;
  if (trouble !== null) return `This tablet cannot keep up with the hub: ${trouble}. It goes on trying.`;
  if (words !== null) return words;
  if (unreadable === 0) return null;
  const entries = unreadable === 1 ? "1 entry of the hub is" : `${unreadable} entries of the hub are`;
  return `${entries} missing here: this version of the app cannot read them. Update the app.`;
}
