import { describe, expect, it } from "vitest";
import { checkOutline } from "../../../src/core/check/index.ts";
import { FORMATS, outlineOf } from "../../../src/core/procedure/index.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";
import { said } from "../said.ts";

const findingsOf = (more: Parameters<typeof fileWith>[1], action = "Open the door") =>
  checkOutline(
    outlineOf(
      procedureOf(
        fileWith([step("open", "iv", 2, { do: action, alerts: [{ level: "note", text: "Heavy" }] })], {
          format: FORMATS[1],
          ...more,
        }),
      ),
    ),
  );

describe("the check of texts in other languages", () => {
  it("[WRD4] finds words for what is not there, with the place in the file", () => {
    const findings = findingsOf({
      words: { fr: { opne: { do: "f" }, open: { label: "f", alerts: ["f", "g"] }, iv: { call: "f" } } },
    }).filter(({ code }) => code.startsWith("words/"));
    expect(findings.map(({ level, code, pointer }) => `${level} ${code} ${pointer}`)).toEqual([
      "caution words/no-member /words/fr/opne",
      "caution words/too-many /words/fr/open/alerts",
      "caution words/no-text /words/fr/open/label",
      "advice words/missing /words/fr",
    ]);
    expect(said(findings[0])).toBe('In the words for fr, "opne" is the id of nothing that has a text.');
  });

  it("[WRD4] finds texts that are older than those they translate, and counts those that are missing", () => {
    const findings = findingsOf({
      words: { fr: { open: { do: "Ouvrez", of: { do: "Open the hatch" } } } },
    }).filter(({ code }) => code.startsWith("words/"));
    expect(findings.map(({ level, code, pointer, steps }) => [level, code, pointer, steps])).toEqual([
      ["caution", "words/older", "/words/fr/open/do", ["open"]],
      ["advice", "words/missing", "/words/fr", []],
    ]);
    expect(said(findings[0])).toBe(
      'The text for fr of "do" in "open" is older than the text it translates: that was "Open the hatch" and is "Open the door".',
    );
    // The title, a task, three of the crew and the alert.
    expect(said(findings[1])).toBe("6 texts have no words for fr yet; there the author’s are shown.");
  });

  it.each([
    [undefined, true],
    ["en", true],
    ["en-AU", true],
    ["de", false],
  ])(
    "[WRD4] [CHK3] looks at the English of steps with %s as the author's language: %s",
    (language, looks) => {
      const found = findingsOf(
        language === undefined ? {} : { language },
        "Removal of the door and then turn",
      );
      const codes = found.map(({ code }) => code);
      expect([codes.includes("text/no-verb"), codes.includes("text/many-actions")]).toEqual([looks, looks]);
    },
  );
});
