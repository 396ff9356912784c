import { afterEach, describe, expect, it } from "vitest";
import { keepWalks, lastProcedures, lastWalks } from "../../../src/app/shelf/last-shelf.ts";
import type { WalkId } from "../../../src/core/units/index.ts";

afterEach(() => localStorage.clear());

describe("what was listed last", () => {
  it("is nothing where nothing was kept, or what is kept is none of ours", () => {
    expect([lastWalks(), lastProcedures()]).toEqual([[], []]);
    for (const text of [
      "{",
      "null",
      "7",
      '"walks"',
      '{"walk":"a"}',
      "[null,3,[]]",
      '[{"walk":5,"phase":"running"}]',
      '[{"walk":"a","title":"A","phase":"flown"}]',
    ]) {
      localStorage.setItem("tetherline.listed-walks", text);
      localStorage.setItem("tetherline.listed-procedures", text);
      expect([lastWalks(), lastProcedures()], text).toEqual([[], []]);
    }
  });

  it("is what was kept, without facts that may have changed, and no more than a screen needs", () => {
    const walks = Array.from({ length: 10_000 }, (_, at) => ({
      walk: `walk-${at}` as WalkId,
      title: `Walk ${at}`,
      phase: "closed" as const,
      mode: "live" as const,
      lastAt: 5,
    }));
    keepWalks(walks);
    expect(lastWalks()).toHaveLength(50);
    expect(lastWalks()[0]).toEqual({ walk: "walk-0", title: "Walk 0", phase: "closed", mode: "live" });
    expect(localStorage.getItem("tetherline.listed-walks")?.length).toBeLessThan(5000);
  });
});
