import { expect, it } from "vitest";
import type { HybridTime } from "../../src/core/log/index.ts";
import { receive, tick } from "../../src/core/log/index.ts";
import type { Instant } from "../../src/core/units/index.ts";
import figure from "./fixtures/hybrid-clock-figure-6.json" with { type: "json" };

const timeOf = ([wall = 0, counter = 0]: readonly number[]) =>
  `${String(wall).padStart(15, "0")}-${counter.toString(16).padStart(4, "0")}` as HybridTime;

it("[LOG1] [LOG3] gives the readings of figure 6 of the paper on hybrid logical clocks", () => {
  const last = new Map<number, HybridTime>();
  const readings = figure.steps.map(({ process, pt, state, message }) => {
    const before = last.get(process) ?? (state ? timeOf(state) : null);
    const now = pt as Instant;
    const reading = message ? receive(before, timeOf(message), now) : tick(before, now);
    last.set(process, reading);
    return reading;
  });
  expect(readings).toEqual(figure.expected.map(timeOf));
});
