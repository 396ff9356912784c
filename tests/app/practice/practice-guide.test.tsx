import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it } from "vitest";
import { PracticeGuide, PracticeReview } from "../../../src/app/practice/index.ts";
import { LogWriter } from "../../core/log-writer.ts";
import {
  practiceFile,
  practiceLog,
  stateOf,
  UP_TO_SWAP,
  UP_TO_VOLTS,
} from "../../core/practice/practice-file.ts";

const WALK = "walk-1";

beforeEach(() => localStorage.clear());

const guide = () => screen.getByRole("region", { name: "Practice guide" });

describe("the guide beside a practice walk", () => {
  it("[PRA2] says what comes next, and is brought up to date by the state alone", () => {
    const { rerender } = render(<PracticeGuide state={stateOf(practiceLog(), 0.1)} walk={WALK} />);
    expect(within(guide()).getByRole("status")).toHaveTextContent("IV begins, with step 1.1");
    rerender(<PracticeGuide state={stateOf(practiceLog().done(["iv-door", 0.5]), 1)} walk={WALK} />);
    expect(within(guide()).getByRole("status")).toHaveTextContent("Next is step 1.2 of EV1");
  });

  it("[PRA5] shows what was tried, in words for those who do not see the beads", () => {
    render(<PracticeGuide state={stateOf(practiceLog().done(...UP_TO_VOLTS), 5)} walk={WALK} />);
    expect(guide()).toHaveTextContent("Tried: 2 of 5");
    const parts = within(guide())
      .getAllByRole("listitem")
      .map((part) => part.textContent);
    expect(parts).toEqual([
      "tapping tried",
      "joint step tried",
      "value outside limits not yet",
      "contingency not yet",
      "review not yet",
    ]);
    expect(guide().querySelectorAll("[data-stage='done']")).toHaveLength(2);
  });

  it("[PRA4] is put away and brought back by one button, which keeps the focus", async () => {
    const user = userEvent.setup();
    render(<PracticeGuide state={stateOf(practiceLog(), 0.1)} walk={WALK} />);
    const button = screen.getByRole("button", { name: "Put the guide away" });
    expect(button).toHaveAttribute("aria-expanded", "true");
    await user.click(button);
    expect(within(guide()).queryByRole("status")).toBeNull();
    expect(button).toHaveFocus();
    expect(button).toHaveAccessibleName("Show the practice guide");
    await user.keyboard("{Enter}");
    expect(within(guide()).getByRole("status")).toBeVisible();
  });

  it("[PRA4] stays put away after a reload and in a second page, for this walk alone", async () => {
    const state = stateOf(practiceLog().done(...UP_TO_SWAP), 3);
    const { unmount } = render(<PracticeGuide state={state} walk={WALK} />);
    await userEvent.click(screen.getByRole("button", { name: "Put the guide away" }));
    unmount();
    render(<PracticeGuide state={state} walk={WALK} />);
    expect(screen.getByRole("button", { name: "Show the practice guide" })).toBeVisible();
    render(<PracticeGuide state={state} walk="walk-2" />);
    expect(screen.getByRole("button", { name: "Put the guide away" })).toBeVisible();
  });

  it("[PRA4] is there when what is stored of it is not what it stored", () => {
    localStorage.setItem("tetherline.practice-guide-away", '"walk-1"');
    render(<PracticeGuide state={stateOf(practiceLog(), 0.1)} walk={WALK} />);
    expect(screen.getByRole("button", { name: "Put the guide away" })).toBeVisible();
  });
});

describe("the guide above the review of a practice walk", () => {
  const closed = () =>
    practiceLog().done(["iv-door", 0.5]).enter("walk.closed", { end: "terminated", reason: "lunch" }, 1);

  it("[PRA4] says its last once, and is gone when the review is opened again, until it is asked for", async () => {
    const { unmount } = render(<PracticeReview ledger={closed().ledger} />);
    expect(guide()).toHaveTextContent("This is the review");
    await userEvent.click(screen.getByRole("button", { name: "Finish the practice" }));
    expect(screen.queryByRole("region")).toBeNull();
    unmount();
    const again = render(<PracticeReview ledger={closed().ledger} />);
    expect(screen.queryByRole("region")).toBeNull();
    again.unmount();
    const follow = render(<PracticeGuide state={stateOf(closed(), 2)} walk={WALK} />);
    await userEvent.click(screen.getByRole("button", { name: "Show the practice guide" }));
    expect(guide()).toHaveTextContent("Tap “Read the review” below the list");
    follow.unmount();
    render(<PracticeReview ledger={closed().ledger} />);
    expect(guide()).toBeVisible();
  });

  it("[PRA1] [PRA4] says nothing above the review of another walk, or of one that goes on", () => {
    render(<PracticeReview ledger={practiceLog().ledger} />);
    const live = LogWriter.started(practiceFile).enter("walk.closed", { end: "aborted", reason: "" }, 1);
    render(<PracticeReview ledger={live.ledger} />);
    expect(screen.queryByRole("region")).toBeNull();
    expect(localStorage).toHaveLength(0);
  });
});
