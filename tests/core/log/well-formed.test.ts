import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stamp } from "../../../src/core/log/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";

const pen = { source: "/devices/iv", made: 0, seen: null };
const at = Date.UTC(2031, 3, 2, 9) as Instant;
const dataOf = (data: unknown) =>
  stamp(
    { name: "walk.opened", data: { procedure: data, mode: "live" }, at, actor: "iv" },
    "w" as WalkId,
    pen,
    at,
  ).wire.data as { procedure: unknown };

describe("an entry that is made", () => {
  it("[SEL1] has no half of a character in any text or key of its data, and all else as it was", () => {
    const data = { a: ["x\ud83d", { "k\ude00": "\ud83d\ude00" }], b: 1, c: null, d: true };
    expect(dataOf(data).procedure).toEqual({
      a: ["x\ufffd", { "k\ufffd": "\ud83d\ude00" }],
      b: 1,
      c: null,
      d: true,
    });
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        const made = dataOf(value).procedure;
        expect(JSON.stringify(made)).not.toMatch(/\\ud[89a-f]/);
      }),
    );
  });

  it("[SEL1] keeps data as the same object where there is nothing to mend", () => {
    const data = { a: ["x", { b: "\ud83d\ude00" }] };
    expect(dataOf(data).procedure).toBe(data);
  });
});
