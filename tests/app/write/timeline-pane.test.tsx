import { fireEvent, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { TimelinePane } from "../../../src/app/write/timeline-pane.tsx";
import { writtenTimeline } from "../../../src/app/write/written-timeline.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import { outlineOf, readProcedure } from "../../../src/core/procedure/index.ts";
import { fileWith, outlineFrom, step, task } from "../../core/procedure-builder.ts";

const STEPS = [
  step("long", "ev1", 10),
  step("short", "ev2", 4),
  step("both", ["ev1", "ev2"], 5),
  step("maybe", "iv", 1),
];

const TIMELINE = writtenTimeline(
  planOf(
    outlineFrom([task("one", STEPS.slice(0, 3)), task("two", STEPS.slice(3), { priority: "get-ahead" })]),
  ),
  [],
);

function shown(more: Partial<Parameters<typeof TimelinePane>[0]> = {}) {
  const [onSelect, onLink] = [vi.fn<(step: string) => void>(), vi.fn<(step: string) => void>()];
  render(
    <TimelinePane
      timeline={TIMELINE}
      isBehind={false}
      isBroken={false}
      selected={null}
      isLinking={false}
      onSelect={onSelect}
      onLink={onLink}
      {...more}
    />,
  );
  return { onSelect, onLink };
}

const bar = (name: RegExp) => screen.getByRole("button", { name });
const chart = () => screen.getByRole("group", { name: /^Steps of each lane/ });

/** Taps near the beginning of the first lane, which stands under the axis and one row of tasks. */
const tapFirst = () => fireEvent.click(chart(), { clientX: 20, clientY: 34 + 28 + 30 });

describe("the timeline of what is written", () => {
  it("[WRT3] selects the step of a bar that is tapped or gone to by arrow keys, and links nothing", async () => {
    const { onSelect, onLink } = shown({ selected: "short" });
    tapFirst();
    expect(onSelect).toHaveBeenLastCalledWith("long");
    bar(/^1\.2/).focus();
    await userEvent.keyboard("{ArrowRight}");
    expect(onSelect).toHaveBeenLastCalledWith("both");
    expect(onLink).not.toHaveBeenCalled();
  });

  it("[WRT3] links to the bar that is tapped while a step is linked, which is marked as the one that waits", () => {
    const { onSelect, onLink } = shown({ selected: "short", isLinking: true });
    expect(bar(/^1\.2, .*comes after the one that is tapped$/)).toBeInTheDocument();
    tapFirst();
    expect(onLink.mock.calls).toEqual([["long"]]);
    expect(onSelect).not.toHaveBeenCalled();
  });

  it("[WRT3] arrow keys only go to a bar while a step is linked; Enter links to it", async () => {
    const { onSelect, onLink } = shown({ selected: "short", isLinking: true });
    bar(/^1\.2/).focus();
    await userEvent.keyboard("{ArrowRight}{ArrowUp}{ArrowLeft}");
    expect(onLink).not.toHaveBeenCalled();
    await userEvent.keyboard("{Enter}");
    expect(onLink.mock.calls).toEqual([["long"]]);
    expect(onSelect).not.toHaveBeenCalled();
  });

  it("[WRT4] says that it is of before the last edit, and that what is selected is not on it", () => {
    shown({ selected: "maybe", isBehind: true });
    expect(screen.getByRole("region", { name: "Timeline of what is written" })).toHaveAttribute(
      "aria-busy",
      "true",
    );
    expect(screen.getByRole("status")).toHaveTextContent("is not on this timeline");
  });

  it("[WRT4] says why there is none: a ring of waits, a text that is no procedure, no answer yet, no worker", () => {
    const ring = outlineOf(
      readProcedure(
        JSON.stringify(
          fileWith([step("a", "ev1", 1, { after: ["b"] }), step("b", "ev2", 1, { after: ["a"] })]),
        ),
      ).procedure ?? fail(),
    );
    shown({ timeline: writtenTimeline(planOf(ring), []) });
    expect(screen.getByText(/^There is no timeline/)).toBeVisible();
    expect(screen.getAllByRole("listitem").length).toBeGreaterThan(0);
    const { findings } = readProcedure(JSON.stringify(fileWith([step("a", "nobody", 1)])));
    shown({ timeline: writtenTimeline(null, findings) });
    expect(screen.getByText(/nobody/)).toBeVisible();
    shown({ timeline: null });
    expect(screen.getByText("The timeline is being worked out…")).toBeVisible();
    shown({ timeline: null, isBroken: true });
    expect(screen.getByText("The timeline is not to be had on this device.")).toBeVisible();
  });
});

function fail(): never {
  throw new Error("the test's procedure is not sound");
}
