import { message } from "../../words/index.ts";
import { marginOf } from "../course/index.ts";
import type { Light } from "../light/index.ts";
import { lightMessage } from "../light/index.ts";
import type { Network } from "../order/index.ts";
import { deadlockFinding } from "../order/index.ts";
import type { Whereabouts } from "../place/index.ts";
import type { Finding, GetAheads, Outcomes, Outline } from "../procedure/index.ts";
import { AS_EXPECTED, activityOf, finding } from "../procedure/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import type { WindowSpans } from "../window/index.ts";
import { windowSpansOf } from "../window/index.ts";
import type { PlanGround } from "./plan-ground.ts";
import { groundOf } from "./plan-ground.ts";
import type { ReturnMemory } from "./return-memory.ts";
import { boundFindings } from "./time-bounds.ts";
import type { Timeline } from "./timeline.ts";
import { planTimeline } from "./timeline.ts";

/** Options for a plan. */
export interface PlanOptions {
  /** The outcomes of decisions. A decision that is missing here comes out as its `expect`. */
  readonly outcomes?: Outcomes;
  /** The instant of PET 0, needed for windows that are given as instants; `null` when unknown. */
  readonly start?: Instant | null;
  /** Day and night from `start` on; `null` when unknown. */
  readonly light?: Light | null;
  /** The get-ahead tasks that are planned too ([PRO9]); none unless given. */
  readonly getAheads?: GetAheads;
  /** What the outline comes to whatever its steps take, of the same outcomes and get-aheads; worked out unless given. */
  readonly ground?: PlanGround | null;
}

/** The plan of one scenario. */
export interface Plan {
  readonly outline: Outline;
  readonly start: Instant | null;
  readonly light: Light | null;
  readonly network: Network;
  readonly whereabouts: Whereabouts;
  readonly windows: WindowSpans;
  /** The returns of this plan, and of others on the same ground. */
  readonly returns: ReturnMemory;
  /** `null` when there is no timeline; a finding then gives the reason (deadlock, no way, no fitting window). */
  readonly timeline: Timeline | null;
  /** Elapsed limit − finish; negative when over the limit. `null` without a limit or a timeline. */
  readonly margin: Duration | null;
  readonly findings: readonly Finding[];
}

/** Plans an outline with the scenario and the start given in `options`. */
export function planOf(outline: Outline, options: PlanOptions = {}): Plan {
  const start = options.start ?? null;
  const light = options.light ?? null;
  const { network, whereabouts, returns } =
    options.ground ??
    groundOf(outline, activityOf(outline, options.outcomes ?? AS_EXPECTED, options.getAheads ?? false));
  const windows = windowSpansOf(outline.procedure, start, light);
  const deadlock = deadlockFinding(network);
  const common = { outline, start, light, network, whereabouts, windows, returns };
  const unplanned = (findings: readonly Finding[]): Plan => ({
    ...common,
    timeline: null,
    margin: null,
    findings,
  });
  if (deadlock) return unplanned([deadlock, ...whereabouts.findings]);
  if (whereabouts.findings.some(({ code }) => code === "place/no-way"))
    return unplanned(whereabouts.findings);
  const { timeline, unfit } = planTimeline(network, whereabouts, windows);
  if (!timeline) return unplanned([...whereabouts.findings, ...unfit]);
  return {
    ...common,
    timeline,
    margin: marginOf(timeline.course),
    findings: [
      ...whereabouts.findings,
      ...unknownWindows(outline, windows),
      ...lightFindings(light),
      ...overLimit(outline, timeline),
      ...boundFindings(timeline.course),
    ],
  };
}

function overLimit(outline: Outline, timeline: Timeline): Finding[] {
  const limit = outline.procedure.limits.elapsed;
  const { course, criticalPath } = timeline;
  if (limit === undefined || course.finish <= limit) return [];
  const over = Math.ceil((course.finish - limit) / 60_000);
  const last = criticalPath.at(-1);
  return [
    finding("error", "time/over-limit", "/limits/elapsed", message("time/over-limit", { over }), {
      steps: last === undefined ? [] : [last],
    }),
  ];
}

/** Returns the findings for an orbital element set that is old or whose orbit has decayed ([LGT4]). */
function lightFindings(light: Light | null): Finding[] {
  if (light?.spans === null) {
    return [finding("error", "light/decayed", "", message("light/decayed"))];
  }
  return light?.isOld ? [finding("caution", "light/old-elements", "", lightMessage(light))] : [];
}

function unknownWindows(outline: Outline, windows: WindowSpans): Finding[] {
  return outline.procedure.windows.flatMap((window, index) => {
    const steps = outline.steps
      .filter(({ step }) => step.within.includes(window.id))
      .map(({ step }) => step.id);
    if (windows.get(window.id) !== null || steps.length === 0) return [];
    const key = window.spans ? "window/not-known-start" : "window/not-known-orbit";
    const unknown = message(key, { window: window.label ?? window.id });
    return [
      finding("caution", "window/not-known", `/windows/${index}`, unknown, { steps, things: [window.id] }),
    ];
  });
}
