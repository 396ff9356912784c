import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { PrintSheet } from "../../../src/app/print/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import { finding } from "../../../src/core/procedure/index.ts";
import { message } from "../../../src/words/index.ts";
import { ZERO } from "../../core/log-writer.ts";
import { outlineFrom, step, task } from "../../core/procedure-builder.ts";

const outline = outlineFrom(
  [
    task("open", [
      step("vent", "iv", 2, { records: [{ id: "p", label: "Pressure", unit: "kPa", min: 1, max: 4 }] }),
      step("turn", ["ev1", "ev2"], 5, {
        after: [{ step: "vent", lag: "PT10M" }],
        within: ["day"],
        alerts: [
          { level: "note", text: "It turns left." },
          { level: "warning", text: "Springs push outward." },
          { level: "caution", text: "Stop at 12 N·m." },
        ],
        confirm: { by: "iv", text: "Marks meet" },
        moves: [{ item: "key", to: { crew: "ev1" } }],
        decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
      }),
      step("force", "ev1", 3, { when: { bolt: "stuck" } }),
      step("seat", "ev2", 1, { after: [{ step: "vent", within: "PT20M" }] }),
    ]),
    task("extra", [step("polish", "ev2", 5)], { priority: "get-ahead" }),
    task("home", [step("in", "ev1", 5)], { closeout: true }),
  ],
  {
    format: "tetherline.procedure/2",
    revision: "C",
    summary: "Opens the cover.",
    setting: "pool",
    limits: { elapsed: "PT1H30M" },
    places: [{ id: "lock", label: "Airlock", refuge: true }],
    items: [
      { id: "bag", label: "Tool bag", start: { crew: "ev2" }, end: { place: "lock" } },
      { id: "key", label: "Valve key", start: { item: "bag" }, end: { item: "bag" } },
    ],
    windows: [{ id: "day", label: "Daylight", kind: "daylight", spans: [{ from: "PT0S", to: "PT1H" }] }],
    supplies: [{ crew: "ev1", id: "gas", label: "Gas", unit: "kPa", full: 6200, redline: 620, perHour: 700 }],
    watches: [{ id: "gloves", by: ["ev1"], do: "Check gloves", from: "vent", until: "in", every: "PT5M" }],
    contingencies: [{ id: "out", title: "Come in now", tasks: [task("rush", [step("rush-in", "ev1", 2)])] }],
  },
);
const plan = planOf(outline);

function sheet(findings = plan.findings) {
  return render(<PrintSheet outline={outline} plan={plan} findings={findings} printedAt={ZERO} />);
}
const rowOf = (action: string) => screen.getByText(action).closest("tr") as HTMLTableRowElement;

