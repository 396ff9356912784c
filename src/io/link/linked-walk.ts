import type { LinkRow } from "../store/index.ts";
import type { Candidacy } from "./leadership.ts";
import type { LinkStatus } from "./link-keeper.ts";
import { othersStatus, ownStatus } from "./link-status.ts";
import type { RunningLink } from "./running-link.ts";

/** A walk with a link, as this page has it. */
export interface LinkedWalk {
  row: LinkRow;
  /** Missing while this page does not want to link it. */
  candidacy?: Candidacy;
  /** Missing while another page links it, or none. */
  running?: RunningLink;
  /** What another page said of it last; `null` for nothing. */
  said: LinkStatus | null;
  /** How many entries wait to be sent, as far as the store was asked. */
  unsent: number;
  status: LinkStatus;
}

/** A walk whose link this page has just heard of. */
export function newLinkedWalk(row: LinkRow, unsent: number): LinkedWalk {
  return { row, said: null, unsent, status: othersStatus(row, null, unsent) };
}

/** The status that follows from what is known of a walk at this moment. */
export function statusOf({ row, running, said, unsent }: LinkedWalk): LinkStatus {
  return running ? ownStatus(row, running.status()) : othersStatus(row, said, unsent);
}

/** Gives up linking a walk in this page. */
export function rest(linked: LinkedWalk): void {
  linked.candidacy?.end();
  delete linked.candidacy;
}

/** The most walks linked at once: a browser opens six connections to one place, and each link holds one. */
const MOST = 4;

/** Of the walks that a page would link, those that it does: first those that somebody looks at, then the newest. */
export function firstToLink(
  walks: readonly LinkedWalk[],
  isWatched: (linked: LinkedWalk) => boolean,
): readonly LinkedWalk[] {
  const rank = (linked: LinkedWalk) => (isWatched(linked) ? 1 : 0);
  return walks
    .toSorted((a, b) => rank(b) - rank(a) || b.row.joinedAt - a.row.joinedAt)
    .filter((_, index, all) => {
      // A link that has ended holds no connection.
      const before = all.slice(0, index).filter(({ status }) => status.kind !== "ended");
      return before.length < MOST;
    });
}
