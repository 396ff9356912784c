import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Course } from "../../../src/core/course/index.ts";
import { isCompleteBy } from "../../../src/core/course/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { CrewId, Duration, Instant, Metres, PlaceId } from "../../../src/core/units/index.ts";
import type { WorksiteMoment } from "../../../src/core/worksite/index.ts";
import { homeMessage, leftMessage, momentOf } from "../../../src/core/worksite/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { minutes } from "../log-writer.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";

const START = Date.UTC(2031, 3, 2, 9) as Instant;

function courseOf(file: unknown): Course {
  const { timeline } = planOf(outlineOf(procedureOf(file)), { start: START });
  if (!timeline) throw new Error("no plan");
  return timeline.course;
}

const OSIER = courseOf(JSON.parse(readFileSync("procedures/osier-ranging-head.procedure.json", "utf8")));

const PLACES: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "hatch", tether: { anchor: "hatch", length: 25 } },
    { id: "ev2", call: "EV2", station: "outside", start: "hatch", tether: { anchor: "hatch", length: 9.87 } },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [{ id: "hatch", refuge: true }, { id: "rail" }, { id: "boom" }],
  routes: [
    { between: ["hatch", "rail"], length: 6, time: "PT4M" },
    { between: ["rail", "boom"], length: 5, time: "PT4M" },
  ],
  items: [
    { id: "bag", start: { place: "boom" } },
    { id: "wrench", start: { crew: "ev1" } },
    { id: "lamp", start: { item: "bag" } },
  ],
  windows: [
    {
      id: "day",
      kind: "daylight",
      spans: [
        { from: "PT0M", to: "PT10M" },
        { from: "PT40M", to: "PT90M" },
      ],
    },
  ],
};

const FILE = fileWith(
  [
    step("out", "ev1", 8, { to: "boom" }),
    step("rail", "ev2", 4, { to: "rail" }),
    step("drop", "ev1", 2, { moves: [{ item: "wrench", to: { item: "bag" } }] }),
    step("meet", "ev2", 5, { after: ["drop"] }),
    step("back", "ev1", 8, { to: "hatch" }),
  ],
  PLACES,
);

const person = ({ people }: WorksiteMoment, crew: string) => {
  const found = people.find((one) => one.crew === crew);
  if (!found) throw new Error(`nobody is called ${crew}`);
  return found;
};

