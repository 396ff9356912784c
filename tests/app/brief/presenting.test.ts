import { describe, expect, it } from "vitest";
import type { Presented, Said } from "../../../src/app/brief/presenting.ts";
import { heard, NOBODY_YET, readSaid, SILENCE } from "../../../src/app/brief/presenting.ts";
import type { Duration } from "../../../src/core/units/index.ts";

const stands = (presenter: string, pet = 0): Presented => ({
  kind: "stands",
  presenter,
  pet: pet as Duration,
  speed: 10,
  isPlaying: false,
  isAsked: false,
});

/** What an audience knows after it heard some things, each at its millisecond. */
const knows = (...said: readonly (readonly [number, Said])[]) =>
  said.reduce((audience, [now, one]) => heard(audience, one, now), NOBODY_YET);

describe("a window of the audience", () => {
  it("[BRF2] follows the presenter that it hears, and knows when that one closed", () => {
    expect(NOBODY_YET.followed).toBeNull();
    const following = knows([1, stands("a", 5)], [2, stands("a", 9)]);
    expect(following.followed?.pet).toBe(9);
    expect(heard(following, { kind: "closed", presenter: "a" }, 3)).toMatchObject({
      hasClosed: true,
      followed: { pet: 9 },
    });
    expect(heard(following, { kind: "closed", presenter: "b" }, 3).hasClosed).toBe(false);
  });

  it("[BRF2] keeps to the first of two presenters, says so, and takes the other when the first is gone or silent", () => {
    const two = knows([1, stands("a", 5)], [2, stands("b", 50)]);
    expect(two).toMatchObject({ followed: { presenter: "a" }, hasOther: true });
    expect(heard(two, { kind: "closed", presenter: "b" }, 3).hasOther).toBe(false);
    const gone = heard(heard(two, { kind: "closed", presenter: "a" }, 3), stands("b", 51), 4);
    expect(gone).toMatchObject({ followed: { presenter: "b" }, hasClosed: false, hasOther: false });
    expect(heard(two, stands("b", 52), 2 + SILENCE).followed?.presenter).toBe("b");
  });

  it("[BRF2] takes nothing for a presenter that is none", () => {
    expect(readSaid(stands("a", 7))).toEqual(stands("a", 7));
    expect(readSaid({ kind: "asks" })).toEqual({ kind: "asks" });
    for (const data of [
      null,
      "stands",
      { kind: "stands" },
      { ...stands("a"), pet: Number.NaN },
      { ...stands("a"), speed: 7 },
      { kind: "closed" },
      { kind: "else", presenter: "a" },
    ])
      expect(readSaid(data)).toBeNull();
  });
});
