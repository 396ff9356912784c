import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { expect, it, vi } from "vitest";
import { CheckList } from "../../../src/app/follow/check-list.tsx";
import type { FollowActions } from "../../../src/app/follow/follow-actions.ts";
import { followRows } from "../../../src/app/follow/follow-rows.ts";
import { StatesSection } from "../../../src/app/follow/states-section.tsx";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { progressOf, walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const file: ProcedureFile = {
  ...fileWith([
    step("open", "ev1", 2, { sets: { hatch: "open" } }),
    step("go", "ev1", 2, { needs: { hatch: "open" } }),
    step("clamps", "ev2", 5, { check: ["Clamp 1", "Clamp 2"] }),
  ]),
  format: "tetherline.procedure/2",
  states: [{ id: "hatch", label: "Outer hatch", values: ["closed", "open"], start: "closed" }],
};

const stateAt = (log: LogWriter, at: number) => walkStateAt(log.ledger, minute(at));
const unmetOf = (log: LogWriter, at: number, id: string) =>
  followRows(stateAt(log, at)).flatMap((row) => (row.kind === "step" && row.key === id ? row.unmet : []));

it("[PRO13] a step says which state it needs and has not got, until a step or an entry sets it", () => {
  const log = LogWriter.started(file);
  expect(unmetOf(log, 1, "go")).toEqual([{ state: "hatch", value: "open", is: "closed" }]);
  expect(unmetOf(log.done(["open", 2]), 2, "go")).toEqual([]);
  log.enter("state.set", { state: "hatch", value: "closed", reason: "blew shut" }, 3);
  expect(unmetOf(log, 3, "go")).toHaveLength(1);
});

it("[OFF2] a list is counted off one by one, and what is counted stays", async () => {
  const log = LogWriter.started(file).enter("check.counted", { step: "clamps", check: 1 }, 2);
  const countOff = vi.fn(async () => {});
  const state = stateAt(log, 3);
  const entry = state.ledger.inForce.outline.step("clamps");
  if (!entry) throw new Error("no step");
  render(
    <CheckList
      step={entry.step}
      progress={progressOf(state.ledger, entry.step.id)}
      actions={{ countOff } as unknown as FollowActions}
    />,
  );
  expect(screen.getByText("Count off: 1 of 2")).toBeVisible();
  expect(screen.getByRole("button", { name: "✓ Clamp 2" })).toBeDisabled();
  await userEvent.click(screen.getByRole("button", { name: "Clamp 1" }));
  expect(countOff).toHaveBeenCalledExactlyOnceWith("clamps", 0);
});

it("[PRO13] a state that was found otherwise is entered with its reason", async () => {
  const setState = vi.fn(async () => {});
  render(
    <StatesSection
      state={stateAt(LogWriter.started(file), 1)}
      actions={{ setState } as unknown as FollowActions}
    />,
  );
  expect(screen.getByText("closed")).toBeVisible();
  await userEvent.selectOptions(screen.getByLabelText("State"), "Outer hatch");
  await userEvent.selectOptions(screen.getByLabelText("Was found"), "open");
  const enter = screen.getByRole("button", { name: "Enter it" });
  expect(enter).toBeDisabled();
  await userEvent.type(screen.getByLabelText("Why"), "seen by EV2");
  await userEvent.click(enter);
  expect(setState).toHaveBeenCalledExactlyOnceWith("hatch", "open", "seen by EV2");
});