describe("a moment at the worksite", () => {
  const course = courseOf(FILE);
  const at = (pet: number) => momentOf(course, minutes(pet));

  it("[MAP4] has each on a leg of the way, with the line as it lies and the legs that lines share", () => {
    const moment = at(6);
    // Three quarters of eleven metres: past the rail, 2.25 of the five metres to the boom.
    expect(person(moment, "ev1").spot).toEqual({ from: "rail", to: "boom", share: 0.45 });
    expect(person(moment, "ev1").line).toMatchObject({ over: ["hatch", "rail"], used: 8.25, left: 16.75 });
    expect(moment.shared).toEqual([{ between: ["hatch", "rail"], crew: ["ev1", "ev2"] }]);
    const back = person(at(13), "ev1");
    expect([back.line?.over, back.spot?.from, back.spot?.to]).toEqual([["hatch", "rail"], "boom", "rail"]);
  });

  it("[MAP4] tells who works, moves, waits for whom, or is through, and where nobody knows", () => {
    expect(at(6).people.map(({ doing }) => doing)).toEqual(["moves", "waits", "finished"]);
    expect(person(at(6), "ev2").wait?.on).toEqual({ crew: ["ev1"], step: "drop" });
    expect(person(at(9), "ev1")).toMatchObject({ doing: "works", steps: ["drop"] });
    expect(person(at(6), "iv")).toMatchObject({ place: null, spot: null, line: null });
    expect(person(at(60), "ev1").doing).toBe("finished");
  });

  it("[MAP4] counts items with what is packed in them, at places and in hands", () => {
    expect([...at(9).itemsAt]).toEqual([["boom", ["bag", "lamp"]]]);
    expect(person(at(9), "ev1").items).toEqual(["wrench"]);
    expect([...at(10).itemsAt]).toEqual([["boom", ["bag", "wrench", "lamp"]]]);
    expect(person(at(10), "ev1").items).toEqual([]);
  });

  it("[MAP4] shows the way home of whoever is farthest, never rounded down, and none when everybody is in", () => {
    expect(at(9).home).toMatchObject({ crew: "ev1", places: ["boom", "rail", "hatch"], metres: 11 });
    expect(at(6).home).toMatchObject({ crew: "ev1", places: ["rail", "hatch"], metres: 8.25 });
    const home = at(6).home;
    expect(home && inWords(homeMessage(home))).toContain("8.3 m");
    expect(at(0).home).toBeNull();
  });

  it("[MAP4] never rounds what is left of a line up, and says by how much one is too short", () => {
    const left = (value: number) => {
      const ev1 = person(at(9), "ev1");
      const line = ev1.line && { ...ev1.line, left: value as NonNullable<typeof ev1.line.left> };
      const told = leftMessage({ ...ev1, line });
      return told && inWords(told.says);
    };
    expect(left(14)).toContain("14 m");
    expect(left(3.87)).toContain("3.8 m");
    expect(left(-0.42)).toContain("0.5 m too short");
    expect(leftMessage(person(at(9), "iv"))).toBeNull();
  });

  it("[MAP7] tells whole metres, when it is asked to, never more line and never a shorter way home than there is", () => {
    const told = (said: ReturnType<typeof homeMessage> | undefined) =>
      (said?.arguments as { readonly metres: number } | undefined)?.metres;
    const ev1 = person(at(9), "ev1");
    if (!ev1.line) throw new Error("no line");
    const { line } = ev1;
    fc.assert(
      fc.property(fc.double({ min: -40, max: 40, noNaN: true }), (metres) => {
        const left = metres as Metres;
        const said = leftMessage({ ...ev1, line: { ...line, left } }, true);
        const whole = told(said?.says) ?? Number.NaN;
        expect(Number.isInteger(whole)).toBe(true);
        if (said?.isShort) expect(whole).toBeGreaterThanOrEqual(-left - 1e-7);
        else expect(whole).toBeLessThanOrEqual(Math.max(0, left) + 1e-7);
        if (left > 0) {
          const home = told(homeMessage({ crew: ev1.crew, places: [], metres: left }, true)) ?? Number.NaN;
          expect(Number.isInteger(home)).toBe(true);
          expect(home).toBeGreaterThanOrEqual(left - 1e-7);
          expect(home).toBeLessThan(left + 1);
        }
      }),
    );
  });

  it("[MAP4] knows day and night between known spans alone", () => {
    expect([at(5), at(20), at(60), at(100)].map(({ isDark }) => isDark)).toEqual([false, true, false, null]);
    expect(momentOf(courseOf(fileWith([step("a", "iv", 5)])), minutes(1)).isDark).toBeNull();
  });

  it("[MAP4] at any PET has everybody at one place or on one way, with no more line out than there is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: OSIER.finish + 600_000 }), (pet) => {
        const moment = momentOf(OSIER, pet as Duration);
        const { procedure } = OSIER.outline;
        expect(moment.people).toHaveLength(procedure.crew.length);
        for (const { spot, station, line, crew } of moment.people) {
          if (station === "outside") expect(spot).not.toBeNull();
          if (spot) expect(spot.share >= 0 && spot.share <= 1).toBe(true);
          const length = procedure.crew.find(({ id }) => id === crew)?.tether?.length;
          if (line && length !== undefined) expect(line.used).toBeLessThanOrEqual(length + 1e-9);
        }
        const counted = [...moment.itemsAt.values(), ...moment.people.map(({ items }) => items)].flat();
        for (const { id } of procedure.items) expect(counted).toContain(id);
      }),
      { numRuns: 60 },
    );
  });

  it("[MAP4] agrees at the start and end of every step with where it is done and what it moves", () => {
    const { outline } = OSIER;
    for (const one of OSIER.steps.values()) {
      const entry = outline.step(one.step);
      if (!entry) continue;
      const { at: place, to, by, moves } = entry.step;
      const start = momentOf(OSIER, one.start);
      const end = momentOf(OSIER, one.finish);
      const placeOf = (moment: WorksiteMoment, crew: CrewId): PlaceId | null => {
        const where = person(moment, crew).place;
        return where && "place" in where ? where.place : null;
      };
      for (const crew of by) {
        if (place !== undefined && to === undefined) expect(placeOf(start, crew)).toBe(place);
        const goesOn = [...OSIER.steps.values()].some(
          ({ step: id, start: next }) =>
            next === one.finish && id !== one.step && outline.step(id)?.step.by.includes(crew),
        );
        if (to !== undefined && !goesOn) expect(placeOf(end, crew)).toBe(to);
      }
      for (const { item, to: where } of moves) {
        const isMovedAgain = [...OSIER.steps.values()].some(
          (other) =>
            other.step !== one.step &&
            other.finish === one.finish &&
            isCompleteBy(OSIER, other, one.finish) &&
            outline.step(other.step)?.step.moves.some((move) => move.item === item),
        );
        if (!isMovedAgain) expect(end.items.get(item)).toEqual(where);
      }
    }
  });
});
