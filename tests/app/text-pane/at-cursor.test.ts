import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { completionsAt, explanationAt } from "../../../src/app/text-pane/at-cursor.ts";
import { differingStretch, partsOf } from "../../../src/app/text-pane/part-at.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

const TEXT = JSON.stringify(
  fileWith([task("one", [step("a", "ev1", 10), step("b", ["ev2"], 4, { after: ["a"] })])], {
    places: [{ id: "hatch", label: "The hatch" }],
  }),
  null,
  2,
);

/** Completions where `|` stands in a text. */
function at(marked: string) {
  const offset = marked.indexOf("|");
  const text = marked.replace("|", "");
  const found = completionsAt(text, offset);
  return (
    found && {
      ...found,
      texts: found.completions.map((one) => one.text),
      replaced: text.slice(found.from, found.to),
    }
  );
}

describe("completion in the text pane", () => {
  it("[WRT6] offers the keys of the schema that are not there yet, with what it says of them", () => {
    const found = at(TEXT.replace('"id": "b"', '"|": 1, "id": "b"'));
    expect(found?.texts).toContain('"confirm"');
    expect(found?.texts).not.toContain('"after"');
    expect(found?.completions.find(({ text }) => text === '"by"')).toBeUndefined();
    expect(found?.completions.find(({ text }) => text === '"at"')?.says).toContain("Where it is done");
    expect(found?.replaced).toBe('""');
  });

  it("[WRT6] offers the ids of the file for what names one, steps of all tasks included", () => {
    expect(at(TEXT.replace('"a"\n', '"|"\n'))?.texts).toEqual(['"a"', '"b"']);
    expect(at(TEXT.replace('"ev2"\n          ]', '"|"\n          ]'))?.completions[0]).toMatchObject({
      text: '"ev1"',
    });
  });

  it("[WRT6] offers the choices of the schema, and nothing where an id is made", () => {
    expect(at(TEXT.replace('"station": "inside"', '"station": |'))?.texts).toEqual([
      '"outside"',
      '"inside"',
      '"ground"',
    ]);
    expect(at(TEXT.replace('"id": "b"', '"id": "|"'))).toBeNull();
  });

  it("[WRT6] says what a key is for", () => {
    expect(explanationAt(TEXT, TEXT.indexOf('"by"') + 2)).toContain("two or more make it a joint step");
    expect(explanationAt(TEXT, 0)).toBeNull();
  });

  test.prop([fc.nat({ max: TEXT.length }), fc.nat({ max: TEXT.length }), fc.nat({ max: TEXT.length })], {
    numRuns: 200,
  })("[WRT6] never fails on a text that is cut anywhere", (one, other, offset) => {
    const [from, to] = [Math.min(one, other), Math.max(one, other)];
    const cut = TEXT.slice(0, from) + TEXT.slice(to);
    const found = completionsAt(cut, Math.min(offset, cut.length));
    if (found) expect(found.from).toBeLessThanOrEqual(found.to);
    expect(() => explanationAt(cut, Math.min(offset, cut.length))).not.toThrow();
  });
});

describe("parts of a text", () => {
  it("[WRT6] are found by their pointers, or their nearest ancestor is", () => {
    const part = partsOf(TEXT);
    const text = (pointer: string) => TEXT.slice(part(pointer).from, part(pointer).to);
    expect(text("/tasks/0/steps/1/after")).toMatch(/^"after": \[\s+"a"\s+\]$/);
    expect(text("/tasks/0/steps/0/nothing/there")).toContain('"id": "a"');
    expect(text("")).toBe(TEXT);
    expect(partsOf("{")("/tasks")).toEqual({ from: 0, to: 1 });
    expect(partsOf("")("/tasks")).toEqual({ from: 0, to: 0 });
  });

  test.prop([fc.string(), fc.string(), fc.string(), fc.string()])(
    "[WRT6] the stretch in which two texts differ makes one of the other, and no more than that",
    (head, one, other, tail) => {
      const [before, after] = [head + one + tail, head + other + tail];
      const { from, to, insert } = differingStretch(before, after);
      expect(before.slice(0, from) + insert + before.slice(to)).toBe(after);
      expect(from).toBeGreaterThanOrEqual(Math.min(head.length, before.length, after.length));
      expect(to - from).toBeLessThanOrEqual(one.length);
    },
  );
});
