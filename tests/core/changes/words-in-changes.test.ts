import { describe, expect, it } from "vitest";
import {
  applyChanges,
  changesBetween,
  editText,
  inverseOf,
  mergeChanges,
} from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { FORMATS } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const BASE = fileWith(
  [
    task("one", [step("a", "ev1", 1), step("b", "ev1", 1, { confirm: { by: "iv", text: "Shut" } })]),
    task("two", [step("mast", "ev2", 1)]),
  ],
  {
    format: FORMATS[1],
    places: [{ id: "mast", label: "Mast" }],
    supplies: [{ crew: "ev1", id: "air", label: "Air", unit: "kPa", full: 9, redline: 1, perHour: 1 }],
    contingencies: [{ id: "tear", title: "A tear", tasks: [task("aid", [step("p", "ev1", 5)])] }],
    words: {
      fr: {
        a: { do: "f a", of: { do: "Do a" } },
        mast: { do: "f do", label: "f label", of: { do: "Do mast" } },
        "ev1 air": { label: "f air" },
        tear: { title: "f tear" },
      },
      de: { two: { title: "g two" } },
    },
  },
);

const applied = (file: ProcedureFile, ...changes: Change[]): ProcedureFile => {
  const { file: after, problem } = applyChanges(file, changes);
  if (problem) throw new Error(`the test's change cannot be applied: ${problem.code}`);
  return after;
};

