import { useMemo } from "react";
import type { Sides } from "../../core/effect/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import { markedInText, useShownTexts } from "../texts/index.ts";

/**
 * Two procedures as they are shown beside one another ([WRD4]): in the language that the reader wants, and as written where both have a text and it differs.
 * What is compared stays as it is.
 */
export function useBothInTexts(before: Outline, after: Outline): Sides<Outline> {
  const texts = useShownTexts();
  return useMemo(
    () => ({
      before: texts?.show(before, markedInText, after) ?? before,
      after: texts?.show(after, markedInText, before) ?? after,
    }),
    [texts, before, after],
  );
}
