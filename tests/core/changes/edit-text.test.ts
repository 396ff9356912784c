import { readdirSync, readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  applyChanges,
  editText,
  TextMemory,
  UneditableTextError,
  writtenOver,
} from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { readProcedure } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
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
  test.prop([procedureFiles, layouts, fc.array(anyChange, { maxLength: 6 })], { numRuns: 200 })(
    "[CHG6] gives a text that reads as the changed procedure, whatever its layout",
    (file, layout, wanted) => {
      const text = layout(file);
      const changes: Change[] = [];
      for (const change of wanted)
        if (!applyChanges(file, [...changes, change]).problem) changes.push(change);
      const result = editText(text, file, changes);
      expect(result.problem).toBeNull();
      expect(JSON.parse((result.text ?? "").replace("\uFEFF", ""))).toEqual(applyChanges(file, changes).file);
    },
  );

  test.prop([procedureFiles, procedureFiles, layouts], { numRuns: 300 })(
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

  test.prop([procedureFiles, layouts, fc.array(fc.oneof(anyChange, procedureFiles), { maxLength: 8 })], {
    numRuns: 300,
  })("[CHG6] [WRT4] writes the same bytes where it remembers the text before", (file, layout, wanted) => {
    const memory = new TextMemory();
    let [text, now] = [layout(file), file];
    for (const next of wanted) {
      // Small changes, others that leave nothing as it was, and between them a text that it did not write.
      const after = "format" in next ? next : applyChanges(now, [next]).file;
      if (!after) continue;
      const before = text;
      text = writtenOver(before, after, memory);
      expect(text).toBe(writtenOver(before, after));
      expect(writtenOver(before, now, memory)).toBe(before);
      now = after;
    }
  });

  it("[CHG6] [WRT4] remembers right where a text was typed in between, which is no JSON for a while", () => {
    const memory = new TextMemory();
    const file = fileOf(RANGING_HEAD);
    expect(writtenOver(RANGING_HEAD, file, memory)).toBe(RANGING_HEAD);
    const broken = RANGING_HEAD.replace('"steps": [', '"steps": ["');
    expect(() => writtenOver(broken, file, memory)).toThrow(UneditableTextError);
    const typed = RANGING_HEAD.replace("\n", "\n\n").replace('"steps": [', '"steps":   [');
    expect(writtenOver(typed, file, memory)).toBe(typed);
    const changed = applyChanges(file, [{ head: { title: "Another" } }]).file ?? file;
    expect(writtenOver(typed, changed, memory)).toBe(writtenOver(typed, changed));
  });

  it.each(BUNDLED)(
    "[CHG6] %s is the same bytes without an edit, and again once an edit is undone",
    (name) => {
      const text = textOf(name);
      const file = fileOf(text);
      expect(writtenOver(text, file)).toBe(text);
      for (const { id } of file.tasks.flatMap((one) => one.steps.slice(0, 1))) {
        const there = edited(text, [{ change: id, set: { do: "Do something else" } }]);
        expect(writtenOver(there, file)).toBe(text);
      }
    },
  );

  /** The first line that is otherwise, and how many lines from there on are gone and new. */
  function touched(before: string, after: string): { from: number; gone: string[]; fresh: string[] } {
    const [old, next] = [before.split("\n"), after.split("\n")];
    let from = 0;
    while (from < old.length && old[from] === next[from]) from += 1;
    let end = 0;
    while (end < old.length - from && end < next.length - from && old.at(-1 - end) === next.at(-1 - end))
      end += 1;
    return { from, gone: old.slice(from, old.length - end), fresh: next.slice(from, next.length - end) };
  }

  const steps = fileOf(RANGING_HEAD).tasks.flatMap((task) => task.steps);
  const linesOf = (id: string) => {
    const lines = RANGING_HEAD.split("\n");
    const first = lines.indexOf(`          "id": "${id}",`) - 1;
    const length = lines.slice(first).findIndex((line) => /^ {8}\},?$/.test(line)) + 1;
    return { first, length };
  };

  test.prop([fc.constantFrom(...steps), fc.integer({ min: 1, max: 59 })], { numRuns: 100 })(
    "[CHG6] a changed duration touches the lines of the duration alone",
    ({ id }, minutes) => {
      const text = edited(RANGING_HEAD, [{ change: id, set: { time: `PT${minutes}M` } }]);
      const { from, gone, fresh } = touched(RANGING_HEAD, text);
      const { first, length } = linesOf(id);
      // A step that had no time gets the line, and the line above it its comma.
      expect(fresh.length).toBeLessThanOrEqual(2);
      expect(fresh.join("\n")).toMatch(/^(.*,\n)? {10}"time": "PT\d+M",?$/);
      expect([from >= first, from + gone.length <= first + length]).toEqual([true, true]);
    },
  );

  test.prop([fc.constantFrom(...steps)], { numRuns: 100 })(
    "[CHG6] a dropped step takes its own lines away, and those that named it",
    ({ id }) => {
      const text = edited(RANGING_HEAD, [{ drop: id }]);
      const left = RANGING_HEAD.split("\n");
      const { first, length } = linesOf(id);
      left.splice(first, length);
      const kept = new Set(text.split("\n"));
      const lost = left.filter((line) => !kept.has(line));
      // The step before the last of a task loses its comma, and what named the step its mention.
      expect(lost.filter((line) => !line.includes(`"${id}"`) && !/^ {8}\},$/.test(line))).toEqual([]);
    },
  );

  test.prop([fc.constantFrom(...steps), fc.constantFrom(...steps)], { numRuns: 100 })(
    "[CHG6] a moved step takes its lines with it",
    ({ id }, { id: behind }) => {
      fc.pre(id !== behind);
      const text = edited(RANGING_HEAD, [{ move: id, behind }]);
      const sorted = (all: string) =>
        all
          .split("\n")
          .map((line) => line.replace(/,$/, ""))
          .sort();
      expect(sorted(text)).toEqual(sorted(RANGING_HEAD));
    },
  );

  it("[CHG6] writes in the manner of the file: on one line where its like are, over lines where they are not", () => {
    const first = fileOf(RANGING_HEAD).tasks[0]?.steps[0]?.id ?? "";
    const text = edited(RANGING_HEAD, [
      { add: { id: "cabin", label: "Cabin", x: 1 }, list: "places", behind: "hatch" },
      {
        add: { id: "look", by: ["iv"], do: "Look", time: { low: "PT1M", likely: "PT2M", high: "PT3M" } },
        behind: first,
      },
    ]);
    expect(text).toContain(
      '    { "id": "hatch", "label": "Sluice hatch, handrail 1", "x": 3, "y": 0, "z": 0 },\n    { "id": "cabin", "label": "Cabin", "x": 1 },\n',
    );
    expect(text).toContain(
      '        {\n          "id": "look",\n          "by": ["iv"],\n          "do": "Look",\n          "time": { "low": "PT1M", "likely": "PT2M", "high": "PT3M" }\n        },\n',
    );
  });

  it("[CHG6] keeps line ends, a byte order mark, tabs, escapes and what stands behind the file", () => {
    const text = `\uFEFF${JSON.stringify(
      fileWith([step("a", "ev1", 1), step("b", "ev1", 1, { do: "Say \u201Cgo\u201D" })]),
      null,
      "\t",
    )
      .replaceAll("\n", "\r\n")
      .replace("\u201C", "\\u201c")}\r\n  \r\n`;
    const result = edited(text, [
      { change: "a", set: { time: "PT2M", at: "hatch" } },
      { add: step("c", "ev2", 1), behind: "b" },
    ]);
    expect(result.startsWith("\uFEFF{\r\n\t")).toBe(true);
    expect(result).toContain("Say \\u201cgo");
    expect(result.endsWith("}\r\n  \r\n")).toBe(true);
    expect(result.replaceAll("\r\n", "")).not.toContain("\n");
    expect(result).toContain('\t\t\t\t\t"time": "PT2M",\r\n\t\t\t\t\t"at": "hatch"\r\n');
  });

  it("[CHG6] keeps lines left blank between members, and the blanks round the first of a list", () => {
    const file = fileWith([step("a", "ev1", 1), step("b", ["ev1", "ev2"], 1), step("c", "iv", 1)]);
    const text = JSON.stringify(file, null, 2)
      .replace('},\n        {\n          "id": "c"', '},\n\n        {\n          "id": "c"')
      .replace(/\[\s+"ev1",\s+"ev2"\s+\]/, '["ev1", "ev2"]');
    expect(fileOf(text)).toEqual(file);
    const result = edited(text, [
      { change: "b", set: { by: ["ev2"] } },
      { drop: "a" },
      { add: step("d", "iv", 1), behind: "c" },
    ]);
    expect(result).toContain('      "steps": [\n        {\n          "id": "b",\n          "by": ["ev2"],\n');
    expect(result).toContain('        },\n\n        {\n          "id": "c",\n');
    expect(result).toContain('        },\n        {\n          "id": "d",\n');
  });

  it("[CHG6] sets what moves in by as much as its new neighbours", () => {
    const aid = task("aid", [step("p", "ev2", 1)]);
    const file = fileWith([step("a", "ev1", 1)], {
      contingencies: [{ id: "tear", title: "A tear", tasks: [aid] }],
    });
    const text = `${JSON.stringify(file, null, 2)}\n`;
    const result = edited(text, [{ bring: "tear", behind: "a" }]);
    // As the whole file would be laid out anew.
    expect(result).toBe(
      `${JSON.stringify({ ...file, tasks: [...file.tasks, aid], contingencies: [] }, null, 2)}\n`,
    );
    expect(writtenOver(result, file)).toBe(text);
  });

  it("[CHG6] tells the change that cannot be applied, and edits nothing", () => {
    expect(
      editText(RANGING_HEAD, fileOf(RANGING_HEAD), [{ head: { title: "Other" } }, { drop: "none" }]),
    ).toEqual({
      text: null,
      file: null,
      index: 1,
      problem: { code: "not-there", list: "steps", id: "none" },
    });
    expect(() => writtenOver("", fileOf(RANGING_HEAD))).toThrow(UneditableTextError);
  });
});
