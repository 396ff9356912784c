import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { dropPlace, rowsAlong } from "../../../src/app/write/drop-place.ts";
import { HEADS, tableRows } from "../../../src/app/write/sheet-rows.ts";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { rowsMoved, sheetOf } from "../../../src/core/write/index.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";
import { procedureFiles } from "../../core/procedure-files.ts";

const FILE = fileWith(
  [
    task("one", [step("a", "ev1", 1), step("b", "ev1", 2), step("c", "ev1", 3)]),
    task("two", [step("d", "ev2", 4)]),
  ],
  {
    contingencies: [{ id: "tear", title: "A tear", tasks: [task("aid", [step("patch", "ev1", 5)])] }],
  } as Partial<ProcedureFile>,
);
const ROWS = tableRows(FILE, []);

/** Where rows go that are let go under the row of a key. */
const under = (dragged: readonly string[], key: string) =>
  dropPlace(
    ROWS,
    dragged,
    ROWS.findIndex((row) => row.key === key),
  );

describe("where rows go that are let go", () => {
  it("[WRT2] steps go behind the step above, or first in the task above", () => {
    expect(under(["d"], "b")).toEqual({ to: "b", under: "b", says: "Behind 1.2" });
    expect(under(["d"], "task:one")).toEqual({
      to: "task:one",
      under: "task:one",
      says: "First in “Task one”",
    });
  });

  it("[WRT2] steps above every task, and under a contingency, go into the first task there", () => {
    expect(under(["d"], HEADS)).toMatchObject({ to: null, under: "task:one", says: "First in “Task one”" });
    expect(under(["d"], "contingency:tear")).toMatchObject({ to: "contingency:tear", under: "task:aid" });
  });

  it("[WRT2] tasks go behind the task above, whole, and to the beginning", () => {
    expect(under(["task:two"], "a")).toEqual({ to: "a", under: "c", says: "Behind “Task one”" });
    expect(under(["task:two"], HEADS)).toEqual({ to: null, under: HEADS, says: "First of all" });
    expect(under(["task:two"], "contingency:tear")).toMatchObject({
      to: "contingency:tear",
      under: "contingency:tear",
      says: "First in “A tear”",
    });
  });

  it("[WRT2] rows are let go on themselves as behind what stands above them", () => {
    expect(under(["b", "c"], "c")).toMatchObject({ to: "a" });
    expect(under(["task:two"], "d")).toMatchObject({ to: "c" });
    expect([...rowsAlong(ROWS, ["task:two"])]).toEqual(["task:two", "d"]);
  });

  test.prop([procedureFiles, fc.nat(), fc.nat(3), fc.nat()])(
    "[WRT2] rows stand under the line where they were let go",
    (file, from, count, at) => {
      const rows = tableRows(file, []);
      const start = 1 + (from % (rows.length - 1));
      const kind = rows[start]?.row?.kind;
      const dragged = rows
        .slice(start, start + 1 + count)
        .flatMap(({ key, row }) => (row?.kind === kind ? [key] : []));
      const place = dropPlace(rows, dragged, at % rows.length);
      if (!place || kind === "contingency") return;
      const { problem, changes } = rowsMoved(file, dragged, place.to);
      if (problem) return;
      const after = sheetOf(applyChanges(file, changes).file ?? file).map(({ key }) => key);
      expect(after[after.indexOf(dragged[0] ?? "") - 1] ?? HEADS).toBe(place.under);
    },
  );
});
