import type { RefusalReason } from "../../core/link/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import type { AsideEntry, KeptNotice, LinkRow } from "./link-row.ts";

/** The row with further notices; one of the same kind and reason as an earlier one adds to its count. */
export function withNotices(link: LinkRow, notices: readonly KeptNotice[]): LinkRow {
  let all = [...link.notices];
  for (const notice of notices) {
    const same = all.find(({ kind, reason }) => kind === notice.kind && reason === notice.reason);
    all = all.filter((one) => one !== same);
    all.push({ ...notice, count: notice.count + (same?.count ?? 0) });
  }
  return { ...link, notices: all };
}

/** The notice of entries that were stamped anew; none for no entries. */
export function restampNotices(
  count: number,
  clockOffset: Duration | null,
  at: Instant,
): readonly KeptNotice[] {
  return count === 0
    ? []
    : [{ key: `restamped-${at}`, at, kind: "restamped", count, reason: null, clockOffset }];
}

/** The notice of entries that were made again under new numbers; none for no entries. */
export function anewNotices(count: number, at: Instant): readonly KeptNotice[] {
  return count === 0 ? [] : [{ key: `anew-${at}`, at, kind: "anew", count, reason: null, clockOffset: null }];
}

/** The notices of entries that were set aside, one for each reason. */
export function asideNotices(aside: readonly AsideEntry[], at: Instant): readonly KeptNotice[] {
  const counts = new Map<RefusalReason, number>();
  for (const { reason } of aside) counts.set(reason, (counts.get(reason) ?? 0) + 1);
  return [...counts].map(([reason, count]) => ({
    key: `aside-${reason}-${at}`,
    at,
    kind: "aside",
    count,
    reason,
    clockOffset: null,
  }));
}
