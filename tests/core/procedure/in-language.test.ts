import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Procedure, ProcedureFile, TextField, TextList } from "../../../src/core/procedure/index.ts";
import {
  FORMATS,
  inLanguage,
  languageAtHand,
  parseProcedure,
  readProcedure,
  textsInLanguage,
} from "../../../src/core/procedure/index.ts";
import { fileWith, procedureOf, step, task } from "../procedure-builder.ts";
import { procedureFiles } from "../procedure-files.ts";
import { said } from "../said.ts";

/** A file in which every field that has texts has one. */
const whole = (words: ProcedureFile["words"], more: Partial<ProcedureFile> = {}): ProcedureFile =>
  fileWith(
    [
      task(
        "out",
        [
          step("open", "iv", 2, {
            alerts: [
              { level: "note", text: "It is heavy" },
              { level: "warning", text: "It is live" },
            ],
            check: ["Bolt 1", "Bolt 2"],
            records: [{ id: "turns", label: "Turns" }, { id: "bare" }],
            confirm: { by: "ev1", text: "It is open" },
            decide: { id: "is-stuck", ask: "Is it stuck?", outcomes: ["yes", "no"], expect: "no" },
            brief: "Slowly",
          }),
        ],
        { brief: "The way out" },
      ),
    ],
    {
      format: FORMATS[1],
      summary: "A trial",
      places: [{ id: "mast", label: "Mast" }],
      items: [{ id: "mast", label: "Toy mast", size: "small", start: { place: "mast" } }],
      states: [{ id: "door", label: "Door", values: ["open", "shut"], start: "shut" }],
      windows: [{ id: "day", label: "Day", kind: "daylight" }],
      supplies: [{ crew: "ev1", id: "air", label: "Air", unit: "kPa", full: 9, redline: 1, perHour: 1 }],
      watches: [{ id: "gloves", by: ["ev1"], do: "Look at gloves", every: "PT30M" }],
      contingencies: [
        {
          id: "tear",
          title: "A tear",
          when: "It tears",
          tasks: [task("aid", [step("patch", "ev1", 1)])],
        },
      ],
      pictures: [{ id: "p1", label: "The mast", type: "image/png", data: "iVBORw0KGgo=" }],
      ...(words ? { words } : {}),
      ...more,
    },
  );

const WHOLE: ProcedureFile["words"] = {
  fr: {
    ".": { title: "f title", summary: "f summary" },
    out: { title: "f out", brief: "f out brief" },
    open: {
      do: "f open",
      alerts: ["f heavy", "f live"],
      check: ["f bolt 1", "f bolt 2"],
      records: { turns: "f turns" },
      confirm: "f is open",
      brief: "f slowly",
    },
    "is-stuck": { ask: "f stuck?" },
    ev1: { call: "f ev1" },
    ev2: { call: "f ev2" },
    iv: { call: "f iv" },
    "places mast": { label: "f mast" },
    "items mast": { label: "f toy mast", size: "f small" },
    door: { label: "f door" },
    day: { label: "f day" },
    "ev1 air": { label: "f air" },
    gloves: { do: "f gloves" },
    tear: { title: "f tear", when: "f it tears" },
    aid: { title: "f aid" },
    patch: { do: "f patch" },
    p1: { label: "f the mast" },
  },
};

/** Everything in a procedure but its texts. */
function bones(value: unknown): unknown {
  if (typeof value === "string") return "text";
  if (Array.isArray(value)) return value.map(bones);
  if (typeof value !== "object" || value === null) return value;
  const ids = [
    "id",
    "by",
    "at",
    "to",
    "after",
    "time",
    "moves",
    "by",
    "crew",
    "start",
    "needs",
    "sets",
    "expect",
  ];
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [key, ids.includes(key) ? one : bones(one)]),
  );
}

const words = ({ words: _, ...rest }: Procedure) => rest;

