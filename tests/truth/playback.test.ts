import { describe, expect, it } from "vitest";
import type { Speed } from "../../src/core/briefing/index.ts";
import {
  atSpeed,
  captionGrain,
  isPlaying,
  openedPlayback,
  petOf,
  played,
} from "../../src/core/briefing/index.ts";
import { parseDuration } from "../../src/core/units/index.ts";

const WALK = parseDuration("PT6H30M");
const STEP = parseDuration("PT3M");

describe("the clock of a briefing against values derived by hand", () => {
  it.each([
    [1, 23_400, 180, "step"],
    [10, 2_340, 18, "step"],
    [60, 390, 3, "step"],
    [120, 195, 1.5, "task"],
  ] as const)(
    "[BRF1] at %i times plays the walk in %d s and shows the step for %d s, by %s",
    (speed, walk, step, grain) => {
      if (WALK === null || STEP === null) throw new Error("no durations");
      const playing = played(atSpeed(openedPlayback(WALK), 0, speed as Speed), 0, WALK);
      expect(isPlaying(playing, walk * 1_000 - 1)).toBe(true);
      expect(isPlaying(playing, walk * 1_000)).toBe(false);
      expect(petOf(playing, walk * 1_000)).toBe(WALK);
      expect(petOf(playing, step * 1_000)).toBe(STEP);
      expect(captionGrain(speed)).toBe(grain);
    },
  );
});
