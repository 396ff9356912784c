import { describe, expect, it } from "vitest";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { Review } from "../../../src/core/review/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter } from "../../core/log-writer.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";
import eventLog from "../fixtures/surface-walk-events.json" with { type: "json" };
import milestones from "../fixtures/surface-walk-milestones.json" with { type: "json" };
import segments from "../fixtures/surface-walk-segments.json" with { type: "json" };
import tasks from "../fixtures/surface-walk-tasks.json" with { type: "json" };
import { asMinutes, CREW, inFile, PLACES, published, reviewFrom, stepReview } from "./published-walk.ts";

const NOBODY = ["base"];
const byOf = (by: readonly string[]) => (by.length === 0 ? NOBODY : by);

interface TableRow {
  readonly event: string;
  readonly by: readonly string[];
  readonly planned: string | null;
  readonly actual: string;
  readonly difference: string;
}

/** A walk whose steps take, one after another in each lane, the actual times of a table. */
function walkOfTable(rows: readonly TableRow[]): LogWriter {
  const file = fileWith(
    rows.map(({ event, by, planned }, index) =>
      task(`t${index}`, [
        step(`s${index}`, byOf(by), null, { do: event, time: inFile(published(planned ?? "0:00")) }),
      ]),
    ),
    { crew: CREW, places: PLACES },
  );
  const log = LogWriter.started(file);
  const free = new Map<string, number>();
  for (const [index, { by, actual }] of rows.entries()) {
    const start = Math.max(...byOf(by).map((crew) => free.get(crew) ?? 0));
    const finish = start + published(actual);
    for (const crew of byOf(by)) free.set(crew, finish);
    log.done([`s${index}`, asMinutes(finish)]);
  }
  return log;
}

describe("the tasks of a published walk (values from memory, see SOURCES.md)", () => {
  const log = walkOfTable(tasks.rows);
  const review = reviewFrom(log);

  it("[REV1] fold without anything left over", () => {
    expect(log.reasons).toEqual([]);
    expect(review.steps.every(({ ending }) => ending === "done")).toBe(true);
  });

  it.each(tasks.rows.map((row, index) => ({ ...row, index })))(
    "[REV1] $event: $difference against the plan",
    ({ index, planned, actual, difference }) => {
      const one = stepReview(review, `s${index}`);
      expect(one.timeDifference).toBe(published(difference));
      expect((one.actual?.finish ?? 0) - (one.actual?.start ?? 0)).toBe(published(actual));
      // A row that was not planned stands in the plan as taking no time.
      expect((one.planned?.finish ?? 0) - (one.planned?.start ?? 0)).toBe(published(planned ?? "0:00"));
      expect(review.tasks[index]?.timeDifference).toBe(published(difference));
    },
  );

  it("[REV1] add up to the sums of the table", () => {
    const sum = (timeOf: (one: Review["tasks"][number]) => number) =>
      review.tasks.reduce((all, one) => all + timeOf(one), 0);
    expect(sum(({ planned }) => (planned ? planned.finish - planned.start : 0))).toBe(
      published(tasks.sums.planned),
    );
    expect(sum(({ actual }) => (actual ? actual.finish - actual.start : 0))).toBe(
      published(tasks.sums.actual),
    );
    expect(sum(({ timeDifference }) => timeDifference ?? 0)).toBe(published(tasks.sums.difference));
  });
});

describe("the milestones of the same walk", () => {
  /** Each milestone may come no sooner than its planned time after the start. */
  const idAt = (index: number) => `m${index}`;
  const [start, ...rows] = milestones.rows;
  const file = (elapsed: string): ProcedureFile =>
    fileWith(
      [
        step("m0", byOf(start?.by ?? []), 0, { do: start?.event ?? "" }),
        ...rows.map(({ event, by, plannedPet }, index) =>
          step(idAt(index + 1), byOf(by), 0, {
            do: event,
            after: [{ step: "m0", lag: inFile(published(plannedPet)) }],
          }),
        ),
      ],
      { crew: CREW, places: PLACES, limits: { elapsed } },
    );
  const log = LogWriter.started(file("PT2H48M")).done(["m0", 0]);
  for (const [index, { actualPet }] of rows.entries()) {
    if (actualPet) log.done([idAt(index + 1), asMinutes(published(actualPet))]);
  }
  const hatchClosed = published(milestones.hatch.closed) - published(milestones.clockZero);
  log.enter(
    "walk.closed",
    { end: "terminated", reason: "planned end, milestones not published" },
    asMinutes(hatchClosed),
  );
  const review = reviewFrom(log);

  it.each(milestones.rows.map((row, index) => ({ ...row, index })))(
    "[REV1] $event: $difference, planned $plannedPet",
    ({ index, plannedPet, actualPet, difference }) => {
      const one = stepReview(review, idAt(index));
      expect(one.planned?.finish).toBe(published(plannedPet));
      if (actualPet == null || difference == null) {
        expect([one.ending, one.finishDifference]).toEqual(["open", null]);
      } else {
        expect(one.actual?.finish).toBe(published(actualPet));
        expect(one.finishDifference).toBe(published(difference));
      }
    },
  );

  it("[REV1] agree with what the ground said of the slip, as far as marks good to a few minutes can", () => {
    // "About a half hour slow", said ten minutes before the milestone planned next.
    const next = milestones.rows.findIndex(({ difference }) => difference === "+0:27:23");
    expect(
      Math.abs(inMinutes(stepReview(review, idAt(next)).finishDifference ?? 0) - 30),
    ).toBeLessThanOrEqual(5);
  });

  it("[CHK1] have an end in the plan that does not keep to the published elapsed time, which the checker says", () => {
    // The source gives the end as 2 h 40 min elapsed, though its own marks are 2 h 48 min apart.
    const { findings } = checkProcedureText(JSON.stringify(file("PT2H40M")));
    expect(findings.filter(({ level }) => level === "error")).toMatchObject([{ code: "time/over-limit" }]);
    expect(findings[0] && inWords(findings[0].message)).toBe("The plan runs 8 min over the elapsed limit.");
    expect(
      checkProcedureText(JSON.stringify(file("PT2H48M"))).findings.filter(({ level }) => level === "error"),
    ).toEqual([]);
  });

  it("[REV1] have a preparation that took so much longer than planned", () => {
    const { planned, start: from, end, actual } = milestones.preparation;
    const prepared = LogWriter.started(
      fileWith([step("prepare", ["cdr", "lmp"], null, { time: inFile(published(planned)) })], {
        crew: CREW,
        places: PLACES,
      }),
    ).done(["prepare", asMinutes(published(end) - published(from))]);
    const one = stepReview(reviewFrom(prepared), "prepare");
    expect(one.actual?.finish).toBe(published(actual));
    expect(one.timeDifference).toBe(published("+0:56:33"));
  });
});

