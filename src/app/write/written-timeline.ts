import { waitsOf } from "../../core/course/index.ts";
import type { Plan } from "../../core/plan/index.ts";
import type { Finding, Procedure } from "../../core/procedure/index.ts";
import type { DrawnPlan } from "../timeline/index.ts";

/** The timeline of a manuscript as a worker sends it, with the procedure that it is of; or why there is none. */
export type WrittenTimeline =
  | (Omit<DrawnPlan, "outline"> & { readonly procedure: Procedure })
  | { readonly procedure: null; readonly findings: readonly Finding[] };

/** What of a plan is drawn where its manuscript is written; `findings` are those of its reading, for a text that is no procedure. */
export function writtenTimeline(plan: Plan | null, findings: readonly Finding[]): WrittenTimeline {
  if (!plan?.timeline)
    return { procedure: null, findings: plan?.findings ?? findings.filter(({ level }) => level === "error") };
  const { outline, start, windows, timeline } = plan;
  const { course, slack, criticalPath } = timeline;
  return {
    procedure: outline.procedure,
    start,
    windows,
    timeline: { slack, criticalPath, course: { steps: course.steps, finish: course.finish } },
    waits: waitsOf(course),
  };
}
