import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { LearnView } from "../../../src/app/learn/index.ts";
import { walksAnswersTo } from "../../../src/app/learn/walks-answers-to.ts";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import { writeLines } from "../../../src/core/log/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { flownIn, twoSteps, walkOf } from "../../core/learn/observed-walks.ts";
import { fileWith, procedureOf, step } from "../../core/procedure-builder.ts";
import { toldBy } from "./told-walks.ts";

function show(logs: readonly (readonly Entry[])[]) {
  const onSave = vi.fn();
  const onOpen = vi.fn();
  const onRenamed = vi.fn();
  const file = twoSteps();
  const { container } = render(
    <LearnView
      outline={outlineOf(procedureOf(file))}
      told={toldBy(file, logs)}
      revision="B"
      renamed={{}}
      onRenamed={onRenamed}
      onSave={onSave}
      onOpen={onOpen}
    />,
  );
  const row = (name: string) =>
    screen.getByRole("heading", { name: new RegExp(name) }).closest("li") as HTMLElement;
  return { onSave, onOpen, file, row, container };
}

const slow = [flownIn("w1", [4.5, 10]), flownIn("w2", [4.6, 11])];

describe("learning from walks", () => {
  it("[LRN4] each step has its plan, what is expected now, the weight of its walks and a mark for each", () => {
    const broken = walkOf("broken").done(["turn", 3.5]);
    broken.enter("walk.closed", { end: "terminated", reason: "" }, 9);
    const far = flownIn("far", [30, 10]);
    const { row, container } = show([
      ...slow,
      flownIn("r", [4, 9], { mode: "rehearsal" }),
      broken.entries,
      far,
    ]);
    expect(screen.getByText("4 live walks and 1 rehearsal on this device")).toBeVisible();
    const turn = within(row("Do turn"));
    expect(turn.getByText("Planned: 3 min likely, 2 min to 6 min")).toBeVisible();
    expect(turn.getByText(/^Expected now: .* eight of ten walks/)).toBeVisible();
    expect(turn.getByText(/^Weight of the walks 3\.\d$/)).toBeVisible();
    const marks = (selector: string) => row("Do turn").querySelectorAll(`.step-strip ${selector}`).length;
    expect([marks('[data-mode="live"]'), marks('[data-mode="rehearsal"]')]).toEqual([4, 1]);
    expect(marks(".step-strip-ring")).toBe(1);
    expect(row("Do stow").querySelectorAll(".step-strip-mark path")).toHaveLength(1);
    expect(container.querySelector(".step-strip")?.getAttribute("aria-hidden")).toBe("true");
  });

  it("[LRN3] what is offered is taken step by step, and becomes the changes of a revision that names its walks", async () => {
    const { onSave, row, file } = show(slow);
    const save = screen.getByRole("button", { name: "Save as revision B" });
    expect(save).toBeDisabled();
    // The steps with an offer stand first, and the others one tap away.
    expect(screen.queryByRole("heading", { name: /Do stow/ })).toBeNull();
    await userEvent.click(screen.getByRole("button", { name: "Steps with walks (2)" }));
    expect(within(row("Do stow")).queryByRole("checkbox")).toBeNull();
    await userEvent.click(within(row("Do turn")).getByRole("checkbox"));
    await userEvent.click(screen.getByRole("button", { name: "Save 1 time as revision B" }));
    const [taken] = onSave.mock.calls[0] ?? [];
    expect(taken.walks).toEqual(["w1", "w2"]);
    expect(taken.changes).toMatchObject([{ change: "turn" }]);
    expect(applyChanges(file, taken.changes).file).not.toBeNull();
  });

  it("[LRN3] what was taken can be left again", async () => {
    const { row } = show(slow);
    const take = within(row("Do turn")).getByRole("checkbox");
    await userEvent.click(take);
    await userEvent.click(take);
    expect(screen.getByRole("button", { name: "Save as revision B" })).toBeDisabled();
  });

  it("[LRN3] where plan and evidence disagree nothing is offered, and the walks are there to be opened", () => {
    const { row } = show([0.6, 9, 25].map((time, at) => flownIn(`odd${at}`, [time, 10])));
    expect(within(row("Do turn")).getByText(/^Plan and evidence disagree/)).toBeVisible();
    expect(within(row("Do turn")).getByText("3 walks")).toBeVisible();
    expect(within(row("Do turn")).queryByRole("checkbox")).toBeNull();
  });

  it("[LRN4] each walk leads to its review at that step", async () => {
    const { onOpen, row } = show(slow);
    await userEvent.click(within(row("Do turn")).getByText("2 walks"));
    await userEvent.click(within(row("Do turn")).getByRole("button", { name: /^4 min 30 s, live walk of/ }));
    expect(onOpen).toHaveBeenCalledWith("w1", "turn");
  });

  it("[LRN4] thin evidence and rehearsals alone are said to be that", () => {
    const { row } = show([
      flownIn("r1", [4, 9], { mode: "rehearsal" }),
      flownIn("r2", [4, 9], { mode: "rehearsal" }),
    ]);
    expect(
      within(row("Do turn")).getByText(/^Thin: weight of the walks 0\.7 · from rehearsals alone/),
    ).toBeVisible();
    expect(screen.getByText("2 rehearsals: no learning is shown.")).toBeVisible();
  });

  it("[LRN4] steps without walks are left out until they are asked for", async () => {
    show([walkOf("w1").done(["turn", 4.5]).entries]);
    expect(screen.queryByRole("heading", { name: /Do stow/ })).toBeNull();
    await userEvent.click(screen.getByRole("button", { name: "All steps (2)" }));
    expect(screen.getByRole("heading", { name: /Do stow/ })).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Steps with an offer (0)" }));
    expect(screen.getByText("There is none of these.")).toBeVisible();
  });

  it("[LRN4] without a walk it says so, and what to do", () => {
    show([]);
    expect(screen.getByRole("status")).toHaveTextContent(/no walk of this procedure on this device yet/);
  });

  it("[LRN6] logs of another procedure that stand among the walks tell nothing", () => {
    const other = flownIn("o", [9], { file: fileWith([step("turn", "ev1", 3)], { id: "other" }) });
    expect(toldBy(twoSteps(), [other]).compared.walks).toEqual([]);
  });

  it("[LRN2] a file that is no procedure has no answer, and the figures come before the forecasts", () => {
    const bad = fileWith([step("turn", "nobody", 3)]);
    expect([...walksAnswersTo({ file: bad, logs: [], renamed: {} })]).toEqual([null]);
    const logs = slow.map((entries) => writeLines(entries));
    const answers = [...walksAnswersTo({ file: twoSteps(), logs, renamed: {} })];
    expect(answers.map((one) => one?.scores === null)).toEqual([true, false]);
  });
});
