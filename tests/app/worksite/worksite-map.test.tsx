import { fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { SiteFigure, standingPet, TouchedMoment } from "../../../src/app/worksite/index.ts";
import { MapAtMoment } from "../../../src/app/worksite/map-at-moment.tsx";
import { keepingInPlace, WHOLE, withinRoom } from "../../../src/app/worksite/map-view.ts";
import { WorksiteMap } from "../../../src/app/worksite/worksite-map.tsx";
import type { Course } from "../../../src/core/course/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { frameOf } from "../../../src/core/worksite/frame.ts";
import { minutes } from "../../core/log-writer.ts";
import { fileWith, procedureOf, step } from "../../core/procedure-builder.ts";

const SITE: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "hatch", tether: { anchor: "hatch", length: 12 } },
    { id: "ev2", call: "EV2", station: "outside", start: "hatch" },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [
    { id: "hatch", label: "Hatch", refuge: true },
    { id: "boom", label: "Boom" },
  ],
  routes: [{ between: ["hatch", "boom"], length: 10, time: "PT8M" }],
  items: [
    { id: "bag", label: "Site bag", start: { place: "boom" } },
    { id: "lamp", label: "Lamp", start: { item: "bag" } },
  ],
};
const FILE = fileWith(
  [
    step("out", "ev1", 8, { to: "boom" }),
    step("work", "ev1", 10),
    step("join", "ev2", 4, { after: ["work"] }),
  ],
  SITE,
);

function courseOf(file: ProcedureFile): Course {
  const { timeline } = planOf(outlineOf(procedureOf(file)));
  if (!timeline) throw new Error("no plan");
  return timeline.course;
}
const course = courseOf(FILE);

const stage = (container: HTMLElement) => {
  const found = container.querySelector<HTMLElement>(".map-stage");
  if (!found) throw new Error("no map is drawn");
  return found;
};

