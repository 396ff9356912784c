import { test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import type { Entry } from "../../../src/core/log/index.ts";
import { reviewOf } from "../../../src/core/review/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import type { Folded } from "../../../src/core/walk/index.ts";
import { foldLog, WalkFold } from "../../../src/core/walk/index.ts";
import type { Reference } from "./reference-fold.ts";
import { referenceOf } from "./reference-fold.ts";
import { arrivalsOf, chanceOf, entriesOf, longTappedLog, seed, tappedLog } from "./tapped-log.ts";

/** More runs when hunting: `PROPERTY_RUNS=5000 npx vitest run tests/core/walk/against-reference.test.ts`. */
const RUNS = Number(process.env["PROPERTY_RUNS"] ?? 300);

/** What the fold has of the steps, in the words of the reference. */
function stepsIn({ ledger }: Folded) {
  return [...(ledger?.steps ?? [])].map(
    ([step, { leftOut: _, orderReason: _reason, early: _early, completedBy, ...progress }]) => [
      step,
      { ...progress, completedBy: completedBy && `${completedBy.source} ${completedBy.id}` },
    ],
  );
}

/** What the fold has of everything, in the words of the reference. */
function told(folded: Folded) {
  const { ledger } = folded;
  return {
    walk: ledger && {
      phase: ledger.phase,
      petZero: ledger.petZero,
      closed: ledger.closed,
      reopenings: ledger.reopenings,
      steps: stepsIn(folded),
      outcomes: [...ledger.outcomes],
      decidedAt: [...ledger.decidedAt],
      items: [...ledger.custody],
      moves: [...ledger.moves],
      holds: ledger.holds,
      notes: [...ledger.notes],
      readings: [...ledger.readings],
      stateSettings: ledger.stateSettings,
      keptWatches: [...ledger.keptWatches].map(({ at, watch }) => ({ at, watch })),
      alerts: ledger.alerts,
      next: ledger.lanes.map(({ next }) => next),
      lanes: ledger.lanes.map(({ status }) => status),
    },
    ignored: folded.ignored.map(({ source, id }) => `${source} ${id}`),
    deviations: folded.deviations.map(({ kind, step, at }) => ({ kind, step, at })),
    lastAt: folded.lastAt,
  };
}

/** The same of the reference. */
function expected({ walk, ignored, deviations, lastAt }: Reference) {
  return {
    walk: walk && {
      phase: walk.phase,
      petZero: walk.petZero,
      closed: walk.closed,
      reopenings: walk.reopenings,
      steps: [...walk.steps],
      outcomes: [...walk.outcomes],
      decidedAt: [...walk.decidedAt],
      items: [...walk.items],
      moves: walk.moves,
      holds: walk.holds,
      notes: walk.notes,
      readings: walk.readings,
      stateSettings: walk.stateSettings,
      keptWatches: walk.keptWatches,
      alerts: { raised: walk.raised, seen: walk.seen },
      next: walk.next,
      lanes: walk.next.map((next) =>
        walk.petZero === null ? "ready" : next === null ? "finished" : "waiting",
      ),
    },
    ignored,
    deviations,
    lastAt,
  };
}

/** Takes batches in one after another and holds the fold against the reference now and then, and at the end. */
function holdAgainst(batches: readonly (readonly Entry[])[], isLooked: () => boolean): void {
  const fold = new WalkFold();
  const known: Entry[] = [];
  for (const batch of batches) {
    fold.add(batch);
    known.push(...batch);
    if (isLooked()) expect(told(fold.folded)).toEqual(expected(referenceOf(known)));
  }
  expect(told(fold.folded)).toEqual(expected(referenceOf(known)));
}

describe("the fold and the obvious account of a log", { timeout: 600_000 }, () => {
  test.prop([tappedLog, seed], { numRuns: RUNS })(
    "[LOG3] agree for any order of arrival, duplication and division into batches",
    (tapped, number) => {
      const chance = chanceOf(number);
      const astray = chance() < 0.5 ? 1 : 0.2;
      holdAgainst(arrivalsOf(entriesOf(tapped), chance, astray), () => chance() < 0.1);
    },
  );

  test.prop([longTappedLog, seed], { numRuns: Math.ceil(RUNS / 10), endOnFailure: true })(
    "[LOG3] agree for long logs of which a few entries come in late, far back",
    (tapped, number) => {
      const chance = chanceOf(number);
      const entries = entriesOf(tapped);
      expect(entries.length).toBeGreaterThan(400);
      holdAgainst(arrivalsOf(entries, chance, 0.03), () => chance() < 0.01);
    },
  );

  test.prop([tappedLog], { numRuns: RUNS })(
    "[LOG3] agree when times are read as the devices had them",
    (tapped) => {
      const entries = entriesOf(tapped);
      const asEntered = { asEntered: true };
      expect(told(foldLog(entries, asEntered))).toEqual(expected(referenceOf(entries, asEntered)));
    },
  );

  test.prop([tappedLog], { numRuns: RUNS })(
    "[LOG4] agree on which entries have no effect, each as often as there are statements of it",
    (tapped) => {
      const entries = entriesOf(tapped);
      expect(told(foldLog(entries)).ignored).toEqual(referenceOf(entries).ignored);
    },
  );

  test.prop([tappedLog], { numRuns: RUNS })(
    "[WLK2] agree on when each step started and was complete, and what it moved",
    (tapped) => {
      const entries = entriesOf(tapped);
      const folded = foldLog(entries);
      const { walk } = referenceOf(entries);
      expect(stepsIn(folded)).toEqual([...(walk?.steps ?? [])]);
      expect([...(folded.ledger?.moves ?? [])]).toEqual(walk?.moves ?? []);
      expect([...(folded.ledger?.custody ?? [])]).toEqual([...(walk?.items ?? [])]);
    },
  );
});

describe("the review and the obvious account of a log", { timeout: 600_000 }, () => {
  test.prop([tappedLog], { numRuns: RUNS })(
    "[REV1] agree on when entries were struck, and steps done and reopened, by corrected clocks or as entered",
    (tapped) => {
      const entries = entriesOf(tapped);
      for (const asEntered of [false, true]) {
        const folded = foldLog(entries, { asEntered });
        const { walk, struck, deviations, lastAt } = referenceOf(entries, { asEntered });
        const review = reviewOf(folded, (folded.lastAt ?? 0) as Instant);
        expect(review === null).toBe(walk === null);
        if (!review || !walk) continue;
        const struckNames = review.struck.map(({ source, id, at, struckAt }) => ({
          key: `${source} ${id}`,
          at,
          struckAt,
        }));
        expect(struckNames).toEqual([...struck].sort((a, b) => a.struckAt - b.struckAt));
        expect(review.until).toBe(Math.min(walk.closed?.at ?? Infinity, lastAt ?? Infinity));
        for (const { step, reopened, actual, struck: ownStruck } of review.steps) {
          const own = walk.steps.get(step);
          expect(reopened).toEqual(own?.reopened);
          // What is said to have happened after the closing counts as of the closing.
          const pet = (at: number) => Math.min(at, walk.closed?.at ?? Infinity) - (walk.petZero ?? 0);
          expect(actual && [actual.start, actual.finish]).toEqual(
            own?.start == null || own.finish === null ? null : [pet(own.start), pet(own.finish)],
          );
          const ofStep = review.struck.filter((one) => one.step === step);
          expect(ownStruck).toEqual(ofStep);
        }
        // What is missing at the end stands behind what the entries say, and has tests of its own.
        const told = review.deviations.slice(0, deviations.length);
        expect(told.map(({ kind, step, at }) => ({ kind, step, at }))).toEqual(deviations);
      }
    },
  );
});
