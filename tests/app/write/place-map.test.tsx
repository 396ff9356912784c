import { fireEvent, render, screen } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { PlaceMap } from "../../../src/app/write/place-map.tsx";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { groundOf } from "../../../src/core/worksite/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";

const fileOf = (places: ProcedureFile["places"]) =>
  fileWith([task("one", [step("a", "iv", 1)])], {
    places,
    routes: [{ between: ["hatch", "mast"], length: 6, time: "PT1M" }],
  });

const GIVEN = fileOf([
  { id: "hatch", label: "Hatch", x: 0, y: 0 },
  { id: "mast", label: "Mast", x: 3, y: 4, z: 2 },
]);

function shown(file: ProcedureFile) {
  const onChanges = vi.fn<(name: string, changes: readonly Change[]) => void>();
  const { container } = render(<PlaceMap file={file} onChanges={onChanges} />);
  return { onChanges, drawing: container.querySelector(".place-map-drawing") as HTMLElement };
}

describe("places on the map", () => {
  it("[WRT5] are moved by buttons and arrow keys, each time as one gesture", () => {
    const { onChanges } = shown(GIVEN);
    fireEvent.change(screen.getByLabelText("Place to move"), { target: { value: "mast" } });
    fireEvent.click(screen.getByRole("button", { name: "→ Right" }));
    expect(onChanges).toHaveBeenLastCalledWith("set", [
      { change: "mast", list: "places", set: { x: 4, y: 4 } },
    ]);
    fireEvent.change(screen.getByLabelText("By how much"), { target: { value: "0.1" } });
    fireEvent.keyDown(screen.getByRole("button", { name: "↑ Up" }), { key: "ArrowDown" });
    expect(onChanges).toHaveBeenLastCalledWith("set", [
      { change: "mast", list: "places", set: { x: 3, y: 3.9 } },
    ]);
    expect(onChanges).toHaveBeenCalledTimes(2);
  });

  it("[WRT5] are chosen by a tap on them, and put by one on a free spot", () => {
    const { onChanges, drawing } = shown(GIVEN);
    const { frame } = groundOf(procedureOf(GIVEN), { width: 620, height: 400, zoom: 1 }, inWords);
    const svg = drawing.querySelector("svg");
    if (!svg) throw new Error("nothing is drawn");
    // Drawn half as large as it is laid out.
    svg.getBoundingClientRect = () => new DOMRect(10, 20, frame.width / 2, frame.height / 2);
    const tap = (x: number, y: number) => {
      const { x: left, y: top } = frame.toPlan({ x, y, z: 0 });
      fireEvent.click(drawing, { clientX: 10 + left / 2, clientY: 20 + top / 2 });
    };
    tap(3, 4);
    expect(onChanges).not.toHaveBeenCalled();
    expect(screen.getByLabelText("Place to move")).toHaveProperty("value", "mast");
    tap(1, 3);
    expect(onChanges).toHaveBeenCalledWith("set", [{ change: "mast", list: "places", set: { x: 1, y: 3 } }]);
  });

  it("[WRT5] are measured by the way and straight, heights included", () => {
    shown(GIVEN);
    expect(screen.getByRole("list", { name: "Ways from this place" }).textContent).toBe(
      "Mast: 6 m by the way, 5.4 m straight",
    );
  });

  it("[WRT5] keep the layout that was worked out when one of them is put somewhere", () => {
    const { onChanges } = shown(fileOf([{ id: "hatch" }, { id: "mast" }]));
    fireEvent.click(screen.getByRole("button", { name: "→ Right" }));
    const [, changes = []] = onChanges.mock.calls[0] ?? [];
    expect(changes.map((one) => "change" in one && one.change).sort()).toEqual(["hatch", "mast"]);
  });

  it("[WRT5] are not drawn while the procedure cannot be read, and there is no map without any", () => {
    const { container } = render(<PlaceMap file={fileOf([])} onChanges={() => {}} />);
    expect(container.textContent).toBe("");
    const spoiled = { ...GIVEN, tasks: [task("one", [step("a", "nobody", 1)])] };
    render(<PlaceMap file={spoiled} onChanges={() => {}} />);
    expect(screen.getByText(/The map can be drawn once/)).toBeTruthy();
  });
});
