import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { Duration, Instant, RecordId, StepId, WatchId } from "../units/index.ts";
import { between, later, NO_TIME } from "../units/index.ts";
import { branchesLeft } from "./branch-left.ts";
import type { Deviation, EarlyMark, MissingKind } from "./deviation.ts";
import { earlyText } from "./early-mark.ts";
import type { Ledger, StepProgress } from "./ledger.ts";
import { progressOf } from "./ledger.ts";
import type { Folded } from "./walk-fold.ts";
import type { WalkState } from "./walk-state.ts";
import { watchRounds } from "./watch-state.ts";

/** Something that was owed and is not there ([OFF2]). Times are PET. */
export interface Outstanding {
  readonly kind: MissingKind | "record-out-of-range" | EarlyMark["kind"];
  /** The step that owes it; `null` for a watch. */
  readonly step: StepId | null;
  /** The record that is missing or outside its limits; `null` for every other kind. */
  readonly record: RecordId | null;
  /** The watch that was not kept; `null` for every other kind. */
  readonly watch: WatchId | null;
  /** Since when it is outstanding: the completion of the step, the taking of the value, the due time of the watch. */
  readonly since: Duration;
  /** When it will be over by itself; `null` when it will not, or when nobody knows. */
  readonly until: Duration | null;
  /** What is missing, as a sentence. */
  readonly text: Message;
}

/**
 * Returns what is outstanding in a walk at the instant of its state, the oldest first ([OFF2]). A step that was
 * skipped, and one that is not performed as the decisions came out, owes nothing. Of a closed walk it is what was
 * outstanding when it was closed.
 */
export function outstandingOf({ ledger, pet }: Pick<WalkState, "ledger" | "pet">): readonly Outstanding[] {
  if (pet === null) return [];
  const found = ledger.inForce.outline.steps.flatMap((entry) => owedBy(ledger, entry, pet));
  for (const { watch, isOver, rounds } of watchRounds(ledger, pet)) {
    const last = rounds.at(-1);
    if (last && !isOver && !last.isKept) found.push(owedRound(watch, last.due));
  }
  return found.sort((a, b) => a.since - b.since);
}

const NOTHING: readonly Outstanding[] = [];

function owedBy(ledger: Ledger, entry: OutlineStep, pet: Duration): readonly Outstanding[] {
  const { step } = entry;
  const progress = progressOf(ledger, step.id);
  if (progress.status !== "done" || progress.finish === null) return NOTHING;
  if (!ledger.network.activity.active[entry.index]) return NOTHING;
  const petZero = ledger.petZero ?? ledger.opened.at;
  const inPet = (at: Instant) => between(petZero, at);
  const since = inPet(progress.finish);
  const owed = { step: step.id, record: null, watch: null, since, until: null };
  const found: Outstanding[] = [];
  for (const record of step.records) {
    const last = progress.records.findLast((taken) => taken.record === record.id);
    const label = record.label ?? record.id;
    if (!last) {
      const text = message("owed/record-not-taken", { record: label });
      found.push({ ...owed, kind: "record-not-taken", record: record.id, text });
    } else if (last.outOfRange) {
      const text = message("owed/record-out-of-range", { record: label });
      found.push({ ...owed, kind: "record-out-of-range", record: record.id, since: inPet(last.at), text });
    }
  }
  if (step.confirm && !progress.confirmed) {
    const by = ledger.inForce.outline.crewMember(step.confirm.by)?.call ?? step.confirm.by;
    found.push({
      ...owed,
      kind: "confirmation-not-given",
      text: message("owed/confirmation-not-given", { crew: by }),
    });
  }
  const uncounted = step.check.filter((_, place) => !progress.counted.includes(place));
  if (uncounted.length > 0) {
    const text = message("owed/check-not-counted", { list: uncounted });
    found.push({ ...owed, kind: "check-not-counted", text });
  }
  if (isReasonMissing(ledger, step.id, progress)) {
    found.push({ ...owed, kind: "reason-not-given", text: message("owed/reason-not-given") });
  }
  const now = later(petZero, pet);
  for (const early of progress.early) {
    const until = endOf(ledger, early);
    if (until === "never" || (until !== null && until <= now)) continue;
    const text = earlyText(early);
    found.push({ ...owed, kind: early.kind, until: until === null ? null : inPet(until), text });
  }
  return found;
}

/**
 * Returns when what an early mark did not await is over; `null` while nobody knows, and `never` for a window that does
 * not come again, which nobody can wait for.
 */
function endOf(ledger: Ledger, early: EarlyMark): Instant | null | "never" {
  if (early.kind !== "hold-not-over") return early.until ?? "never";
  return ledger.holds.find(({ from }) => from === early.since)?.until ?? null;
}

/**
 * True when a step was done out of order and nobody said why. A note on the step that was made at its mark or later
 * says why.
 */
function isReasonMissing(ledger: Ledger, step: StepId, progress: StepProgress): boolean {
  const { outOfOrder, orderReason, finish } = progress;
  if (!outOfOrder || orderReason !== "") return false;
  return ![...ledger.notes].some((note) => note.step === step && note.at >= (finish ?? NO_TIME));
}

const owedRound = (watch: { readonly id: WatchId; readonly do: string }, due: Duration): Outstanding => ({
  kind: "watch-not-kept",
  step: null,
  record: null,
  watch: watch.id,
  since: due,
  until: null,
  text: message("owed/watch-not-kept", { watch: watch.do, due }),
});

/** The kinds of outstanding things that the fold has already listed as deviations. */
const LISTED: ReadonlySet<Outstanding["kind"]> = new Set<Outstanding["kind"]>([
  "record-out-of-range",
  "lag-not-over",
  "time-not-reached",
  "window-not-over",
  "hold-not-over",
]);

/**
 * Returns every deviation of a walk at the instant of its state: those of its entries in the order of the log, then
 * what was done on branches that were left ([WLK5]), what is missing ([OFF2]), and every round of a watch that was not kept.
 */
export function deviationsAt(
  folded: Pick<Folded, "deviations">,
  state: Pick<WalkState, "ledger" | "pet">,
): readonly Deviation[] {
  const { ledger, pet } = state;
  if (pet === null) return folded.deviations;
  const petZero = ledger.petZero ?? ledger.opened.at;
  const missing = outstandingOf(state).filter(({ kind, watch }) => !LISTED.has(kind) && watch === null);
  const missed = watchRounds(ledger, pet).flatMap(({ watch, rounds }) =>
    rounds.filter(({ isKept }) => !isKept).map(({ due }) => owedRound(watch, due)),
  );
  return [
    ...folded.deviations,
    ...branchesLeft(ledger),
    ...[...missing, ...missed].map(
      ({ kind, step, since, text }): Deviation => ({
        kind,
        step,
        record: null,
        text,
        at: later(petZero, since),
      }),
    ),
  ];
}
