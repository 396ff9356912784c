import { expect, it } from "vitest";
import { pageWords } from "../../../src/app/pages/walks-page-words.ts";

it.each([
  [false, false, false, "working", "Opening the procedure…"],
  [false, false, true, "working", /no procedure|There is no such procedure/],
  [true, false, true, "working", /^$/],
  [true, true, true, "working", "Reading the walks…"],
  [true, true, true, "failed", /^The walks on this device could not be read\. Nothing is lost/],
] as const)(
  "[LRN4] a page without its figures says why: %s %s %s %s",
  (isHere, isReadable, isRead, told, said) => {
    const text = pageWords(isHere, isReadable, isRead, told);
    if (typeof said === "string") expect(text).toBe(said);
    else expect(text).toMatch(said);
  },
);
