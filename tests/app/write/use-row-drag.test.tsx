import { act, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { strandsOf } from "../../../src/app/braid/index.ts";
import { tableRows } from "../../../src/app/write/sheet-rows.ts";
import type { SheetActs } from "../../../src/app/write/sheet-table.tsx";
import { SheetTable } from "../../../src/app/write/sheet-table.tsx";
import { scrollBy } from "../../../src/app/write/use-row-drag.ts";
import { message } from "../../../src/words/index.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

const FILE = fileWith([
  task("one", [step("a", "ev1", 1), step("b", "ev1", 2), step("c", "ev1", 3)]),
  task("two", [step("d", "ev2", 4)]),
]);
const HEIGHT = 50;

// Rows of 50 px under one another, as jsdom lays nothing out: heads, task, a, b, c, task, d.
beforeEach(() => {
  vi.spyOn(Element.prototype, "getBoundingClientRect").mockImplementation(function (this: Element) {
    const item = this.closest("li");
    const at = item?.parentElement ? [...item.parentElement.children].indexOf(item) : -1;
    return at === -1 ? new DOMRect(0, 0, 600, 7 * HEIGHT) : new DOMRect(0, at * HEIGHT, 600, HEIGHT);
  });
});
afterEach(async () => {
  vi.restoreAllMocks();
  // The click that would follow a drag is kept back until the browser is through with the pointer.
  await new Promise((done) => setTimeout(done, 0));
});

const under = (row: number) => (row + 1) * HEIGHT + 2;

function shown(selected: readonly string[] = [], file = FILE) {
  const acts = {
    pointed: null,
    select: vi.fn<SheetActs["select"]>(),
    read: vi.fn<SheetActs["read"]>(),
    written: vi.fn<SheetActs["written"]>(() => null),
    unwritten: vi.fn<SheetActs["unwritten"]>(),
    edited: vi.fn<SheetActs["edited"]>(),
    details: vi.fn<SheetActs["details"]>(),
    shift: vi.fn<SheetActs["shift"]>(),
    move: vi.fn<SheetActs["move"]>(),
    whyNotMoved: vi.fn<SheetActs["whyNotMoved"]>(() => null),
    add: vi.fn(),
    addTask: vi.fn(),
    drop: vi.fn(),
    duplicate: vi.fn(),
  };
  const table = (of: typeof FILE) => (
    <SheetTable
      rows={tableRows(of, [])}
      strands={strandsOf(of.crew)}
      selected={selected}
      findings={[]}
      isOld={false}
      acts={acts}
      overBraid={null}
      draft={null}
    />
  );
  const { rerender, container } = render(table(file));
  return { acts, container, replace: (of: typeof FILE) => rerender(table(of)) };
}

const handle = (row: string) => {
  const found = document.querySelector(`[data-row="${row}"] [data-handle]`);
  if (!found) throw new Error(`${row} has no handle`);
  return found;
};
const MOUSE = { pointerId: 1, isPrimary: true, button: 0 };
const grip = (row: string, y: number) =>
  fireEvent.pointerDown(handle(row), { ...MOUSE, clientX: 580, clientY: y });
const move = (y: number, x = 580) => fireEvent.pointerMove(window, { ...MOUSE, clientX: x, clientY: y });
const letGo = () => fireEvent.pointerUp(window, MOUSE);
const line = () => document.querySelector(".write-drop");

describe("a row that is dragged by its handle", () => {
  it("[WRT2] shows where it would go, and is moved there once it is let go", () => {
    const { acts } = shown();
    grip("d", 325);
    move(under(2));
    expect(line()).toHaveTextContent("Behind 1.1");
    expect(acts.move).not.toHaveBeenCalled();
    letGo();
    expect(acts.move.mock.calls).toEqual([[["d"], "a", 0]]);
    expect(line()).toBeNull();
  });

  it("[WRT2] is dragged although a cell loses the focus to it", () => {
    const { acts } = shown(["d"]);
    grip("d", 325);
    const cell = screen.getByText("Do a").closest("[role=gridcell]");
    if (!cell) throw new Error("there is no cell");
    fireEvent.blur(cell);
    move(under(2));
    letGo();
    expect(acts.move.mock.calls).toEqual([[["d"], "a", 0]]);
  });

  it("[WRT2] takes along what is selected with it, and leaves another selection alone", () => {
    const { acts } = shown(["a", "b"]);
    grip("b", 175);
    move(under(6));
    letGo();
    expect(acts.move).toHaveBeenLastCalledWith(["a", "b"], "d", 0);
    grip("c", 225);
    move(under(1));
    letGo();
    expect(acts.move).toHaveBeenLastCalledWith(["c"], "task:one", 0);
  });

  it("[WRT2] a tap on the handle does nothing, and neither does a pointer that hardly moved", () => {
    const { acts } = shown();
    grip("b", 175);
    letGo();
    fireEvent.click(handle("b"));
    grip("b", 175);
    move(178);
    expect(line()).toBeNull();
    letGo();
    expect(acts.move).not.toHaveBeenCalled();
    expect(acts.select).not.toHaveBeenCalled();
  });

  it("[WRT2] Escape, a pointer that is taken away, and leaving the window end it without a change", () => {
    const { acts } = shown();
    for (const cancel of [
      () => fireEvent.keyDown(window, { key: "Escape" }),
      () => fireEvent.pointerCancel(window, MOUSE),
      () => fireEvent.blur(window),
    ]) {
      grip("d", 325);
      move(under(2));
      expect(line()).not.toBeNull();
      cancel();
      expect(line()).toBeNull();
      letGo();
    }
    expect(acts.move).not.toHaveBeenCalled();
  });

  it("[WRT2] beside the table there is no line, and letting go there does nothing", () => {
    const { acts } = shown();
    grip("d", 325);
    move(under(2));
    move(under(2), 700);
    expect(line()).toBeNull();
    letGo();
    expect(acts.move).not.toHaveBeenCalled();
  });

  it("[WRT2] a task takes its steps along, which lie under a shade with it", () => {
    const { acts } = shown();
    grip("task:two", 275);
    move(under(2));
    expect(document.querySelectorAll(".write-dragged")).toHaveLength(2);
    expect(line()).toHaveTextContent("Behind “Task one”");
    letGo();
    expect(acts.move).toHaveBeenLastCalledWith(["task:two"], "a", 0);
  });

  it("[WRT2] where it cannot go, the line says why", () => {
    const { acts } = shown();
    acts.whyNotMoved.mockReturnValue(message("write/last-task"));
    grip("task:one", 75);
    move(under(6));
    expect(line()).toHaveTextContent("A procedure needs at least one task.");
    expect(line()).toHaveAttribute("data-impossible", "true");
  });

  it("[WRT2] another finger, and another button, drag nothing", () => {
    const { acts } = shown();
    fireEvent.pointerDown(handle("d"), { ...MOUSE, button: 2, clientY: 325 });
    move(under(2));
    fireEvent.pointerDown(handle("d"), { ...MOUSE, isPrimary: false, clientY: 325 });
    move(under(2));
    expect(line()).toBeNull();
    grip("d", 325);
    fireEvent.pointerMove(window, { ...MOUSE, pointerId: 2, clientX: 580, clientY: under(2) });
    expect(line()).toBeNull();
    letGo();
    expect(acts.move).not.toHaveBeenCalled();
  });

  it("[WRT2] rows that change under the pointer end it", () => {
    const { acts, replace } = shown();
    grip("d", 325);
    move(under(2));
    act(() => replace({ ...FILE, tasks: FILE.tasks.slice(1) }));
    expect(line()).toBeNull();
    letGo();
    expect(acts.move).not.toHaveBeenCalled();
  });

  it("[WRT2] while a step is linked, arrow keys go from row to row, and Enter or a tap points at one", () => {
    const { acts } = shown(["a"]);
    const pointed = vi.fn<(row: string) => void>();
    Object.assign(acts, { pointed });
    fireEvent.keyDown(screen.getByRole("treegrid"), { key: "ArrowDown" });
    expect(acts.select).not.toHaveBeenCalled();
    fireEvent.keyDown(screen.getByRole("treegrid"), { key: "Enter" });
    expect(pointed.mock.calls).toEqual([["b"]]);
    fireEvent.click(screen.getByText("Do c"));
    expect(pointed).toHaveBeenLastCalledWith("c");
    expect(acts.select).not.toHaveBeenCalled();
  });
});

describe("the page under a row that is dragged", () => {
  const sight = { top: 100, bottom: 700 };

  it("[WRT2] is scrolled near the edges of what is in sight, the faster the nearer, and not between them", () => {
    expect(scrollBy(400, sight)).toBe(0);
    expect(scrollBy(172, sight)).toBe(0);
    expect(scrollBy(628, sight)).toBe(0);
    expect(scrollBy(640, sight)).toBeGreaterThan(0);
    expect(scrollBy(690, sight)).toBeGreaterThan(scrollBy(640, sight));
    expect(scrollBy(110, sight)).toBeLessThan(0);
    expect(scrollBy(-500, sight)).toBe(-18);
    expect(scrollBy(5000, sight)).toBe(18);
  });

  it("[WRT2] goes on being scrolled while the pointer rests there, and no longer once it is let go", async () => {
    shown();
    const frames = () => new Promise((done) => setTimeout(done, 100));
    grip("b", 175);
    move(345);
    await frames();
    const first = document.documentElement.scrollTop;
    expect(first).toBeGreaterThan(0);
    await frames();
    const second = document.documentElement.scrollTop;
    expect(second).toBeGreaterThan(first);
    letGo();
    await frames();
    expect(document.documentElement.scrollTop).toBe(second);
  });
});
