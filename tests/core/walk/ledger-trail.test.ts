import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Ledger } from "../../../src/core/walk/index.ts";
import { LedgerTrail } from "../../../src/core/walk/ledger-trail.ts";

/** Ledgers that are told apart by nothing but themselves. */
const ledgers = Array.from({ length: 2000 }, () => ({}) as Ledger);

function trailOf(length: number): LedgerTrail {
  const trail = new LedgerTrail();
  for (const ledger of ledgers.slice(0, length)) trail.push(ledger);
  return trail;
}

describe("the ledgers kept on the way through a log", () => {
  test.prop([fc.nat({ max: 2000 }), fc.nat({ max: 2100 })])(
    "[LOG3] lead back to one that stood there, at most an interval before what is asked for",
    (length, asked) => {
      const trail = trailOf(length);
      const kept = trail.goBackTo(asked);
      const wanted = Math.min(asked, length);
      expect(kept.length).toBeLessThanOrEqual(wanted);
      expect(wanted - kept.length).toBeLessThan(256);
      expect(kept.ledger).toBe(kept.length === 0 ? null : ledgers[kept.length - 1]);
      expect(trail.last).toBe(kept.ledger);
    },
  );

  it("[LOG3] are all there for the newest entries, so that taking one back costs nothing", () => {
    for (const back of [1, 10, 63]) expect(trailOf(1500).goBackTo(1500 - back).length).toBe(1500 - back);
  });

  test.prop([fc.array(fc.tuple(fc.nat({ max: 300 }), fc.nat({ max: 400 })), { maxLength: 8 })])(
    "[LOG3] are as if they had been pushed straight on, however often one goes back and on again",
    (rounds) => {
      const trail = new LedgerTrail();
      let length = 0;
      for (const [onward, back] of rounds) {
        for (const ledger of ledgers.slice(length, length + onward)) trail.push(ledger);
        length = Math.min(ledgers.length, length + onward);
        expect(trail.last).toBe(length === 0 ? null : ledgers[length - 1]);
        length = trail.goBackTo(Math.max(0, length - back)).length;
        expect(trail.last).toBe(length === 0 ? null : ledgers[length - 1]);
      }
    },
  );
});
