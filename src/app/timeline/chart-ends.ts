import type { Risk } from "../../core/plan/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import type { Span } from "../../core/window/index.ts";
import { words } from "../../words/index.ts";
import type { DrawnTimeline } from "./lane-bar.ts";
import type { ChartFlag } from "./time-flag.tsx";

/** The room to the right of the last thing to show, in ms of PET. */
const ROOM_BEHIND = 4 * 60_000;

/** When a timeline ends, in PET. */
interface Finishes {
  readonly finish: Duration;
  readonly forecast: Duration | null;
  readonly limit: Duration | null;
  /** True when the walk is closed, so that its last step has been done. */
  readonly ended: boolean;
}

/** The PETs between which the finish falls in eight samples of ten. */
export function bandOf(risk: Risk | null): Span | null {
  if (risk?.p10 == null || risk.p90 === null || risk.p90 === risk.p10) return null;
  return { from: risk.p10 as Duration, to: risk.p90 as Duration };
}

/** The flags of the planned finish, of the forecast finish and of the limit, as far as there are any. */
export function flagsOf({ finish, forecast, limit, ended }: Finishes): ChartFlag[] {
  const flags: ChartFlag[] = [
    { kind: "finish", pet: finish, words: words("timeline/planned-finish", { at: finish }) },
  ];
  if (forecast !== null) {
    const name = words(ended ? "timeline/last-step-done" : "timeline/forecast-finish", { at: forecast });
    flags.push({ kind: "forecast", pet: forecast, words: name });
  }
  if (limit !== null)
    flags.push({ kind: "limit", pet: limit, words: words("timeline/limit", { at: limit }) });
  return flags;
}

/** The right edge: a little after the last thing to show, in whole steps so that it does not creep each second. */
export function endOf(flags: readonly ChartFlag[], now: Duration | null, band: Span | null): Duration {
  const last = flags.reduce((most, { pet }) => Math.max(most, pet), Math.max(now ?? 0, band?.to ?? 0));
  return (Math.ceil((last + ROOM_BEHIND) / (5 * 60_000)) * 5 * 60_000) as Duration;
}

/** The flags of a plan alone; none without a timeline. */
export function flagsOfPlan({
  timeline,
  outline,
}: {
  readonly timeline: DrawnTimeline | null;
  readonly outline: Outline;
}): ChartFlag[] {
  if (!timeline) return [];
  const limit = outline.procedure.limits.elapsed ?? null;
  return flagsOf({ finish: timeline.course.finish, forecast: null, limit, ended: false });
}
