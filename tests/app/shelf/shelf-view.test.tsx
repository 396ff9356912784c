import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { expect, it, vi } from "vitest";
import { PRACTICE_KEY } from "../../../src/app/shelf/bundled-procedures.ts";
import {
  type ProcedureSummary,
  type ShelfActions,
  ShelfView,
  type TakenOff,
} from "../../../src/app/shelf/index.ts";
import { factsOf } from "../../../src/app/shelf/procedure-facts.ts";
import { summaryOf } from "../../../src/app/shelf/procedure-summary.ts";
import { PRACTICE } from "../../../src/core/practice/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import type { WalkCard } from "../../../src/io/store/index.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const summary = (text: string, isImported = false): ProcedureSummary =>
  summaryOf({ key: "trial", isImported }, factsOf(text));
const sound = JSON.stringify(fileWith([step("a", "ev1", 90)], { limits: { elapsed: "PT2H" } }));

const walkCard = (more: Partial<WalkCard>): WalkCard =>
  ({
    walk: "walk-1" as WalkId,
    phase: "running",
    mode: "live",
    title: "Trial",
    openedAt: Date.UTC(2031, 3, 2, 9) as Instant,
    lastAt: Date.UTC(2031, 3, 2, 9, 30) as Instant,
    ...more,
  }) as WalkCard;

function draw({
  procedures = [summary(sound)],
  walks = [] as WalkCard[],
  message = [] as string[],
  problem = null as string | null,
  takenOff = null as TakenOff | null,
} = {}) {
  const actions = {
    follow: vi.fn(),
    read: vi.fn(),
    compare: vi.fn(),
    write: vi.fn(),
    removeProcedure: vi.fn(),
    putBack: vi.fn(),
    goOn: vi.fn(),
    review: vi.fn(),
    exportWalk: vi.fn(),
    removeWalk: vi.fn(),
    join: vi.fn(),
    pick: vi.fn(),
    drop: vi.fn(),
    backUp: vi.fn(),
  } satisfies ShelfActions;
  render(
    <ShelfView
      shelf={{ procedures, walks, problem }}
      now={Date.UTC(2031, 3, 2, 9, 36) as Instant}
      actions={actions}
      message={message}
      takenOff={takenOff}
      storage={[]}
    />,
  );
  return actions;
}

it("says of a procedure how large it is, how long it takes and what the checker found", () => {
  draw();
  expect(screen.getByText(/1 steps? · planned 1:30 of 2:00/)).toBeVisible();
  expect(screen.queryByRole("button", { name: "Go on" })).toBeNull();
});

it("puts a procedure one tap from being followed", async () => {
  const actions = draw();
  await userEvent.click(screen.getByRole("button", { name: "Follow Trial" }));
  expect(actions.follow).toHaveBeenCalledExactlyOnceWith(expect.objectContaining({ title: "Trial" }), "live");
  await userEvent.click(screen.getByRole("button", { name: "Rehearse Trial" }));
  expect(actions.follow).toHaveBeenLastCalledWith(expect.anything(), "rehearsal");
  expect(screen.queryByRole("button", { name: /Take .* off/ })).toBeNull();
});

it("lets a procedure that cannot be read be read about, not followed", () => {
  draw({ procedures: [summary("{}", true)] });
  expect(screen.getByText(/cannot be read/)).toBeVisible();
  expect(screen.getByRole("button", { name: /^Follow/ })).toBeDisabled();
  expect(screen.getByRole("button", { name: /^Read/ })).toBeEnabled();
  expect(screen.getByRole("button", { name: /^Take/ })).toBeEnabled();
});

it("lets a procedure with errors be followed, and says how many there are", () => {
  const late = JSON.stringify(fileWith([step("a", "ev1", 90)], { limits: { elapsed: "PT1H" } }));
  draw({ procedures: [summary(late)] });
  expect(screen.getByText(/1 error/)).toBeVisible();
  expect(screen.getByRole("button", { name: "Follow Trial" })).toBeEnabled();
});

it("leads a running walk on and a closed one to its review", async () => {
  const actions = draw({
    walks: [walkCard({}), walkCard({ walk: "walk-2" as WalkId, phase: "closed", title: "Old" })],
  });
  const [running, closed] = within(screen.getByRole("region", { name: "Walks" })).getAllByRole("listitem");
  if (!running || !closed) throw new Error("two walks are on the shelf");
  expect(running).toHaveTextContent("running · opened 2031-04-02 09:00 UTC · last entry 6 min ago");
  await userEvent.click(within(running).getByRole("button", { name: "Go on" }));
  expect(actions.goOn).toHaveBeenCalledOnce();
  await userEvent.click(within(closed).getByRole("button", { name: "Review" }));
  expect(actions.review).toHaveBeenCalledExactlyOnceWith(expect.objectContaining({ walk: "walk-2" }));
});

it("says politely what an action came to, and what to do when the shelf cannot be read", () => {
  draw({ message: ["a.json: It cannot be used as a procedure."], problem: "the disk is gone" });
  const status = screen.getByRole("status");
  expect(status).toHaveTextContent("a.json: It cannot be used as a procedure.");
  expect(status).toHaveTextContent("The shelf could not be read: the disk is gone. Load the page again.");
});

it("offers to put back what was taken off, as it was", async () => {
  const takenOff: TakenOff = { title: "Trial", text: "{}", importedAt: 5 as Instant };
  const actions = draw({ takenOff });
  expect(screen.getByRole("status")).toHaveTextContent("“Trial” was taken off.");
  await userEvent.click(screen.getByRole("button", { name: "Put it back" }));
  expect(actions.putBack).toHaveBeenCalledWith(takenOff);
});

it("[PRA4] offers the practice walk first to whoever has no walk, as a rehearsal, and to nobody else", async () => {
  const practice = { ...summary(sound), key: PRACTICE_KEY, title: "Practice" };
  const actions = draw({ procedures: [summary(sound), practice] });
  expect(screen.getAllByRole("heading", { level: 2 })[0]).toHaveTextContent("Start here");
  await userEvent.click(screen.getByRole("button", { name: "Open the practice walk" }));
  expect(actions.follow).toHaveBeenCalledExactlyOnceWith(practice, "rehearsal");
  expect(PRACTICE_KEY).toBe(`example-${PRACTICE}`);
});

it("[PRA4] no longer offers it once there is a walk, or while it is not known", () => {
  const practice = { ...summary(sound), key: PRACTICE_KEY, title: "Practice" };
  draw({ procedures: [practice], walks: [walkCard({ phase: "closed" })] });
  expect(screen.queryByRole("heading", { name: "Start here" })).toBeNull();
  draw({ procedures: [summary(sound)], walks: [] });
  expect(screen.queryByRole("heading", { name: "Start here" })).toBeNull();
});
