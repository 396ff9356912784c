import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it } from "vitest";
import { TimelineView } from "../../../src/app/timeline/index.ts";
import { planOf, riskModelOf, sampleRisk } from "../../../src/core/plan/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, outlineFrom, step } from "../../core/procedure-builder.ts";

// EV1 works 10 min, EV2 4 min and waits 6 for EV1; then both together; IV may be up to 8 min late with its 2 min.
const STEPS = [
  step("long", "ev1", 10),
  step("short", "ev2", 4),
  step("read", "iv", 2),
  step("both", ["ev1", "ev2"], 5, { after: ["read"] }),
];
const LIMITS = { limits: { elapsed: "PT20M" } };
const outline = outlineFrom(STEPS, LIMITS);
const plan = planOf(outline);

const bar = (name: RegExp) => screen.getByRole("button", { name });

function livingAt(at: number) {
  const log = LogWriter.started(fileWith(STEPS, LIMITS)).done(["short", 3], ["read", 2]);
  return walkStateAt(log.ledger, minute(at));
}

describe("the timeline of a plan", () => {
  it("has a bar for every performer of every step, with its planned times in words", () => {
    render(<TimelineView outline={outline} plan={plan} state={null} />);
    expect(bar(/^1\.1, EV1: Do long, planned 0:00 to 0:10$/)).toBeVisible();
    expect(screen.getAllByRole("button", { name: /^1\.4, EV1 \+ EV2: Do both/ })).toHaveLength(2);
  });

  it("says finish, limit and margin", () => {
    const { container } = render(<TimelineView outline={outline} plan={plan} state={null} />);
    expect(container.querySelector(".timeline-summary")).toHaveTextContent(
      "Planned finish 0:15 · limit 0:20 · 5 min margin",
    );
    expect(screen.getByText("limit 0:20")).toBeInTheDocument();
  });

  it("[PLN5] [PRO17] says which windows samples miss and which bounds they break, with their shares", () => {
    const bound = outlineFrom(
      [
        step("a", "ev1", 3, { doneBy: "PT2M" }),
        step("b", "ev1", 1, { after: [{ step: "a", within: "PT0M" }] }),
        step("c", "ev1", null, {
          time: { low: "PT1M", likely: "PT2M", high: "PT9M" },
          within: ["day"],
        }),
      ],
      {
        format: "tetherline.procedure/2",
        windows: [{ id: "day", label: "Daylight", kind: "listed", spans: [{ from: "PT0M", to: "PT7M" }] }],
      },
    );
    const planned = planOf(bound);
    const risk = sampleRisk(riskModelOf(planned), 400, 1);
    const { rerender } = render(<TimelineView outline={bound} plan={planned} state={null} risk={risk} />);
    const misses = screen.getByText("What samples miss").closest("details");
    expect(misses).toHaveTextContent(/a step misses its windows: Daylight \d+ %, at Step 1\.3 \d+ %/);
    expect(misses).toHaveTextContent("Step 1.1 is done later than 0:02 in > 99 % of the samples");
    expect(misses).not.toHaveTextContent("Step 1.2");
    expect(misses).toHaveTextContent("PERT-beta");
    const sound = sampleRisk(riskModelOf(plan), 10, 1);
    rerender(<TimelineView outline={outline} plan={plan} state={null} risk={sound} />);
    expect(screen.queryByText("What samples miss")).toBeNull();
  });

  it("hatches a wait and says for whom", () => {
    render(<TimelineView outline={outline} plan={plan} state={null} />);
    expect(screen.getByText("for EV1")).toBeInTheDocument();
  });

  it("shows a step's time, wait and slack when its bar is chosen", async () => {
    render(<TimelineView outline={outline} plan={plan} state={null} />);
    await userEvent.click(bar(/^1\.2/));
    // A click lands at the left edge of the drawing here; the arrow keys are what can be aimed.
    bar(/^1\.1/).focus();
    await userEvent.keyboard("{ArrowDown}");
    const panel = screen.getByRole("region", { name: "Step 1.2" });
    expect(panel).toHaveTextContent("0:00 to 0:04 (4 min)");
    expect(panel).toHaveTextContent("6 min: may finish as late as 0:10");
  });

  it("lets arrow keys lead along a lane and across lanes, with one bar in the order of the Tab key", async () => {
    const { container } = render(<TimelineView outline={outline} plan={plan} state={null} />);
    const reachable = () => container.querySelectorAll('[data-bar][tabindex="0"]');
    expect(reachable()).toHaveLength(1);
    bar(/^1\.1/).focus();
    await userEvent.keyboard("{ArrowRight}");
    expect(document.activeElement).toHaveAttribute("data-bar", "0 both");
    await userEvent.keyboard("{ArrowDown}");
    expect(document.activeElement).toHaveAttribute("data-bar", "1 both");
    await userEvent.keyboard("{ArrowDown}");
    expect(document.activeElement).toHaveAccessibleName(/^1\.3, IV/);
    await userEvent.keyboard("{ArrowUp}{Home}");
    expect(document.activeElement).toHaveAttribute("data-bar", "1 short");
    expect(reachable()).toHaveLength(1);
  });

  it("marks the critical path by a double line and in words", async () => {
    const { container } = render(<TimelineView outline={outline} plan={plan} state={null} />);
    const marked = [...container.querySelectorAll("[data-bar] .timeline-critical")].map((mark) =>
      mark.closest("[data-bar]")?.getAttribute("data-bar"),
    );
    expect(marked).toEqual(["0 long", "0 both", "1 both"]);
    expect(screen.getByText("on the critical path: double line")).toBeVisible();
    expect(screen.getByRole("region", { name: "Step 1.1" })).toHaveTextContent(
      "it lies on the critical path",
    );
  });

  it("says the same as a table", async () => {
    render(<TimelineView outline={outline} plan={plan} state={null} />);
    await userEvent.click(screen.getByRole("button", { name: "As a table" }));
    const row = within(screen.getByRole("table")).getByRole("row", { name: /Do both/ });
    expect(row).toHaveTextContent("1.4EV1 + EV2Do both0:10–0:15EV2 waits 6 min for EV1none, critical path");
  });

  it("widens the drawing on nearer looks, by button and by key", async () => {
    const long = outlineFrom([step("a", "ev1", 90), step("b", "ev1", 90)]);
    render(<TimelineView outline={long} plan={planOf(long)} state={null} />);
    const width = () =>
      Number(screen.getByRole("group", { name: /Steps of each lane/ }).getAttribute("width"));
    await userEvent.click(screen.getByRole("button", { name: "Whole" }));
    const whole = width();
    await userEvent.click(screen.getByRole("button", { name: "20 min" }));
    expect(width()).toBeGreaterThan(whole * 8);
    await userEvent.keyboard("-");
    expect(screen.getByRole("button", { name: "1 h" })).toHaveAttribute("aria-pressed", "true");
  });

  it("says why there is none when the procedure cannot be planned", () => {
    const stuck = outlineFrom([step("a", "ev1", 1, { after: ["b"] }), step("b", "ev1", 1)]);
    const none = planOf(stuck);
    render(<TimelineView outline={stuck} plan={none} state={null} />);
    expect(screen.getByText(/There is no timeline/)).toBeVisible();
    expect(
      screen.getByText(none.findings[0] ? inWords(none.findings[0].message) : "a finding"),
    ).toBeVisible();
  });
});

