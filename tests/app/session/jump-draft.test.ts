import { describe, expect, it } from "vitest";
import { jumpDraft } from "../../../src/app/session/index.ts";
import type { Duration, Instant } from "../../../src/core/units/index.ts";

const jump = (by: number, mayBeSleep = false) => ({
  at: 5_000_000 as Instant,
  by: by as Duration,
  mayBeSleep,
});

describe("a jump of the device's clock", () => {
  it("[OFF6] of more than 2 s is logged as what it was, at the time that the clock shows now", () => {
    expect(jumpDraft(jump(-3_300_000), "iv")).toEqual({
      name: "clock.jumped",
      data: { by: -3300 },
      at: 5_000_000,
      actor: "iv",
    });
    expect(jumpDraft(jump(2001), "iv")?.data).toEqual({ by: 2.001 });
  });

  it("[OFF6] of 2 s or less, or that may be a sleep of the device, is not", () => {
    expect(jumpDraft(jump(2000), "iv")).toBeNull();
    expect(jumpDraft(jump(-2000), "iv")).toBeNull();
    expect(jumpDraft(jump(600_000, true), "iv")).toBeNull();
  });
});
