import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  atSpeed,
  captionGrain,
  cuesPassed,
  isPlaying,
  openedPlayback,
  paused,
  pausedAt,
  petOf,
  played,
  SPEEDS,
} from "../../../src/core/briefing/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import { briefingOfFile, LAMP_FILE } from "./brief-course.ts";

const FINISH = 3_600_000 as Duration;
const pet = (value: number) => value as Duration;

describe("the clock of a briefing", () => {
  it("[BRF1] starts at zero, plays, pauses, and goes on from there", () => {
    const opened = openedPlayback(FINISH);
    expect(petOf(opened, 1_000)).toBe(0);
    expect(isPlaying(opened, 1_000)).toBe(false);
    const playing = played(opened, 1_000, FINISH);
    expect(petOf(playing, 3_000)).toBe(20_000);
    expect(isPlaying(playing, 3_000)).toBe(true);
    const stopped = paused(playing, 3_000);
    expect(petOf(stopped, 900_000)).toBe(20_000);
    expect(petOf(played(stopped, 900_000, FINISH), 901_000)).toBe(30_000);
  });

  it("[BRF1] changes its speed where it stands", () => {
    const fast = atSpeed(played(openedPlayback(FINISH), 0, FINISH), 2_000, 120);
    expect(petOf(fast, 2_000)).toBe(20_000);
    expect(petOf(fast, 3_000)).toBe(140_000);
    expect(petOf(atSpeed(openedPlayback(FINISH), 5_000, 1), 99_000)).toBe(0);
  });

  it("[BRF1] stops by itself where it is to, also when nobody looked for an hour", () => {
    const playing = played(openedPlayback(FINISH), 0, pet(600_000));
    expect(petOf(playing, 60_000)).toBe(600_000);
    expect(petOf(playing, 3_600_000)).toBe(600_000);
    expect(isPlaying(playing, 60_000)).toBe(false);
    expect(petOf(pausedAt(playing, FINISH, FINISH), 0)).toBe(FINISH);
  });

  it("[BRF1] stays within the course, and never goes back when its readings do", () => {
    const opened = openedPlayback(FINISH);
    expect(petOf(pausedAt(opened, pet(-5), FINISH), 0)).toBe(0);
    expect(petOf(pausedAt(opened, pet(FINISH + 5), FINISH), 0)).toBe(FINISH);
    expect(petOf(played(opened, 5_000, FINISH), 4_000)).toBe(0);
  });

  it("[BRF1] has captions by step up to 60 times and by task above", () => {
    expect(SPEEDS.map(captionGrain)).toEqual(["step", "step", "step", "step", "step", "step", "task"]);
  });

  const briefing = briefingOfFile(LAMP_FILE);
  test.prop(
    [
      fc.constantFrom(...SPEEDS),
      fc.array(fc.integer({ min: 1, max: 400_000 }), { minLength: 1, maxLength: 20 }),
    ],
    { numRuns: 60 },
  )("[BRF1] passes every cue at any speed, however far apart the pictures are", (speed, gaps) => {
    const { finish, cues } = briefing;
    const playing = played(atSpeed(openedPlayback(finish), 0, speed), 0, finish);
    const shown: number[] = [];
    let now = 0;
    let last = pet(-1);
    for (let index = 0; last < finish; index++) {
      const at = petOf(playing, now);
      shown.push(...cuesPassed(briefing, last, at).map((cue) => cue.pet));
      last = at;
      now += gaps[index % gaps.length] ?? 1;
      if (index > 100_000) throw new Error("the briefing does not come to its end");
    }
    expect(shown).toEqual(cues.map((cue) => cue.pet));
  });
});
