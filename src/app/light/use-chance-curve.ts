import { useEffect, useMemo, useState } from "react";
import type { Light } from "../../core/light/index.ts";
import { startChances } from "../../core/plan/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";

/** The chance of one start: that the walk is within the limit, or without a limit that every step fits. */
export interface ChanceAt {
  readonly start: Instant;
  readonly chance: number;
}

/** How often durations are sampled for one start of the curve: enough for four percentage points. */
export const CURVE_SAMPLES = 200;

const NONE: readonly ChanceAt[] = [];

/**
 * The chance by start, for some starts. It is worked out one start after the other while nothing else is to be done, and
 * empty until all of them are.
 */
export function useChanceCurve(
  outline: Outline,
  light: Light | null,
  starts: readonly Instant[],
): readonly ChanceAt[] {
  const [curve, setCurve] = useState(NONE);
  const chanceOf = useMemo(() => startChances(outline), [outline]);
  useEffect(() => {
    setCurve(NONE);
    if (!chanceOf) return;
    const found: ChanceAt[] = [];
    let timer: ReturnType<typeof setTimeout>;
    const next = () => {
      const start = starts[found.length];
      if (start === undefined) return setCurve(found);
      const { fits, withinLimit } = chanceOf(light, start, CURVE_SAMPLES);
      found.push({ start, chance: withinLimit ?? fits });
      timer = setTimeout(next, 0);
    };
    timer = setTimeout(next, 0);
    return () => clearTimeout(timer);
  }, [chanceOf, light, starts]);
  return curve;
}
