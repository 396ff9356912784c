import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { expect, it, vi } from "vitest";
import type { FollowActions } from "../../../src/app/follow/follow-actions.ts";
import { OutstandingPanel } from "../../../src/app/follow/outstanding-panel.tsx";
import { StepPanel } from "../../../src/app/follow/step-panel.tsx";
import { outstandingOf, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const file = {
  ...fileWith([
    step("check", "ev1", 5, {
      records: [{ id: "pressure", label: "Pressure", unit: "kPa", min: 29, max: 31 }],
      confirm: { by: "iv", text: "Gauge reads the same" },
    }),
    step("end", "ev1", 60),
  ]),
  watches: [{ id: "gloves", by: ["ev1"], do: "Check gloves", every: "PT10M" }],
};

function draw(log: LogWriter, at: number, mayMark = true) {
  const state = walkStateAt(log.ledger, minute(at));
  const keepWatch = vi.fn(async () => {});
  const onPick = vi.fn();
  render(
    <OutstandingPanel
      state={state}
      outstanding={outstandingOf(state)}
      actions={mayMark ? ({ keepWatch } as unknown as FollowActions) : null}
      onPick={onPick}
      onClose={vi.fn()}
    />,
  );
  return { keepWatch, onPick, items: screen.queryAllByRole("listitem") };
}

it("[OFF2] lists what is owed, the oldest first, each with the way to make it good", async () => {
  const { items, onPick, keepWatch } = draw(LogWriter.started(file).done(["check", 4]), 12);
  expect(items.map((item) => item.textContent)).toEqual([
    expect.stringMatching(/^Pressure was not taken.*Step 1\.1: Do check\. Since PET 0:04:00/),
    expect.stringMatching(/^IV has not confirmed it.*Since PET 0:04:00/),
    expect.stringMatching(/^Not kept since 0:10:00: Check gloves/),
  ]);
  await userEvent.click(within(items[0] as HTMLElement).getByRole("button", { name: "Open the step" }));
  expect(onPick).toHaveBeenCalledExactlyOnceWith("check");
  await userEvent.click(within(items[2] as HTMLElement).getByRole("button", { name: "Note it done" }));
  expect(keepWatch).toHaveBeenCalledExactlyOnceWith("gloves", 600_000);
});

it("[OFF2] a watcher sees it and cannot note a watch; with nothing owed it says so", () => {
  draw(LogWriter.started(file).done(["check", 4]), 12, false);
  expect(screen.queryByRole("button", { name: "Note it done" })).toBeNull();
  draw(LogWriter.started(file), 2);
  expect(screen.getByText("Nothing is outstanding.")).toBeVisible();
});

it("[OFF2] the panel of a done step takes the value and the confirmation that are missing", async () => {
  const state = walkStateAt(LogWriter.started(file).done(["check", 4]).ledger, minute(5));
  const record = vi.fn(async () => {});
  const confirm = vi.fn(async () => {});
  const entry = state.ledger.inForce.outline.step("check");
  if (!entry) throw new Error("no step");
  const actions = { record, confirm } as unknown as FollowActions;
  render(
    <StepPanel
      entry={entry}
      state={state}
      actions={actions}
      maySettle={false}
      onContingency={vi.fn()}
      onAmend={null}
      onClose={vi.fn()}
    />,
  );
  const owed = within(screen.getByRole("region", { name: "Outstanding" }));
  await userEvent.type(owed.getByRole("textbox", { name: /Pressure/ }), "30{Enter}");
  expect(record).toHaveBeenCalledExactlyOnceWith("check", "pressure", 30);
  await userEvent.click(owed.getByRole("button", { name: "Confirmed" }));
  expect(confirm).toHaveBeenCalledExactlyOnceWith("check");
});
