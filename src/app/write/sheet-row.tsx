import { memo } from "react";
import { words } from "../../words/index.ts";
import type { Strand } from "../braid/index.ts";
import { Performers } from "../parts/index.ts";
import type { Left } from "./cell-editor.tsx";
import { CellEditor } from "./cell-editor.tsx";
import type { Column } from "./cell-texts.ts";
import { COLUMNS } from "./cell-texts.ts";
import { timeText } from "./minutes-text.ts";
import { RowHandle } from "./row-handle.tsx";
import type { TableRow } from "./sheet-rows.ts";
import { isDraft } from "./sheet-rows.ts";

interface SheetRowProps {
  readonly row: TableRow;
  readonly strands: readonly Strand[];
  readonly isSelected: boolean;
  /** The column whose cell is the tab stop of the table; `null` for none in this row. */
  readonly stop: Column | null;
  /** The column that is being edited; `null` for none. */
  readonly editing: Column | null;
  /** How many findings concern it. */
  readonly findings: number;
  /** The value of what is typed in a cell; `null` for what is none. */
  readonly onRead: (key: string, column: Column, text: string) => unknown;
  readonly onEdited: (key: string, column: Column, value: unknown) => void;
  readonly onLeft: (key: string, column: Column, how: Left) => void;
}

/** A time that may go on in another line behind each stroke, and never within a figure; from left to right in every language. */
const inParts = (time: string) => (
  <span dir="ltr">
    {time.split("/").map((part, place, parts) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts have no names but their places.
      <span key={place} className="write-figure">
        {place < parts.length - 1 ? `${part}/` : part}
      </span>
    ))}
  </span>
);

/** The list is a tree grid, whose rows are its entries so that the braid runs beside them. */
const HEAD_ROW = { role: "row" };
const HEAD_CELL = { role: "columnheader" };

const DRAFT_ROW = { role: "row", "aria-level": 2, "aria-selected": true };

/** What a cell of a row stands on: its column, for whoever looks for it on the page. */
const cell = (column: Column, isStop: boolean) => ({
  role: "gridcell",
  "data-column": column,
  tabIndex: isStop ? 0 : -1,
});

/** A row of the table ([WRT2]): the heads of the columns, a contingency, a task, or a step. It is drawn again only when it changes. */
export const SheetRowItem = memo(function SheetRowItem(props: SheetRowProps) {
  const { row, isSelected, editing, findings, strands, onRead, onEdited, onLeft } = props;
  // While a cell is edited, its text is what Tab and taps find there.
  const stop = editing === null ? props.stop : null;
  const sheet = row.row;
  const editor = (column: Column, text: string) => (
    <CellEditor
      label={words(`write/column-${column}`)}
      text={text}
      read={(typed) => onRead(row.key, column, typed)}
      onText={(value) => onEdited(row.key, column, value)}
      onLeft={(how) => onLeft(row.key, column, how)}
    />
  );
  if (isDraft(row.key))
    return (
      <li {...DRAFT_ROW} className="write-step write-draft">
        <span {...cell("do", false)} data-bead>
          <span className="hint">+</span> {editor("do", "")}
        </span>
      </li>
    );
  if (sheet === null)
    return (
      <li {...HEAD_ROW} className="write-heads">
        {COLUMNS.map((column) => (
          <span key={column} {...HEAD_CELL}>
            {words(`write/column-${column}`)}
          </span>
        ))}
      </li>
    );
  const about = {
    role: "row",
    "data-row": row.key,
    "aria-selected": isSelected,
    "aria-level": sheet.kind === "step" ? 2 : 1,
  };
  const mark = findings > 0 && (
    <span className="write-found">{words("write/findings-here", { count: findings })}</span>
  );
  if (sheet.kind !== "step") {
    const title = sheet.kind === "task" ? sheet.task.title : sheet.contingency.title;
    return (
      <li {...about} className="write-task">
        <span {...cell("do", stop !== null)} data-bead>
          {sheet.kind === "task" ? (
            <>
              <span className="hint">{sheet.number}</span> {editing ? editor("do", title) : <b>{title}</b>}
              {sheet.task.priority === "get-ahead" && (
                <span className="hint"> {words("read/get-ahead")}</span>
              )}
              {sheet.task.closeout && <span className="hint"> {words("read/closeout")}</span>}
            </>
          ) : (
            <b>{words("write/contingency", { title })}</b>
          )}{" "}
          {mark}
        </span>
        {sheet.kind === "task" && <RowHandle />}
      </li>
    );
  }
  const { step, number } = sheet;
  return (
    <li {...about} className="write-step">
      <span {...cell("do", stop === "do")} data-bead>
        <span className="hint">{number}</span>{" "}
        {editing === "do" ? editor("do", step.do) : <span className="write-do">{step.do}</span>} {mark}
      </span>
      <span {...cell("who", stop === "who")}>
        {editing === "who" ? (
          editor("who", row.texts?.who ?? "")
        ) : row.lanes.length > 0 ? (
          <Performers lanes={row.lanes} strands={strands} />
        ) : (
          row.texts?.who
        )}
      </span>
      <span {...cell("time", stop === "time")}>
        {editing === "time" ? editor("time", timeText(step.time)) : inParts(timeText(step.time))}
      </span>
      {(["where", "after", "moves", "within"] as const).map((column) => (
        <span key={column} {...cell(column, stop === column)}>
          {editing === column ? editor(column, row.texts?.[column] ?? "") : row.texts?.[column]}
        </span>
      ))}
      <RowHandle />
    </li>
  );
});
