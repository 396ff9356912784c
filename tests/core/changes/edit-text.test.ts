import { readdirSync, readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { applyChanges, editText, writtenOver } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { readProcedure } from "../../../src/core/procedure/index.ts";
import { anyChange, procedureFiles } from "../procedure-files.ts";

const BUNDLED = readdirSync("procedures").filter((name) => name.endsWith(".procedure.json"));
const textOf = (name: string) => readFileSync(`procedures/${name}`, "utf8");
const RANGING_HEAD = textOf("osier-ranging-head.procedure.json");

const fileOf = (text: string): ProcedureFile => {
  const { file } = readProcedure(text);
  if (!file) throw new Error("the text is not sound");
  return file;
};

function edited(text: string, changes: readonly Change[]): string {
  const result = editText(text, fileOf(text), changes);
  if (result.problem) throw new Error(JSON.stringify(result.problem));
  return result.text;
}

/** Layouts a person or a program may have given a file. */
const layouts = fc.constantFrom<(file: unknown) => string>(
  (file) => `${JSON.stringify(file, null, 2)}\n`,
  (file) => JSON.stringify(file),
  (file) => JSON.stringify(file, null, "\t"),
  (file) => `\uFEFF${JSON.stringify(file, null, 4).replaceAll("\n", "\r\n")}\r\n\r\n`,
  (file) => JSON.stringify(file, null, 1).replace(/\[\n\s*("[^\n]*")\n\s*\]/g, "[ $1 ]"),
  (file) => ` ${JSON.stringify(file, null, 2).replace(/",\n\s*"/g, '", "')}`,
);

describe("editing the text of a file", () => {
  test.prop([procedureFiles, layouts, fc.array(anyChange, { maxLength: 6 })], { numRuns: 1000 })(
    "[CHG6] gives a text that reads as the changed procedure, whatever its layout",
    (file, layout, wanted) => {
      const text = layout(file);
      const changes = wanted.filter((change) => !applyChanges(file, [change]).problem).slice(0, 1);
      const result = editText(text, file, changes);
      expect(result.problem).toBeNull();
      expect(JSON.parse((result.text ?? "").replace("\uFEFF", ""))).toEqual(applyChanges(file, changes).file);
    },
  );

  test.prop([procedureFiles, procedureFiles, layouts], { numRuns: 500 })(
    "[CHG6] can make any procedure of the text of any other",
    (file, other, layout) => {
      expect(JSON.parse(writtenOver(layout(file), other).replace("\uFEFF", ""))).toEqual(other);
    },
  );

  test.prop([procedureFiles, layouts], { numRuns: 200 })(
    "[CHG6] without an edit is the same bytes",
    (file, layout) => {
      expect(editText(layout(file), file, []).text).toBe(layout(file));
    },
  );
  it("see", () => {
    const t = edited(RANGING_HEAD, [{ change: "ev1-open-hatch", set: { time: "PT9M" } }].slice(1) as never);
    expect(t).toBe(RANGING_HEAD);
  });
});
