import type { Wait } from "../course/index.ts";
import { crewPlaceAt, waitsBefore } from "../course/index.ts";
import type { Plan, Timeline } from "../plan/index.ts";
import type { OutlineStep, StepTime } from "../procedure/index.ts";
import type { Duration, Instant, PlaceId } from "../units/index.ts";
import { later } from "../units/index.ts";

/** One step of a plan, as the list of the plan tells it. Times are PET. */
export interface PlannedRow {
  readonly entry: OutlineStep;
  readonly start: Duration;
  readonly finish: Duration;
  /** `null` where the start of the walk is not known. */
  readonly startsAt: Instant | null;
  readonly finishesAt: Instant | null;
  /** Low, likely and high; those of a translation come from its way. */
  readonly time: StepTime;
  /** Where it is done: one place, or two for a way; none where the procedure does not tell. */
  readonly where: readonly PlaceId[];
  readonly slack: Duration;
  readonly critical: boolean;
  /** What is waited for before it. */
  readonly waits: readonly Wait[];
}

/** The steps of a plan in reading order, without those that are not performed. */
export function plannedRows(plan: Plan, timeline: Timeline): readonly PlannedRow[] {
  const { outline, start: zero, whereabouts } = plan;
  const { course, slack } = timeline;
  return [...course.steps.values()].flatMap(({ step, start, finish }) => {
    const entry = outline.step(step);
    const late = slack.get(step);
    const time = entry && whereabouts.times[entry.index];
    if (!entry || !late || !time) return [];
    return {
      entry,
      start,
      finish,
      startsAt: zero === null ? null : later(zero, start),
      finishesAt: zero === null ? null : later(zero, finish),
      time,
      where: whereOf(timeline, entry, start),
      slack: late.slack,
      critical: late.critical,
      waits: waitsBefore(course, step),
    };
  });
}

function whereOf(
  { course }: Timeline,
  { step, performers }: OutlineStep,
  start: Duration,
): readonly PlaceId[] {
  const [lane] = performers;
  const at = step.at ?? (lane === undefined ? null : crewPlaceAt(course, lane, start));
  if (at === null) return step.to === undefined ? [] : [step.to];
  if (typeof at !== "string" && "from" in at) return [at.from, at.to];
  const from = typeof at === "string" ? at : at.place;
  return step.to === undefined || step.to === from ? [from] : [from, step.to];
}
