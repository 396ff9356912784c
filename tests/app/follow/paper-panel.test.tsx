import { render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import type { FollowActions } from "../../../src/app/follow/follow-actions.ts";
import { MorePanel } from "../../../src/app/follow/more-panel.tsx";
import { PaperPanel } from "../../../src/app/follow/paper-panel.tsx";
import type { TimedMark } from "../../../src/core/walk/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { words } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const file = fileWith([
  step("a", "ev1", 5),
  step("b", "ev1", 5),
  step("try", "ev2", 5, {
    decide: { id: "fits", ask: "Fits?", outcomes: ["yes", "not-quite"], expect: "yes" },
  }),
]);

function draw(log: LogWriter, at = 60, keeps = true) {
  const fromPaper = vi.fn(async (_marks: readonly TimedMark[], onKept: () => void) => {
    if (keeps) onKept();
  });
  const panel = (state = walkStateAt(log.ledger, minute(at))) => (
    <PaperPanel
      state={state}
      now={minute(at)}
      actions={{ fromPaper } as unknown as FollowActions}
      actor="iv"
      onClose={vi.fn()}
    />
  );
  const view = render(panel());
  return { fromPaper, again: () => view.rerender(panel()), user: userEvent.setup() };
}

const time = (number: string) => screen.getByRole("textbox", { name: `Time of step ${number}` });
const box = (name: RegExp) => screen.getByRole("checkbox", { name });
const enter = () => screen.getByRole("button", { name: /^Enter \d+ steps?$/ });

