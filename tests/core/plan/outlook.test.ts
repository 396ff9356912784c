import { describe, expect, it } from "vitest";
import { outlookOf } from "../../../src/core/plan/index.ts";
import { minutes } from "../log-writer.ts";

describe("the outlook", () => {
  it("[OFF8] gives finish and margin as planned, as forecast, and as half and nine in ten of the samples say", () => {
    const risk = { p50: minutes(64) - 0.5, p90: null };
    expect(outlookOf(minutes(70), minutes(60), minutes(72), risk)).toEqual({
      planned: { finish: minutes(60), margin: minutes(10) },
      forecast: { finish: minutes(72), margin: minutes(-2) },
      half: { finish: minutes(64), margin: minutes(6) },
      nineInTen: { finish: null, margin: null },
    });
    expect(outlookOf(null, minutes(60), null, null)).toEqual({
      planned: { finish: minutes(60), margin: null },
      forecast: { finish: null, margin: null },
      half: null,
      nineInTen: null,
    });
  });
});
