import { describe, expect, it } from "vitest";
import { cueAfter, sideBySide } from "../../../src/core/briefing/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";
import { briefingOfFile } from "./brief-course.ts";
import { bundledFiles } from "./bundled-files.ts";

const files = new Map(bundledFiles());
const briefing = (name: string) => briefingOfFile(files.get(`${name}.procedure.json`));

describe("[BRF1] two briefings side by side", () => {
  const [walk, pool] = [briefing("osier-ranging-head"), briefing("osier-pool-rehearsal")];
  const both = sideBySide(walk, pool);

  it("stop at every cue of either, once, in order, and last as long as the longer one", () => {
    const wanted = new Set([...walk.cues, ...pool.cues].map(({ pet }) => pet));
    const found: number[] = [];
    for (let cue = cueAfter(both, -1 as Duration); cue; cue = cueAfter(both, cue.pet)) found.push(cue.pet);
    expect(found).toEqual([...wanted].toSorted((a, b) => a - b));
    expect(both.finish).toBe(Math.max(walk.finish, pool.finish));
    expect(sideBySide(pool, walk).finish).toBe(both.finish);
  });

  it("of one and the same are that one", () => {
    expect(sideBySide(pool, pool)).toEqual(pool);
  });
});
