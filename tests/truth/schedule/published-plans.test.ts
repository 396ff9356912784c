import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../../src/core/plan/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { Outline, ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import type { PlannedStep } from "../../core/planned-step.ts";
import { plannedStep } from "../../core/planned-step.ts";
import { outlineFrom, step } from "../../core/procedure-builder.ts";
import tables from "../fixtures/critical-path-tables.json" with { type: "json" };
import networks from "../fixtures/published-networks.json" with { type: "json" };
import windowCases from "../fixtures/window-cases.json" with { type: "json" };

interface Activity {
  readonly id: string;
  readonly duration: number;
  readonly predecessors: readonly string[];
  readonly within?: readonly string[];
}

/** Ids are lower-case here; a letter in front keeps numbers and letters apart. */
const idOf = (activity: string) => `s-${activity.toLowerCase()}`;

/** Each activity a step of a crew member of its own, so that lanes add no order; one unit of time is a minute. */
function outlineOf(activities: readonly Activity[], more: Partial<ProcedureFile> = {}): Outline {
  return outlineFrom(
    activities.map(({ id, duration, predecessors, within = [] }) =>
      step(idOf(id), idOf(id), duration, { after: predecessors.map(idOf), within: [...within] }),
    ),
    { crew: activities.map(({ id }) => ({ id: idOf(id), call: id, station: "inside" })), ...more },
  );
}

function plannedActivity(plan: Plan, activity: string): PlannedStep {
  const planned = plan.timeline && plannedStep(plan.timeline, idOf(activity));
  if (!planned) throw new Error(`${activity} is not planned`);
  return planned;
}

const minutesOf = (duration: Duration | undefined) => inMinutes(duration ?? Number.NaN);

/** A step in the letters of the tables: earliest and latest start and finish, total and free float. */
function row(plan: Plan, activity: string) {
  const { start, finish, latestStart, latestFinish, slack, freeSlack } = plannedActivity(plan, activity);
  const [ES, EF, LS, LF, TF, FF] = [start, finish, latestStart, latestFinish, slack, freeSlack].map(
    minutesOf,
  );
  return { ES, EF, LS, LF, TF, FF };
}

/** Free of gaps: every step of the path is critical, and each starts when the one before is over. */
function expectSound(plan: Plan) {
  const { timeline } = plan;
  const path = (timeline?.criticalPath ?? []).map((id) => timeline && plannedStep(timeline, id));
  expect(path.at(-1)?.finish).toBe(plan.timeline?.course.finish);
  for (const [position, one] of path.entries()) {
    expect(one?.critical).toBe(true);
    expect(one?.start).toBe(position === 0 ? 0 : path[position - 1]?.finish);
  }
}

describe("published critical-path tables", () => {
  it.each(tables)("[PLN1] [PLN2] $id: $title", ({ activities, finish, critical, rows }) => {
    const plan = planOf(outlineOf(activities));
    expect(minutesOf(plan.timeline?.course.finish)).toBe(finish);
    for (const [activity, expected] of Object.entries(rows))
      expect([activity, row(plan, activity)]).toEqual([activity, expected]);
    expect(activities.map(({ id }) => id).filter((id) => plannedActivity(plan, id).critical)).toEqual(
      critical,
    );
    expectSound(plan);
  });
});

const NETWORKS = "../shared/check-values/networks";

/** Durations and successors of an instance in the format of the PSPLIB library (single mode). */
function readNetwork(text: string): Activity[] {
  const section = (heading: string) => {
    const lines = text.split("\n");
    const from = lines.findIndex((line) => line.startsWith(heading));
    const rows = lines.slice(from + 1).map((line) => line.trim().split(/\s+/).map(Number));
    const first = rows.findIndex(([number]) => number === 1);
    const length = rows.slice(first).findIndex(([number]) => Number.isNaN(number));
    return rows.slice(first, first + length);
  };
  const durations = new Map(
    section("REQUESTS/DURATIONS:").map(([job, , duration]) => [job, duration ?? Number.NaN]),
  );
  const links = section("PRECEDENCE RELATIONS:").map(([job, , , ...successors]) => ({ job, successors }));
  return links.map(({ job }) => ({
    id: String(job),
    duration: durations.get(job) ?? Number.NaN,
    predecessors: links.flatMap((other) =>
      other.successors.includes(job ?? Number.NaN) ? [String(other.job)] : [],
    ),
  }));
}

describe("published networks", () => {
  for (const { id, file, finish, critical, ES, LS, FF } of networks) {
    const path = `${NETWORKS}/${file}`;
    // The instances lie outside this checkout; without them the tests are reported as skipped.
    it.skipIf(!existsSync(path))(`[PLN1] [PLN2] ${id}: length ${finish}`, () => {
      const activities = readNetwork(readFileSync(path, "utf8"));
      const plan = planOf(outlineOf(activities));
      expect(activities.length).toBeGreaterThan(30);
      expect(minutesOf(plan.timeline?.course.finish)).toBe(finish);
      const rows = activities.map((activity) => row(plan, activity.id));
      const isCritical = activities.filter((activity) => plannedActivity(plan, activity.id).critical);
      expect(isCritical.map((activity) => Number(activity.id))).toEqual(critical);
      if (ES && LS && FF)
        expect(rows.map((one) => [one.ES, one.LS, one.FF])).toEqual(
          ES.map((start, index) => [start, LS[index], FF[index]]),
        );
      expectSound(plan);
    });
  }
});

interface WindowStep {
  readonly d: number;
  readonly preds: readonly string[];
  readonly W?: readonly (readonly number[])[];
}

interface WindowRow {
  readonly ready: number;
  readonly ES: number;
  readonly EF: number;
  readonly LS: number;
  readonly LF: number;
  readonly TF: number;
  readonly wait_for_window: number;
}

describe("steps in windows", () => {
  it.each(windowCases)("[PLN1] [PLN2] [PLN4] $id: $title", ({ steps, deadline, expected }) => {
    const activities = Object.entries(steps as Record<string, WindowStep>);
    const plan = planOf(
      outlineOf(
        activities.map(([id, { d, preds, W }]) => ({
          id,
          duration: d,
          predecessors: preds,
          within: W ? [idOf(id)] : [],
        })),
        {
          windows: activities.flatMap(([id, { W }]) =>
            W
              ? [
                  {
                    id: idOf(id),
                    kind: "listed" as const,
                    spans: W.map(([from, to]) => ({ from: `PT${from}M`, to: `PT${to}M` })),
                  },
                ]
              : [],
          ),
          ...(deadline === null ? {} : { limits: { elapsed: `PT${deadline}M` } }),
        },
      ),
    );
    expect(minutesOf(plan.timeline?.course.finish)).toBe(expected.T);
    const over = plan.findings.filter(({ code }) => code === "time/over-limit");
    expect(over).toHaveLength(expected.feasible ? 0 : 1);
    if (deadline !== null) expect(minutesOf(plan.margin ?? undefined)).toBe(deadline - expected.T);
    if ("ES" in expected) {
      for (const [id, start] of Object.entries(expected.ES ?? {}))
        expect([id, row(plan, id).ES]).toEqual([id, start]);
    }
    for (const [id, one] of Object.entries(
      ("rows" in expected ? expected.rows : {}) as Record<string, WindowRow>,
    )) {
      const { ES, EF, LS, LF, TF } = row(plan, id);
      expect([id, ES, EF]).toEqual([id, one.ES, one.EF]);
      const waits = plannedActivity(plan, id).waits.filter(({ on }) => on && "window" in on);
      expect(waits.length > 0).toBe(one.wait_for_window > 0);
      // [PLN3] Until the predecessors let it, the wait is for them; only what is left is the window's.
      if (waits[0]) expect(minutesOf(waits[0].time)).toBe(one.wait_for_window);
      // Latest times go back from the plan's finish here, from the deadline there: comparable where they are one.
      if (expected.deadline === expected.T) expect([id, LS, LF, TF]).toEqual([id, one.LS, one.LF, one.TF]);
    }
  });
});
