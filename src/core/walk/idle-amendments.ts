import type { Message } from "../../words/index.ts";
import { deviceOf, keyOf } from "../log/index.ts";
import type { Change } from "../procedure/index.ts";
import type { Instant } from "../units/index.ts";
import { changesOf } from "./amendment-facts.ts";
import type { Folded } from "./walk-fold.ts";

/** An amendment that has no effect, such as one that no longer applies after another lead's ([AMD5]). */
export interface IdleAmendment {
  readonly source: string;
  readonly id: string;
  readonly at: Instant;
  readonly reason: string;
  /** What it would have changed, to be tried again on the plan in force; none where they cannot be read. */
  readonly changes: readonly Change[];
  /** Why it has no effect. */
  readonly why: Message;
}

/**
 * Returns the amendments that a device made and that have no effect, in the order of the log. `device` is the part of a
 * source that names a device, such as `/devices/iv-tablet`. Struck ones are not among them.
 */
export function idleAmendmentsOf(folded: Folded, device: string): readonly IdleAmendment[] {
  if (folded.ignored.length === 0) return [];
  const reasons = new Map(folded.ignored.map(({ source, id, reason }) => [`${source} ${id}`, reason]));
  return folded.entries.flatMap((entry): IdleAmendment[] => {
    const { fact } = entry.read;
    const why = reasons.get(keyOf(entry));
    if (!why || fact?.name !== "plan.amended" || deviceOf(entry.wire.source) !== device) return [];
    const { source, id } = entry.wire;
    const changes = changesOf(fact.changes).changes ?? [];
    return [{ source, id, at: folded.timeOf(entry), reason: fact.reason, changes, why }];
  });
}
