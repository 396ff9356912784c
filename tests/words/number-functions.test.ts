import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { LANGUAGES } from "../../src/words/index.ts";
import { numberText } from "../../src/words/number-functions.ts";

describe("numbers", () => {
  test.prop([fc.oneof(fc.maxSafeNat(), fc.double({ noNaN: true, min: -1e6, max: 1e6 }))])(
    "[WRD3] are told in each language as its own rules have them, counts too",
    (value) => {
      for (const { tag } of LANGUAGES) {
        const digits = { useGrouping: false, maximumFractionDigits: 20 };
        expect(numberText(tag)(value)).toBe(new Intl.NumberFormat(tag, digits).format(value));
      }
    },
  );
});
