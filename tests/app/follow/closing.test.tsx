import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { ClosePanel } from "../../../src/app/follow/close-panel.tsx";
import type { FollowActions } from "../../../src/app/follow/follow-actions.ts";
import { ReadingsPanel } from "../../../src/app/follow/readings-panel.tsx";
import { ReopenPanel } from "../../../src/app/follow/reopen-panel.tsx";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const outside: ProcedureFile = {
  ...fileWith([step("out", "ev1", 5, { to: "boom" }), step("in", "ev1", 5, { to: "lock" })]),
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "lock" },
    { id: "iv", call: "IV", station: "inside" },
  ],
  places: [
    { id: "lock", label: "Airlock", refuge: true },
    { id: "boom", label: "Boom" },
  ],
  routes: [{ between: ["lock", "boom"], length: 5, time: "PT2M" }],
  items: [{ id: "lamp", label: "Lamp", start: { place: "boom" }, end: { place: "lock" } }],
  supplies: [
    { crew: "ev1", id: "oxygen", label: "Oxygen", unit: "kPa", full: 6000, redline: 600, perHour: 700 },
  ],
};

function drawClose(log: LogWriter, at: number) {
  const close = vi.fn(async () => {});
  const onClosed = vi.fn();
  render(
    <ClosePanel
      state={walkStateAt(log.ledger, minute(at))}
      now={minute(at)}
      actions={{ close } as unknown as FollowActions}
      onClose={vi.fn()}
      onClosed={onClosed}
    />,
  );
  return { close, onClosed };
}

describe("[OFF5] closing", () => {
  it("[OFF5] names who is out, which steps and items are left, and does not offer complete", async () => {
    const { close } = drawClose(LogWriter.started(outside).done(["out", 4]), 6);
    expect(screen.getByText("EV1: Boom")).toBeVisible();
    expect(screen.getByText("1.2 Do in")).toBeVisible();
    expect(screen.getByText("Lamp: at Boom")).toBeVisible();
    expect(screen.queryByRole("radio", { name: /^Complete/ })).toBeNull();
    await userEvent.click(screen.getByRole("radio", { name: /^Terminated/ }));
    const button = screen.getByRole("button", { name: "Close the walk: terminated" });
    expect(button).toBeDisabled();
    await userEvent.type(screen.getByLabelText("Reason"), "glove");
    await userEvent.click(button);
    expect(close).toHaveBeenCalledExactlyOnceWith("terminated", "glove");
  });

  it("[OFF5] offers complete once everybody is in, without a reason", async () => {
    const log = LogWriter.started(outside)
      .done(["out", 4], ["in", 8])
      .enter("item.moved", { item: "lamp", to: { place: "lock" } }, 9);
    const { close, onClosed } = drawClose(log, 10);
    expect(screen.getByText(/^Nobody is outside/)).toBeVisible();
    await userEvent.click(screen.getByRole("radio", { name: /^Complete/ }));
    await userEvent.click(screen.getByRole("button", { name: "Close the walk: complete" }));
    expect(close).toHaveBeenCalledExactlyOnceWith("complete", "");
    expect(onClosed).toHaveBeenCalledOnce();
  });

  it("[OFF5] a closed walk is reopened with a reason only", async () => {
    const reopenWalk = vi.fn(async () => {});
    render(<ReopenPanel actions={{ reopenWalk } as unknown as FollowActions} onClose={vi.fn()} />);
    const button = screen.getByRole("button", { name: "Reopen the walk" });
    expect(button).toBeDisabled();
    await userEvent.type(screen.getByLabelText("Reason"), "closed too early");
    await userEvent.click(button);
    expect(reopenWalk).toHaveBeenCalledExactlyOnceWith("closed too early");
  });
});

describe("[OFF7] readings", () => {
  function drawReadings(log: LogWriter) {
    const readSupply = vi.fn(async () => {});
    const undo = vi.fn(async () => {});
    render(
      <ReadingsPanel
        state={walkStateAt(log.ledger, minute(20))}
        now={minute(20)}
        folded={log.folded}
        actions={{ readSupply, undo } as unknown as FollowActions}
        onClose={vi.fn()}
      />,
    );
    return { readSupply, undo };
  }

  it.each([
    ["-3", -3],
    ["9999", 9999],
  ])(
    "[OFF7] %s is asked for once more with the reason, and taken when it is entered all the same",
    async (text, value) => {
      const { readSupply } = drawReadings(LogWriter.started(outside));
      await userEvent.type(screen.getByRole("textbox"), text);
      expect(screen.getByRole("alert")).toHaveTextContent("Look at the gauge once more.");
      await userEvent.click(screen.getByRole("button", { name: "Enter it all the same" }));
      expect(readSupply).toHaveBeenCalledExactlyOnceWith("ev1", "oxygen", value);
    },
  );

  it("[OFF7] one that can be true is taken at once, and any can be struck later", async () => {
    const log = LogWriter.started(outside)
      .enter("supply.read", { crew: "ev1", supply: "oxygen", value: 5900 }, 2)
      .enter("supply.read", { crew: "ev1", supply: "oxygen", value: 700 }, 10);
    const { readSupply, undo } = drawReadings(log);
    const lines = screen.getAllByRole("listitem");
    expect(lines.map((line) => line.textContent)).toEqual([
      expect.stringMatching(/^700 kPa read 10 min ago/),
      expect.stringMatching(/^5900 kPa read 18 min ago/),
    ]);
    await userEvent.click(within(lines[0] as HTMLElement).getByRole("button", { name: "Strike it" }));
    expect(undo).toHaveBeenCalledExactlyOnceWith([log.entries[3]]);
    await userEvent.type(screen.getByRole("textbox"), "5700");
    expect(screen.queryByRole("alert")).toBeNull();
    await userEvent.click(screen.getByRole("button", { name: "Enter" }));
    expect(readSupply).toHaveBeenCalledExactlyOnceWith("ev1", "oxygen", 5700);
  });

  it("[OFF7] a reading that was struck is not listed any more", () => {
    const log = LogWriter.started(outside).enter(
      "supply.read",
      { crew: "ev1", supply: "oxygen", value: 700 },
      2,
    );
    drawReadings(log.strike(0, 3));
    expect(screen.queryAllByRole("listitem")).toHaveLength(0);
  });
});
