import { fc, test } from "@fast-check/vitest";
import { expect, it } from "vitest";
import { PacedClock } from "../../../src/app/session/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";

/** A wall clock that is set by hand. */
function wallClock() {
  const wall = { at: 1_000_000 };
  return { wall, now: () => wall.at as Instant };
}

it("stands still until it is run, and again once it is stopped", () => {
  const { wall, now } = wallClock();
  const clock = new PacedClock(now, 5000 as Instant, 60);
  wall.at += 1000;
  expect(clock.now()).toBe(5000);
  clock.run(true);
  wall.at += 1000;
  expect(clock.now()).toBe(65_000);
  clock.run(false);
  wall.at += 1000;
  expect(clock.now()).toBe(65_000);
});

test.prop([
  fc.array(
    fc.record({
      wait: fc.integer({ min: 0, max: 5000 }),
      pace: fc.constantFrom(1, 5, 20, 60),
      running: fc.boolean(),
    }),
    { maxLength: 20 },
  ),
])("never jumps when its pace is changed or it is stopped, and never goes back", (changes) => {
  const { wall, now } = wallClock();
  const clock = new PacedClock(now, 0 as Instant, 1);
  let expected = 0;
  let [pace, running] = [1, false];
  for (const change of changes) {
    wall.at += change.wait;
    expected += running ? change.wait * pace : 0;
    expect(clock.now()).toBe(expected);
    clock.setPace(change.pace);
    clock.run(change.running);
    expect(clock.now()).toBe(expected);
    ({ pace, running } = change);
  }
});

it("[PRA1] is taken along by what was entered later elsewhere, and never back", () => {
  const { wall, now } = wallClock();
  const clock = new PacedClock(now, 5000 as Instant, 1);
  clock.run(true);
  wall.at += 1000;
  clock.catchUp(9000 as Instant);
  expect(clock.now()).toBe(9000);
  wall.at += 1000;
  clock.catchUp(9500 as Instant);
  expect(clock.now()).toBe(10_000);
});
