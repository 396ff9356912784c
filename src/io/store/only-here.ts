import type { Entry } from "../../core/log/index.ts";
import { deviceOf, keyOf } from "../../core/log/index.ts";
import type { LinkRow } from "./link-row.ts";

/** The row after entries came from somewhere other than the hub. Those of other devices may exist only here. */
export function withUnheard(row: LinkRow, entries: readonly Entry[]): LinkRow {
  const foreign = entries.filter(({ wire }) => deviceOf(wire.source) !== row.device).map(keyOf);
  if (foreign.length === 0) return row;
  return { ...row, onlyHere: [...new Set([...(row.onlyHere ?? []), ...foreign])] };
}

/** The row after the hub was found to have entries, or they were taken out here. */
export function withHeard(row: LinkRow, entries: readonly Pick<Entry, "wire">[]): LinkRow {
  const { onlyHere = [] } = row;
  if (onlyHere.length === 0 || entries.length === 0) return row;
  const heard = new Set(entries.map(keyOf));
  const left = onlyHere.filter((key) => !heard.has(key));
  return left.length === onlyHere.length ? row : { ...row, onlyHere: left };
}
