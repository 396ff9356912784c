import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import {
  AmendmentPanel,
  AmendmentStrip,
  amendmentsSeenHere,
  rememberSeen,
  unseenAmendments,
} from "../../../src/app/amend/index.ts";
import { idleAmendmentsOf } from "../../../src/core/walk/index.ts";
import { LogWriter } from "../../core/log-writer.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

const FILE = fileWith([
  task("work", [step("a", "ev1", 10), step("b", "ev1", 10)]),
  task("tidy", [step("d", "ev1", 10)]),
]);
const GROUND = { source: "/devices/ground", actor: "ev2" };

const log = LogWriter.started(FILE)
  .done(["a", 12])
  .enter(
    "plan.amended",
    { changes: [{ drop: "d" }, { change: "b", set: { time: "PT5M" } }], reason: "Late", needs: 2 },
    13,
    GROUND,
  )
  .enter("plan.amended", { changes: [{ drop: "d" }], reason: "Late as well", needs: 2 }, 14);
const { ledger, folded } = log;
const { outline } = ledger.inForce;

beforeEach(() => localStorage.clear());

const shown = (device: string) => unseenAmendments(ledger, device, amendmentsSeenHere.current());

describe("what a device is told of amendments", () => {
  it("[AMD4] is every one of others that it has not said it saw", () => {
    expect(shown("/devices/iv-tablet").map(({ reason }) => reason)).toEqual(["Late"]);
    expect(shown("/devices/ground")).toEqual([]);
    const [amendment] = ledger.amendments;
    if (amendment) rememberSeen(amendment);
    expect(shown("/devices/iv-tablet")).toEqual([]);
  });

  it("[AMD4] is over where the device entered that it saw it, also after its store was cleared", () => {
    const { source = "", id = "" } = ledger.amendments[0] ?? {};
    const seen = LogWriter.started(FILE)
      .done(["a", 12])
      .enter("plan.amended", { changes: [{ drop: "d" }], reason: "Late", needs: 2 }, 13, GROUND)
      .enter("amendment.seen", { amendment: { source, id } }, 14).ledger;
    expect(unseenAmendments(seen, "/devices/iv-tablet", [])).toEqual([]);
    expect(unseenAmendments(seen, "/devices/third", [])).toHaveLength(1);
  });

  it("[AMD4] [AMD5] says who amended what and why, and that an own one has no effect", async () => {
    const on = { onSeen: vi.fn(), onDetails: vi.fn(), onTry: vi.fn(), onPutAway: vi.fn() };
    const idle = idleAmendmentsOf(folded, "/devices/iv-tablet");
    render(
      <AmendmentStrip outline={outline} unseen={shown("/devices/iv-tablet")} idle={idle} newer={2} {...on} />,
    );
    expect(screen.getByText("The plan was amended at PET 0:13:00 by EV2: Late")).toBeVisible();
    expect(screen.getByText(/^Your amendment \(Late as well\) has no effect: /)).toBeVisible();
    expect(screen.getByText(/^2 entries need a newer version/)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Seen" }));
    expect(on.onSeen).toHaveBeenCalledExactlyOnceWith(ledger.amendments[0]);
    await userEvent.click(screen.getByRole("button", { name: "Try it on the plan as it stands" }));
    expect(on.onTry).toHaveBeenCalledExactlyOnceWith(idle[0]);
    await userEvent.click(screen.getByRole("button", { name: "Put away" }));
    expect(on.onPutAway).toHaveBeenCalledExactlyOnceWith(idle[0]);
  });

  it("[AMD4] is told in full: each step that is otherwise, and what became of the finish", () => {
    const [amendment] = ledger.amendments;
    if (!amendment) throw new Error("no amendment");
    render(<AmendmentPanel ledger={ledger} amendment={amendment} onClose={vi.fn()} />);
    const lines = screen.getAllByRole("listitem").map(({ textContent }) => textContent);
    expect(lines).toEqual(["changed 1.2 Do b", "taken out 2.1 Do d"]);
    expect(screen.getByText(/0:32 before, 0:17 after/)).toBeVisible();
    expect(screen.getByText("Nobody has said yet that it was seen.")).toBeVisible();
  });
});
