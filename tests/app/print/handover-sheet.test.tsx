import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { HandoverSheet } from "../../../src/app/print/index.ts";
import { handoverOf } from "../../../src/core/review/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const FILE = fileWith(
  [
    step("vent", "ev1", 10, { records: [{ id: "p", label: "Pressure" }] }),
    step("look", "ev2", 5, {
      decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
    }),
    step("turn", ["ev1", "ev2"], 20),
  ],
  {
    revision: "C",
    limits: { elapsed: "PT2H" },
    places: [{ id: "lock", label: "Airlock", refuge: true }],
    items: [{ id: "key", label: "Key", start: { crew: "ev1" } }],
    supplies: [{ crew: "ev1", id: "gas", label: "Gas", unit: "kPa", full: 900, redline: 100, perHour: 100 }],
  },
);

function show(log: LogWriter, at: number) {
  const acts = { onAgain: vi.fn(), onFollow: vi.fn(), onPaper: vi.fn() };
  const handover = handoverOf(walkStateAt(log.ledger, minute(at)), log.folded);
  render(<HandoverSheet handover={handover} device="iv-tablet" {...acts} />);
  return acts;
}

const part = (name: string) => screen.getByRole("heading", { level: 2, name }).parentElement as HTMLElement;

describe("the handover page", () => {
  it("[REV4] says when it was made, from whose log, and how the walk stands", () => {
    show(LogWriter.started(FILE).done(["look", 5]), 6);
    expect(
      screen.getByText(
        "Made at 2031-04-02 09:06:00 UTC from the log of iv-tablet: 3 entries, the last of 2031-04-02 09:05:00 UTC.",
      ),
    ).toBeVisible();
    expect(screen.getByText("Running, PET 0:06:00.")).toBeVisible();
  });

  it("[REV4] tells who does what, who waits, and what begins next", () => {
    show(LogWriter.started(FILE).done(["look", 5]), 6);
    const [, ev1, ev2] = within(part("Who does what")).getAllByRole("row");
    expect(ev1).toHaveTextContent("works on 1.1 Do vent, since 0:00:00nothing yet0:10:00 1.3 Do turn");
    expect(ev2).toHaveTextContent("waits for EV11.2 Do look at 0:05:00");
  });

  it("[REV4] tells of holds, alerts and who has seen them, what is outstanding, and what was otherwise", () => {
    show(
      LogWriter.started(FILE)
        .enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 4)
        .done(["look", 5], ["vent", 9])
        .enter("item.moved", { item: "key", to: { crew: "ev2" }, reason: "handed over" }, 9)
        .enter("hold.called", { reason: "comm lost" }, 11),
      13,
    );
    expect(screen.getByText("Held since PET 0:11:00, PET now 0:13:00: comm lost")).toBeVisible();
    expect(part("Alerts")).toHaveTextContent(
      "Look soon: The walk has been held since 0:11:00: comm lost since 0:11:00 · Nobody has seen it.",
    );
    expect(part("Outstanding")).toHaveTextContent("1.1 Do vent Pressure was not taken");
    expect(part("What was otherwise")).toHaveTextContent("Does it turn? stuck; free was expected");
    expect(part("What was otherwise")).toHaveTextContent("0:09:00 Key is with EV2: handed over");
  });

  it("[REV4] says where finish, margin and turn-back stand, and how old a reading is", () => {
    show(LogWriter.started(FILE).enter("supply.read", { crew: "ev1", supply: "gas", value: 880 }, 2), 6);
    expect(part("Finish, margin, turn-back")).toHaveTextContent(
      "Finish by the forecastPET 0:30:00Margin by the forecast1 h 30 min margin",
    );
    expect(part("Supplies")).toHaveTextContent("EV1Gas880 kPa, 4 min old");
  });

  it("[REV4] says so where nothing is to be told, and before the clock is started", () => {
    show(LogWriter.opened(FILE), 0);
    expect(screen.getByText("Prepared: the clock has not been started.")).toBeVisible();
    expect(part("Alerts")).toHaveTextContent("No alert holds.");
    expect(part("Outstanding")).toHaveTextContent("Nothing is outstanding.");
    expect(part("What was otherwise")).toHaveTextContent("Nothing was done otherwise than planned.");
    expect(part("Supplies")).toHaveTextContent("never read; planned from full");
  });

  it("[REV4] is made anew on asking, and leads back to the walk", async () => {
    const { onAgain, onFollow, onPaper } = show(LogWriter.started(FILE), 1);
    await userEvent.click(screen.getByRole("button", { name: "Make it anew" }));
    await userEvent.click(screen.getByRole("button", { name: "Follow" }));
    await userEvent.click(screen.getByRole("button", { name: "The procedure as it stands" }));
    expect([onAgain, onFollow, onPaper].map(({ mock }) => mock.calls.length)).toEqual([1, 1, 1]);
  });
});
