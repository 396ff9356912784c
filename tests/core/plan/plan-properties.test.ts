import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import type { Timeline } from "../../../src/core/plan/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import { formatDuration, plus } from "../../../src/core/units/index.ts";
import { earliestFit } from "../../../src/core/window/index.ts";
import type { PlannedStep } from "../planned-step.ts";
import { plannedStep, plannedSteps } from "../planned-step.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";
import { said } from "../said.ts";

const CREW = ["ev1", "ev2", "iv"] as const;

interface DrawnStep {
  readonly by: readonly string[];
  readonly minutes: number;
  /** How many steps back, and minutes of lag. */
  readonly after: readonly (readonly [back: number, lag: number])[];
  readonly within: readonly string[];
}

const drawnStep: fc.Arbitrary<DrawnStep> = fc.record({
  by: fc.subarray([...CREW], { minLength: 1 }),
  minutes: fc.nat({ max: 12 }),
  after: fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.constantFrom(0, 0, 5)), { maxLength: 2 }),
  within: fc.oneof(
    { weight: 4, arbitrary: fc.constant([]) },
    { weight: 1, arbitrary: fc.subarray(["light", "contact"], { minLength: 1 }) },
  ),
});
const drawnSteps = fc.array(drawnStep, { minLength: 1, maxLength: 14 });

/** Windows that open now and then, the last span long enough for anything. */
const WINDOWS: ProcedureFile["windows"] = [
  {
    id: "light",
    kind: "daylight",
    spans: [
      { from: "PT0M", to: "PT14M" },
      { from: "PT25M", to: "PT40M" },
      { from: "PT50M", to: "P2D" },
    ],
  },
  {
    id: "contact",
    kind: "listed",
    spans: [
      { from: "PT6M", to: "PT30M" },
      { from: "PT33M", to: "PT45M" },
      { from: "PT70M", to: "P2D" },
    ],
  },
];

/** A pin holds a step back: it may start no sooner than so many ms. */
function timelineOf(
  drawn: readonly DrawnStep[],
  pin: { step: number; from: number } | null = null,
): Timeline {
  const steps = drawn.map(({ by, minutes, after, within }, index) => {
    const links = after
      .filter(([back]) => back <= index)
      .map(([back, lag]) => ({ step: `s${index - back}`, lag: `PT${lag}M` }));
    const pinned = pin?.step === index ? [{ step: "pin", lag: formatDuration(pin.from as Duration) }] : [];
    return step(`s${index}`, by, minutes, { after: [...links, ...pinned], within: [...within] });
  });
  const file = fileWith([...steps, step("pin", "pinned", 0)], {
    crew: [...CREW, "pinned"].map((id) => ({ id, call: id, station: "inside" })),
    windows: WINDOWS,
  });
  const { timeline, findings } = planOf(outlineOf(procedureOf(file)));
  if (!timeline) throw new Error(findings.map(said).join(" "));
  return timeline;
}

const networkOf = ({ course }: Timeline) => course.network;
const finishOf = ({ course }: Timeline) => course.finish;

const at = (timeline: Timeline, index: number): PlannedStep => {
  const one = plannedStep(timeline, networkOf(timeline).outline.steps[index]?.step.id ?? "");
  if (!one) throw new Error(`step ${index} is not planned`);
  return one;
};

