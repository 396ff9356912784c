import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { strandsOf } from "../../../src/app/braid/index.ts";
import { ContingenciesPanel } from "../../../src/app/follow/contingencies-panel.tsx";
import { FiguresPanel } from "../../../src/app/follow/figures-panel.tsx";
import type { FollowActions } from "../../../src/app/follow/follow-actions.ts";
import { HeldVeil } from "../../../src/app/follow/held-veil.tsx";
import type { Risk } from "../../../src/core/plan/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

const file = {
  ...fileWith([task("all", [step("a", "ev1", 50), step("b", "ev2", 20)])]),
  format: "tetherline.procedure/2" as const,
  limits: { elapsed: "PT1H" },
  contingencies: [
    {
      id: "stuck",
      title: "Bolt stuck",
      when: "A bolt does not turn",
      tasks: [
        task("free", [
          step("bar", "ev1", 4, { alerts: [{ level: "warning" as const, text: "Mind the bar." }] }),
          step("turn", "ev1", 3),
        ]),
      ],
    },
    { id: "long", title: "Everything anew", tasks: [task("anew", [step("again", "ev1", 15)])] },
  ],
};

const stateAt = (log: LogWriter, at: number) => walkStateAt(log.ledger, minute(at));

describe("contingencies beside the walk", () => {
  it("[OFF4] are listed, each with what it is for and what it would come to if brought in now", async () => {
    const state = stateAt(LogWriter.started(file), 1);
    render(
      <ContingenciesPanel
        state={state}
        strands={strandsOf(state.ledger.inForce.outline.crew)}
        onBring={null}
        onClose={vi.fn()}
      />,
    );
    expect(screen.getByText("When: A bolt does not turn")).toBeVisible();
    // The plan finishes at 50 min, 10 min before the limit.
    expect(
      screen.getByText(/behind step 1\.1: .* in 56 min, at 0:57.* Finish 0:57, 3 min margin/),
    ).toBeVisible();
    expect(screen.getByText(/in 1 h 04 min, at 1:05.* Finish 1:05, 5 min over/)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Bolt stuck" }));
    const alert = screen.getByText("Mind the bar.");
    const action = screen.getByText("Do bar");
    expect(alert.compareDocumentPosition(action)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
    await userEvent.click(screen.getByRole("button", { name: "Back" }));
    expect(screen.getByRole("button", { name: "Everything anew" })).toBeVisible();
  });

  it("[OFF4] one that is named opens at once, and before the clock runs nothing is told of times", () => {
    const state = stateAt(LogWriter.opened(file), 0);
    render(<ContingenciesPanel state={state} strands={[]} first="stuck" onBring={null} onClose={vi.fn()} />);
    expect(screen.getByText("Do bar")).toBeVisible();
    expect(screen.getByText("What it would come to is told while the clock runs.")).toBeVisible();
  });

  it("[OFF4] a procedure without any says so", () => {
    const state = stateAt(LogWriter.started({ ...file, contingencies: [] }), 1);
    render(<ContingenciesPanel state={state} strands={[]} onBring={null} onClose={vi.fn()} />);
    expect(screen.getByText("This procedure has none.")).toBeVisible();
  });
});

it("a hold is shown with its reason, since when, and who called it, and is lifted by one button", async () => {
  const log = LogWriter.started(file).enter("hold.called", { reason: "Wet glove" }, 3);
  const lift = vi.fn(async () => {});
  render(<HeldVeil state={stateAt(log, 5)} actions={{ lift } as unknown as FollowActions} />);
  expect(screen.getByText("Wet glove")).toBeVisible();
  expect(screen.getByText(/^Since PET 0:03:00, for 0:02:00\. Called by /)).toBeVisible();
  await userEvent.click(screen.getByRole("button", { name: "Lift the hold" }));
  expect(lift).toHaveBeenCalledOnce();
});

it("a watcher sees the hold and no button, and a walk that is not held shows none", () => {
  const held = LogWriter.started(file).enter("hold.called", {}, 3);
  const { rerender, container } = render(<HeldVeil state={stateAt(held, 5)} actions={null} />);
  expect(screen.getByText("No reason was given.")).toBeVisible();
  expect(screen.queryByRole("button")).toBeNull();
  rerender(<HeldVeil state={stateAt(LogWriter.started(file), 5)} actions={null} />);
  expect(container).toBeEmptyDOMElement();
});

it("finish and margin are told by the plan, by likely times, and by half and nine in ten of the samples", () => {
  const risk = { samples: 2000, p50: 3_300_000, p90: null } as unknown as Risk;
  const state = stateAt(LogWriter.started(file).done(["a", 48]), 48);
  render(
    <FiguresPanel
      state={state}
      now={minute(48)}
      risk={risk}
      change={null}
      onReadings={null}
      onLight={null}
      onClose={vi.fn()}
    />,
  );
  const rows = screen.getAllByRole("row").map((row) => row.textContent);
  expect(rows[1]).toBe("the plan0:5010 min margin");
  expect(rows[2]).toBe("what is left, by likely times0:4812 min margin");
  expect(rows[3]).toBe("half of the samples0:555 min margin");
  expect(rows[4]).toBe("nine in ten of the samplesnonenone");
});
