import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { figureGaps } from "../../../src/app/follow/figure-gaps.ts";
import { FiguresPanel } from "../../../src/app/follow/figures-panel.tsx";
import { FollowBar } from "../../../src/app/follow/follow-bar.tsx";
import { nextChange } from "../../../src/app/follow/next-change.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { turnBackState, walkStateAt } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const OUTSIDE: Partial<ProcedureFile> = {
  crew: [{ id: "ev1", call: "EV1", station: "outside", start: "truss" }],
  places: [{ id: "lock", refuge: true }, { id: "truss" }],
  routes: [{ between: ["lock", "truss"], length: 20, time: "PT4M" }],
};
const OXYGEN = { id: "oxygen", label: "Oxygen", crew: "ev1", unit: "kPa", full: 6000, redline: 1000 };
const fileOf = (more: Partial<ProcedureFile>) =>
  fileWith([step("work", "ev1", 30, { at: "truss" })], { ...OUTSIDE, ...more });
const stateOf = (log: LogWriter, at = 1) => walkStateAt(log.ledger, minute(at));
const gapsOf = (log: LogWriter, at = 1) => {
  const state = stateOf(log, at);
  return figureGaps(state, turnBackState(state)).map(({ of, text, isReading }) => [of, text.key, isReading]);
};

describe("what is not known of a walk", () => {
  it("is said with its reason where it cannot be set while the walk runs", () => {
    expect(gapsOf(LogWriter.started(fileOf({})))).toEqual([
      ["limit", "gap/no-limit", false],
      ["turn-back", "gap/nothing-runs-out", false],
    ]);
    const dark = fileOf({ limits: { elapsed: "PT6H" }, windows: [{ id: "dark", kind: "darkness" }] });
    expect(gapsOf(LogWriter.started(dark))).toEqual([["windows", "gap/no-light", false]]);
    const pass = fileOf({
      limits: { elapsed: "PT6H" },
      windows: [
        {
          id: "pass",
          kind: "listed",
          spans: [{ from: "2031-04-02T10:00:00Z", to: "2031-04-02T10:10:00Z" }],
        },
      ],
    });
    expect(gapsOf(LogWriter.opened(pass), 0)).toContainEqual(["windows", "gap/windows-from-start", false]);
    expect(gapsOf(LogWriter.started(pass))).toEqual([]);
  });

  it("[OFF7] is set by a reading where a supply was never read, until it is read", () => {
    const log = LogWriter.started(
      fileOf({ limits: { elapsed: "PT6H" }, supplies: [{ ...OXYGEN, perHour: 500 }] }),
    );
    expect(gapsOf(log)).toEqual([["supplies", "gap/never-read", true]]);
    log.enter("supply.read", { crew: "ev1", supply: "oxygen", value: 5900 }, 2);
    expect(gapsOf(log, 3)).toEqual([]);
    log.strike(0, 4);
    expect(gapsOf(log, 5)).toHaveLength(1);
  });

  it("[FOR3] is the turn-back time where nothing runs down, and not once everybody is in", () => {
    const log = LogWriter.started(fileOf({ supplies: [{ ...OXYGEN, perHour: 0 }] }));
    expect(gapsOf(log)).toContainEqual(["turn-back", "gap/no-end-of-supplies", true]);
    const home = LogWriter.started(
      fileWith([step("in", "ev1", 5, { at: "truss", to: "lock" })], OUTSIDE),
    ).done(["in", 5]);
    expect(gapsOf(home, 6).map(([of]) => of)).not.toContain("turn-back");
  });

  it("is the clock before the start, and nothing once the walk is closed", () => {
    const log = LogWriter.opened(fileOf({ limits: { elapsed: "PT6H" } }));
    expect(gapsOf(log, 0)).toEqual([["clock", "gap/not-started", false]]);
    expect(gapsOf(LogWriter.started(fileOf({})).enter("walk.closed", { end: "aborted" }, 2), 3)).toEqual([]);
  });
});

describe("a figure that is not known", () => {
  it("leads from the bar to why, and from there to the readings", async () => {
    const state = stateOf(
      LogWriter.started(
        fileOf({
          supplies: [{ ...OXYGEN, perHour: 0 }],
          windows: [{ id: "dark", label: "Darkness", kind: "darkness" }],
        }),
      ),
    );
    const onFigures = vi.fn();
    const { unmount } = render(
      <FollowBar
        state={state}
        now={minute(1)}
        change={nextChange(state.ledger.inForce.outline, state.ledger.windows, state.pet)}
        kept={{ title: "", detail: "", alarming: false, usual: true }}
        onKept={vi.fn()}
        onFigures={onFigures}
        onFit={vi.fn()}
        outstanding={0}
        onOutstanding={vi.fn()}
        mode="live"
        odds={null}
      />,
    );
    for (const name of [/no limit set/, /Turn back.*not known/, /Darkness.*times not known/])
      await userEvent.click(screen.getByRole("button", { name }));
    expect(onFigures).toHaveBeenCalledTimes(3);
    unmount();
    const onReadings = vi.fn();
    const panel = { state, now: minute(1), risk: null, change: null, onLight: null, onClose: vi.fn() };
    const { rerender } = render(<FiguresPanel {...panel} onReadings={onReadings} />);
    await userEvent.click(screen.getAllByRole("button", { name: "Enter a reading" })[0] as HTMLElement);
    expect(onReadings).toHaveBeenCalledOnce();
    expect(screen.getByText(inWords({ key: "gap/no-limit", args: {} } as never))).toBeVisible();
    rerender(<FiguresPanel {...panel} onReadings={null} />);
    expect(screen.queryByRole("button", { name: "Enter a reading" })).toBeNull();
    expect(screen.getAllByText(/whoever marks enters readings/)[0]).toBeVisible();
  });
});
