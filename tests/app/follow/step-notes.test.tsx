import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { expect, it, vi } from "vitest";
import { strandsOf } from "../../../src/app/braid/index.ts";
import { AlertsPanel } from "../../../src/app/follow/alerts-panel.tsx";
import type { StepRow } from "../../../src/app/follow/follow-rows.ts";
import { followRows, keepUnchanged } from "../../../src/app/follow/follow-rows.ts";
import { StepPanel } from "../../../src/app/follow/step-panel.tsx";
import { FollowListRow } from "../../../src/app/follow/step-row.tsx";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

const FILE = {
  ...fileWith([step("a", "ev1", 50, { do: "Turn it, or go to Bolt stuck" }), step("b", "ev1", 5)], {
    contingencies: [
      {
        id: "stuck",
        title: "Bolt stuck",
        when: "A bolt does not turn",
        tasks: [task("free", [step("bar", "ev1", 4)])],
      },
    ],
  }),
  format: "tetherline.procedure/2" as const,
};
const noted = (...texts: readonly string[]) =>
  texts.reduce((log, text) => log.enter("note.made", { text, step: "b" }, 2), LogWriter.started(FILE));
const stateOf = (log: LogWriter) => walkStateAt(log.ledger, minute(3));
const rowsOf = (log: LogWriter) => followRows(stateOf(log));

function drawRow(log: LogWriter, key: string, onPick: (step: string) => void = () => {}) {
  const { outline } = log.ledger.inForce;
  const row = rowsOf(log).find((one): one is StepRow => one.key === key);
  if (!row) throw new Error("no row");
  return render(
    <ul>
      <FollowListRow
        row={row}
        outline={outline}
        strands={strandsOf(outline.crew)}
        actions={null}
        live
        onPick={onPick}
      />
    </ul>,
  );
}

it("a row says by mark and word that notes were made at its step, and how many, and leads to them", async () => {
  const onPick = vi.fn();
  const { unmount } = drawRow(noted("wet", "dry"), "b", onPick);
  await userEvent.click(screen.getByText("2 notes"));
  expect(onPick).toHaveBeenCalledExactlyOnceWith("b");
  unmount();
  drawRow(LogWriter.started(FILE), "b");
  expect(screen.queryByText(/note/)).toBeNull();
});

it("an open step has a button to its notes", async () => {
  const onPick = vi.fn();
  const log = LogWriter.started(FILE).enter("note.made", { text: "wet", step: "a" }, 2);
  drawRow(log, "a", onPick);
  await userEvent.click(screen.getByRole("button", { name: "Read the notes at step 1.1" }));
  expect(onPick).toHaveBeenCalledExactlyOnceWith("a");
  expect(screen.getByText("Contingency Bolt stuck, when: A bolt does not turn")).toBeVisible();
});

it("a row is drawn anew when a note is made at its step, and when it is struck", () => {
  const none = rowsOf(LogWriter.started(FILE));
  const one = keepUnchanged(none, rowsOf(noted("wet")));
  expect(one.map((row) => none.includes(row))).toEqual([true, true, false]);
  expect((rowsOf(noted("wet").strike(0, 3))[2] as StepRow).notes).toBe(0);
});

it("the panel of a step has its notes, the newest first, and the contingencies that it names", async () => {
  const state = stateOf(noted("wet", "dry").enter("note.made", { text: "elsewhere", step: "a" }, 2));
  const onContingency = vi.fn();
  const panelOf = (id: string) => {
    const entry = state.ledger.inForce.outline.step(id);
    if (!entry) throw new Error("no step");
    return (
      <StepPanel
        entry={entry}
        state={state}
        actions={null}
        maySettle={false}
        onContingency={onContingency}
        onAmend={null}
        onClose={() => {}}
      />
    );
  };
  const { rerender } = render(panelOf("b"));
  const notes = screen.getByRole("region", { name: "Notes" });
  expect(notes.textContent?.replaceAll(/[⁨⁩]/g, "")).toBe("Notes0:02:00 IV: dry0:02:00 IV: wet");
  rerender(panelOf("a"));
  await userEvent.click(screen.getByRole("button", { name: "Bolt stuck" }));
  expect(onContingency).toHaveBeenCalledExactlyOnceWith("stuck");
});

it("[OFF4] the list of alerts has every contingency with what it is for, since no alert chooses one", async () => {
  const onContingency = vi.fn();
  render(
    <AlertsPanel
      alerts={[]}
      state={stateOf(LogWriter.started(FILE))}
      actions={null}
      onPick={() => {}}
      onContingency={onContingency}
      onClose={() => {}}
    />,
  );
  expect(screen.getByText("When: A bolt does not turn")).toBeVisible();
  await userEvent.click(screen.getByRole("button", { name: "Bolt stuck" }));
  expect(onContingency).toHaveBeenCalledExactlyOnceWith("stuck");
});
