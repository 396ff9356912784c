import { describe, expect, it } from "vitest";
import type { Course } from "../../../src/core/course/index.ts";
import { placesAt } from "../../../src/core/course/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { CrewId, ItemId } from "../../../src/core/units/index.ts";
import { flownCourseOf, forecastOf } from "../../../src/core/walk/index.ts";
import { LogWriter, minute, minutes } from "../log-writer.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";

const FILE: ProcedureFile = fileWith(
  [
    step("take", "ev1", 2, { moves: [{ item: "wrench", to: { crew: "ev1" } }] }),
    step("out", "ev1", null, { to: "boom" }),
    step("leave", "ev1", 4, { moves: [{ item: "wrench", to: { item: "bag" } }] }),
    step("back", "ev1", null, { to: "hatch" }),
    step("watch", "iv", 10),
  ],
  {
    crew: [
      { id: "ev1", call: "EV1", station: "outside", start: "hatch", tether: { anchor: "hatch", length: 12 } },
      { id: "iv", call: "IV", station: "inside" },
    ],
    places: [{ id: "hatch", refuge: true }, { id: "rail" }, { id: "boom" }],
    routes: [
      { between: ["hatch", "rail"], length: 4, time: "PT4M" },
      { between: ["rail", "boom"], length: 6, time: "PT4M" },
    ],
    items: [
      { id: "wrench", start: { place: "hatch" } },
      { id: "bag", start: { place: "boom" } },
    ],
  },
);

function planned(): Course {
  const { timeline } = planOf(outlineOf(procedureOf(FILE)));
  if (!timeline) throw new Error("no plan");
  return timeline.course;
}

const EV1 = "ev1" as CrewId;
const at = (course: Course, pet: number) => {
  const places = placesAt(course, minutes(pet));
  const [line] = places.lines;
  return {
    ev1: places.crew.get(EV1),
    line: line && [line.places.join(" "), line.used, line.left],
    wrench: places.items.get("wrench" as ItemId),
    inWork: places.inWork,
  };
};

describe("where everybody and everything is", () => {
  it("[MAP1] follows the plan: at places, on the way by time, with the line as walked", () => {
    const course = planned();
    expect(at(course, 1)).toEqual({
      ev1: { place: "hatch" },
      line: ["hatch", 0, 12],
      wrench: { place: "hatch" },
      inWork: ["take", "watch"],
    });
    // Half of the eight minutes to the boom are over at 6: five of ten metres by now.
    expect(at(course, 6)).toEqual({
      ev1: { from: "hatch", to: "boom", share: 0.5 },
      line: ["hatch", 5, 7],
      wrench: { crew: "ev1" },
      inWork: ["out", "watch"],
    });
    expect(at(course, 10)).toMatchObject({ ev1: { place: "boom" }, line: ["hatch rail boom", 10, 2] });
    // Three quarters of the way home the line is a quarter of what it was, and the wrench stays in the bag.
    expect(at(course, 20)).toMatchObject({
      ev1: { from: "boom", to: "hatch", share: 0.75 },
      line: ["hatch rail boom", 2.5, 9.5],
      wrench: { item: "bag" },
    });
    expect(at(course, 60)).toEqual({
      ev1: { place: "hatch" },
      line: ["hatch", 0, 12],
      wrench: { item: "bag" },
      inWork: [],
    });
  });

  it("[MAP1] is one answer for the plan, the forecast and the walk as flown", () => {
    const log = LogWriter.started(FILE);
    const forecast = forecastOf(log.ledger, minute(0));
    const course = planned();
    for (const pet of [0, 1, 2, 5, 9, 10, 13, 15, 21, 22, 30]) {
      expect(forecast && placesAt(forecast, minutes(pet))).toEqual(placesAt(course, minutes(pet)));
    }
    log.done(["take", 2], ["out", 10], ["leave", 14], ["back", 22], ["watch", 10]);
    const flown = flownCourseOf(log.ledger, minute(30));
    for (const pet of [0, 1, 2, 5, 9, 10, 13, 15, 21, 22, 30]) {
      expect(placesAt(flown, minutes(pet))).toEqual(placesAt(course, minutes(pet)));
    }
  });

  it("[MAP1] keeps whoever is overdue on the way, and takes corrections of items", () => {
    const log = LogWriter.started(FILE)
      .done(["take", 2])
      .enter("item.moved", { item: "wrench", to: { place: "rail" }, reason: "dropped" }, 4);
    const late = flownCourseOf(log.ledger, minute(25));
    expect(at(late, 25)).toMatchObject({
      ev1: { from: "hatch", to: "boom", share: 1 },
      line: ["hatch", 10, 2],
      wrench: { place: "rail" },
      inWork: ["out", "watch"],
    });
    expect(at(late, 3)).toMatchObject({ wrench: { crew: "ev1" } });
  });

  it("[MAP1] says nothing of who has no place, nor of a line where no routes lead", () => {
    const file = {
      ...FILE,
      routes: [],
      tasks: [{ id: "t", title: "T", steps: [step("out", "ev1", 8, { to: "boom" })] }],
    } as ProcedureFile;
    const course = flownCourseOf(LogWriter.started(file).done(["out", 8]).ledger, minute(10));
    const places = placesAt(course, minutes(4));
    expect(places.crew.get("iv" as CrewId)).toBeUndefined();
    expect(places.crew.get(EV1)).toMatchObject({ to: "boom", share: 0.5 });
    expect(places.lines).toMatchObject([{ crew: "ev1", used: null, left: null }]);
  });
});