describe("the map on the screen", () => {
  it("[MAP4] tells all that is known of a person, a place and an item that is asked about", async () => {
    const user = userEvent.setup();
    render(<WorksiteMap course={course} shown={standingPet(minutes(12))} />);
    await user.click(screen.getByRole("button", { name: /^EV2, waits for EV1/ }));
    const details = screen.getByRole("status");
    expect(details).toHaveTextContent("waits for EV1");
    expect(details).toHaveTextContent("1.3 Do join");
    await user.selectOptions(screen.getByLabelText("Tell about"), "EV1");
    expect(details).toHaveTextContent("anchored at Hatch; 2 m of line left");
    expect(details).toHaveTextContent("10 m to a refuge");
    await user.click(screen.getByRole("button", { name: "Boom" }));
    expect(details).toHaveTextContent("laid out by the lengths of the ways");
    await user.click(within(details).getByRole("button", { name: "Lamp (in Site bag)" }));
    expect(within(details).getByRole("heading", { name: "Lamp" })).toBeVisible();
    await user.selectOptions(screen.getByLabelText("Tell about"), "IV");
    expect(details).toHaveTextContent("the procedure does not tell");
  });

  it("[MAP6] is enlarged, moved and shown whole by buttons, keys and the wheel, one pointer at a time", async () => {
    const user = userEvent.setup();
    const { container } = render(<WorksiteMap course={course} shown={standingPet(minutes(1))} />);
    const room = screen.getByRole("group", { name: /^Map of the worksite/ });
    const whole = stage(container).style.width;
    expect(screen.queryByRole("button", { name: "Further up" })).toBeNull();
    await user.click(screen.getByRole("button", { name: "Larger" }));
    expect(Number.parseFloat(stage(container).style.width)).toBeGreaterThan(Number.parseFloat(whole));
    const before = stage(container).style.transform;
    await user.click(screen.getByRole("button", { name: "Further to the right" }));
    expect(stage(container).style.transform).not.toBe(before);
    room.focus();
    await user.keyboard("{Home}");
    expect(stage(container).style.width).toBe(whole);
    await user.keyboard("++");
    const large = stage(container).style.width;
    expect(Number.parseFloat(large)).toBeGreaterThan(Number.parseFloat(whole) * 1.4);
    const wheel = new WheelEvent("wheel", { deltaY: -300, bubbles: true, cancelable: true });
    fireEvent(room, wheel);
    expect(wheel.defaultPrevented).toBe(true);
    expect(stage(container).style.transform).toContain("scale(1.5");
    // Nothing is drawn anew while the gesture lasts.
    expect(stage(container).style.width).toBe(large);
    await waitFor(() => expect(stage(container).style.width).not.toBe(large));
  });

  it("[MAP6] takes a drag for a move and not for a tap on what lies under it", () => {
    const { container } = render(<WorksiteMap course={course} shown={standingPet(minutes(1))} />);
    const room = screen.getByRole("group", { name: /^Map of the worksite/ });
    fireEvent.click(screen.getByRole("button", { name: "Larger" }));
    const before = stage(container).style.transform;
    const boom = screen.getByRole("button", { name: "Boom" });
    fireEvent.pointerDown(boom, { pointerId: 1, clientX: 100, clientY: 100 });
    fireEvent.pointerMove(room, { pointerId: 1, clientX: 60, clientY: 90 });
    fireEvent.pointerUp(room, { pointerId: 1, clientX: 60, clientY: 90 });
    fireEvent.click(boom);
    expect(stage(container).style.transform).not.toBe(before);
    expect(screen.queryByRole("status")).toBeNull();
    fireEvent.click(boom);
    expect(screen.getByRole("status")).toHaveTextContent("Boom");
  });

  it("[MAP2] offers to keep the layout of a sketch, and only where that can be done", async () => {
    const user = userEvent.setup();
    const onKeepLayout = vi.fn();
    const { rerender } = render(
      <WorksiteMap course={course} shown={standingPet(minutes(1))} onKeepLayout={onKeepLayout} />,
    );
    await user.click(screen.getByRole("button", { name: "Keep this layout in the file" }));
    expect(onKeepLayout).toHaveBeenCalledOnce();
    rerender(<WorksiteMap course={course} shown={standingPet(minutes(1))} />);
    expect(screen.queryByRole("button", { name: "Keep this layout in the file" })).toBeNull();
  });

  it("[MAP4] says that a procedure without places has no map", () => {
    render(
      <WorksiteMap course={courseOf(fileWith([step("look", "iv", 5)]))} shown={standingPet(minutes(1))} />,
    );
    expect(screen.getByText("The procedure names no places, so there is no map.")).toBeVisible();
  });

  it("[MAP5] shows the moment that is chosen, with what was planned as a ghost", async () => {
    const moment = new TouchedMoment();
    moment.touch(minutes(3));
    const { container } = render(
      <MapAtMoment course={course} planned={course} moment={moment} now={minutes(9)} onKeepLayout={null} />,
    );
    const summary = screen.getByText("Map at PET 0:03:00");
    fireEvent.click(summary);
    const details = container.querySelector("details");
    if (details) details.open = true;
    fireEvent(details as HTMLElement, new Event("toggle"));
    fireEvent.change(await screen.findByRole("slider", { name: "Moment" }), { target: { value: 360_000 } });
    expect(screen.getByText("Map at PET 0:06:00")).toBeVisible();
    fireEvent.click(screen.getByRole("button", { name: "Back to now" }));
    expect(screen.getByText("Map at PET 0:09:00")).toBeVisible();
    await waitFor(() => expect(container.querySelector(".ghost")).not.toBeNull());
  });

  it("[MAP5] is a figure on paper with a name, and none without places", () => {
    const { rerender } = render(<SiteFigure course={course} />);
    expect(screen.getByRole("img", { name: /^Map of the worksite with 2 places/ })).toBeVisible();
    rerender(<SiteFigure course={courseOf(fileWith([step("look", "iv", 5)]))} />);
    expect(screen.queryByRole("img")).toBeNull();
  });
});

describe("what of the map is seen", () => {
  const procedure = procedureOf(FILE);
  const room = { width: 700, height: 400 };
  const frame = (zoom: number) => frameOf(procedure, { ...room, zoom });

  it("[MAP6] keeps what lies under a point there when it is drawn larger", () => {
    const [before, after] = [frame(1), frame(3)];
    const point = { x: 480, y: 210 };
    const metresAt = (one: typeof before, view: { x: number; y: number }) =>
      (point.x - view.x - one.toPlan({ x: 0, y: 0, z: 0 }).x) / one.scale;
    const view = keepingInPlace(WHOLE, before, after, point, 3);
    expect(metresAt(after, view)).toBeCloseTo(metresAt(before, WHOLE), 9);
  });

  it("[MAP6] never leaves the room without a part of the map", () => {
    const far = withinRoom({ zoom: 2, x: -99_999, y: 99_999 }, frame(2), room);
    expect(far.x + frame(2).width).toBeGreaterThan(100);
    expect(far.y).toBeLessThan(room.height);
    expect(withinRoom({ zoom: 1, x: 50, y: 50 }, frame(1), room)).toEqual(WHOLE);
  });
});