describe("the timeline of a walk", () => {
  it("tells what is done, in work and to come", () => {
    render(<TimelineView outline={outline} plan={plan} state={livingAt(6)} />);
    expect(bar(/^1\.2, EV2: Do short, planned 0:00 to 0:04, done 0:00 to 0:03$/)).toBeVisible();
    expect(bar(/^1\.1, EV1: .*, in work since 0:00$/)).toBeVisible();
    expect(screen.getAllByRole("button", { name: /^1\.4.*, to come$/ })).toHaveLength(2);
  });

  it("[AMD2] draws the plan in force once it was amended, without the slack of the plan of record", async () => {
    const log = LogWriter.started(fileWith(STEPS, LIMITS)).done(["short", 3], ["read", 2]);
    const changes = [
      { change: "both", set: { time: "PT4M" } },
      { add: step("wipe", "ev1", 2), behind: "both" },
    ];
    log.enter("plan.amended", { changes, reason: "", needs: 2 }, 5);
    const state = walkStateAt(log.ledger, minute(6));
    const { container } = render(
      <TimelineView outline={log.ledger.inForce.outline} plan={state.plan} state={state} />,
    );
    expect(bar(/^1\.5, EV1: Do wipe, planned 0:14 to 0:16, to come$/)).toBeVisible();
    const both = { name: /^1\.4, EV1 \+ EV2: Do both, planned 0:10 to 0:14, to come$/ };
    expect(screen.getAllByRole("button", both)).toHaveLength(2);
    expect(container.querySelector(".timeline-summary")).toHaveTextContent(/^Forecast finish 0:16, on plan/);
    await userEvent.click(screen.getByRole("button", { name: "As a table" }));
    for (const row of screen.getAllByRole("row")) expect(row).not.toHaveTextContent("critical");
  });

  it("marks now with the PET", () => {
    render(<TimelineView outline={outline} plan={plan} state={livingAt(6)} />);
    expect(screen.getByText("0:06:00")).toBeInTheDocument();
  });

  it("forecasts late when a step in work overruns, with the wait it causes", async () => {
    const { container } = render(<TimelineView outline={outline} plan={plan} state={livingAt(14)} />);
    expect(container.querySelector(".timeline-summary")).toHaveTextContent(
      "Forecast finish 0:19, 4 min later than planned (09:19:00 UTC) · limit 0:20 · 60 s margin",
    );
    await userEvent.click(screen.getByRole("button", { name: "As a table" }));
    expect(screen.getByRole("row", { name: /Do both/ })).toHaveTextContent("EV2 waits 11 min for EV1");
  });

  it("draws again only the bars that move from one second to the next", () => {
    const { container, rerender } = render(
      <TimelineView outline={outline} plan={plan} state={livingAt(6)} />,
    );
    const changed: string[] = [];
    const observer = new MutationObserver((records) => {
      for (const { target } of records) {
        const key = (target as Element).closest?.("[data-bar]")?.getAttribute("data-bar");
        if (key) changed.push(key);
      }
    });
    observer.observe(container, { subtree: true, childList: true, attributes: true });
    rerender(<TimelineView outline={outline} plan={plan} state={livingAt(6.5)} />);
    for (const { target } of observer.takeRecords()) {
      const key = (target as Element).closest("[data-bar]")?.getAttribute("data-bar");
      if (key) changed.push(key);
    }
    expect(new Set(changed)).toEqual(new Set(["0 long"]));
  });
});

describe("UTC", () => {
  const start = Date.UTC(2031, 3, 2, 9) as Instant;

  it("[PLN1] stands beside the PET in the chart, in the line above and in the table once a start is known", async () => {
    const known = planOf(outline, { start });
    const { container } = render(<TimelineView outline={outline} plan={known} state={null} />);
    expect(container.querySelector(".timeline-summary")).toHaveTextContent("(09:15:00 UTC)");
    expect(container.querySelector(".timeline-utc")).toHaveTextContent("09:00Z");
    await userEvent.click(screen.getByRole("button", { name: "As a table" }));
    expect(screen.getByRole("columnheader", { name: "Start, UTC" })).toBeVisible();
    expect(screen.getAllByRole("cell", { name: "09:00:00" }).length).toBeGreaterThan(0);
  });

  it("is left out while no start is known", () => {
    const { container } = render(<TimelineView outline={outline} plan={planOf(outline)} state={null} />);
    expect(container).not.toHaveTextContent("UTC");
    expect(container.querySelector(".timeline-utc")).toBeNull();
  });
});