describe("a procedure in another language", () => {
  test.prop([procedureFiles, fc.constantFrom("fr", "ar", "pt-BR", "nn")], { numRuns: 300 })(
    "[WRD4] has the ids, the order and all figures of the author's, whatever its words say",
    (file, language) => {
      const procedure = procedureOf(file);
      const there = inLanguage(procedure, language);
      expect(bones(words(there.procedure))).toEqual(bones(words(procedure)));
      if (!Object.hasOwn(file.words ?? {}, language)) expect(there.procedure).toBe(procedure);
    },
  );

  test.prop([procedureFiles], { numRuns: 300 })(
    "[WRD4] shows the author's text wherever it lacks one, and says so",
    (file) => {
      const procedure = procedureOf(file);
      for (const language of Object.keys(file.words ?? {})) {
        const { texts } = textsInLanguage(procedure, language);
        const shown = inLanguage(procedure, language);
        const after = textsInLanguage(shown.procedure, language).texts;
        for (const [index, text] of texts.entries()) {
          expect(after[index]?.author.replaceAll(/[\u2068\u2069]/g, "")).toBe(text.text ?? text.author);
          expect(text.standing === "missing").toBe(text.text === null);
          expect(shown.standing(text.list, text.id, text.field, text.part)).toBe(text.standing);
        }
      }
    },
  );

  it("[WRD4] has every text that a reader is shown in it", () => {
    const file = whole(WHOLE);
    const { texts, stray } = textsInLanguage(procedureOf(file), "fr");
    expect(texts.filter(({ text }) => text === null)).toEqual([]);
    expect(stray).toEqual([]);
    const { procedure } = inLanguage(procedureOf(file), "fr");
    const [first] = procedure.tasks[0]?.steps ?? [];
    expect([procedure.title, procedure.summary, procedure.crew[0]?.call]).toEqual([
      "f title",
      "f summary",
      "f ev1",
    ]);
    expect([procedure.places[0]?.label, procedure.items[0]?.label]).toEqual(["f mast", "f toy mast"]);
    expect([first?.do, first?.confirm?.text, first?.decide?.ask, first?.check]).toEqual([
      "f open",
      "f is open",
      "f stuck?",
      ["f bolt 1", "f bolt 2"],
    ]);
    expect(first?.records.map(({ label }) => label)).toEqual(["f turns", undefined]);
    expect(procedure.contingencies[0]?.tasks[0]?.steps[0]?.do).toBe("f patch");
  });

  it("[WRD4] keeps to the places at which alerts are written, though warnings are shown first", () => {
    const { procedure } = inLanguage(procedureOf(whole(WHOLE)), "fr");
    expect(procedure.tasks[0]?.steps[0]?.alerts).toEqual([
      { level: "warning", text: "f live" },
      { level: "note", text: "f heavy" },
    ]);
    const half = inLanguage(procedureOf(whole({ fr: { open: { alerts: [null, "f live"] } } })), "fr");
    expect(half.procedure.tasks[0]?.steps[0]?.alerts.map(({ text }) => text)).toEqual([
      "f live",
      "It is heavy",
    ]);
    expect([0, 1].map((place) => half.standing("steps", "open" as never, "alerts", place))).toEqual([
      "there",
      "missing",
    ]);
  });

  const standings = (file: ProcedureFile, ...of: readonly [TextList, string, TextField][]) => {
    const { standing } = inLanguage(procedureOf(file), "fr");
    return of.map(([list, id, field]) => standing(list, id, field));
  };

  it("[WRD4] marks what is older than the text it translates, and claims nothing where the file does not say of what", () => {
    const file = whole({
      fr: {
        open: {
          do: "f open",
          confirm: "f is open",
          brief: "f",
          of: { do: "Open it", confirm: "It is open" },
        },
      },
    });
    expect(
      standings(
        file,
        ["steps", "open", "do"],
        ["steps", "open", "confirm"],
        ["steps", "open", "brief"],
        ["steps", "open", "check"],
      ),
    ).toEqual(["older", "there", "there", "missing"]);
  });

  it("[WRD4] does not guess which of two members an id means, and counts the one with its list in front", () => {
    const both = textsInLanguage(procedureOf(whole({ fr: { mast: { label: "f", size: "f small" } } })), "fr");
    expect(both.stray).toEqual([{ code: "several", key: "mast", field: "label" }]);
    expect(both.texts.filter(({ text }) => text !== null).map(({ list, field }) => [list, field])).toEqual([
      ["items", "size"],
    ]);
    const one = textsInLanguage(
      procedureOf(whole({ fr: { mast: { label: "f place" }, "items mast": { label: "f item" } } })),
      "fr",
    );
    expect(one.stray).toEqual([]);
    expect(one.texts.flatMap(({ list, text }) => (text === null ? [] : [[list, text]]))).toEqual([
      ["places", "f place"],
      ["items", "f item"],
    ]);
  });

  it("[WRD4] [WRD3] isolates texts from right to left, so that they do not turn the figures beside them", () => {
    const words = { ar: { open: { do: "افتح" }, ev1: { call: "EV1" } }, fr: { open: { do: "Ouvrir" } } };
    const first = (language: string) =>
      inLanguage(procedureOf(whole(words)), language).procedure.tasks[0]?.steps[0];
    expect(first("ar")?.do).toBe("\u2068افتح\u2069");
    expect(inLanguage(procedureOf(whole(words)), "ar").procedure.crew[0]?.call).toBe("EV1");
    expect(first("ar")?.brief).toBe("Slowly");
    expect(first("fr")?.do).toBe("Ouvrir");
  });

  it("[WRD4] puts marks into texts that stand where no mark can stand beside them, labels aside", () => {
    const { procedure } = inLanguage(
      procedureOf(whole({ fr: { open: { do: "f open", of: { do: "Open it" } } } })),
      "fr",
      (text, standing) => `${text} [${standing}]`,
    );
    expect(procedure.tasks[0]?.steps[0]?.do).toBe("f open [older]");
    expect(procedure.title).toBe("Trial [missing]");
    expect(procedure.places[0]?.label).toBe("Mast");
  });

  it("[WRD4] is found by a tag of the same language", () => {
    expect(languageAtHand("fr", ["de", "fr-CA"])).toBe("fr-CA");
    expect(languageAtHand("ar-u-nu-latn", ["ar"])).toBe("ar");
    expect(languageAtHand("fr-CA", ["fr", "fr-CA"])).toBe("fr-CA");
    expect(languageAtHand("fi", ["fil"])).toBeNull();
  });
});

