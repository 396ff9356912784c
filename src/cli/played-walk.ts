import type { Draft, Entry, HybridTime } from "../core/log/index.ts";
import { stamp } from "../core/log/index.ts";
import type { ProcedureFile } from "../core/procedure/index.ts";
import type { Surprise } from "../core/training/index.ts";
import { laidDrafts, surprisedCrew } from "../core/training/index.ts";
import type { Instant, WalkId } from "../core/units/index.ts";
import { formatInstant } from "../core/units/index.ts";
import type { Ledger } from "../core/walk/index.ts";
import { nextPlayedMove, playedTimesOf, WalkFold } from "../core/walk/index.ts";

/** The log source of every entry of a played walk. */
const PLAYED_SOURCE = "/devices/rehearsal";

/** The entries of a played walk that happen at one instant. */
export interface PlayedEntries {
  readonly at: Instant;
  readonly entries: readonly Entry[];
  /** The walk after these entries. */
  readonly ledger: Ledger;
}

/** Thrown when a walk cannot be opened although its procedure was read, which is a bug in this program. */
class UnopenedWalkError extends Error {
  override readonly name = "UnopenedWalkError";
}

/**
 * Plays a procedure from opening to closing with a simulated clock. Each yield is what happens at one instant. The same
 * file, seed, start and surprises give the same entries. The walk ends when every lane is finished or nothing can go on.
 */
export function* playedWalk(
  file: ProcedureFile,
  seed: number,
  start: Instant,
  surprises: readonly Surprise[] = [],
): Generator<PlayedEntries> {
  const walk = walkIdOf(file.id, seed, start);
  const fold = new WalkFold();
  let made = 0;
  let seen: HybridTime | null = null;
  const enter = (at: Instant, drafts: readonly Draft[]): PlayedEntries => {
    const entries = drafts.map((draft) => {
      const entry = stamp(draft, walk, { source: PLAYED_SOURCE, made, seen }, at);
      made += 1;
      seen = entry.hlc;
      return entry;
    });
    fold.add(entries);
    const { ledger } = fold.folded;
    if (!ledger) throw new UnopenedWalkError(fold.folded.ignored[0]?.reason.key);
    return { at, entries, ledger };
  };

  const first = file.crew.find(({ station }) => station === "inside") ?? file.crew[0];
  const actor = first?.id ?? "rehearsal";
  let played = enter(start, [
    {
      name: "walk.opened",
      data: { procedure: file, mode: "rehearsal", plannedStart: formatInstant(start) },
      at: start,
      actor,
    },
    ...laidDrafts(surprises, { walk, at: start, actor }),
    { name: "clock.started", data: {}, at: start, actor },
  ]);
  yield played;
  const times = playedTimesOf(seed);
  for (;;) {
    const crew = surprisedCrew(played.ledger, times);
    const move = nextPlayedMove(played.ledger, crew?.times ?? times, played.at, crew?.turns);
    if (!move) break;
    played = enter(move.at, move.drafts);
    yield played;
  }
  const isComplete = played.ledger.lanes.every(({ status }) => status === "finished");
  const closing = isComplete ? ({ end: "complete" } as const) : ({ end: "terminated", stuck: true } as const);
  yield enter(played.at, [{ name: "walk.closed", data: closing, at: played.at, actor }]);
}

/** The id of a played walk, made of the procedure, its start to the second, and the seed. */
function walkIdOf(procedure: string, seed: number, start: Instant): WalkId {
  const stampText = formatInstant(start).slice(0, 19).replaceAll(/[-:]/g, "").toLowerCase();
  return `${procedure}-${stampText}-${seed}` as WalkId;
}
