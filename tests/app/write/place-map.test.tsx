import { fireEvent, render, screen } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { PlaceMap } from "../../../src/app/write/place-map.tsx";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import type { PlaceId } from "../../../src/core/units/index.ts";
import { groundOf, layoutOf } from "../../../src/core/worksite/index.ts";
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

const THREE = fileOf([
  { id: "hatch", label: "Hatch", x: 0, y: 0 },
  { id: "mast", label: "Mast", x: 3, y: 4, z: 2 },
  { id: "boom", label: "Boom", x: 6, y: 0 },
]);

/** Taps on the map at a point of the site, which is drawn half as large as it is laid out. */
function tapping(file: ProcedureFile, drawing: HTMLElement) {
  const { frame } = groundOf(procedureOf(file), { width: 620, height: 400, zoom: 1 }, inWords);
  const svg = drawing.querySelector("svg");
  if (!svg) throw new Error("nothing is drawn");
  svg.getBoundingClientRect = () => new DOMRect(10, 20, frame.width / 2, frame.height / 2);
  return (x: number, y: number) => {
    const { x: left, y: top } = frame.toPlan({ x, y, z: 0 });
    fireEvent.click(drawing, { clientX: 10 + left / 2, clientY: 20 + top / 2 });
  };
}

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
    const tap = tapping(GIVEN, drawing);
    tap(3, 4);
    expect(onChanges).not.toHaveBeenCalled();
    expect(screen.getByLabelText("Place to move")).toHaveProperty("value", "mast");
    tap(1, 3);
    expect(onChanges).toHaveBeenCalledWith("set", [{ change: "mast", list: "places", set: { x: 1, y: 3 } }]);
  });

  it("[WRT5] are measured by the way and straight, heights included", () => {
    shown(GIVEN);
    expect(screen.getByRole("list", { name: "Ways from “Hatch”" }).textContent).toContain(
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

describe("ways on the map", () => {
  const mode = (name: string) => fireEvent.click(screen.getByRole("button", { name }));
  const put = () => fireEvent.click(screen.getByRole("button", { name: "Put the way in" }));
  const field = (label: string) => screen.getByLabelText<HTMLInputElement>(label);
  const LENGTH = "Length by the way, m";
  const TIME = "Time that one takes, minutes";

  it("[WRT5] join the two places that are tapped, with the length between them, and the time that is typed", () => {
    const { onChanges, drawing } = shown(THREE);
    mode("Way");
    const tap = tapping(THREE, drawing);
    tap(0, 0);
    tap(2, 2);
    tap(6, 0);
    expect([field("From").value, field("To").value]).toEqual(["hatch", "boom"]);
    expect(field(LENGTH).value).toBe("6");
    expect(screen.getByText(/^6 m straight between them, by their positions/)).toBeTruthy();
    expect(onChanges).not.toHaveBeenCalled();
    fireEvent.change(field(TIME), { target: { value: "1.5" } });
    put();
    expect(onChanges.mock.calls).toEqual([
      [
        "add",
        [
          {
            add: { between: ["hatch", "boom"], length: 6, time: "PT1M30S" },
            list: "routes",
            behind: "hatch mast",
          },
        ],
      ],
    ]);
    expect(screen.getByRole("status")).toHaveTextContent("The way is in: Hatch – Boom.");
  });

  it("[WRT5] are chosen by keys as well, and a time is offered by the slowest way alone, which is named", () => {
    const { onChanges } = shown(THREE);
    mode("Way");
    fireEvent.change(field("From"), { target: { value: "mast" } });
    fireEvent.change(field("To"), { target: { value: "boom" } });
    // Heights count: 5.39 m, which is rounded up.
    expect(field(LENGTH).value).toBe("5.4");
    expect(field(TIME).value).toBe("");
    expect(screen.getByText(/is the pace of the slowest way of this procedure, Hatch – Mast/)).toBeTruthy();
    fireEvent.click(screen.getByRole("button", { name: "Take 54 s" }));
    put();
    expect(onChanges.mock.lastCall?.[1]).toMatchObject([{ add: { length: 5.4, time: "PT54S" } }]);
  });

  it("[WRT5] a third tap takes another end; a tap on the first one frees it", () => {
    const { drawing } = shown(THREE);
    mode("Way");
    const tap = tapping(THREE, drawing);
    tap(0, 0);
    tap(6, 0);
    tap(3, 4);
    expect([field("From").value, field("To").value]).toEqual(["hatch", "mast"]);
    tap(0, 0);
    expect([field("From").value, field("To").value]).toEqual(["", "mast"]);
  });

  it("[WRT5] say what cannot be: a way that is there, one to itself, no length, a time that is none", () => {
    const { onChanges } = shown(THREE);
    mode("Way");
    const said = () => screen.getAllByRole("alert").map((one) => one.textContent);
    put();
    expect(said()).toEqual(["A way joins two places; choose another one."]);
    fireEvent.change(field("From"), { target: { value: "hatch" } });
    fireEvent.change(field("To"), { target: { value: "mast" } });
    put();
    expect(said()).toEqual(["A way joins “Hatch” and “Mast” already."]);
    fireEvent.change(field("To"), { target: { value: "boom" } });
    fireEvent.change(field(LENGTH), { target: { value: "" } });
    put();
    expect(said()).toEqual(["Say how long the way is, in metres."]);
    fireEvent.change(field(LENGTH), { target: { value: "2" } });
    expect(said()).toContain("This is shorter than straight between them.");
    fireEvent.change(field(TIME), { target: { value: "soon" } });
    put();
    expect(said()).toContain("This is not a value that can stand here; it is not taken.");
    expect(onChanges).not.toHaveBeenCalled();
  });

  it("[WRT5] between places without positions are not measured, and their length is asked for", () => {
    const { onChanges } = shown(
      fileOf([{ id: "hatch" }, { id: "mast" }, { id: "boom", label: "Boom", x: 6, y: 0 }]),
    );
    mode("Way");
    fireEvent.change(field("From"), { target: { value: "hatch" } });
    fireEvent.change(field("To"), { target: { value: "boom" } });
    expect(field(LENGTH).value).toBe("");
    expect(screen.getByText(/^It cannot be measured/)).toBeTruthy();
    expect(screen.getByText(/Without a time, nobody is planned to take this way/)).toBeTruthy();
    fireEvent.change(field(LENGTH), { target: { value: "7,5" } });
    put();
    const [change] = onChanges.mock.lastCall?.[1] ?? [];
    expect(change).toEqual({
      add: { between: ["hatch", "boom"], length: 7.5 },
      list: "routes",
      behind: "hatch mast",
    });
  });

  it("[WRT5] are taken out, each as one gesture", () => {
    const { onChanges } = shown(GIVEN);
    fireEvent.click(screen.getByRole("button", { name: "Take out the way: Hatch – Mast" }));
    expect(onChanges.mock.calls).toEqual([["drop", [{ drop: "hatch mast", list: "routes" }]]]);
  });

  it("[WRT5] a new place is put where the map is tapped, or beside another one, as one gesture that can be applied", () => {
    const file = fileOf([{ id: "hatch", label: "Hatch", x: 0, y: 0 }, { id: "mast" }]);
    const { onChanges, drawing } = shown(file);
    const placed = () => applyChanges(file, onChanges.mock.lastCall?.[1] ?? []).file?.places;
    const mast = layoutOf(procedureOf(file)).places.get("mast" as PlaceId) ?? { x: 0, y: 0 };
    mode("New place");
    tapping(file, drawing)(mast.x / 2, mast.y / 2);
    expect(onChanges).toHaveBeenCalledTimes(1);
    expect(onChanges.mock.lastCall?.[0]).toBe("add");
    const { x = 0, y = 0 } = placed()?.at(-1) ?? {};
    expect(placed()?.at(-1)).toMatchObject({ id: "place", label: "Place" });
    expect(Math.hypot(x - mast.x / 2, y - mast.y / 2)).toBeLessThan(0.1);
    // The position that was worked out for the other one is kept with it, since it is where it was seen.
    expect(placed()?.[1]).toMatchObject({ id: "mast", x: expect.any(Number) });
    fireEvent.click(screen.getByRole("button", { name: "Put it beside “Hatch”" }));
    expect(placed()?.at(-1)).toMatchObject({ x: 1, y: 0 });
  });
});
