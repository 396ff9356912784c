import { expect, it } from "vitest";
import { tableRows } from "../../../src/app/write/sheet-rows.ts";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { Change } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

const FILE = fileWith(
  [
    task("out", [step("a", "ev1", 1, { at: "mast" }), step("b", "ev2", 2, { after: ["a"] })]),
    task("back", [step("c", "ev1", 3, { after: ["b"] }), step("d", "iv", 4)]),
  ],
  { places: [{ id: "mast", label: "Mast" }] },
);

/** The rows that are drawn anew after changes. */
function drawnAnew(changes: readonly Change[]): readonly string[] {
  const before = tableRows(FILE, []);
  const { file } = applyChanges(FILE, changes);
  if (!file) throw new Error("the changes can be made");
  const rows = tableRows(file, before);
  expect(rows.map(({ row, texts }) => [row, texts])).toEqual(
    tableRows(file, []).map(({ row, texts }) => [row, texts]),
  );
  return rows.flatMap((row) => (before.includes(row) ? [] : [row.key]));
}

it("[WRT2] a row that an edit does not concern stays the same object, so that it is not drawn again", () => {
  expect(drawnAnew([{ change: "a", set: { do: "Another text" } }])).toEqual(["task:out", "a"]);
  expect(drawnAnew([{ change: "d", set: { time: "PT9M" } }])).toEqual(["task:back", "d"]);
  expect(drawnAnew([{ change: "out", list: "tasks", set: { title: "Outside" } }])).toEqual(["task:out"]);
});

it("[WRT2] a row is drawn again where what it names is called otherwise now", () => {
  expect(drawnAnew([{ change: "mast", list: "places", set: { label: "Boom" } }])).toEqual(["a"]);
  // The numbers behind a new step, and of what comes after one of these.
  expect(drawnAnew([{ add: { id: "new", by: ["iv"], do: "New" }, behind: "a" }])).toEqual([
    "task:out",
    "new",
    "b",
    "c",
  ]);
});

it("[WRT2] the row of a task says what the task is now, also in fields that the table does not show", () => {
  const before = tableRows(FILE, []);
  const { file } = applyChanges(FILE, [{ change: "out", list: "tasks", set: { brief: "Go out" } }]);
  const row = file && tableRows(file, before).find(({ key }) => key === "task:out")?.row;
  expect(row).toMatchObject({ task: { brief: "Go out" } });
});
