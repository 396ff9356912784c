import type { Duration, Instant, WalkId } from "../units/index.ts";
import { formatInstant } from "../units/index.ts";
import type { Entry } from "./entry.ts";
import { readEntry } from "./entry.ts";
import type { FactData, FactName } from "./fact.ts";
import { typeOf } from "./fact.ts";
import type { HybridTime } from "./hybrid-clock.ts";
import { tick } from "./hybrid-clock.ts";
import { isTooFarAhead } from "./restamp.ts";
import { sequenceText } from "./sequence-text.ts";
import { wellFormed } from "./well-formed.ts";
import type { WireEntry } from "./wire-entry.ts";

/** Something that happened and is about to be entered. */
export type Draft = {
  [Name in FactName]: {
    readonly name: Name;
    readonly data: FactData<Name>;
    /** When it happened. */
    readonly at: Instant;
    /** Who enters it: a crew member or follower. */
    readonly actor: string;
  };
}[FactName];

/** What a device knows about a walk's log at the moment when it makes an entry. */
export interface Pen {
  /** The device, `/devices/…`. */
  readonly source: string;
  /** How many entries this source has made in this walk. */
  readonly made: number;
  /** The latest hybrid time seen in this walk, from anyone. */
  readonly seen: HybridTime | null;
  /**
   * The clock of the linked hub minus the device's. When given, hybrid times follow the hub's clock, and
   * a seen time that the hub would refuse is ignored. When missing, hybrid times follow the device's clock and
   * every time seen.
   */
  readonly clockOffset?: Duration;
}

/** An entry this program wrote that it cannot read back: a mistake of ours. */
export class UnreadableEntryError extends Error {
  override readonly name = "UnreadableEntryError";
}

/**
 * Makes the entry of a draft: next in the sequence of its source, stamped with a hybrid time after all that was seen. `now`
 * and the entry's `time` and `recordedtime` are by the clock of the device, right or wrong. Halves of characters in its texts
 * are replaced, since a text with one has no canonical form that could be sealed.
 */
export function stamp(draft: Draft, walk: WalkId, pen: Pen, now: Instant): Entry {
  const sequence = sequenceText(pen.made + 1);
  const wire: WireEntry = {
    specversion: "1.0",
    id: sequence,
    source: pen.source,
    type: typeOf(draft.name),
    subject: walk,
    time: formatInstant(draft.at),
    recordedtime: formatInstant(now),
    sequence,
    hlc: hybridTimeOf(pen, now),
    actor: wellFormed(draft.actor),
    datacontenttype: "application/json",
    data: wellFormed(draft.data),
  };
  const { entry, problem } = readEntry(wire);
  if (!entry || entry.read.problem !== null) {
    throw new UnreadableEntryError(`${wire.type}: ${(problem ?? entry?.read.problem)?.key}`);
  }
  return entry;
}

function hybridTimeOf({ seen, clockOffset }: Pen, now: Instant): HybridTime {
  if (clockOffset === undefined) return tick(seen, now);
  const clock = (now + clockOffset) as Instant;
  return tick(seen !== null && isTooFarAhead(seen, clock) ? null : seen, clock);
}
