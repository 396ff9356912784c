import type { FactName } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { standingStrikes as StandingStrikes, WalkPhase } from "../../core/walk/index.ts";
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

/** The facts that count among the marks of a walk, in the order of the log. A strike reaches only what stands before it. */
function standingFacts(
  marks: readonly WalkMark[],
  standingStrikes: typeof StandingStrikes,
): readonly FactName[] {
  const places = new Map(marks.map(({ key }, place) => [key, place]));
  const strikes = marks.flatMap(({ key, strikes: target }, place) =>
    target === null ? [] : [{ key, target, place }],
  );
  const standing = standingStrikes(strikes, ({ target, place }) => (places.get(target) ?? place) < place);
  const struck = new Set(standing.map(({ target }) => target));
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
  const [{ phaseAfterFacts }, { standingStrikes }] = await Promise.all([
    import("../../core/walk/walk-commands.ts"),
    import("../../core/walk/strikes.ts"),
  ]);
  return here
    .map((row) => cardOf(row, phaseAfterFacts(standingFacts(row.marks, standingStrikes))))
    .sort((a, b) => (b.lastAt ?? 0) - (a.lastAt ?? 0) || (a.walk < b.walk ? -1 : 1));
}
