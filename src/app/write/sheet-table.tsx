import type { KeyboardEvent, MouseEvent, ReactNode } from "react";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { Finding } from "../../core/procedure/index.ts";
import type { Message } from "../../words/index.ts";
import { words } from "../../words/index.ts";
import type { BraidPlaces, Strand } from "../braid/index.ts";
import { BraidedList } from "../braid/index.ts";
import type { Left } from "./cell-editor.tsx";
import type { Column } from "./cell-texts.ts";
import { COLUMNS } from "./cell-texts.ts";
import { DragMark } from "./drag-mark.tsx";
import { SheetRowItem } from "./sheet-row.tsx";
import type { Draft, TableRow } from "./sheet-rows.ts";
import { draftKey, isDraft, withDraft } from "./sheet-rows.ts";
import { useRowDrag } from "./use-row-drag.ts";

/** What the keys and taps of the table ask for. */
export interface SheetActs {
  /**
   * What a tap or Enter on a row does instead of selecting or editing it, while something is being pointed at; arrow keys only go there
   * then. `null` while nothing is.
   */
  readonly pointed: ((row: string) => void) | null;
  readonly select: (rows: readonly string[]) => void;
  /** The value of what is typed in a cell, `undefined` for what takes it out; `null` for what is none. */
  readonly read: (key: string, column: Column, text: string) => unknown;
  readonly edited: (key: string, column: Column, value: unknown) => void;
  /** Opens the details beside at the field of a column. */
  readonly details: (column: Column) => void;
  readonly shift: (by: "up" | "down") => void;
  /** Moves rows to another one, or to the beginning; `scroll` is how far the page was scrolled before, in px. */
  readonly move: (rows: readonly string[], to: string | null, scroll: number) => void;
  /** Why they cannot be moved there; `null` where they can be. */
  readonly whyNotMoved: (rows: readonly string[], to: string | null) => Message | null;
  /** Begins to write a step behind a row, else behind the last one that is selected. */
  readonly add: (behind?: string) => void;
  /** Begins to write a task behind that of the last row that is selected. */
  readonly addTask: () => void;
  /** Makes what is being written, with its text; returns its row, or `null` where it cannot be made. */
  readonly written: (text: string) => string | null;
  /** Ends what is being written without making anything. */
  readonly unwritten: (key: string, isAway: boolean) => void;
  readonly drop: () => void;
  readonly duplicate: () => void;
}

interface SheetTableProps {
  readonly rows: readonly TableRow[];
  readonly strands: readonly Strand[];
  readonly selected: readonly string[];
  readonly findings: readonly Finding[];
  /** True while the findings are of the text before. */
  readonly isOld: boolean;
  readonly acts: SheetActs;
  /** What is laid over the braid to be tapped, a stable function; `null` for nothing. */
  readonly overBraid: ((places: BraidPlaces) => ReactNode) | null;
  /** The row that is being written; `null` for none. */
  readonly draft: Draft | null;
}

/** The cells that are typed in place, in the order in which Tab goes through them; the others are edited beside the table. */
const IN_PLACE: readonly Column[] = ["do", "who", "time", "after"];

interface Stop {
  readonly row: string;
  readonly column: Column;
}

/**
 * The table in which a procedure is written ([WRT2]): one tab stop, arrow keys from cell to cell, Enter to edit and Escape to leave,
 * Shift with up or down to select more, Alt with up or down to move, Insert and Delete. While a step is written Enter goes on to its time,
 * and from there to the next step.
 */
