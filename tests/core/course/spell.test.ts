import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Course } from "../../../src/core/course/index.ts";
import { eventsOf, onceASpell, placesAt, spellAt } from "../../../src/core/course/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import { flownCourseOf, forecastOf } from "../../../src/core/walk/index.ts";
import { momentOf } from "../../../src/core/worksite/index.ts";
import { briefingOfFile, LAMP_FILE } from "../briefing/brief-course.ts";
import { bundledFiles } from "../briefing/bundled-files.ts";
import { LogWriter, minute, minutes } from "../log-writer.ts";

/** A walk in which EV1 is overdue and the lamp was put elsewhere by hand. */
const late = LogWriter.started(LAMP_FILE)
  .done(["take", 3])
  .enter("item.moved", { item: "lamp", to: { place: "hatch" }, reason: "dropped" }, 4);
const flown = flownCourseOf(late.ledger, minute(30));
const forecast = forecastOf(late.ledger, minute(30)) as Course;
const courses = [flown, forecast, ...bundledFiles().map(([, file]) => briefingOfFile(file).course)];

/** PETs all over a course and past its end, and those at which something begins or ends, with those just beside them. */
const pets = (course: Course) =>
  fc.array(
    fc.oneof(
      fc.double({ min: -1000, max: course.finish + 600_000, noNaN: true }),
      fc
        .tuple(fc.constantFrom(...eventsOf(course), course.now ?? 0), fc.constantFrom(-1, 0, 0.5, 1))
        .map(([event, off]) => event + off),
    ),
    { minLength: 2, maxLength: 30 },
  ) as fc.Arbitrary<Duration[]>;

describe("a spell of a course", () => {
  it("[MAP1] begins with each event, and once more when what is expected by now is taken as complete", () => {
    const [first, second] = eventsOf(flown) as [Duration, Duration];
    expect(spellAt(flown, first)).toBe(spellAt(flown, (second - 1) as Duration));
    expect(spellAt(flown, second)).toBeGreaterThan(spellAt(flown, first));
    expect(spellAt(forecast, minutes(30))).toBeLessThan(spellAt(forecast, (minutes(30) + 1) as Duration));
    expect(eventsOf(flown)).toContain(minutes(4));
  });

  it("[MAP1] is asked about once while it lasts", () => {
    let asked = 0;
    const ask = onceASpell(() => {
      asked += 1;
      return asked;
    });
    expect([0, 1, 2, 1].map((pet) => ask(flown, pet as Duration))).toEqual([1, 1, 1, 1]);
    expect(ask(flown, minutes(3))).toBe(2);
    expect(ask(forecast, minutes(3))).toBe(3);
  });

  test.prop([fc.constantFrom(...courses).chain((course) => fc.tuple(fc.constant(course), pets(course)))], {
    numRuns: 60,
  })("[MAP1] hides nothing: what is kept of one is what is worked out anew", ([course, at]) => {
    for (const pet of at) {
      const anew = { ...course };
      expect(placesAt(course, pet)).toEqual(placesAt(anew, pet));
      expect({ ...momentOf(course, pet), course: null }).toEqual({ ...momentOf(anew, pet), course: null });
    }
  });

  test.prop([fc.constantFrom(...courses).chain((course) => fc.tuple(fc.constant(course), pets(course)))])(
    "[MAP1] has the same people where nobody is under way",
    ([course, at]) => {
      for (const pet of at) {
        const [one, other] = [pet, (pet + 1) as Duration].map((each) => momentOf(course, each));
        if (!one || !other || spellAt(course, one.pet) !== spellAt(course, other.pet)) continue;
        for (const [index, { place }] of one.people.entries())
          if (!place || "place" in place) expect(other.people[index]).toBe(one.people[index]);
        expect(other.itemsAt).toBe(one.itemsAt);
      }
    },
  );
});
