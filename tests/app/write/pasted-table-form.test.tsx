import { fireEvent, render, screen, within } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { PastedTableForm } from "../../../src/app/write/pasted-table-form.tsx";
import type { Proposal } from "../../../src/core/write/index.ts";
import { headingNames, pastedTable } from "../../../src/core/write/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

const NAMES = headingNames(inWords);

const file = fileWith([task("first", [step("open", "ev1", 2)])]);

function shown(text: string) {
  const onPut = vi.fn<(proposal: Proposal) => void>();
  const table = pastedTable(text, NAMES);
  if (!table) throw new Error("no table");
  render(<PastedTableForm file={file} row="open" table={table} onPut={onPut} onEnd={() => {}} />);
  return onPut;
}

describe("the page of a pasted table", () => {
  it("[WRT12] shows how columns are taken, and what could not be", () => {
    const onPut = shown("Who\tAction\tHow long\nEV1\tTurn\t3\nPilot\tSteer\t4");
    expect(screen.getByLabelText("Who")).toHaveProperty("value", "who");
    expect(screen.getByLabelText("How long")).toHaveProperty("value", "none");
    expect(screen.getByRole("status").textContent).toBe("1 of 2 rows become steps.");
    const lost = screen.getByRole("list", { name: "What could not be taken" });
    expect(within(lost).getByText(/“Pilot” is not in the crew/)).toBeTruthy();
    fireEvent.change(screen.getByLabelText("How long"), { target: { value: "time" } });
    fireEvent.change(screen.getByLabelText("A bare number in the times is in"), {
      target: { value: "seconds" },
    });
    fireEvent.click(screen.getByRole("button", { name: "Put 1 step in" }));
    expect(onPut.mock.calls[0]?.[0].changes).toMatchObject([
      { add: { title: "Pasted steps", steps: [{ do: "Turn", by: ["ev1"], time: "PT3S" }] } },
    ]);
  });

  it("[WRT12] gives a use to one column only, and puts nothing in without a step", () => {
    shown("EV1\tTurn\nEV2\tHold");
    fireEvent.change(screen.getByLabelText("Column 1"), { target: { value: "do" } });
    expect(screen.getByLabelText("Column 2")).toHaveProperty("value", "none");
    expect(screen.getByRole("alert").textContent).toBe("No row of the table can be taken as a step.");
    expect(screen.getByRole("button", { name: "Put 0 steps in" })).toHaveProperty("disabled", true);
  });
});
