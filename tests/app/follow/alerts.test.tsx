import { render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { AlertStrip } from "../../../src/app/follow/alert-strip.tsx";
import { AlertsPanel } from "../../../src/app/follow/alerts-panel.tsx";
import type { FollowActions } from "../../../src/app/follow/follow-actions.ts";
import { useAlerts } from "../../../src/app/follow/use-alerts.ts";
import { alertsOf, type WalkState, walkStateAt } from "../../../src/core/walk/index.ts";
import { signalAlert } from "../../../src/io/device/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

vi.mock("../../../src/io/device/index.ts", async (load) => ({
  ...(await load<object>()),
  signalAlert: vi.fn(),
}));

const file = {
  ...fileWith([
    task("all", [
      step("check", "ev1", 5, {
        alerts: [{ level: "warning" as const, text: "Below 27 go in." }],
        records: [{ id: "pressure", label: "Pressure", unit: "kPa", min: 27 }],
      }),
      step("end", "ev1", 300),
    ]),
  ]),
  watches: [{ id: "gloves", by: ["ev1"], do: "Check gloves", every: "PT30M" }],
};

/** A value below its limit under a warning, a hold, and a watch that is due. */
const trouble = () =>
  LogWriter.started(file)
    .enter("record.taken", { step: "check", record: "pressure", value: 26.5 }, 2)
    .enter("hold.called", { reason: "Wet glove" }, 10);

const stateAt = (log: LogWriter, at: number) => walkStateAt(log.ledger, minute(at));

function actionsMade() {
  return {
    seeAlert: vi.fn(async () => {}),
    keepWatch: vi.fn(async () => {}),
    raiseAlerts: vi.fn(async () => {}),
  };
}

function drawStrip(log: LogWriter, at: number, actions: ReturnType<typeof actionsMade> | null) {
  const state = stateAt(log, at);
  const onList = vi.fn();
  const onPick = vi.fn();
  render(
    <AlertStrip
      alerts={alertsOf(state)}
      state={state}
      actions={actions as unknown as FollowActions | null}
      onPick={onPick}
      onList={onList}
    />,
  );
  return { onList, onPick, lines: screen.queryAllByRole("listitem") };
}

beforeEach(() => {
  vi.mocked(signalAlert).mockClear();
  localStorage.clear();
});

describe("[OFF3] the strip of alerts", () => {
  it("[OFF3] has the most urgent first, in words, and what does not fit behind a button", async () => {
    const actions = actionsMade();
    const { lines, onList, onPick } = drawStrip(trouble(), 32, actions);
    expect(lines).toHaveLength(2);
    expect(lines[0]).toHaveTextContent(/ACT NOW.*26\.5.*Since PET 0:02:00/);
    expect(screen.getByRole("alert", { name: "Alerts" })).toBeVisible();
    await userEvent.click(within(lines[0] as HTMLElement).getByRole("button", { name: "Step 1.1" }));
    expect(onPick).toHaveBeenCalledExactlyOnceWith("check");
    await userEvent.click(screen.getByRole("button", { name: /^\d+ more$/ }));
    expect(onList).toHaveBeenCalledOnce();
  });

  it("[OFF3] one that asks to act now stays when it was seen, and says by whom; the others go", () => {
    const log = trouble();
    for (const { alert, level } of alertsOf(stateAt(log, 12))) log.enter("alert.seen", { alert, level }, 12);
    const { lines } = drawStrip(log, 13, actionsMade());
    expect(lines).toHaveLength(1);
    expect(lines[0]).toHaveTextContent("Seen by IV.");
    expect(within(lines[0] as HTMLElement).queryByRole("button", { name: "Seen" })).toBeNull();
  });

  it("[OFF3] Seen names the alert and its level; a watch that is due is noted from here", async () => {
    const actions = actionsMade();
    const { lines } = drawStrip(LogWriter.started(file), 31, actions);
    const due = lines.find((line) => line.textContent?.includes("Check gloves"));
    if (!due) throw new Error("the watch is no alert");
    await userEvent.click(within(due).getByRole("button", { name: "Seen" }));
    expect(actions.seeAlert).toHaveBeenCalledExactlyOnceWith(expect.stringContaining("gloves"), "look-soon");
    await userEvent.click(within(due).getByRole("button", { name: "Note it done" }));
    expect(actions.keepWatch).toHaveBeenCalledExactlyOnceWith("gloves", 30 * 60_000);
  });

  it("[OFF3] a watcher reads them and can do nothing; without any there is no line", () => {
    const { lines } = drawStrip(trouble(), 12, null);
    expect(lines.length).toBeGreaterThan(0);
    expect(screen.queryByRole("button", { name: "Seen" })).toBeNull();
    expect(drawStrip(LogWriter.started(file), 1, null).lines.length).toBe(lines.length);
  });
});

describe("[OFF3] the list of alerts", () => {
  it("[OFF3] tells all that hold, and takes which of them sound here", async () => {
    const state = stateAt(trouble(), 32);
    render(
      <AlertsPanel
        alerts={alertsOf(state)}
        state={state}
        actions={null}
        onPick={vi.fn()}
        onContingency={vi.fn()}
        onClose={vi.fn()}
      />,
    );
    expect(screen.getAllByRole("listitem").length).toBeGreaterThanOrEqual(3);
    const know = screen.getByRole("checkbox", { name: /KNOW/ });
    expect(know).not.toBeChecked();
    await userEvent.click(know);
    expect(know).toBeChecked();
    await userEvent.click(know);
  });
});

function Watching({ state, actions }: { readonly state: WalkState; readonly actions: FollowActions | null }) {
  useAlerts(state, actions, true);
  return null;
}

describe("[OFF3] on a device", () => {
  it("[OFF3] an alert sounds once, is logged once by the lead, and sounds again when it gets worse", async () => {
    const actions = actionsMade();
    const log = trouble();
    const may = actions as unknown as FollowActions;
    const { rerender } = render(<Watching state={stateAt(log, 11)} actions={may} />);
    await waitFor(() => expect(actions.raiseAlerts).toHaveBeenCalledOnce());
    await waitFor(() => expect(signalAlert).toHaveBeenCalledExactlyOnceWith("act-now"));
    rerender(<Watching state={stateAt(log, 12)} actions={may} />);
    rerender(<Watching state={stateAt(log, 13)} actions={may} />);
    expect(signalAlert).toHaveBeenCalledOnce();
    log.enter("record.taken", { step: "check", record: "pressure", value: 20 }, 14);
    rerender(<Watching state={stateAt(log, 14)} actions={may} />);
    await waitFor(() => expect(signalAlert).toHaveBeenCalledTimes(2));
  });
});
