import type { OutlineStep } from "../procedure/index.ts";
import type { CrewId, Duration, Instant } from "../units/index.ts";
import { later } from "../units/index.ts";
import type { Ledger, PlayedAct, PlayedMove, PlayedTimes, PlayedTurns } from "../walk/index.ts";
import { inWork, isComplete } from "../walk/index.ts";
import { fallingLevel, nextReading } from "./falling-supply.ts";
import type { Surprise, SurpriseEffect } from "./surprises-file.ts";
import { surprisesOf } from "./surprises-of.ts";

/** How a crew plays a walk: the times of its steps, and what it does otherwise than written. */
export interface SurprisedCrew {
  readonly times: PlayedTimes;
  readonly turns: PlayedTurns;
}

/** A surprise that has come or comes, with what it brings about. */
type Begun<Kind extends SurpriseEffect["kind"]> = {
  readonly surprise: Surprise;
  readonly does: Extract<SurpriseEffect, { kind: Kind }>;
  readonly began: Instant;
  readonly isFired: boolean;
};

/**
 * How a played crew meets the surprises that the walk carries ([TRN1]); without any it plays as it is written. `times` are those
 * of the crew as it would be without.
 */
export function surprisedCrew(ledger: Ledger, times: PlayedTimes): SurprisedCrew | null {
  const carried = surprisesOf(ledger);
  if (carried.length === 0) return null;
  const begun = <Kind extends SurpriseEffect["kind"]>(kind: Kind): readonly Begun<Kind>[] =>
    carried.flatMap(({ surprise, began, isFired }) =>
      began !== null && surprise.does.kind === kind
        ? [{ surprise, does: surprise.does as Begun<Kind>["does"], began, isFired }]
        : [],
    );
  const [stretched, missing] = [begun("stretch"), begun("missing")];
  const gaps = [
    ...begun("silent").map(({ does, began }) => gapOf([does.crew], began, does.for)),
    ...begun("contact").map(({ does, began }) => gapOf(outsideOf(ledger), began, does.for)),
  ];
  const heldUntil = (act: PlayedAct): Instant => {
    const looked = missing.reduce<Instant>((at, one) => lookedUntil(ledger, one, act, at), act.due);
    return silentUntil(gaps, act.crew, looked);
  };
  const stretchedTimes: PlayedTimes = (now, entry) => {
    const time = times(now, entry);
    const start = inWork(now, Number.MAX_SAFE_INTEGER as Instant).get(entry.step.id);
    const factor = stretched
      // What comes once the step would be over stretches it no more.
      .filter(
        ({ does, began }) =>
          does.step === entry.step.id && (start === undefined || began <= later(start, time)),
      )
      .reduce((product, { does }) => product * does.factor, 1);
    return Math.round(time * factor) as Duration;
  };
  return {
    times: stretchedTimes,
    turns: {
      heldUntil,
      valueOf: (entry, record, at) => {
        const said = begun("record").find(
          ({ does, began }) => does.step === entry.step.id && does.record === record.id && began <= at,
        );
        if (said) return said.does.value;
        const falls = begun("supply").find(
          ({ does }) => does.supply === record.supply && entry.step.by.includes(does.crew),
        );
        return falls ? fallingLevel(ledger, falls.does, falls.began, at, record.unit) : null;
      },
      outcomeOf: (decision, at) =>
        begun("decision").find(({ does, began }) => does.decision === decision.id && began <= at)?.does
          .outcome ?? null,
      aside: (until) =>
        earliest(
          [
            ...missing.map((one) => searchNote(ledger, one, stretchedTimes)),
            ...begun("supply").map((one) => nextReading(ledger, one)),
          ],
          until,
        ),
    },
  };
}

interface Gap {
  readonly crew: readonly CrewId[];
  readonly from: Instant;
  readonly to: Instant;
}

const gapOf = (crew: readonly CrewId[], from: Instant, time: Duration): Gap => ({
  crew,
  from,
  to: later(from, time),
});

const outsideOf = ({ inForce: { outline } }: Ledger): readonly CrewId[] =>
  outline.crew.flatMap(({ id, station }) => (station === "outside" ? [id] : []));

/** When somebody of whom nothing is heard meanwhile is heard again, the gaps taken one after the other. */
function silentUntil(gaps: readonly Gap[], crew: readonly CrewId[], due: Instant): Instant {
  const own = gaps.filter((gap) => gap.crew.some((id) => crew.includes(id)));
  return own
    .toSorted((a, b) => a.from - b.from)
    .reduce((at, { from, to }) => (from <= at && at < to ? to : at), due);
}

/** The first step to come that moves an item which is not there; `null` when none does or somebody entered where it is. */
function searchedAt(ledger: Ledger, { does, began }: Begun<"missing">): OutlineStep | null {
  for (const move of ledger.moves) {
    if (move.item === does.item && move.at >= began) return null;
  }
  return (
    ledger.inForce.outline.steps.find(
      ({ index, step }) =>
        ledger.network.activity.active[index] &&
        !isComplete(ledger, step.id) &&
        step.moves.some(({ item }) => item === does.item),
    ) ?? null
  );
}

function lookedUntil(ledger: Ledger, one: Begun<"missing">, { entry, due }: PlayedAct, at: Instant): Instant {
  if (entry === null || due < one.began || searchedAt(ledger, one)?.step.id !== entry.step.id) return at;
  return later(at, one.does.for);
}

/** What the crew says when the step falls due for which the item is not there; `null` when it has said so, or nobody looks. */
function searchNote(ledger: Ledger, one: Begun<"missing">, times: PlayedTimes): PlayedMove | null {
  const entry = searchedAt(ledger, one);
  const start = entry && inWork(ledger, Number.MAX_SAFE_INTEGER as Instant).get(entry.step.id);
  if (!entry || start == null) return null;
  const { says } = one.does;
  for (const note of ledger.notes) if (note.step === entry.step.id && note.text === says) return null;
  const at = later(start, times(ledger, entry));
  if (at < one.began) return null;
  const actor = entry.step.by[0] ?? "rehearsal";
  return { at, drafts: [{ name: "note.made", data: { text: says, step: entry.step.id }, at, actor }] };
}

function earliest(moves: readonly (PlayedMove | null)[], until: Instant): PlayedMove | null {
  return moves.reduce<PlayedMove | null>(
    (first, move) => (move && move.at <= until && (first === null || move.at < first.at) ? move : first),
    null,
  );
}
