import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { ReadChanges } from "../changes/index.ts";
import { readChanges, unreadableChangesMessage } from "../changes/index.ts";
import type { Entry, Fact } from "../log/index.ts";
import { deviceOf } from "../log/index.ts";
import type { Change } from "../procedure/index.ts";
import type { Instant } from "../units/index.ts";
import { between } from "../units/index.ts";
import { amendedSteps } from "./amended-steps.ts";
import type { AmendedStep } from "./amendment.ts";
import { whyNotAmended } from "./amendment-refusal.ts";
import type { Applied } from "./applied.ts";
import { applied, ignored } from "./applied.ts";
import { begunSteps } from "./begun-steps.ts";
import type { Ledger } from "./ledger.ts";
import { ledgerWith } from "./ledger-with.ts";
import { procedureWith } from "./procedure-with.ts";
import { Replanned } from "./replanned.ts";

type FactNamed<Name extends Fact["name"]> = Extract<Fact, { name: Name }>;

/** A walk with its plan amended, or the reason why it cannot be. */
export type Amended =
  | { readonly ledger: Ledger; readonly steps: readonly AmendedStep[]; readonly refusal: null }
  | { readonly ledger: null; readonly steps: null; readonly refusal: Message };

const refused = (refusal: Message): Amended => ({ ledger: null, steps: null, refusal });

/**
 * Returns the walk as it would be with changes made to its plan at an instant ([AMD1]), or the reason why they have no
 * effect ([WLK6]). It is not an amendment yet: nothing says who made it, or why.
 */
export function amendedAt(ledger: Ledger, changes: readonly Change[], at: Instant): Amended {
  if (changes.length === 0) return refused(message("amend/changes-nothing"));
  const { procedure, problem } = procedureWith(ledger.inForce, changes);
  if (!procedure) return refused(problem);
  const begun = begunSteps(ledger, at);
  const why = whyNotAmended(ledger, procedure, begun);
  if (why) return refused(why);
  return {
    ledger: ledgerWith(ledger, { inForce: procedure, light: ledger.light }, at, begun),
    steps: amendedSteps(ledger.inForce.file, procedure.file, changes),
    refusal: null,
  };
}

const read = new WeakMap<object, ReadChanges>();

/** Reads the changes of an entry. The result is kept, so that folding again does not read them again. */
export function changesOf(written: readonly unknown[]): ReadChanges {
  const found = read.get(written) ?? readChanges(written);
  read.set(written, found);
  return found;
}

/** `plan.amended`: from here on the procedure in force has the changes ([AMD1]). */
export function planAmended(ledger: Ledger, entry: Entry, fact: FactNamed<"plan.amended">): Applied {
  const { reason } = fact;
  const { changes, problem } = changesOf(fact.changes);
  if (!changes) return ignored(message("amend/unreadable", { why: unreadableChangesMessage(problem) }));
  const amended = amendedAt(ledger, changes, entry.at);
  if (amended.refusal) return ignored(amended.refusal);
  const { source, id, actor = null } = entry.wire;
  const text = reason ? message("walk/amended-because", { reason }) : message("walk/amended");
  return applied({
    ...amended.ledger,
    amendments: [
      ...ledger.amendments,
      {
        source,
        id,
        at: entry.at,
        pet: ledger.petZero === null ? null : between(ledger.petZero, entry.at),
        actor,
        reason,
        before: ledger.inForce,
        changes,
        steps: amended.steps,
        replanned: new Replanned(ledger, amended.ledger, entry.at),
      },
    ],
    deviations: [...ledger.deviations, { kind: "amended", step: null, record: null, text, at: entry.at }],
  });
}

/** `amendment.seen`: whoever follows on a device has seen an amendment, each device once ([AMD4]). */
export function amendmentSeen(ledger: Ledger, entry: Entry, fact: FactNamed<"amendment.seen">): Applied {
  const { amendment } = fact;
  const isIt = (one: { readonly source: string; readonly id: string }) =>
    one.source === amendment.source && one.id === amendment.id;
  if (!ledger.amendments.some(isIt)) return ignored(message("amend/not-there"));
  const { source, actor = null } = entry.wire;
  const isAgain = ledger.amendmentsSeen.some(
    (one) => isIt(one.amendment) && deviceOf(one.source) === deviceOf(source),
  );
  if (isAgain) return ignored(message("amend/already-seen"));
  const seen = { amendment, at: entry.at, actor, source };
  return applied({ ...ledger, amendmentsSeen: [...ledger.amendmentsSeen, seen] });
}
