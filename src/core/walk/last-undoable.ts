import type { Entry, Fact } from "../log/index.ts";
import { deviceOf, keyOf } from "../log/index.ts";
import type { Folded } from "./walk-fold.ts";

/** What a person entered and can take back. What the program entered by itself, and a strike, are not among it. */
const UNDOABLE: ReadonlySet<Fact["name"]> = new Set<Fact["name"]>([
  "clock.started",
  "step.started",
  "step.done",
  "step.skipped",
  "step.reopened",
  "record.taken",
  "confirm.given",
  "check.counted",
  "decision.taken",
  "item.moved",
  "state.set",
  "supply.read",
  "note.made",
  "hold.called",
  "hold.lifted",
  "watch.kept",
  "plan.amended",
  "light.chosen",
]);

const recordedAt = ({ wire }: Entry): string => wire.recordedtime ?? wire.time;

/**
 * Returns the entries of the latest tap on a device that counts and can still be taken back ([OFF1]), in their order:
 * one entry, or those that one tap made together. Struck entries, and those without effect, are passed over, so that
 * striking what is returned and asking again goes back through everything the device entered. The start of the clock
 * can be taken back only while nothing else stands after it. Returns `null` when there is nothing left, and once the
 * walk is closed. `device` is the part of a source that names a device, such as `/devices/iv-tablet`.
 */
export function lastUndoable(folded: Folded, device: string): readonly Entry[] | null {
  const { ledger, entries, struck } = folded;
  if (!ledger || ledger.phase === "closed") return null;
  const idle = new Set(folded.ignored.map(({ source, id }) => keyOf({ wire: { source, id } })));
  const stands = (entry: Entry) => {
    const { fact } = entry.read;
    return fact !== null && UNDOABLE.has(fact.name) && !struck.has(keyOf(entry)) && !idle.has(keyOf(entry));
  };
  const isOwn = (entry: Entry) => deviceOf(entry.wire.source) === device && stands(entry);
  const last = entries.findLastIndex(isOwn);
  const newest = entries[last];
  if (!newest) return null;
  if (newest.read.fact?.name === "clock.started")
    return entries.slice(last + 1).some(stands) ? null : [newest];
  let first = last;
  while (first > 0) {
    const before = entries[first - 1];
    if (!before || !isOwn(before) || before.read.fact?.name === "clock.started") break;
    // What one act enters is recorded at one instant, also when it happened at several, as what was done on paper.
    if (before.wire.source !== newest.wire.source || recordedAt(before) !== recordedAt(newest)) break;
    first -= 1;
  }
  return entries.slice(first, last + 1);
}
