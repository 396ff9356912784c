import type { Outline } from "../../core/procedure/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import type { Strand } from "../braid/index.ts";
import type { ChartLayout } from "./chart-layout.ts";
import type { TimeScale } from "./time-scale.ts";

/** What the parts of the chart need in order to place themselves. */
export interface ChartFrame {
  readonly outline: Outline;
  readonly strands: readonly Strand[];
  readonly scale: TimeScale;
  readonly layout: ChartLayout;
  /** The approximate x of the left edge of the visible part. */
  readonly seenFrom: number;
  /** The width of the visible part in px. */
  readonly visible: number;
  /** The present PET; `null` on paper and before the clock is started. */
  readonly now: Duration | null;
  /** The instant of PET 0; `null` when it is not known. */
  readonly start: Instant | null;
  /** The start of the ids of the lanes' hatches, which differs from chart to chart. */
  readonly hatch: string;
}
