import type { Duration, Instant } from "../units/index.ts";
import { later } from "../units/index.ts";
import type { Folded, Ledger } from "../walk/index.ts";
import { progressOf } from "../walk/index.ts";
import { petOf, type SurpriseCost, surpriseCost } from "./surprise-cost.ts";
import { type SurpriseSign, signsOf } from "./surprise-signs.ts";
import type { Surprise } from "./surprises-file.ts";
import { type CarriedSurprise, surprisesOf } from "./surprises-of.ts";

/** One surprise of a walk that is over, beside what its trainer expected ([TRN3]). Times are PET. */
export interface SurpriseReview {
  readonly surprise: Surprise;
  /** True when a trainer fired it by hand. */
  readonly isFired: boolean;
  /** When it came; `null` when it never did. */
  readonly began: Duration | null;
  /** When what it brought about was over; `null` when it never came, or lasted until the walk was closed. */
  readonly over: Duration | null;
  /** The first entry that shows that somebody noticed it; `null` when none does. */
  readonly noticed: SurpriseSign | null;
  /** Whether that was within the time expected; `null` when it never came. Nothing entered is not within it. */
  readonly isWithin: boolean | null;
  /** What was entered about it, that first entry included, in order. */
  readonly done: readonly SurpriseSign[];
  readonly cost: SurpriseCost | null;
}

/** How long after a surprise is over an entry still belongs to it. */
const AFTERWARDS = (15 * 60_000) as Duration;

/**
 * The surprises of a walk in the order in which they came, those that never did last. Empty until the walk is closed: before that
 * they are for nobody who follows ([TRN2]).
 */
export function surprisesReviewed(folded: Folded): readonly SurpriseReview[] {
  const { ledger } = folded;
  if (!ledger?.closed) return [];
  const end = ledger.closed.at;
  return inOrder(
    surprisesOf(ledger).map((carried) => {
      const review = reviewUntil(folded, ledger, carried, end);
      const { began } = carried;
      if (began === null || review.began === null) return review;
      const over = review.over === null ? end : later(ledger.petZero ?? began, review.over);
      return { ...review, cost: surpriseCost(folded, began, over) };
    }),
  );
}

/**
 * What a trainer sees of the surprises while the walk goes on, at an instant: as {@link surprisesReviewed}, without what they cost,
 * which can only be told afterwards.
 */
export function surprisesUnderWay(folded: Folded, at: Instant): readonly SurpriseReview[] {
  const { ledger } = folded;
  return ledger ? inOrder(surprisesOf(ledger).map((one) => reviewUntil(folded, ledger, one, at))) : [];
}

const inOrder = (reviews: readonly SurpriseReview[]) =>
  reviews.toSorted((a, b) => (a.began ?? Number.POSITIVE_INFINITY) - (b.began ?? Number.POSITIVE_INFINITY));

function reviewUntil(
  folded: Folded,
  ledger: Ledger,
  { surprise, isFired, began }: CarriedSurprise,
  end: Instant,
): SurpriseReview {
  if (began === null || began > end) {
    return {
      surprise,
      isFired,
      began: null,
      over: null,
      noticed: null,
      isWithin: null,
      done: [],
      cost: null,
    };
  }
  const over = overAt(ledger, surprise, began);
  const isOver = over !== null && over <= end;
  const until = isOver ? later(over, AFTERWARDS) : end;
  const done = signsOf(surprise, folded, ledger, { from: began, until });
  const noticed = done[0] ?? null;
  const from = petOf(ledger, began);
  return {
    surprise,
    isFired,
    began: from,
    over: isOver ? petOf(ledger, over) : null,
    noticed,
    isWithin: noticed !== null && noticed.at - from <= surprise.expect.within,
    done,
    cost: null,
  };
}

/** When what a surprise brought about is over; `null` where nothing in the log ends it. */
function overAt(ledger: Ledger, { does }: Surprise, began: Instant): Instant | null {
  switch (does.kind) {
    case "stretch": {
      const { finish } = progressOf(ledger, does.step);
      return finish !== null && finish >= began ? finish : null;
    }
    case "record": {
      // A value outside its limits stands until one within them is taken.
      const taken = progressOf(ledger, does.step).records.filter(({ record }) => record === does.record);
      const off = taken.findIndex(({ at, outOfRange }) => outOfRange && at >= began);
      return off < 0 ? null : (taken.slice(off).find(({ outOfRange }) => !outOfRange)?.at ?? null);
    }
    case "decision": {
      const made = ledger.inForce.outline.decision(does.decision)?.madeBy.step.id;
      const finish = made === undefined ? null : progressOf(ledger, made).finish;
      return finish !== null && finish >= began ? finish : null;
    }
    case "silent":
    case "contact":
      return later(began, does.for);
    case "missing": {
      const found = ledger.inForce.outline.steps.flatMap(({ step }) => {
        const { finish } = progressOf(ledger, step.id);
        return step.moves.some(({ item }) => item === does.item) && finish !== null && finish >= began
          ? [finish]
          : [];
      });
      for (const move of ledger.moves) {
        if (move.item === does.item && move.step === null && move.at >= began) found.push(move.at);
      }
      return found.length === 0 ? null : found.reduce((first, one) => (one < first ? one : first));
    }
    case "supply":
      return null;
  }
}
