import { describe, expect, it } from "vitest";
import { LIBRARY } from "../../src/core/library/index.ts";
import type { Entry } from "../../src/core/log/index.ts";
import { stamp } from "../../src/core/log/index.ts";
import type { Instant } from "../../src/core/units/index.ts";
import { longestOf } from "../../src/hub/entries/entry-limits.ts";

describe("[HUB] a revision that a hub keeps", () => {
  it("may be as long as the file of a procedure, as the opening of a walk may", () => {
    const at = 1_000_000 as Instant;
    const pen = { source: "/devices/ada", made: 0, seen: null };
    const kept: Entry = stamp(
      { name: "revision.kept", data: { text: "{}", bases: [], why: "" }, at, actor: "ada" },
      LIBRARY,
      pen,
      at,
    );
    expect(longestOf(kept)).toBeGreaterThan(10 * 1024 * 1024);
  });
});
