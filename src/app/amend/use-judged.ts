import { useDeferredValue, useEffect, useMemo, useRef, useState } from "react";
import type { JudgedAmendment } from "../../core/effect/index.ts";
import { amendmentEffect } from "../../core/effect/index.ts";
import type { Risk } from "../../core/plan/index.ts";
import type { Change } from "../../core/procedure/index.ts";
import { later, NO_TIME } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { forecastRiskModel, walkStateAt } from "../../core/walk/index.ts";
import { useRisk } from "../risk/index.ts";

/** How often the effect is worked out anew while nothing is entered, in ms of PET. */
const ANEW_EVERY = 15_000;

/** The delay before the thorough look, in ms, so that what was tapped is drawn before it. */
const AFTER = 150;

/** What changes would come to, and the samples of the walk with them. */
export interface Judged {
  /** `null` while there are no changes. */
  readonly judged: JudgedAmendment | null;
  /** True once everything was looked at, the return from every step too; until then findings may be missing. */
  readonly isThorough: boolean;
  /** The samples of the walk as it would be; `null` until they are there. */
  readonly risk: Risk | null;
}

/**
 * Works out what changes would come to from the present state of a walk, again after each entry and every few seconds.
 * The likely times are there at once; the thorough look and the samples follow, so that the screen answers meanwhile.
 */
export function useJudged(present: WalkState, changes: readonly Change[]): Judged {
  const state = useDeferredValue(present);
  const { ledger, pet } = state;
  const beat = pet === null ? null : Math.floor(pet / ANEW_EVERY);
  const latest = useRef(state);
  latest.current = state;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the state changes every second, the effect need not.
  const quick = useMemo(
    () => (changes.length === 0 ? null : amendmentEffect(latest.current, changes, { thorough: false })),
    [ledger, changes],
  );
  const [thorough, setThorough] = useState<{
    readonly of: readonly Change[];
    readonly on: WalkState["ledger"];
    readonly judged: JudgedAmendment;
  } | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: with each beat the walk has gone on.
  useEffect(() => {
    if (changes.length === 0) return;
    const look = () =>
      setThorough({
        of: changes,
        on: ledger,
        judged: amendmentEffect(latest.current, changes, { thorough: true }),
      });
    const timer = setTimeout(look, AFTER);
    return () => clearTimeout(timer);
  }, [changes, ledger, beat]);
  const isThorough = thorough !== null && thorough.of === changes && thorough.on === ledger;
  const judged = isThorough ? thorough.judged : quick;
  const model = useMemo(() => {
    if (!judged?.effect) return null;
    const { ledger: next } = judged.effect;
    const at = later(next.petZero ?? next.opened.at, latest.current.pet ?? NO_TIME);
    return forecastRiskModel(walkStateAt(next, at));
  }, [judged]);
  const risk = useRisk(model, { subject: changes, after: 0 });
  return { judged, isThorough, risk };
}
