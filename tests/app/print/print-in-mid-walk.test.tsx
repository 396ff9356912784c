import { cleanup, render, screen } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { PrintSheet } from "../../../src/app/print/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const FILE = fileWith(
  [
    step("vent", "ev1", 10, {
      records: [{ id: "p", label: "Pressure", unit: "kPa" }],
      confirm: { by: "iv", text: "Marks meet" },
      check: ["left clamp", "right clamp"],
    }),
    step("look", "ev2", 5, {
      decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
    }),
    step("force", "ev2", 5, { when: { bolt: "stuck" } }),
    step("turn", ["ev1", "ev2"], 20),
    step("pack", "ev1", 5),
  ],
  { format: "tetherline.procedure/2" },
);

function show(log: LogWriter, at: number) {
  const state = walkStateAt(log.ledger, minute(at));
  return render(
    <PrintSheet
      outline={log.ledger.inForce.outline}
      plan={state.plan}
      printedAt={minute(at)}
      walk={{ state, device: "iv-tablet" }}
    />,
  );
}

const rowOf = (action: string) => screen.getByText(action).closest("tr") as HTMLTableRowElement;
const ticked = (action: string) => rowOf(action).querySelectorAll("[data-ticked]").length;

describe("the paper procedure in mid-walk", () => {
  const half = () =>
    LogWriter.started(FILE)
      .enter("record.taken", { step: "vent", record: "p", value: 3.5 }, 8)
      .enter("check.counted", { step: "vent", check: 0 }, 8)
      .done(["vent", 9])
      .enter("decision.taken", { decision: "bolt", outcome: "free" }, 9)
      .done(["look", 9.5])
      .enter("step.skipped", { step: "turn", reason: "no time" }, 10);

  it("[REV5] ticks what is done with its time, and fills in values, counts and outcomes", () => {
    show(half(), 11);
    expect(rowOf("Do vent")).toHaveTextContent("0:09:00");
    expect(rowOf("Do vent")).toHaveTextContent("Pressure 3.5 kPa");
    // The step itself and one of its two clamps; nobody has confirmed it.
    expect(ticked("Do vent")).toBe(2);
    expect(ticked("Do look")).toBe(2);
    expect(ticked("Do pack")).toBe(0);
  });

  it("[AMD2] prints the times of the plan in force once it was amended", () => {
    const log = half();
    const changes = [
      { add: step("wipe", "ev1", 3), behind: "pack" },
      { change: "pack", set: { time: "PT9M" } },
    ];
    show(log, 10);
    expect(rowOf("Do pack")).toHaveTextContent("0:30–0:35");
    cleanup();
    log.enter("plan.amended", { changes, reason: "", needs: 2 }, 12);
    show(log, 12);
    expect(rowOf("Do pack")).toHaveTextContent("0:10–0:19");
    expect(rowOf("Do wipe")).toHaveTextContent("0:19–0:22");
    expect(screen.getByText("PET 0:22")).toBeVisible();
  });

  it("[REV5] fills in the readings that count: the last one up to PET 0, and the latest four after it", () => {
    const log = LogWriter.opened({
      ...FILE,
      supplies: [
        { crew: "ev1", id: "oxygen", label: "Oxygen", unit: "kPa", full: 6000, redline: 1000, perHour: 500 },
        { crew: "ev2", id: "oxygen", label: "Oxygen", unit: "kPa", full: 6000, redline: 1000, perHour: 500 },
      ],
    });
    const read = (value: number, at: number) =>
      log.enter("supply.read", { crew: "ev1", supply: "oxygen", value }, at);
    read(5950, -3);
    log.enter("clock.started", {}, 0);
    for (const [value, at] of [
      [5900, 10],
      [5800, 20],
      [99000, 25],
      [5700, 30],
      [5600, 40],
      [5500, 61],
    ] as const)
      read(value, at);
    show(log, 70);
    const blanks = screen
      .getAllByRole("row")
      .filter((row) => row.textContent?.includes("Oxygen"))
      .map((row) => [...row.querySelectorAll(".print-blank")].map((blank) => blank.textContent));
    expect(blanks).toEqual([
      ["5950", "0:20 5800", "0:30 5700", "0:40 5600", "1:01 5500"],
      ["", "", "", "", ""],
    ]);
  });

  it("[REV5] names what was skipped, what is not performed, and what is outstanding", () => {
    show(half(), 11);
    expect(rowOf("Do turn")).toHaveTextContent("Skipped at 0:10:00: no time");
    expect(ticked("Do turn")).toBe(0);
    expect(rowOf("Do force")).toHaveTextContent("Not performed, as the decisions came out");
    expect(rowOf("Do vent")).toHaveTextContent("Outstanding: IV has not confirmed it");
    expect(rowOf("Do vent")).toHaveTextContent("Outstanding: Not counted off: right clamp");
  });

  it("[REV5] says from which walk, when and by whose log it was filled in", () => {
    show(half(), 11);
    expect(screen.getByText(/^Filled in from walk walk-1 as it stood at PET 0:11:00/)).toHaveTextContent(
      "2031-04-02 09:11:00 UTC, by the log of iv-tablet",
    );
  });

  it("[REV5] says that the clock had not been started", () => {
    show(LogWriter.opened(FILE), 0);
    expect(screen.getByText(/whose clock had not been started/)).toBeVisible();
    expect(ticked("Do vent")).toBe(0);
  });
});