describe("the panel for what was done on paper", () => {
  it("[PAP1] takes ticks with their times and enters them in one go, under the name that stands there", async () => {
    const { fromPaper, user } = draw(LogWriter.started(file));
    expect(screen.getByText(/entered at once, with these times, by IV\.$/)).toBeVisible();
    await user.type(time("1.2"), "0:20:30");
    expect(box(/^1\.2 EV1: Do b$/)).toBeChecked();
    await user.type(time("1.1"), "0.12");
    await user.click(enter());
    expect(fromPaper).toHaveBeenCalledExactlyOnceWith(
      [
        { step: "a", at: minute(12), decided: null },
        { step: "b", at: minute(20.5), decided: null },
      ],
      expect.any(Function),
    );
    expect(screen.getByRole("status")).toHaveTextContent("2 steps were entered.");
    expect(time("1.1")).toHaveValue("");
    expect(box(/^1\.1/)).not.toBeChecked();
  });

  it("[PAP1] enters nothing when one is refused, says why at its step, and leaves what was typed", async () => {
    const { fromPaper, user } = draw(LogWriter.started(file));
    await user.type(time("1.1"), "0:12");
    await user.type(time("1.2"), "0:10");
    await user.click(enter());
    expect(fromPaper).not.toHaveBeenCalled();
    expect(screen.getByRole("status")).toHaveTextContent("Nothing was entered: at 1 step it says why.");
    const refused = time("1.2").closest("li") as HTMLElement;
    expect(
      within(refused).getByText(/^It follows step 1\.1 \(Do a\), and that was done later/),
    ).toBeVisible();
    expect(time("1.2")).toHaveValue("0:10");
    expect(time("1.2")).toHaveAttribute("aria-invalid", "true");
    await user.clear(time("1.2"));
    expect(time("1.2")).not.toHaveAttribute("aria-invalid");
    await user.type(time("1.2"), "0:13");
    await user.click(enter());
    expect(fromPaper).toHaveBeenCalledOnce();
  });

  it("[PAP1] refuses a tick without a time, and a decision without its outcome, which it takes from a list", async () => {
    const { fromPaper, user } = draw(LogWriter.started(file));
    await user.click(box(/^1\.1/));
    await user.type(time("1.3"), "0:30");
    await user.click(enter());
    expect(screen.getByText(/^Write when it was done/)).toBeVisible();
    expect(within(time("1.3").closest("li") as HTMLElement).getByRole("paragraph")).toHaveTextContent(
      "Choose how it came out.",
    );
    await user.click(box(/^1\.1/));
    await user.selectOptions(screen.getByRole("combobox", { name: "How step 1.3 came out" }), "not quite");
    await user.click(enter());
    expect(fromPaper).toHaveBeenCalledExactlyOnceWith(
      [{ step: "try", at: minute(30), decided: { decision: "fits", outcome: "not-quite" } }],
      expect.any(Function),
    );
  });

  it("[PAP1] reads the times as UTC when told so, and refuses one that is still to come", async () => {
    const { fromPaper, user } = draw(LogWriter.started(file));
    await user.selectOptions(screen.getByRole("combobox", { name: "The times are" }), "UTC, hours:minutes");
    // PET 0 is 09:00 UTC, and it is 10:00.
    await user.type(time("1.1"), "10:01");
    await user.click(enter());
    expect(screen.getByText(/^That is later than now, PET 1:00:00 or 10:00:00 UTC/)).toBeVisible();
    await user.clear(time("1.1"));
    await user.type(time("1.1"), "09:12");
    await user.click(enter());
    expect(fromPaper.mock.calls[0]?.[0]).toEqual([{ step: "a", at: minute(12), decided: null }]);
  });

  it("[PAP1] keeps what was typed when it could not be kept, so that nothing is written twice", async () => {
    const { user } = draw(LogWriter.started(file), 60, false);
    await user.type(time("1.1"), "0:12");
    await user.click(enter());
    await waitFor(() => expect(time("1.1")).toHaveValue("0:12"));
    expect(screen.getByRole("status")).toBeEmptyDOMElement();
  });

  it("[PAP1] keeps a ticked step in sight that another device marks meanwhile, and says so when it is entered", async () => {
    const log = LogWriter.started(file);
    const { fromPaper, again, user } = draw(log);
    await user.type(time("1.1"), "0:12");
    log.enter("step.done", { step: "a" }, 12, { source: "/devices/ground", actor: "ground" });
    again();
    await user.click(enter());
    expect(screen.getByText(/^This step is complete already/)).toBeVisible();
    expect(fromPaper).not.toHaveBeenCalled();
    await user.click(box(/^1\.1/));
    expect(screen.queryByRole("textbox", { name: "Time of step 1.1" })).toBeNull();
  });

  it("[PAP1] says so when nothing is ticked, and when no step is left to enter", async () => {
    const { user } = draw(LogWriter.started(file));
    await user.click(enter());
    expect(screen.getByRole("status")).toHaveTextContent("Nothing is ticked.");
  });

  it("[PAP1] with no step left to enter says so and offers no button", () => {
    draw(LogWriter.started(fileWith([step("a", "ev1", 5)])).done(["a", 5]));
    expect(screen.getByText(words("paper/none"))).toBeVisible();
    expect(screen.queryByRole("button", { name: /^Enter/ })).toBeNull();
  });

  it("[PAP1] shows a long procedure a stretch at a time", async () => {
    const many = fileWith(Array.from({ length: 45 }, (_, index) => step(`s${index}`, "ev1", 1)));
    const { user } = draw(LogWriter.started(many));
    expect(screen.getAllByRole("checkbox")).toHaveLength(20);
    await user.click(screen.getByRole("button", { name: "Show 20 more steps" }));
    await user.click(screen.getByRole("button", { name: "Show 5 more steps" }));
    expect(screen.getAllByRole("checkbox")).toHaveLength(45);
    expect(screen.queryByRole("button", { name: /^Show/ })).toBeNull();
  });
});

describe("the way there", () => {
  const more = (onPaper: (() => void) | null) => (
    <MorePanel
      ledger={LogWriter.started(file).ledger}
      ignored={[]}
      actor="iv"
      onActor={vi.fn()}
      onGo={vi.fn()}
      onExport={vi.fn()}
      onCloseWalk={null}
      onMap={vi.fn()}
      onHelp={vi.fn()}
      onLink={vi.fn()}
      onItems={null}
      onSurprises={null}
      onPaper={onPaper}
      onAmend={null}
      onClose={vi.fn()}
    />
  );

  it("[PAP1] is under More for whoever may mark, and not there for others", async () => {
    const onPaper = vi.fn();
    const { rerender } = render(more(onPaper));
    await userEvent.click(screen.getByRole("button", { name: "Enter from paper" }));
    expect(onPaper).toHaveBeenCalledOnce();
    rerender(more(null));
    expect(screen.queryByRole("button", { name: "Enter from paper" })).toBeNull();
  });
});
