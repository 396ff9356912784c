import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { AnswerTime, waitAfter } from "../../../src/core/link/index.ts";

const backoff = { first: 1000, longest: 60_000 };

describe("[LINK] the pause between attempts", () => {
  it("doubles its bound up to the longest, whatever the number of failures", () => {
    const bounds = [1, 2, 3, 4, 5, 6, 7, 8, 1000].map((failures) => waitAfter(failures, 1, backoff));
    expect(bounds).toEqual([1000, 2000, 4000, 8000, 16_000, 32_000, 60_000, 60_000, 60_000]);
    expect(waitAfter(0, 1, backoff)).toBe(1000);
  });

  test.prop([fc.integer({ min: 1, max: 50 }), fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true })])(
    "lies in the upper half of the bound and uses all of it",
    (failures, random) => {
      const bound = waitAfter(failures, 1, backoff);
      const wait = waitAfter(failures, random, backoff);
      expect(wait).toBe(Math.round(bound * (0.5 + random / 2)));
    },
  );
});

describe("[LINK] how long an answer is waited for", () => {
  it("doubles with each that did not come, up to the longest", () => {
    const time = new AnswerTime({ first: 15_000, longest: 100_000 });
    const allowed = [1, 2, 3, 4].map(() => {
      time.missed();
      return time.allowed;
    });
    expect(allowed).toEqual([30_000, 60_000, 100_000, 100_000]);
  });

  it("comes back to three times what the last answer took, and never below the first", () => {
    const time = new AnswerTime({ first: 15_000, longest: 600_000 });
    for (let times = 0; times < 4; times += 1) time.missed();
    time.met(30_000);
    expect(time.allowed).toBe(90_000);
    time.met(200);
    expect(time.allowed).toBe(15_000);
    time.met(14_000);
    expect(time.allowed).toBe(15_000);
  });
});
