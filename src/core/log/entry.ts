import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Instant, WalkId } from "../units/index.ts";
import { parseInstant } from "../units/index.ts";
import type { ReadFact } from "./fact.ts";
import { readFact } from "./fact.ts";
import type { HybridTime } from "./hybrid-clock.ts";
import type { WireEntry } from "./wire-entry.ts";
import { wrongAttribute } from "./wire-entry.ts";

/** An entry as read: what was written, with its times and its fact. */
export interface Entry {
  readonly wire: WireEntry;
  readonly walk: WalkId;
  /** When it happened. */
  readonly at: Instant;
  readonly hlc: HybridTime;
  readonly read: ReadFact;
}

/** An entry, or the reason why a value is not one. */
export type ReadEntry =
  | { readonly entry: Entry; readonly problem: null }
  | { readonly entry: null; readonly problem: Message };

/** No entry of this program nests nearly so deep. One that does would exhaust the stack of whatever writes or compares it. */
const DEEPEST = 100;

/** Whether lists and objects stand inside one another more than `levels` times. */
function isDeeperThan(levels: number, value: unknown): boolean {
  if (typeof value !== "object" || value === null) return false;
  for (const key in value) {
    if (levels === 0 || isDeeperThan(levels - 1, (value as Record<string, unknown>)[key])) return true;
  }
  return false;
}

/** Reads a JSON value as an entry. */
export function readEntry(value: unknown): ReadEntry {
  if (isDeeperThan(DEEPEST, value)) return { entry: null, problem: message("log/nested-too-deeply") };
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return { entry: null, problem: message("log/not-an-object") };
  const attribute = wrongAttribute(value as Record<string, unknown>);
  if (attribute !== null) {
    return { entry: null, problem: message("log/bad-attribute", { attribute }) };
  }
  const wire = value as WireEntry;
  const at = parseInstant(wire.time);
  if (at === null) return { entry: null, problem: message("log/bad-attribute", { attribute: "time" }) };
  const { recordedtime } = wire;
  if (recordedtime !== undefined && recordedtime !== wire.time && parseInstant(recordedtime) === null) {
    return { entry: null, problem: message("log/bad-attribute", { attribute: "recordedtime" }) };
  }
  return {
    entry: {
      wire,
      walk: wire.subject as WalkId,
      at,
      hlc: wire.hlc as HybridTime,
      read: readFact(wire.type, wire.data),
    },
    problem: null,
  };
}

/** The key of an entry: its `source` and `id`, which no two different entries share ([LOG1]). */
export function keyOf({ wire }: { readonly wire: Pick<WireEntry, "source" | "id"> }): string {
  return `${wire.source} ${wire.id}`;
}

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** What of an entry tells its place in the order. */
export interface PlaceInOrder {
  readonly wire: Pick<WireEntry, "hlc" | "source" | "sequence" | "id">;
}

/** The order of entries: `hlc`, then `source`, then `sequence`, each as text ([LOG3]); `id` settles what is left. */
export function compareEntries({ wire: a }: PlaceInOrder, { wire: b }: PlaceInOrder): number {
  return (
    compareText(a.hlc, b.hlc) ||
    compareText(a.source, b.source) ||
    compareText(a.sequence, b.sequence) ||
    compareText(a.id, b.id)
  );
}
