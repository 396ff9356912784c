import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { ReviewView } from "../../../src/app/review/index.ts";
import { reviewOf } from "../../../src/core/review/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

const FILE = fileWith(
  [
    task("out", [
      step("long", "ev1", 10, { records: [{ id: "turns", label: "Turns", min: 8, max: 10 }] }),
      step("short", "ev2", 4),
    ]),
    task("in", [step("both", ["ev1", "ev2"], 5)]),
  ],
  {
    limits: { elapsed: "PT30M" },
    places: [{ id: "lock", label: "Airlock", refuge: true }],
    items: [{ id: "bag", label: "Tool bag", start: { crew: "ev1" }, end: { place: "lock" } }],
  },
);

function show(log: LogWriter, at = 60) {
  const review = reviewOf(log.folded, minute(at));
  if (!review) throw new Error("no walk");
  const onExport = vi.fn();
  return { ...render(<ReviewView review={review} clocks={null} onExport={onExport} />), onExport };
}

const part = (name: RegExp | string) =>
  screen.getByRole("heading", { level: 2, name }).parentElement as HTMLElement;

const flown = () =>
  LogWriter.started(FILE, { names: { ev1: "Ada" } })
    .enter("record.taken", { step: "long", record: "turns", value: 12 }, 13)
    .done(["short", 4], ["long", 13])
    .enter("note.made", { text: "Glare", step: "both" }, 14)
    .done(["both", 19]);

describe("the review of a walk that was flown to its end", () => {
  const closed = () => flown().enter("walk.closed", { end: "complete" }, 20);

  it("says how it ended against plan and limit", () => {
    show(closed());
    const ending = part("Complete, 4 min later than planned");
    expect(ending).toHaveTextContent(
      "3 steps done. Last step over at 0:19:00, planned finish 0:15:00. Closed at 0:20:00, 10 min inside the limit of 0:30.",
    );
  });

  it("sets every task against its plan", () => {
    show(closed());
    const [first, second] = within(part("Tasks, planned and as flown")).getAllByRole("listitem");
    expect(first).toHaveTextContent("finished 3 min later");
    expect(first).toHaveTextContent("planned 0:00–0:10 · flown 0:00–0:13 · took 3 min longer");
    expect(second).toHaveTextContent("finished 4 min later");
  });

  it("says where everybody's time went, waits with whom", () => {
    show(closed());
    const [ev1, ev2] = [...part("Where everybody’s time went").querySelectorAll(".review-lanes > li")];
    expect(ev1).toHaveTextContent("worked19 min");
    expect(ev2).toHaveTextContent("worked10 min");
    expect(ev2).toHaveTextContent("waited9 min9 min for EV1");
  });

  it("draws the drift of each lane and says it", () => {
    const { container } = show(closed());
    const [ev1, , iv] = within(part("Drift from the plan")).getAllByRole("listitem");
    expect(ev1).toHaveTextContent("at most 4 min behind, at 0:19; in the end 4 min behind");
    expect(iv).toHaveTextContent("no planned step done");
    expect(container.querySelectorAll(".review-drift-line")).toHaveLength(3);
  });

  it("lists every deviation, record, note and misplaced item", () => {
    show(closed());
    expect(part(/^Deviations 1/)).toHaveTextContent("record outside its limits");
    expect(part(/^Records 1/)).toHaveTextContent("12 , outside8 to 100:13:00");
    expect(part(/^Notes 1/)).toHaveTextContent("0:14:00IVGlare2.1 Do both");
    expect(part(/^Items not at their end 1/)).toHaveTextContent("Tool bagat Airlockwith EV1");
    expect(part(/^Steps 3/)).toHaveTextContent("0:00:00–0:04:00on plan");
  });

  it("hands out each form of export", async () => {
    const { onExport } = show(closed());
    for (const name of [/^Log/, /CSV/, /Review \(JSON/, /XES/, /^Print/])
      await userEvent.click(screen.getByRole("button", { name }));
    expect(onExport.mock.calls.flat()).toEqual(["log", "csv", "json", "xes", "print"]);
  });
});

describe("the review of a walk with little in it", () => {
  it("says what was left when it was terminated early", () => {
    const log = LogWriter.started(FILE)
      .done(["short", 4])
      .enter("walk.closed", { end: "terminated", reason: "Cooling alarm" }, 6);
    show(log);
    const ending = part("Terminated at 0:06");
    expect(ending).toHaveTextContent("1 step done, 2 of the plan not done.");
    expect(ending).toHaveTextContent("Reason given: Cooling alarm");
    expect(within(part("Tasks, planned and as flown")).getAllByRole("listitem")[1]).toHaveTextContent(
      "not done",
    );
  });

  it("has words for every table that would be empty", () => {
    show(LogWriter.started(fileWith([step("a", "ev1", 1)])).done(["a", 1]));
    expect(screen.getByText(/Nothing was done otherwise than planned/)).toBeVisible();
    expect(screen.getByText("Nobody made a note.")).toBeVisible();
    expect(screen.getByText("The walk was never held.")).toBeVisible();
    expect(screen.getByText("Every entry of the log had its effect.")).toBeVisible();
    expect(screen.getByText("The procedure lists no items.")).toBeVisible();
  });

  it("does not compare what never began", () => {
    show(LogWriter.opened(FILE));
    expect(part("The clock was never started")).toHaveTextContent("nothing to compare");
    expect(screen.queryByRole("heading", { name: "Drift from the plan" })).toBeNull();
  });

  it("lists entries without effect with the reason", () => {
    show(LogWriter.started(FILE).done(["unknown", 2]));
    expect(part(/^Entries without effect 1/)).toHaveTextContent("/devices/iv-tablet");
  });
});
