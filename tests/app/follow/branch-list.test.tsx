import { render, screen, within } from "@testing-library/react";
import { expect, it } from "vitest";
import { OpenBranches } from "../../../src/app/follow/branch-list.tsx";
import { StepPanel } from "../../../src/app/follow/step-panel.tsx";
import { WalkStateContext } from "../../../src/app/follow/use-walk-state.ts";
import type { DecisionId } from "../../../src/core/units/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const FILE = fileWith(
  [
    step("look", "ev1", 5, {
      decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "badly-stuck"], expect: "free" },
    }),
    step("force", "ev1", 20, { at: "truss", when: { bolt: "badly-stuck" } }),
    step("pack", ["ev1", "ev2"], 30),
  ],
  {
    limits: { elapsed: "PT50M" },
    places: [{ id: "truss", label: "the truss", refuge: true }],
  },
);

const textsOf = () =>
  within(screen.getByRole("region", { name: /What each outcome would lead to/ }))
    .getAllByRole("listitem")
    .map((item) => item.textContent?.replaceAll(/[⁨⁩]/g, ""));

function draw(log: LogWriter, at: number) {
  const state = walkStateAt(log.ledger, minute(at));
  return render(
    <WalkStateContext value={state}>
      <OpenBranches decision={"bolt" as DecisionId} />
    </WalkStateContext>,
  );
}

it("[WLK8] the step that decides says what each outcome would lead to", () => {
  draw(LogWriter.started(FILE), 1);
  expect(textsOf()).toEqual([
    "freeexpected No step of its own. Joint step 1.3 can begin in 4 min. Finish 0:35, 15 min margin.",
    "badly stuck One step of its own: the truss. Joint step 1.3 can begin in 24 min. Finish 0:55, 5 min over.",
  ]);
});

it("[WLK8] says which outcome is in force, and gives no times before the clock runs", () => {
  const { unmount } = draw(
    LogWriter.started(FILE)
      .enter("decision.taken", { decision: "bolt", outcome: "free" }, 5)
      .done(["look", 5]),
    6,
  );
  expect(textsOf()[0]).toContain("in force");
  unmount();
  draw(LogWriter.opened(FILE), 0);
  expect(textsOf()[1]?.trim()).toBe("badly stuck One step of its own: the truss.");
  expect(screen.getByText("Times are told once the clock runs.")).toBeVisible();
});

it("[WLK8] is reached from the step's panel before its turn comes", () => {
  const state = walkStateAt(LogWriter.started(FILE).ledger, minute(1));
  const entry = state.ledger.inForce.outline.step("look");
  if (!entry) throw new Error("no step");
  render(
    <StepPanel
      entry={entry}
      state={state}
      actions={null}
      maySettle={false}
      onContingency={() => {}}
      onAmend={null}
      onClose={() => {}}
    />,
  );
  expect(textsOf()).toHaveLength(2);
});
