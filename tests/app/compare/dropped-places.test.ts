import { describe, expect, it } from "vitest";
import { differenceOf, droppedPlaces, firstOf } from "../../../src/app/compare/index.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";

const places = (before: Parameters<typeof fileWith>[0], after: Parameters<typeof fileWith>[0]) =>
  Object.fromEntries(
    [...droppedPlaces(differenceOf(fileWith(before), fileWith(after)), procedureOf(fileWith(before)))].map(
      ([place, dropped]) => [place, dropped.map(({ id }) => id)],
    ),
  );

const [a, b, c, d] = ["a", "b", "c", "d"].map((id) => step(id, "ev1", 2));
const steps = (...given: (typeof a)[]) => given.flatMap((one) => (one ? [one] : []));

describe("[WRT8] a step that was taken out", () => {
  it("stands behind the step before it that is there still, or at the beginning of its task, several in their order", () => {
    const before = [task("one", steps(a, b, c, d))];
    expect(places(before, [task("one", steps(a, d))])).toEqual({ a: ["b", "c"] });
    expect(places(before, [task("one", steps(c))])).toEqual({ [firstOf("one")]: ["a", "b"], c: ["d"] });
  });

  it("is one that was not moved elsewhere, and whose task is there still", () => {
    const before = [task("one", steps(a, b)), task("two", steps(c, d))];
    expect(places(before, [task("one", steps(a)), task("two", steps(c, b, d))])).toEqual({});
    expect(places(before, [task("one", steps(a, b))])).toEqual({});
  });

  it("says who was to do it", () => {
    const before = fileWith([task("one", [step("a", "ev1", 2), step("b", ["ev1", "ev2"], 2)])]);
    const dropped = droppedPlaces(
      differenceOf(before, fileWith([task("one", [step("a", "ev1", 2)])])),
      procedureOf(before),
    );
    expect(dropped.get("a")).toEqual([{ id: "b", action: "Do b", calls: ["EV1", "EV2"] }]);
  });
});
