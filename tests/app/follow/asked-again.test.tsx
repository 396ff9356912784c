import { render, screen } from "@testing-library/react";
import { expect, it } from "vitest";
import { strandsOf } from "../../../src/app/braid/index.ts";
import { CrewCards } from "../../../src/app/follow/crew-cards.tsx";
import type { StepRow } from "../../../src/app/follow/follow-rows.ts";
import { followRows, keepUnchanged } from "../../../src/app/follow/follow-rows.ts";
import { FollowListRow } from "../../../src/app/follow/step-row.tsx";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const FILE = fileWith([
  step("look", "ev1", 5, {
    decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "badly-stuck"], expect: "free" },
  }),
  step("force", "ev2", 20, { when: { bolt: "badly-stuck" } }),
  step("ease", "ev2", 20, { when: { bolt: "badly-stuck" } }),
]);

const decided = () =>
  LogWriter.started(FILE)
    .enter("decision.taken", { decision: "bolt", outcome: "badly-stuck" }, 5)
    .done(["look", 5]);
const reopened = () => decided().enter("step.reopened", { step: "look", reason: "looked again" }, 8);
const stateOf = (log: LogWriter, at: number) => walkStateAt(log.ledger, minute(at));
const rowsOf = (log: LogWriter, at: number) =>
  followRows(stateOf(log, at)).filter((row): row is StepRow => row.kind === "step");

function drawRow(log: LogWriter, at: number, key: string) {
  const { outline } = log.ledger.inForce;
  const row = rowsOf(log, at).find((one) => one.key === key);
  if (!row) throw new Error("no row");
  return render(
    <ul>
      <FollowListRow
        row={row}
        outline={outline}
        strands={strandsOf(outline.crew)}
        actions={null}
        live
        onPick={() => {}}
      />
    </ul>,
  );
}

it("[WLK5] a step that decides again says which branch is in force, and each step of that branch that it waits", () => {
  const { unmount } = drawRow(reopened(), 9, "look");
  expect(screen.getByText(/badly stuck.* stays in force until this is decided anew/)).toBeVisible();
  unmount();
  for (const key of ["force", "ease"]) {
    const { unmount: away } = drawRow(reopened(), 9, key);
    expect(
      screen.getByText(/Step .*1\.1.* is decided again: this is on the branch .*badly stuck/),
    ).toBeVisible();
    away();
  }
});

it("[WLK5] the rows are drawn anew when a decision is opened again, and when it is taken", () => {
  const before = rowsOf(decided(), 9);
  const asked = rowsOf(reopened(), 9);
  expect(keepUnchanged(before, asked).map((row) => before.includes(row as StepRow))).toEqual([
    false,
    false,
    false,
  ]);
  expect(rowsOf(reopened().done(["look", 10]), 11).map(({ askedAgain }) => askedAgain)).toEqual([
    null,
    null,
    null,
  ]);
});

it("[WLK5] the card of whoever comes to its branch says what is waited for", () => {
  const state = stateOf(reopened(), 9);
  render(
    <CrewCards
      state={state}
      strands={strandsOf(state.ledger.inForce.outline.crew)}
      alerts={[]}
      onShow={() => {}}
    />,
  );
  expect(screen.getByRole("button", { name: /^EV2/ })).toHaveTextContent("waits: decided again");
  expect(screen.getByRole("button", { name: /^EV1/ })).not.toHaveTextContent("decided again");
});
