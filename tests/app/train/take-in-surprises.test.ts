import { afterEach, describe, expect, it } from "vitest";
import { takeInSurprises } from "../../../src/app/train/index.ts";
import { givenSurprises } from "../../../src/app/train/surprises-choice.ts";
import { surprisesText } from "../../core/training/surprise-builder.ts";

afterEach(() => localStorage.clear());

describe("[TRN1] surprises that are given to the shelf", () => {
  it("stand ready for the rehearsals of their procedure, beside those of others, the last file of each", () => {
    const [first, second] = [surprisesText([]), surprisesText([], { title: "Another" })];
    expect(takeInSurprises(first)).toEqual([expect.stringContaining("rehearsals of the procedure “trial”")]);
    takeInSurprises(surprisesText([], { procedure: "other" }));
    takeInSurprises(second);
    expect(Object.keys(givenSurprises.current()).toSorted()).toEqual(["other", "trial"]);
    expect(givenSurprises.current()["trial"]).toBe(second);
  });

  it("that name no procedure are told apart, and not kept", () => {
    expect(takeInSurprises(`{"format":"tetherline.surprises/1"}`)).toEqual([
      expect.stringContaining("does not say of which procedure"),
    ]);
    expect(givenSurprises.current()).toEqual({});
  });
});
