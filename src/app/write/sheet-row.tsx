import { memo, useEffect, useRef, useState } from "react";
import { words } from "../../words/index.ts";
import type { Strand } from "../braid/index.ts";
import { Performers } from "../parts/index.ts";
import type { Column } from "./cell-texts.ts";
import { COLUMNS } from "./cell-texts.ts";
import { timeText, typedTime } from "./minutes-text.ts";
import { RowHandle } from "./row-handle.tsx";
import type { TableRow } from "./sheet-rows.ts";

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
  readonly onEdited: (key: string, column: Column, value: unknown) => void;
  readonly onLeft: () => void;
}

/** The list is a tree grid, whose rows are its entries so that the braid runs beside them. */
const HEAD_ROW = { role: "row" };
const HEAD_CELL = { role: "columnheader" };

/** What a cell of a row stands on: its column, for whoever looks for it on the page. */
const cell = (column: Column, isStop: boolean) => ({
  role: "gridcell",
  "data-column": column,
  tabIndex: isStop ? 0 : -1,
});

/** A row of the table ([WRT2]): the heads of the columns, a contingency, a task, or a step. It is drawn again only when it changes. */
export const SheetRowItem = memo(function SheetRowItem(props: SheetRowProps) {
  const { row, isSelected, stop, editing, findings, strands, onEdited, onLeft } = props;
  const sheet = row.row;
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
              <span className="hint">{sheet.number}</span>{" "}
              {editing ? (
                <CellEditor
                  label={words("write/column-do")}
                  text={title}
                  onText={(text) => onEdited(row.key, "do", text)}
                  onLeft={onLeft}
                />
              ) : (
                <b>{title}</b>
              )}
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
        {editing === "do" ? (
          <CellEditor
            label={words("write/column-do")}
            text={step.do}
            onText={(text) => onEdited(row.key, "do", text)}
            onLeft={onLeft}
          />
        ) : (
          <span className="write-do">{step.do}</span>
        )}{" "}
        {mark}
      </span>
      <span {...cell("who", stop === "who")}>
        {row.lanes.length > 0 ? <Performers lanes={row.lanes} strands={strands} /> : row.texts?.who}
      </span>
      <span {...cell("time", stop === "time")}>
        {editing === "time" ? (
          <CellEditor
            label={words("write/column-time")}
            text={timeText(step.time)}
            read={typedTime}
            onText={(value) => onEdited(row.key, "time", value)}
            onLeft={onLeft}
          />
        ) : (
          timeText(step.time)
        )}
      </span>
      {(["where", "after", "moves", "within"] as const).map((column) => (
        <span key={column} {...cell(column, stop === column)}>
          {row.texts?.[column]}
        </span>
      ))}
      <RowHandle />
    </li>
  );
});

/** The text of a cell while it is edited: Enter takes it, Escape leaves it as it was, leaving the cell takes it. */
function CellEditor({
  label,
  text,
  read = (typed) => (typed.trim() === "" ? null : typed),
  onText,
  onLeft,
}: {
  readonly label: string;
  readonly text: string;
  /** The value of a text; `null` for what is none. */
  readonly read?: (text: string) => unknown;
  readonly onText: (value: unknown) => void;
  readonly onLeft: () => void;
}) {
  const [typed, setTyped] = useState(text);
  const input = useRef<HTMLInputElement>(null);
  const isOver = useRef(false);
  useEffect(() => {
    input.current?.focus();
    input.current?.select();
  }, []);
  const value = read(typed);
  const take = () => {
    if (isOver.current) return;
    isOver.current = true;
    if (typed !== text && value !== null) onText(value);
    onLeft();
  };
  return (
    <input
      ref={input}
      aria-label={label}
      className="write-editor"
      value={typed}
      aria-invalid={typed.trim() !== "" && value === null}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={take}
      onKeyDown={(event) => {
        event.stopPropagation();
        if (event.key === "Enter" && (value !== null || typed === text)) take();
        if (event.key === "Escape") {
          isOver.current = true;
          onLeft();
        }
      }}
    />
  );
}