describe("the languages of a file", () => {
  it("[WRD4] are tags in their usual form; another one is an error with its line", () => {
    const text = JSON.stringify(whole({ FR: {}, "not a tag": {} }, { language: "en-gb" }), null, 2);
    const { findings } = readProcedure(text);
    const line = (part: string) => text.split("\n").findIndex((one) => one.includes(part)) + 1;
    expect(findings.map(({ code, pointer, position }) => [code, pointer, position?.line])).toEqual([
      ["file/no-language", "/language", line('"language"')],
      ["file/no-language", "/words/FR", line('"FR"')],
      ["file/no-language", "/words/not a tag", line('"not a tag"')],
    ]);
    expect(said(findings[1])).toBe('The language tag "FR" is written "fr" (BCP 47).');
    expect(findings[1]?.repair).toEqual([{ op: "move", from: "/words/FR", path: "/words/fr" }]);
  });

  it("[WRD4] are named in a finding where a field is none, and are 40 at most", () => {
    const misspelt = parseProcedure(whole({ fr: { open: { doo: "f" } as never } }));
    expect(misspelt.findings.map(({ code, pointer }) => [code, pointer])).toEqual([
      ["file/unknown-key", "/words/fr/open/doo"],
    ]);
    const many = (count: number) =>
      Object.fromEntries(
        Array.from({ length: count }, (_, index) => [`de-x-a${index}`, {}]),
      ) as ProcedureFile["words"];
    expect(parseProcedure(whole(many(40))).findings).toEqual([]);
    expect(parseProcedure(whole(many(41))).findings.map(({ code }) => code)).toEqual(["file/too-large"]);
  });

  it("[WRD4] [PRO11] belong to format 2, and a file without them reads as before", () => {
    const old = fileWith([step("a", "ev1", 1)]);
    expect(parseProcedure(old).procedure).not.toHaveProperty("words");
    expect(parseProcedure({ ...old, words: {} }).findings.map(({ code }) => code)).toEqual([
      "file/key-of-newer-format",
    ]);
  });
});

describe("two revisions beside one another", () => {
  const FRENCH = {
    fr: { "steps open": { do: "Ouvrir", of: { do: "Open it" } }, "steps go": { do: "Sortir" } },
  };
  const revision = (open: string, more: Partial<ProcedureFile> = {}) =>
    procedureOf(
      fileWith([step("open", "iv", 1, { do: open }), step("go", "iv", 1, { do: "Go out" })], {
        format: FORMATS[1],
        language: "en",
        words: FRENCH,
        ...more,
      }),
    );
  const told = (one: ReturnType<typeof inLanguage>) =>
    one.procedure.tasks.flatMap(({ steps }) =>
      steps.map(({ id, do: action }) => `${action}, ${one.standing("steps", id, "do")}`),
    );
  const mark = (text: string, standing: string) => `${text} [${standing}]`;

  it("[WRD4] tell as written what both have and what differs, and the rest in the language", () => {
    const [before, after] = [revision("Open it"), revision("Open it wide")];
    expect(told(inLanguage(before, "fr", mark, after))).toEqual([
      "Open it [missing], missing",
      "Sortir, there",
    ]);
    expect(told(inLanguage(after, "fr", mark, before))).toEqual([
      "Open it wide [missing], missing",
      "Sortir, there",
    ]);
    expect(told(inLanguage(after, "fr", mark, after))).toEqual(["Ouvrir [older], older", "Sortir, there"]);
  });

  it("[WRD4] tell in the language what only one of them has", () => {
    const after = revision("Open it");
    const before = procedureOf(
      fileWith([step("go", "iv", 1, { do: "Go out" })], { format: FORMATS[1], language: "en" }),
    );
    expect(told(inLanguage(after, "fr", mark, before))).toEqual(["Ouvrir, there", "Sortir, there"]);
  });

  it("[WRD4] are marked where one has no texts in the language, and not where it is its author's", () => {
    const [bare, french] = [
      revision("Open it", { words: {} }),
      revision("Ouvrir", { language: "fr", words: {} }),
    ];
    expect(told(inLanguage(bare, "fr", mark, revision("Open it")))).toEqual([
      "Open it [missing], missing",
      "Go out [missing], missing",
    ]);
    expect(told(inLanguage(french, "fr", mark, revision("Open it")))).toEqual([
      "Ouvrir, there",
      "Go out, there",
    ]);
    expect(inLanguage(bare, null, mark, revision("Open it")).procedure).toBe(bare);
  });
});