describe("any plan", () => {
  test.prop([drawnSteps])(
    "[PLN1] has nobody in two steps at a time, and nothing before its predecessors",
    (drawn) => {
      const timeline = timelineOf(drawn);
      for (const lane of networkOf(timeline).lanes) {
        for (const [position, index] of lane.entries()) {
          const next = lane[position + 1];
          if (next !== undefined)
            expect(at(timeline, next).start).toBeGreaterThanOrEqual(at(timeline, index).finish);
        }
      }
      for (const links of networkOf(timeline).before) {
        for (const { from, to, lag } of links) {
          expect(at(timeline, to).start).toBeGreaterThanOrEqual(at(timeline, from).finish + lag);
        }
      }
    },
  );

  test.prop([drawnSteps])(
    "[PLN1] starts every step as early as it may, inside one span of each of its windows",
    (drawn) => {
      const timeline = timelineOf(drawn);
      const spans = new Map(
        planOf(outlineOf(procedureOf(fileWith([step("x", "ev1", 1)], { windows: WINDOWS })))).windows,
      );
      for (const { step: id, start, finish } of plannedSteps(timeline)) {
        const index = networkOf(timeline).outline.step(id)?.index ?? -1;
        const ready = Math.max(
          0,
          ...(networkOf(timeline).before[index] ?? []).map(
            ({ from, lag }) => at(timeline, from).finish + lag,
          ),
        ) as Duration;
        const within = networkOf(timeline).outline.steps[index]?.step.within ?? [];
        const fits = (from: number) =>
          within.every((id) =>
            spans.get(id)?.some((one) => one.from <= from && from + (finish - start) <= one.to),
          );
        expect(fits(start)).toBe(true);
        // Every moment from ready on at which the step would fit: the first is where it starts.
        const moments = [ready, ...within.flatMap((id) => spans.get(id)?.map(({ from }) => from) ?? [])];
        expect(Math.min(...moments.filter((moment) => moment >= ready && fits(moment)))).toBe(start);
      }
    },
  );

  test.prop([drawnSteps])(
    "[PLN2] is never earlier than the earliest nor later than the latest it may be",
    (drawn) => {
      const timeline = timelineOf(drawn);
      for (const one of plannedSteps(timeline)) {
        expect(one.latestStart).toBeGreaterThanOrEqual(one.start);
        expect(one.latestFinish).toBeLessThanOrEqual(finishOf(timeline));
        expect(one.slack).toBe(one.latestStart - one.start);
        expect(one.freeSlack).toBeLessThanOrEqual(one.slack);
        expect(one.freeSlack).toBeGreaterThanOrEqual(0);
        expect(one.critical).toBe(one.slack === 0);
      }
    },
  );

  test.prop([drawnSteps, fc.nat(), fc.integer({ min: 1, max: 3_600_000 })])(
    "[PLN2] keeps its finish when a step slips by its slack, and not when it slips by more",
    (drawn, which, more) => {
      const timeline = timelineOf(drawn);
      const index = which % drawn.length;
      const { latestStart } = at(timeline, index);
      const slipped = timelineOf(drawn, { step: index, from: latestStart });
      expect(at(slipped, index).start).toBe(latestStart);
      expect(finishOf(slipped)).toBe(finishOf(timeline));
      expect(finishOf(timelineOf(drawn, { step: index, from: latestStart + more }))).toBeGreaterThan(
        finishOf(timeline),
      );
    },
  );

  test.prop([drawnSteps, fc.nat(), fc.integer({ min: 1, max: 3_600_000 })])(
    "[PLN2] moves no successor when a step slips by its free slack, and one when it slips by more",
    (drawn, which, more) => {
      const timeline = timelineOf(drawn);
      const index = which % drawn.length;
      const { start, freeSlack } = at(timeline, index);
      const behind = (networkOf(timeline).behind[index] ?? []).map(({ to }) => to);
      const starts = (one: Timeline) => behind.map((to) => at(one, to).start);
      const slipped = timelineOf(drawn, { step: index, from: plus(start, freeSlack) });
      expect(starts(slipped)).toEqual(starts(timeline));
      expect(finishOf(slipped)).toBe(finishOf(timeline));
      const further = timelineOf(drawn, { step: index, from: start + freeSlack + more });
      expect([...starts(further), finishOf(further)]).not.toEqual([...starts(timeline), finishOf(timeline)]);
    },
  );

  test.prop([drawnSteps, drawnStep, fc.nat()])(
    "[PLN1] is never over sooner because of one more step",
    (drawn, one, where) => {
      const position = where % (drawn.length + 1);
      const alone = { ...one, after: [] };
      // The links of the others are by distance, so they are made anew to lead to the same steps.
      const more = [
        ...drawn.slice(0, position),
        alone,
        ...drawn.slice(position).map((other, index) => ({
          ...other,
          after: other.after
            .filter(([back]) => back <= position + index)
            .map(([back, lag]) => [back > index ? back + 1 : back, lag] as const),
        })),
      ];
      expect(finishOf(timelineOf(more))).toBeGreaterThanOrEqual(finishOf(timelineOf(drawn)));
    },
  );

  test.prop([drawnSteps])(
    "[PLN2] has a critical path without gaps, from PET 0 or a window to the finish",
    (drawn) => {
      const timeline = timelineOf(drawn);
      const { outline, before } = networkOf(timeline);
      const path = timeline.criticalPath.map((id) => outline.step(id)?.index ?? -1);
      const lets = (index: number) =>
        (before[index] ?? []).map(({ from, lag }) => ({ from, at: at(timeline, from).finish + lag }));
      const [first] = path;
      expect(at(timeline, path.at(-1) ?? -1).finish).toBe(finishOf(timeline));
      const { start } = at(timeline, first ?? -1);
      expect(start === 0 || lets(first ?? -1).every((one) => one.at < start)).toBe(true);
      for (const [position, index] of path.entries()) {
        const next = path[position + 1];
        if (next === undefined) continue;
        const last = Math.max(...lets(next).map((one) => one.at));
        expect(at(timeline, next).start).toBe(last);
        expect(lets(next)).toContainEqual({ from: index, at: last });
      }
    },
  );

  test.prop([drawnSteps])(
    "[PLN3] tells of every moment that somebody stands idle what binds it: what lets the step go last, then a window",
    (drawn) => {
      const timeline = timelineOf(drawn);
      const { outline, before, lanes } = networkOf(timeline);
      for (const [lane, indices] of lanes.entries()) {
        let free = 0;
        for (const index of indices) {
          const one = at(timeline, index);
          const waits = one.waits.filter(({ crew }) => crew === outline.crew[lane]?.id);
          expect(waits.reduce((sum, { time }) => sum + time, 0)).toBe(one.start - free);
          let from = free;
          for (const { on, time } of waits) {
            const to = from + time;
            const links = (before[index] ?? []).map((link) => ({
              ...link,
              done: at(timeline, link.from).finish,
            }));
            const ready = Math.max(0, ...links.map(({ done, lag }) => done + lag));
            if (from < ready) {
              // One of those that let the step go last is named, by its performers until it is done and by its lag from then on.
              const last = links.filter(({ done, lag }) => done + lag === ready);
              const ends = last.map(({ done }) => (done > from ? done : ready));
              expect(ends).toContain(to);
              expect(on && ("crew" in on ? on.crew.length > 0 : "lag" in on)).toBe(true);
            } else {
              // What is left is for windows, each until the step alone would fit it; the last lets the step start.
              expect(on && "window" in on).toBe(true);
              expect(to).toBeLessThanOrEqual(one.start);
            }
            from = to;
          }
          free = one.finish;
        }
      }
    },
  );
});

describe("the earliest fit", () => {
  test.prop([fc.nat({ max: 100 }), fc.nat({ max: 40 })])(
    "[PLN1] is `null` exactly when no span holds the step",
    (ready, length) => {
      const spans = [
        { from: 10 as Duration, to: 30 as Duration },
        { from: 50 as Duration, to: 90 as Duration },
      ];
      const windows = new Map([["w", spans]]) as unknown as Parameters<typeof earliestFit>[3];
      const fit = earliestFit(ready as Duration, length as Duration, ["w"] as never, windows);
      const starts = Array.from({ length: 200 }, (_, moment) => moment).filter(
        (moment) => moment >= ready && spans.some(({ from, to }) => from <= moment && moment + length <= to),
      );
      expect(fit?.start ?? null).toBe(starts[0] ?? null);
    },
  );
});