export function SheetTable({
  rows: made,
  strands,
  selected,
  findings,
  isOld,
  acts,
  overBraid,
  draft,
}: SheetTableProps) {
  const rows = useMemo(() => withDraft(made, draft), [made, draft]);
  const keys = useMemo(() => made.flatMap(({ key, row }) => (row === null ? [] : [key])), [made]);
  const [wanted, setWanted] = useState<Stop | null>(null);
  const [editing, setEditing] = useState<Stop | null>(null);
  const table = useRef<HTMLDivElement>(null);
  const follows = useRef(false);
  const stop: Stop = {
    row: wanted && keys.includes(wanted.row) ? wanted.row : (selected.at(-1) ?? keys[0] ?? ""),
    column: wanted?.column ?? "do",
  };

  // The step that was just written: Enter in its cells goes on to the next one.
  const writing = useRef<string | null>(null);

  const drafted = draft && draftKey(draft);
  useEffect(() => {
    if (drafted !== null) setEditing({ row: drafted, column: "do" });
  }, [drafted]);

  const focusCell = useCallback(({ row, column }: Stop) => {
    const shown = table.current?.querySelector(`[data-row="${CSS.escape(row)}"]`);
    const cell =
      shown?.querySelector<HTMLElement>(`[data-column="${column}"]`) ??
      shown?.querySelector<HTMLElement>("[data-column]");
    cell?.focus();
    cell?.scrollIntoView({ block: "nearest" });
  }, []);
  // What a key moved takes the focus along once it is drawn elsewhere.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the rows are not read, they are what moved.
  useEffect(() => {
    if (!follows.current) return;
    follows.current = false;
    // The text of a cell that is edited has the focus itself.
    if (editing === null && draft === null) focusCell(stop);
  }, [rows, stop.row, stop.column, editing, draft]);

  const goTo = (row: string, column: Column, isMore: boolean) => {
    setWanted({ row, column });
    follows.current = true;
    if (acts.pointed) return;
    if (!isMore) return acts.select([row]);
    const [first] = selected;
    const [from, to] = [keys.indexOf(first ?? row), keys.indexOf(row)];
    const between = keys.slice(Math.min(from, to), Math.max(from, to) + 1);
    acts.select(from <= to ? between : between.toReversed());
  };

  const edit = () => {
    if (acts.pointed) return acts.pointed(stop.row);
    if (IN_PLACE.includes(stop.column) || !isStep(rows, stop.row)) setEditing(stop);
    else acts.details(stop.column);
  };

  const onKeyDown = (event: KeyboardEvent) => {
    const at = keys.indexOf(stop.row);
    const column = COLUMNS.indexOf(stop.column);
    const act = () => {
      if (event.altKey && event.key === "ArrowUp") return acts.shift("up");
      if (event.altKey && event.key === "ArrowDown") return acts.shift("down");
      if (event.altKey) return false;
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "d") return acts.duplicate();
      if ((event.ctrlKey || event.metaKey) && event.key !== "Home" && event.key !== "End") return false;
      switch (event.key) {
        case "ArrowUp":
          return goTo(keys[Math.max(0, at - 1)] ?? stop.row, stop.column, event.shiftKey);
        case "ArrowDown":
          return goTo(keys[Math.min(keys.length - 1, at + 1)] ?? stop.row, stop.column, event.shiftKey);
        case "ArrowLeft":
          return goTo(stop.row, COLUMNS[Math.max(0, column - 1)] ?? "do", false);
        case "ArrowRight":
          return goTo(stop.row, COLUMNS[Math.min(COLUMNS.length - 1, column + 1)] ?? "do", false);
        case "Home":
          return event.ctrlKey ? goTo(keys[0] ?? stop.row, stop.column, false) : goTo(stop.row, "do", false);
        case "End":
          return event.ctrlKey
            ? goTo(keys.at(-1) ?? stop.row, stop.column, false)
            : goTo(stop.row, COLUMNS.at(-1) ?? "do", false);
        case "PageUp":
          return goTo(keys[Math.max(0, at - 10)] ?? stop.row, stop.column, event.shiftKey);
        case "PageDown":
          return goTo(keys[Math.min(keys.length - 1, at + 10)] ?? stop.row, stop.column, event.shiftKey);
        case "Enter":
        case "F2":
          return edit();
        case "Insert":
          return event.shiftKey ? acts.addTask() : acts.add();
        case "Delete":
          return acts.drop();
        default:
          return false;
      }
    };
    if (act() === false) return;
    follows.current = true;
    event.preventDefault();
  };

  const onClick = (event: MouseEvent) => {
    const { target } = event;
    if (!(target instanceof Element) || target.closest("input, [data-handle]")) return;
    const row = target.closest<HTMLElement>("[data-row]")?.dataset["row"];
    if (row === undefined) return;
    const column = (target.closest<HTMLElement>("[data-column]")?.dataset["column"] ?? "do") as Column;
    const isAgain =
      stop.row === row && stop.column === column && selected.length === 1 && selected[0] === row;
    setWanted({ row, column });
    if (acts.pointed) return acts.pointed(row);
    if (event.ctrlKey || event.metaKey)
      return acts.select(selected.includes(row) ? selected.filter((one) => one !== row) : [...selected, row]);
    if (event.shiftKey) return goTo(row, column, true);
    acts.select([row]);
    // A second tap on the same cell edits it, as Enter does.
    if (isAgain && IN_PLACE.includes(column)) setEditing({ row, column });
  };

  const { drag, onPointerDown } = useRowDrag({
    table,
    rows,
    selected,
    whyNotMoved: acts.whyNotMoved,
    onMove: (moved, to, scroll) => {
      setWanted({ row: moved.at(-1) ?? stop.row, column: stop.column });
      follows.current = true;
      acts.move(moved, to, scroll);
    },
  });

  const concerned = useMemo(() => {
    const counts = new Map<string, number>();
    for (const { steps } of findings) for (const id of steps) counts.set(id, (counts.get(id) ?? 0) + 1);
    return counts;
  }, [findings]);
  const chosen = useMemo(() => new Set(selected), [selected]);
  const latest = useRef(acts);
  latest.current = acts;
  const onRead = useCallback(
    (key: string, column: Column, text: string) => latest.current.read(key, column, text),
    [],
  );
  const written = useRef<string | null>(null);
  const onEdited = useCallback((key: string, column: Column, value: unknown) => {
    if (isDraft(key)) written.current = latest.current.written(String(value));
    else latest.current.edited(key, column, value);
  }, []);
  const onLeft = useCallback((key: string, column: Column, how: Left) => {
    // What was pressed elsewhere keeps the focus.
    follows.current = how !== "away";
    const row = isDraft(key) ? written.current : key;
    written.current = null;
    const goOn = (to: Stop | null) => {
      writing.current = to && (row === writing.current || isDraft(key)) ? to.row : null;
      if (to) setWanted(to);
      setEditing(to);
    };
    if (row === null) {
      goOn(null);
      return latest.current.unwritten(key, how === "away");
    }
    if (how === "escape" || how === "away") return goOn(null);
    const isNew = isDraft(key) || row === writing.current;
    const next = nextColumn(column, how, isTask(row));
    if (next !== null && (isNew || how !== "enter")) return goOn({ row, column: next });
    goOn(null);
    if (isNew && how !== "back") latest.current.add(row);
  }, []);
  const { row: stopRow, column: stopColumn } = stop;
  const renderRow = useCallback(
    (row: TableRow) => (
      <SheetRowItem
        key={row.key}
        row={row}
        strands={strands}
        isSelected={chosen.has(row.key)}
        stop={stopRow === row.key ? stopColumn : null}
        editing={editing?.row === row.key ? editing.column : null}
        findings={concerned.get(row.key) ?? 0}
        onRead={onRead}
        onEdited={onEdited}
        onLeft={onLeft}
      />
    ),
    [strands, chosen, stopRow, stopColumn, editing, concerned, onRead, onEdited, onLeft],
  );
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the tree grid within is what takes keys and taps.
    <div
      ref={table}
      className="write-table"
      aria-busy={isOld}
      data-dragging={drag !== null || undefined}
      onKeyDown={onKeyDown}
      onClick={onClick}
      onPointerDown={onPointerDown}
    >
      <BraidedList
        label={words("write/table")}
        strands={strands}
        rows={rows}
        role="treegrid"
        over={overBraid}
      >
        {renderRow}
      </BraidedList>
      {drag && <DragMark drag={drag} />}
    </div>
  );
}

/** The cell that comes next where one was left: Enter leaves out who does it, which is as before; `null` for none in this row. */
function nextColumn(column: Column, how: Left, isOfTask: boolean): Column | null {
  if (isOfTask) return null;
  if (how === "enter") return column === "do" || column === "who" ? "time" : null;
  return IN_PLACE[IN_PLACE.indexOf(column) + (how === "back" ? -1 : 1)] ?? null;
}

const isTask = (key: string) => key.includes(":");

const isStep = (rows: readonly TableRow[], key: string) =>
  rows.find((row) => row.key === key)?.row?.kind === "step";