describe("the printed procedure", () => {
  it("says on its head what it is and when it was printed", () => {
    sheet();
    expect(screen.getByRole("heading", { level: 1, name: "Trial" })).toBeVisible();
    expect(
      screen.getByText((_, element) =>
        element?.className === "print-identity"
          ? element.textContent === "trial · revision C · pool rehearsal · printed 2031-04-02 09:00 UTC"
          : false,
      ),
    ).toBeVisible();
  });

  it("puts alerts before the action, worst first, each in its word", () => {
    sheet();
    const words = rowOf("Do turn").textContent ?? "";
    const order = ["WARNING Springs", "CAUTION Stop", "NOTE It turns", "Do turn"].map((part) =>
      words.indexOf(part),
    );
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order).not.toContain(-1);
  });

  it("has number, performers, planned times, conditions and what it moves", () => {
    sheet();
    const row = rowOf("Do turn");
    expect(within(row).getByRole("rowheader")).toHaveTextContent("1.2");
    expect(row).toHaveTextContent("EV1EV2together");
    expect(row).toHaveTextContent("not before 10 min after 1.1 (IV); only in Daylight");
    expect(row).toHaveTextContent("Valve key: then with EV1");
    expect(row).toHaveTextContent("0:12–0:17");
    expect(row).toHaveTextContent("IV confirms: Marks meet");
  });

  it("says by when a step starts that may follow another only so late", () => {
    sheet();
    expect(rowOf("Do seat")).toHaveTextContent("at most 20 min after 1.1 (IV)");
  });

  it("leaves a box to tick and a blank for the time at every step, contingencies too", () => {
    const { container } = sheet();
    const steps = container.querySelectorAll(".print-step");
    expect(steps).toHaveLength(7);
    for (const row of steps) {
      expect(row.querySelectorAll(".print-box-done")).toHaveLength(1);
      expect(row.querySelectorAll("td:last-child .print-blank")).toHaveLength(1);
    }
  });

  it("rules a blank for a record, with its limits and unit", () => {
    sheet();
    const line = screen.getByText(/^Pressure/);
    expect(line.querySelector(".print-blank")).not.toBeNull();
    expect(line).toHaveTextContent("1 to 4 kPa");
  });

  it("offers the outcomes of a decision and says on a branch when it is done", () => {
    sheet();
    expect(rowOf("Do turn")).toHaveTextContent("Does it turn? free (expected) stuck");
    const branch = rowOf("Do force");
    expect(branch).toHaveTextContent("If bolt is stuck:");
    expect(branch.querySelector(".print-planned")).toHaveTextContent("–");
  });

  it("marks get-aheads and closeouts", () => {
    sheet();
    expect(screen.getByText("get-ahead: only if time allows")).toBeVisible();
    expect(screen.getByText(/closeout: must be done on the way home/)).toBeVisible();
  });

  it("lists items with bags nested, before and after", () => {
    sheet();
    const before = screen.getByRole("heading", { name: "Before the walk" }).parentElement as HTMLElement;
    const bag = within(before).getByText("Tool bag").closest("li") as HTMLElement;
    expect(within(bag).getByText("Valve key")).toBeVisible();
    expect(before).toHaveTextContent("with EV2");
    const after = screen.getByRole("heading", { name: "After the walk" }).parentElement as HTMLElement;
    expect(after).toHaveTextContent("at Airlock");
  });

  it("gives redlines, and the times a watch falls due by the plan", () => {
    sheet();
    expect(screen.getByRole("row", { name: /Gas/ })).toHaveTextContent("620 kPa");
    // From the finish of 1.1 at 0:02, every five minutes until 3.1 starts at 0:17.
    expect(screen.getByText(/Check gloves/)).toHaveTextContent("0:07 0:12");
    expect(screen.getByText(/Check gloves/)).not.toHaveTextContent("0:17");
  });

  it("lists findings, and none of them is a heading without words", () => {
    const { unmount } = sheet([
      finding("caution", "time/tight", "", message("order/more-races", { most: 9 })),
    ]);
    expect(screen.getByText("More than 9 pairs of steps", { exact: false })).toBeVisible();
    unmount();
    sheet([]);
    expect(screen.queryByText("Findings when printed")).toBeNull();
  });

  it("says who decides, and prints when asked", async () => {
    const print = vi.spyOn(window, "print").mockImplementation(() => {});
    sheet();
    expect(screen.getByText(/Flight rules, local codes/)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Print" }));
    expect(print).toHaveBeenCalledOnce();
    print.mockRestore();
  });
});

describe("a printed step of format 2", () => {
  it("[PRO13] has what it needs and sets, a box for each thing to count off, and where to read on", () => {
    const counted = outlineFrom(
      [
        step("count", "ev1", 2, {
          needs: { power: "off", rest: "ev1" },
          sets: { power: "on" },
          check: ["Clamp 1", "Clamp 2"],
          refs: ["Tool sheet 4"],
        }),
      ],
      {
        format: "tetherline.procedure/2",
        states: [
          { id: "power", label: "Power", values: ["on", "off"], start: "off" },
          { id: "rest", values: "crew", start: "ev1" },
        ],
      },
    );
    render(<PrintSheet outline={counted} plan={planOf(counted)} findings={[]} printedAt={ZERO} />);
    const row = rowOf("Do count");
    expect(within(row).getByText(/only while Power: off; only while rest: EV1/)).toBeVisible();
    expect(row).toHaveTextContent(/then Power: on/);
    expect(row).toHaveTextContent(/Clamp 1.*Clamp 2/);
    expect(row).toHaveTextContent("See Tool sheet 4");
  });
});

it("says which start the times were planned from", () => {
  const known = planOf(outline, { start: ZERO });
  render(<PrintSheet outline={outline} plan={known} printedAt={ZERO} />);
  expect(screen.getByText(/planned from 2031-04-02 09:00 UTC/)).toBeVisible();
});
