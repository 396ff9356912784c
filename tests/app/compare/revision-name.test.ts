import { describe, expect, it } from "vitest";
import { revisionName } from "../../../src/app/compare/revision-name.ts";
import type { ShelfRevision } from "../../../src/app/shelf/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";

const AT = Date.UTC(2031, 3, 2, 12, 46, 7) as Instant;
const one = (key: string, more: Partial<ShelfRevision> = {}): ShelfRevision => ({
  key,
  id: "ring",
  title: "Ring exchange",
  revision: "E",
  at: AT,
  saved: null,
  ...more,
});

describe("what a revision is called beside others", () => {
  it("[WRT7] [WRT8] tells two planners' revisions of one letter apart, also when they came within a minute", () => {
    const hers = one("1", { saved: { by: "Ada", why: "Time for the bag" } });
    const his = one("2", { at: (AT + 20_000) as Instant });
    const other = one("3", { at: (AT + 40_000) as Instant });
    const all = [hers, his, other];
    expect(all.map((each) => revisionName(each, all))).toEqual([
      "rev. E · saved by Ada 2031-04-02 12:46:07 UTC · Ring exchange",
      "rev. E · put on the shelf 2031-04-02 12:46:27 UTC · Ring exchange",
      "rev. E · put on the shelf 2031-04-02 12:46:47 UTC · Ring exchange",
    ]);
  });

  it("[WRT7] is short where nothing else has its title and letter", () => {
    const all = [one("1", { saved: { by: "Ada", why: "" } }), one("2", { revision: "D" })];
    expect(all.map((each) => revisionName(each, all))).toEqual([
      "rev. E · Ring exchange",
      "rev. D · Ring exchange",
    ]);
  });
});
