import { expect, it } from "vitest";
import { dayOfYear, type Instant, parseInstant } from "../../src/core/units/index.ts";

it.each([
  ["1978-11-14", 318],
  ["1988-04-22", 113],
  ["2020-03-04", 64],
  ["1981-04-05", 95],
  ["1985-04-12", 102],
])("[WRD6] %s is day %d of its year", (date, day) => {
  expect(dayOfYear(parseInstant(`${date}T00:00:00Z`) as Instant)).toBe(day);
});