describe("the events of the same walk as flown", () => {
  const [first] = eventLog.rows;
  const zero = published(first?.at ?? "0:00");
  const file = fileWith(
    eventLog.rows.map(({ event, by }, index) => step(`e${index}`, byOf(by), 0, { do: event })),
    { crew: CREW, places: PLACES },
  );
  const log = LogWriter.started(file);
  for (const [index, { at }] of eventLog.rows.entries())
    log.done([`e${index}`, asMinutes(published(at) - zero)]);
  const review = reviewFrom(log);
  const finishOf = (event: string) => {
    const index = eventLog.rows.findIndex((row) => row.event.startsWith(event));
    return stepReview(review, `e${index}`).actual?.finish ?? Number.NaN;
  };

  it("[LOG4] all have their effect, in the published order, in both lanes", () => {
    expect(log.reasons).toEqual([]);
    expect(log.ledger.lanes.every(({ status }) => status === "finished")).toBe(true);
    const finishes = review.steps.map(({ actual }) => actual?.finish ?? Number.NaN);
    expect(finishes).toEqual([...finishes].sort((a, b) => a - b));
    expect(finishes).toEqual(eventLog.rows.map(({ at }) => published(at) - zero));
  });

  it("[REV1] leave no time of a lane unaccounted for", () => {
    for (const { until, worked, translated, waited, idle } of review.lanes) {
      expect(worked + translated + idle + waited.reduce((sum, { time }) => sum + time, 0)).toBe(until);
    }
    const last = published(milestones.hatch.closed) - zero;
    expect(review.lanes.slice(0, 2).map(({ until }) => until)).toEqual([last, last]);
  });

  it("[REV1] are as far apart as published", () => {
    const { open, closed, between } = milestones.hatch;
    expect(finishOf("EVA ended") - finishOf("EVA started")).toBe(published(between));
    expect(finishOf("EVA started") - finishOf("EVA preparation")).toBe(
      published(milestones.preparation.actual),
    );
    expect(published(closed) - published(open)).toBe(published(between));
  });

  it("[REV1] agree with the table of tasks within what its source states", () => {
    const offBy = (row: string) =>
      tasks.consistencyWithReadTimes.find((one) => one.row.startsWith(row))?.off_s ?? Number.NaN;
    const tableTime = (event: string) =>
      published(tasks.rows.find((row) => row.event === event)?.actual ?? "0:00");
    const familiarization = finishOf("surface examination ended") - finishOf("surface examination started");
    expect((tableTime("Commander environmental familiarization") - familiarization) / 1000).toBe(
      offBy("Commander environmental"),
    );
    const sample = finishOf("contingency sample ended") - finishOf("contingency sample started");
    expect((tableTime("Contingency sample collection") - sample) / 1000).toBe(offBy("Contingency sample"));
  });
});

describe("two later walks", () => {
  it.each(segments.walks.map((walk, index) => ({ ...walk, index })))(
    "[REV1] walk $index: segments take the published times",
    ({ segments: rows }) => {
      const zero = published(rows[0]?.start ?? "0:00");
      const file = fileWith(
        rows.map(({ segment }, index) => step(`s${index}`, ["cdr", "lmp"], 0, { do: segment })),
        { crew: CREW, places: PLACES },
      );
      const log = LogWriter.started(file);
      for (const [index, { end }] of rows.entries())
        log.done([`s${index}`, asMinutes(published(end) - zero)]);
      const review = reviewFrom(log);
      for (const [index, { segment, actual }] of rows.entries()) {
        const { actual: flown } = stepReview(review, `s${index}`);
        expect([segment, (flown?.finish ?? 0) - (flown?.start ?? 0)]).toEqual([segment, published(actual)]);
      }
    },
  );

  it.each(segments.estimates)(
    "[REV1] $event: $difference against the estimate",
    ({ event, planned, actual, difference }) => {
      const log = walkOfTable([{ event, by: ["cdr", "lmp"], planned, actual, difference }]);
      expect(stepReview(reviewFrom(log), "s0").timeDifference).toBe(published(difference));
    },
  );
});
