import type { FactName } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { WalkPhase } from "../../core/walk/index.ts";
import type { WalkMark } from "./walk-mark.ts";
import type { WalkSummary } from "./walk-summary.ts";

/** A walk as a list of walks shows it, without folding its log. */
export interface WalkCard {
  readonly walk: WalkId;
  /** The id of the procedure; `null` when its opening is not here, or does not say. */
  readonly procedure: string | null;
  readonly revision: string | null;
  readonly title: string | null;
  /** `null` when the opening of the walk is not here (a log that came without its first line). */
  readonly mode: "live" | "rehearsal" | null;
  readonly openedAt: Instant | null;
  readonly phase: WalkPhase;
  /** The latest moment at which something in its log happened. */
  readonly lastAt: Instant | null;
  /** How many entries are here. */
  readonly entries: number;
}

/** The keys of struck marks. Strikes are taken from the last to the first: one that is itself struck does nothing, and none reaches forward. */
function struckOf(marks: readonly WalkMark[]): ReadonlySet<string> {
  const places = new Map(marks.map(({ key }, index) => [key, index]));
  const struck = new Set<string>();
  for (const [index, { key, strikes }] of [...marks.entries()].reverse()) {
    if (strikes === null || struck.has(key)) continue;
    if ((places.get(strikes) ?? index) < index) struck.add(strikes);
  }
  return struck;
}

/** The facts that count among the marks of a walk, in the order of the log. */
function standingFacts(marks: readonly WalkMark[]): readonly FactName[] {
  const struck = struckOf(marks);
  return marks.flatMap(({ key, name }) => (struck.has(key) ? [] : [name]));
}

/** The card of a walk. */
function cardOf({ walk, opening, lastAt, count }: WalkSummary, phase: WalkPhase): WalkCard {
  return {
    walk,
    procedure: opening?.procedure ?? null,
    revision: opening?.revision ?? null,
    title: opening?.title ?? null,
    mode: opening?.mode ?? null,
    openedAt: opening?.at ?? null,
    phase,
    lastAt,
    entries: count,
  };
}

/**
 * Cards as a shelf shows them: the walk in which something happened last comes first; walks that are not here left out. The
 * walk's machine, which tells the phase, is loaded with the first walk: an empty shelf is drawn without it.
 */
export async function cardsOf(rows: readonly WalkSummary[]): Promise<readonly WalkCard[]> {
  const here = rows.filter(({ count }) => count > 0);
  if (here.length === 0) return [];
  const { phaseAfterFacts } = await import("../../core/walk/walk-commands.ts");
  return here
    .map((row) => cardOf(row, phaseAfterFacts(standingFacts(row.marks))))
    .sort((a, b) => (b.lastAt ?? 0) - (a.lastAt ?? 0) || (a.walk < b.walk ? -1 : 1));
}