describe("words in changes", () => {
  it("[WRD4] [CHG1] are set by language and key, and come with the first that is added", () => {
    const changes: Change[] = [
      { add: { id: "de b", do: "g b", "of do": "Do b" }, list: "words", first: true },
      { change: "fr a", list: "words", set: { do: "f a 2" }, unset: ["of do"] },
    ];
    const after = applied(BASE, ...changes);
    expect(after.words).toEqual({
      fr: { ...BASE.words?.["fr"], a: { do: "f a 2" } },
      de: { two: { title: "g two" }, b: { do: "g b", of: { do: "Do b" } } },
    });
    expect(applied(after, ...inverseOf(BASE, changes))).toEqual(BASE);
  });

  it("[WRD4] [CHG1] are refused without a key, so that no text is lost", () => {
    const refusals: Change[] = [
      { add: { id: "sv", do: "s" }, list: "words", first: true },
      { rename: "fr a", list: "words", to: "sv" },
    ];
    for (const change of refusals)
      expect(applyChanges(BASE, [change])).toMatchObject({ problem: { code: "no-id" } });
  });

  it("[WRD4] [CHG1] follow a member that is renamed, and leave another one of its id alone", () => {
    expect(applied(BASE, { rename: "a", to: "z" }).words?.["fr"]).toEqual({
      z: { do: "f a", of: { do: "Do a" } },
      mast: BASE.words?.["fr"]?.["mast"],
      "ev1 air": { label: "f air" },
      tear: { title: "f tear" },
    });
    expect(applied(BASE, { rename: "mast", list: "places", to: "pole" }).words?.["fr"]).toMatchObject({
      mast: { do: "f do", of: { do: "Do mast" } },
      pole: { label: "f label" },
    });
    expect(applied(BASE, { rename: "ev1", list: "crew", to: "lead" }).words?.["fr"]).toHaveProperty(
      "lead air",
      { label: "f air" },
    );
  });

  it("[WRD4] [CHG1] go with a member that is dropped or brought in, come back when that is undone, and go with nothing else", () => {
    for (const change of [
      { drop: "one", list: "tasks" },
      { drop: "mast", list: "places" },
      { bring: "tear", behind: "a" },
      { drop: "two", list: "tasks" },
    ] satisfies Change[])
      expect(applied(applied(BASE, change), ...inverseOf(BASE, [change]))).toEqual(BASE);
    expect(applied(BASE, { drop: "a" }).words?.["fr"]).not.toHaveProperty("a");
    expect(applied(BASE, { drop: "mast", list: "places" }).words?.["fr"]?.["mast"]).toEqual({
      do: "f do",
      of: { do: "Do mast" },
    });
    expect(applied(BASE, { bring: "tear", behind: "a" }).words?.["fr"]).not.toHaveProperty("tear");
    expect(Object.keys(applied(BASE, { drop: "two", list: "tasks" }).words ?? {})).toEqual(["fr"]);
  });

  it("[WRD4] [CHG5] merge where two translate different steps, or different texts of one", () => {
    const ours = applied(
      BASE,
      { change: "fr a", list: "words", set: { do: "ours" } },
      { add: { id: "fr b", do: "ours b", "of do": "Do b" }, list: "words", first: true },
    );
    const theirs = applied(
      BASE,
      { change: "fr tear", list: "words", set: { title: "theirs" } },
      { add: { id: "fr b", confirm: "theirs b", "of confirm": "Shut" }, list: "words", first: true },
    );
    const { file, conflicts } = mergeChanges(BASE, ours, theirs);
    expect(conflicts).toEqual([]);
    expect(file?.words?.["fr"]).toMatchObject({
      a: { do: "ours", of: { do: "Do a" } },
      b: { do: "ours b", confirm: "theirs b", of: { do: "Do b", confirm: "Shut" } },
      tear: { title: "theirs" },
    });
  });

  it("[WRD4] [CHG5] conflict where two translate one text differently", () => {
    const said = (text: string) => applied(BASE, { change: "fr a", list: "words", set: { do: text } });
    expect(mergeChanges(BASE, said("ours"), said("theirs")).conflicts).toEqual([
      { list: "words", id: "fr a", field: "do", base: "f a", ours: "ours", theirs: "theirs" },
    ]);
  });

  it("[WRD4] [CHG5] merge where two translate different alerts, entries or records of one step", () => {
    const put = (set: Readonly<Record<string, unknown>>) =>
      applied(BASE, { change: "fr a", list: "words", set });
    const [ours, theirs] = [
      put({ alerts: ["un", null], "of alerts": ["One", null], records: { turns: "tours" } }),
      put({ alerts: [null, "deux"], "of alerts": [null, "Two"], records: { load: "charge" } }),
    ];
    for (const merged of [mergeChanges(BASE, ours, theirs), mergeChanges(BASE, theirs, ours)]) {
      expect(merged.conflicts).toEqual([]);
      expect(merged.file?.words?.["fr"]?.["a"]).toEqual({
        do: "f a",
        alerts: ["un", "deux"],
        records: { turns: "tours", load: "charge" },
        of: { do: "Do a", alerts: ["One", "Two"] },
      });
    }
  });

  it("[WRD4] [CHG5] conflict where two translate one alert differently, or where its place is not the same", () => {
    const put = (alerts: readonly (string | null)[], from = BASE) =>
      applied(from, { change: "fr a", list: "words", set: { alerts } });
    const both = put(["un", "deux"]);
    expect(mergeChanges(BASE, put(["un", null]), put(["une", "deux"])).conflicts).toMatchObject([
      { list: "words", id: "fr a", field: "alerts" },
    ]);
    expect(mergeChanges(both, put(["deux"], both), put(["une", "deux"], both)).conflicts).toHaveLength(1);
    expect(
      mergeChanges(both, put([null, "deux"], both), put(["un", "trois"], both)).file?.words,
    ).toMatchObject({
      fr: { a: { alerts: [null, "trois"] } },
    });
  });

  it("[WRD4] [CHG3] differ text by text, a language without any included", () => {
    const other: ProcedureFile = {
      ...BASE,
      words: { fr: {}, de: { ...BASE.words?.["de"] }, sv: { ".": {} } },
    };
    expect(applied(BASE, ...changesBetween(BASE, other))).toEqual(other);
    expect(applied(other, ...changesBetween(other, BASE))).toEqual(BASE);
    const { words: _, ...none } = BASE;
    expect(applied(BASE, ...changesBetween(BASE, none))).toEqual(none);
    expect(applied(none, ...changesBetween(none, BASE))).toEqual(BASE);
  });

  it("[WRD4] [CHG6] leave the other lines of a file's text alone", () => {
    const text = `${JSON.stringify(BASE, null, 2)}\n`;
    const edited = editText(text, BASE, [{ change: "fr a", list: "words", set: { do: "other" } }]);
    expect(edited.text).toBe(text.replace('"f a"', '"other"'));
  });
});
