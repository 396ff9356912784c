import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { FORMATS, textsInLanguage } from "../../../src/core/procedure/index.ts";
import { languageAdded, languageDropped, languageTextChanges } from "../../../src/core/write/index.ts";
import { fileWith, step } from "../procedure-builder.ts";
import { procedureFiles } from "../procedure-files.ts";

const FILE = fileWith(
  [
    step("open", "iv", 2, {
      alerts: [
        { level: "note", text: "Heavy" },
        { level: "note", text: "Live" },
      ],
      records: [{ id: "turns", label: "Turns" }],
    }),
  ],
  { format: FORMATS[1], words: { fr: { open: { do: "f", of: { do: "Do it" } } } } },
);

const applied = (file: ProcedureFile, changes: readonly Change[]): ProcedureFile => {
  const { file: after, problem } = applyChanges(file, changes);
  if (problem) throw new Error(problem.code);
  return after;
};
const open = { list: "steps", id: "open", part: null } as const;

describe("a text that is put into another language", () => {
  test.prop([procedureFiles, fc.constantFrom("fr", "ar", "sv"), fc.nat(), fc.option(fc.constant("said"))], {
    numRuns: 300,
  })(
    "[WRD4] is there afterwards, of the author's text as it is, and no other text is touched",
    (file, tag, at, value) => {
      const before = textsInLanguage(file, tag).texts;
      const index = at % before.length;
      const text = before[index];
      if (!text) return;
      const after = textsInLanguage(applied(file, languageTextChanges(file, tag, text, value)), tag).texts;
      const of = value === null ? null : text.author;
      expect(after[index]).toMatchObject({ text: value, of, standing: value === null ? "missing" : "there" });
      const others = (all: typeof after) =>
        all.filter((_, one) => one !== index).map(({ key: _, ...one }) => one);
      expect(others(after)).toEqual(others(before));
    },
  );

  it("[WRD4] stands at its place in a list, with gaps before it and none behind", () => {
    const second = { ...open, field: "alerts", part: 1 } as const;
    const after = applied(FILE, languageTextChanges(FILE, "fr", second, "f live"));
    expect(after.words?.["fr"]?.["open"]).toEqual({
      do: "f",
      alerts: [null, "f live"],
      of: { do: "Do it", alerts: [null, "Live"] },
    });
    expect(applied(after, languageTextChanges(after, "fr", second, null))).toEqual(FILE);
  });

  it("[WRD4] takes its entry along when it was the last one, and says that it holds when it is entered again", () => {
    const place = { ...open, field: "do" } as const;
    expect(languageTextChanges(FILE, "fr", place, null)).toEqual([{ drop: "fr open", list: "words" }]);
    expect(languageTextChanges(FILE, "fr", place, "f")).toEqual([
      { change: "fr open", list: "words", set: { do: "f", "of do": "Do open" } },
    ]);
    const now = applied(FILE, languageTextChanges(FILE, "fr", place, "f"));
    expect(languageTextChanges(now, "fr", place, "f")).toEqual([]);
  });

  it("[WRD4] comes into a language that was added before, and goes with it", () => {
    const begun = applied(FILE, [languageAdded("sv")]);
    expect(begun.words?.["sv"]).toEqual({});
    const record = { ...open, field: "records", part: "turns" } as const;
    const after = applied(begun, languageTextChanges(begun, "sv", record, "Varv"));
    expect(after.words?.["sv"]).toEqual({
      open: { records: { turns: "Varv" }, of: { records: { turns: "Turns" } } },
    });
    expect(applied(after, languageDropped(after, "sv")).words).toEqual(FILE.words);
    expect(applied(begun, languageDropped(begun, "sv")).words).toEqual(FILE.words);
  });
});
