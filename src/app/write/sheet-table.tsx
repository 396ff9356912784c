import type { KeyboardEvent, MouseEvent, ReactNode } from "react";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { Finding } from "../../core/procedure/index.ts";
import type { Message } from "../../words/index.ts";
import { words } from "../../words/index.ts";
import type { BraidPlaces, Strand } from "../braid/index.ts";
import { BraidedList } from "../braid/index.ts";
import type { Column } from "./cell-texts.ts";
import { COLUMNS } from "./cell-texts.ts";
import { DragMark } from "./drag-mark.tsx";
import { SheetRowItem } from "./sheet-row.tsx";
import type { TableRow } from "./sheet-rows.ts";
import { HEADS } from "./sheet-rows.ts";
import { useRowDrag } from "./use-row-drag.ts";

/** What the keys and taps of the table ask for. */
export interface SheetActs {
  /**
   * What a tap or Enter on a row does instead of selecting or editing it, while something is being pointed at; arrow keys only go there
   * then. `null` while nothing is.
   */
  readonly pointed: ((row: string) => void) | null;
  readonly select: (rows: readonly string[]) => void;
  readonly edited: (key: string, column: Column, value: unknown) => void;
  /** Opens the details beside at the field of a column. */
  readonly details: (column: Column) => void;
  readonly shift: (by: "up" | "down") => void;
  /** Moves rows to another one, or to the beginning; `scroll` is how far the page was scrolled before, in px. */
  readonly move: (rows: readonly string[], to: string | null, scroll: number) => void;
  /** Why they cannot be moved there; `null` where they can be. */
  readonly whyNotMoved: (rows: readonly string[], to: string | null) => Message | null;
  readonly add: () => void;
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
  /** The row whose text is to be typed at once, since it was just added; `null` for none. */
  readonly fresh: string | null;
  /** Called once it is typed. */
  readonly onFresh: () => void;
}

/** The cells that are typed in place; the others are edited beside the table. */
const IN_PLACE: ReadonlySet<Column> = new Set(["do", "time"]);

interface Stop {
  readonly row: string;
  readonly column: Column;
}

/**
 * The table in which a procedure is written ([WRT2]): one tab stop, arrow keys from cell to cell, Enter to edit and Escape to leave,
 * Shift with up or down to select more, Alt with up or down to move, Insert and Delete.
 */
export function SheetTable({
  rows,
  strands,
  selected,
  findings,
  isOld,
  acts,
  overBraid,
  fresh,
  onFresh,
}: SheetTableProps) {
  const keys = useMemo(() => rows.flatMap(({ key }) => (key === HEADS ? [] : [key])), [rows]);
  const [wanted, setWanted] = useState<Stop | null>(null);
  const [editing, setEditing] = useState<Stop | null>(null);
  const table = useRef<HTMLDivElement>(null);
  const follows = useRef(false);
  const stop: Stop = {
    row: wanted && keys.includes(wanted.row) ? wanted.row : (selected.at(-1) ?? keys[0] ?? ""),
    column: wanted?.column ?? "do",
  };

  useEffect(() => {
    if (fresh === null) return;
    setWanted({ row: fresh, column: "do" });
    setEditing({ row: fresh, column: "do" });
    onFresh();
  }, [fresh, onFresh]);

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
    if (editing === null) focusCell(stop);
  }, [rows, stop.row, stop.column, editing]);

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
    if (IN_PLACE.has(stop.column) || !isStep(rows, stop.row)) setEditing(stop);
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
          return acts.add();
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
    if (isAgain && IN_PLACE.has(column)) setEditing({ row, column });
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
  const onEdited = useCallback((key: string, column: Column, value: unknown) => {
    latest.current.edited(key, column, value);
  }, []);
  const onLeft = useCallback(() => {
    follows.current = true;
    setEditing(null);
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
        onEdited={onEdited}
        onLeft={onLeft}
      />
    ),
    [strands, chosen, stopRow, stopColumn, editing, concerned, onEdited, onLeft],
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
        markers={NO_MARKERS}
        role="treegrid"
        over={overBraid}
      >
        {renderRow}
      </BraidedList>
      {drag && <DragMark drag={drag} />}
    </div>
  );
}

const NO_MARKERS: readonly never[] = [];

const isStep = (rows: readonly TableRow[], key: string) =>
  rows.find((row) => row.key === key)?.row?.kind === "step";
