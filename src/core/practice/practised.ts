import type { Ledger } from "../walk/index.ts";
import { broughtIn } from "./brought-in.ts";

/** What a practice walk is there to be tried on, in the order in which it comes ([PRA5]). */
export interface Practised {
  /** A step was marked done. */
  readonly tap: boolean;
  /** A joint step was done, for which somebody had to wait. */
  readonly joint: boolean;
  /** A value outside its limits was entered. */
  readonly value: boolean;
  /** A contingency was brought in. */
  readonly contingency: boolean;
  /** The walk was closed, so that there is a review of the whole. */
  readonly close: boolean;
}

/** What was practised in a walk so far, by what is in its log. */
export function practisedOf(ledger: Ledger): Practised {
  const all = ledger.inForce.outline.steps.map(({ step }) => ({ step, progress: ledger.steps.get(step.id) }));
  const done = all.filter(({ progress }) => progress?.status === "done");
  return {
    tap: done.length > 0,
    joint: done.some(({ step }) => step.by.length > 1),
    value: all.some(({ progress }) => progress?.records.some(({ outOfRange }) => outOfRange)),
    contingency: broughtIn(ledger).length > 0,
    close: ledger.phase === "closed",
  };
}
