import type { Duration } from "../../core/units/index.ts";
import type { KeptNotice, LinkRow } from "./link-row.ts";
import type { WalkSummary } from "./walk-summary.ts";

/** A walk's summary as the database holds it: databases of every version name the clock offset `ahead`. */
export type StoredWalkSummary = Omit<WalkSummary, "clockOffset"> & { readonly ahead?: Duration };

/** A notice as the database holds it, with the same older name. */
type StoredNotice = Omit<KeptNotice, "clockOffset"> & { readonly ahead: Duration | null };

/** A link's row as the database holds it. */
export type StoredLinkRow = Omit<LinkRow, "notices"> & { readonly notices: readonly StoredNotice[] };

/** The summary of a walk, read from the database. */
export function walkSummaryOf({ ahead, ...summary }: StoredWalkSummary): WalkSummary {
  return ahead === undefined ? summary : { ...summary, clockOffset: ahead };
}

/** The summary of a walk, as the database takes it. */
export function storedWalkSummary({ clockOffset, ...summary }: WalkSummary): StoredWalkSummary {
  return clockOffset === undefined ? summary : { ...summary, ahead: clockOffset };
}

/** The row of a link, read from the database. */
export function linkRowOf(row: StoredLinkRow): LinkRow {
  return { ...row, notices: row.notices.map(({ ahead, ...notice }) => ({ ...notice, clockOffset: ahead })) };
}

/** The row of a link, as the database takes it. */
export function storedLinkRow(row: LinkRow): StoredLinkRow {
  return {
    ...row,
    notices: row.notices.map(({ clockOffset, ...notice }) => ({ ...notice, ahead: clockOffset })),
  };
}
