import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FILM_RATE, filmOf, SPEEDS } from "../../../src/core/briefing/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";

const film = (finish: number, speed: (typeof SPEEDS)[number]) =>
  filmOf({ finish: finish as Duration }, speed);

describe("[BRF6] the pictures of a film", () => {
  it("begin at PET 0, never go back, move on evenly and end at the finish, which stands for two seconds", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 9 * 3_600_000 }),
        fc.constantFrom(...SPEEDS.slice(3)),
        (finish, speed) => {
          const { pictures, petOf } = film(finish, speed);
          expect(petOf(0)).toBe(0);
          let [before, least, most]: [number, number, number] = [0, 0, 0];
          for (let picture = 1; picture < pictures; picture += 1) {
            const pet = petOf(picture);
            least = Math.min(least, pet - before);
            most = Math.max(most, pet - before);
            before = pet;
          }
          expect(least).toBe(0);
          expect(most).toBeLessThanOrEqual(Math.ceil((1000 * speed) / FILM_RATE));
          expect(petOf(pictures - 2 * FILM_RATE)).toBe(finish);
          expect(petOf(pictures - 1)).toBe(finish);
        },
      ),
      { numRuns: 40 },
    );
  });

  it.each([
    // The walk's length over the speed, and two seconds more.
    [7_200_000, 120, 62_000],
    [7_200_000, 60, 122_000],
    [0, 60, 2_000],
  ] as const)("of a walk of %d ms at %d× last %d ms", (finish, speed, length) => {
    expect(film(finish, speed).length).toBe(length);
  });
});
