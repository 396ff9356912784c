import { describe, expect, it } from "vitest";
import { textWidth } from "../../../src/core/worksite/text-width.ts";

describe("the width of a text on the map", () => {
  // Measured in Chromium at 100 px of the faces of the screens.
  it.each([
    ["لا شيء", 286],
    ["يعمل على 9", 502],
    ["موقع العمل عند PET 0", 953],
    ["من هنا في أمان", 643],
    ["ينتظر", 212],
    ["الارتفاع", 275],
    ["نهار", 143],
  ])(
    "[WRD3] [MAP6] is never too small for Arabic, nor so large that a card is cut for nothing: %s",
    (text, measured) => {
      const width = textWidth(text, 100);
      expect(width).toBeGreaterThanOrEqual(measured);
      expect(width).toBeLessThan(measured * 1.8);
    },
  );

  it("[WRD3] counts nothing for what only sets the direction of a text", () => {
    expect(textWidth("\u200f\u20681.1\u2069", 100)).toBe(textWidth("1.1", 100));
  });
});
