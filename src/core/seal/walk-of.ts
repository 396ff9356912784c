import type { Entry } from "../log/index.ts";
import type { WalkId } from "../units/index.ts";

/** The entries of a log by their source. */
export interface BySource {
  readonly walk: WalkId;
  readonly bySource: ReadonlyMap<string, readonly Entry[]>;
  /** Those of another walk, which are in no list. */
  readonly others: readonly Entry[];
}

/** The entries of the walk that a log is of, by source. `null` for a log without entries. */
export function bySourceOf(entries: readonly Entry[]): BySource | null {
  const walk = walkOf(entries);
  if (walk === null) return null;
  const bySource = new Map<string, Entry[]>();
  for (const entry of entries) {
    const some = bySource.get(entry.wire.source) ?? [];
    bySource.set(entry.wire.source, some);
    if (entry.walk === walk) some.push(entry);
  }
  return { walk, bySource, others: entries.filter((entry) => entry.walk !== walk) };
}

/** The walk that a log is of: that of its opening, else the one that most entries are of. */
function walkOf(entries: readonly Entry[]): WalkId | null {
  const opening = entries.find(({ wire }) => wire.type === "tetherline.walk.opened");
  if (opening) return opening.walk;
  const counts = new Map<WalkId, number>();
  for (const { walk } of entries) counts.set(walk, (counts.get(walk) ?? 0) + 1);
  return [...counts].toSorted(([, a], [, b]) => b - a)[0]?.[0] ?? null;
}
