import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { expect, it, vi } from "vitest";
import type { FollowActions } from "../../../src/app/follow/follow-actions.ts";
import { StepPanel } from "../../../src/app/follow/step-panel.tsx";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

const file = fileWith([
  task("all", [
    step("a", "ev1", 5, { alerts: [{ level: "warning", text: "Mind the edge." }] }),
    step("b", "ev1", 5, { after: [{ step: "a", lag: "PT10M" }] }),
    step("try", "ev1", 1, {
      decide: { id: "bolt", ask: "Turns?", outcomes: ["turns", "stuck"], expect: "turns" },
    }),
  ]),
  task("spare", [step("photos", "ev1", 5)], { priority: "get-ahead" }),
]);

function draw(log: LogWriter, id: string, at: number, maySettle = false) {
  const state = walkStateAt(log.ledger, minute(at));
  const entry = state.ledger.inForce.outline.steps.find(({ step: one }) => one.id === id);
  if (!entry) throw new Error(`no step ${id}`);
  const names = ["skip", "done", "started", "reopen", "note", "decide", "settle"] as const;
  const actions = Object.fromEntries(names.map((name) => [name, vi.fn(async () => {})])) as Record<
    (typeof names)[number],
    ReturnType<typeof vi.fn>
  >;
  const onClose = vi.fn();
  render(
    <StepPanel
      entry={entry}
      state={state}
      actions={actions as unknown as FollowActions}
      maySettle={maySettle}
      onContingency={vi.fn()}
      onAmend={null}
      onClose={onClose}
    />,
  );
  return { actions, onClose };
}

const button = (name: string) => screen.getByRole("button", { name });

it("has the alerts before the action", () => {
  draw(LogWriter.started(file), "a", 1);
  const alert = screen.getByText("Mind the edge.");
  expect(alert.compareDocumentPosition(screen.getByText("Do a"))).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
});

it("skips a step only with a reason, and closes once that is kept", async () => {
  const { actions, onClose } = draw(LogWriter.started(file), "a", 1);
  expect(button("Skip this step")).toBeDisabled();
  await userEvent.type(screen.getByLabelText("Reason or note"), "  no need  ");
  await userEvent.click(button("Skip this step"));
  expect(actions.skip).toHaveBeenCalledExactlyOnceWith("a", "no need");
  expect(onClose).toHaveBeenCalledOnce();
});

it("skips a get-ahead without one", () => {
  draw(LogWriter.started(file), "photos", 1);
  expect(button("Skip this step")).toBeEnabled();
});

it("[WLK4] marks a step that cannot start yet done out of order only", async () => {
  const { actions } = draw(LogWriter.started(file), "b", 1);
  expect(screen.queryByRole("button", { name: "It starts only now" })).toBeNull();
  expect(screen.getByText("1.1 and 10 min")).toBeVisible();
  expect(button("Done out of order")).toBeDisabled();
  await userEvent.type(screen.getByLabelText("Reason or note"), "bag was open");
  await userEvent.click(button("Done out of order"));
  expect(actions.done).toHaveBeenCalledExactlyOnceWith("b", {
    outOfOrder: true,
    reason: "bag was open",
  });
});

it("says that a step in work starts only now", async () => {
  const { actions } = draw(LogWriter.started(file), "a", 1);
  await userEvent.click(button("It starts only now"));
  expect(actions.started).toHaveBeenCalledExactlyOnceWith("a");
});

it("opens a done step again with a reason", async () => {
  const { actions } = draw(LogWriter.started(file).done(["a", 4]), "a", 5);
  expect(button("Open it again")).toBeDisabled();
  await userEvent.type(screen.getByLabelText("Reason or note"), "wrong rail");
  await userEvent.click(button("Open it again"));
  expect(actions.reopen).toHaveBeenCalledExactlyOnceWith("a", "wrong rail");
});

it("[WLK5] offers the other outcomes of a decision that was taken", async () => {
  const log = LogWriter.started(file)
    .done(["a", 4], ["b", 20])
    .enter("decision.taken", { decision: "bolt", outcome: "turns" }, 21)
    .done(["try", 21]);
  const { actions } = draw(log, "try", 22);
  expect(screen.queryByRole("button", { name: "turns" })).toBeNull();
  await userEvent.click(button("stuck"));
  expect(actions.decide).toHaveBeenCalledExactlyOnceWith("bolt", "stuck");
});

it("offers nothing to enter before the clock is started and once the walk is closed", () => {
  draw(LogWriter.opened(file), "a", 0);
  expect(screen.queryByLabelText("Reason or note")).toBeNull();
  expect(screen.getAllByRole("button").map(({ textContent }) => textContent)).toEqual(["Back"]);
});

it("takes the focus, gives it back, and goes away by Escape", async () => {
  const { onClose } = draw(LogWriter.started(file), "a", 1);
  expect(screen.getByRole("dialog")).toHaveFocus();
  await userEvent.keyboard("{Escape}");
  expect(onClose).toHaveBeenCalledOnce();
});

it("[WLK5] lets the lead say which of two contrary decisions holds, and nobody else change it then", async () => {
  const taken = (log: LogWriter, outcome: string, at: number, more: object, settles?: true) =>
    log.enter("decision.taken", { decision: "bolt", outcome, ...(settles ? { settles } : {}) }, at, more);
  const apart = () => {
    const log = LogWriter.started(file).done(["a", 5], ["b", 21]);
    taken(log, "stuck", 22, { source: "/devices/iv" });
    return taken(log, "turns", 23, { source: "/devices/ground" });
  };
  const { actions } = draw(apart(), "try", 24, true);
  expect(screen.getByText(/Two tablets decided this differently, and turns counts/)).toBeVisible();
  await userEvent.click(button("turns holds"));
  expect(actions.settle).toHaveBeenCalledExactlyOnceWith("bolt", "turns");
  cleanup();
  draw(apart(), "try", 24);
  expect(button("stuck")).toBeVisible();
  cleanup();
  const settled = taken(apart(), "turns", 25, { source: "/devices/lead" }, true);
  draw(settled, "try", 26);
  expect(screen.getByText(/The lead has said that turns holds/)).toBeVisible();
  expect(screen.queryByRole("button", { name: "stuck" })).toBeNull();
  cleanup();
  const lead = draw(settled, "try", 26, true);
  await userEvent.click(button("stuck holds"));
  expect(lead.actions.settle).toHaveBeenCalledExactlyOnceWith("bolt", "stuck");
});
