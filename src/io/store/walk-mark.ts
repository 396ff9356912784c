import type { Entry, FactName } from "../../core/log/index.ts";
import { keyOf } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";

/** How a walk was opened, as far as a list of walks tells it. */
export interface WalkOpening {
  /** Sorts as the log does. */
  readonly order: string;
  readonly at: Instant;
  readonly mode: "live" | "rehearsal";
  readonly procedure: string | null;
  readonly revision: string | null;
  readonly title: string | null;
}

/** An entry that moves a walk from one phase to another, or strikes an entry. */
export interface WalkMark {
  readonly key: string;
  /** Sorts as the log does. */
  readonly order: string;
  readonly name: FactName;
  /** The key of the entry that is struck; `null` when the mark is no strike. */
  readonly strikes: string | null;
}

const MARKING: ReadonlySet<FactName> = new Set([
  "clock.started",
  "hold.called",
  "hold.lifted",
  "walk.closed",
  "walk.reopened",
  "entry.struck",
]);

/** The place of an entry in the order of the log ([LOG3]) as one text. Its parts are separated by a character that sorts before all others. */
function orderOf({ wire }: Entry): string {
  return [wire.hlc, wire.source, wire.sequence, wire.id].join("\u0000");
}

/** The mark an entry makes; `null` when it makes none. */
export function markOf(entry: Entry): WalkMark | null {
  const { fact } = entry.read;
  if (!fact || !MARKING.has(fact.name)) return null;
  return {
    key: keyOf(entry),
    order: orderOf(entry),
    name: fact.name,
    strikes: fact.name === "entry.struck" ? keyOf({ wire: fact }) : null,
  };
}

const textIn = (holder: object, key: string): string | null => {
  const value = Object.hasOwn(holder, key) ? (holder as Record<string, unknown>)[key] : undefined;
  return typeof value === "string" ? value : null;
};

/** The opening an entry is; `null` when it is none. */
export function openingOf(entry: Entry): WalkOpening | null {
  const { fact } = entry.read;
  if (fact?.name !== "walk.opened") return null;
  const procedure =
    typeof fact.procedure === "object" && fact.procedure !== null ? fact.procedure : Object.create(null);
  return {
    order: orderOf(entry),
    at: entry.at,
    mode: fact.mode,
    procedure: textIn(procedure, "id"),
    revision: textIn(procedure, "revision"),
    title: textIn(procedure, "title"),
  };
}
