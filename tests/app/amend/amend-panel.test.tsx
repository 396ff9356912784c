import { render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { AmendmentDraft } from "../../../src/app/amend/index.ts";
import { AmendPanel, bringing, fitted, NO_DRAFT } from "../../../src/app/amend/index.ts";
import type { Change } from "../../../src/core/procedure/index.ts";
import type { TaskId } from "../../../src/core/units/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";
import { SilentWorker } from "../silent-worker.ts";

const FILE = fileWith(
  [
    task("work", [step("a", "ev1", 10), step("b", "ev1", 10), step("c", "ev2", 5, { after: ["b"] })]),
    task("tidy", [step("d", "ev1", 10), step("e", "ev2", 5)]),
    task("spare", [step("photos", "ev2", 5)], { priority: "get-ahead" }),
  ],
  {
    limits: { elapsed: "PT50M" },
    contingencies: [{ id: "stuck", title: "Bolt stuck", tasks: [task("free-it", [step("pry", "ev1", 15)])] }],
    windows: [{ id: "pass", label: "Pass", kind: "listed", spans: [{ from: "PT5M", to: "PT30M" }] }],
  },
);

const log = LogWriter.started(FILE).done(["a", 12]);

/** The panel at PET 15 min, when `b` is in work; what is entered is kept. */
function show(first: Partial<AmendmentDraft> = {}, from: LogWriter = log) {
  const onAmend = vi.fn(async (_changes: readonly Change[], _reason: string) => {});
  const onClose = vi.fn();
  render(
    <AmendPanel
      state={walkStateAt(from.ledger, minute(15))}
      now={minute(15)}
      risk={null}
      first={{ ...NO_DRAFT, ...first }}
      onAmend={onAmend}
      onClose={onClose}
    />,
  );
  return { onAmend, onClose };
}

const open = (title: string) => userEvent.click(screen.getByText(title, { selector: "summary" }));
const section = (title: string) =>
  within(screen.getByText(title, { selector: "summary" }).closest("details") as HTMLElement);
const button = (name: string | RegExp) => screen.getByRole("button", { name });
const valuesOf = (row: string) =>
  within(screen.getByRole("row", { name: new RegExp(`^${row}`) }))
    .getAllByRole("cell")
    .map(({ textContent }) => textContent);

/** Samples are taken by a worker, which is not there under test. */
beforeEach(() => {
  vi.stubGlobal("Worker", SilentWorker);
  return () => vi.unstubAllGlobals();
});

describe("amending the plan of a running walk", () => {
  it("[AMD3] shows what it would come to beside what the walk comes to now, and enters it with its reason", async () => {
    const { onAmend, onClose } = show();
    expect(screen.queryByRole("table")).toBeNull();
    await open("A task");
    await userEvent.selectOptions(section("A task").getByLabelText("Task"), "Task tidy");
    await userEvent.click(button("Take the task out"));
    expect(screen.getByText("Task tidy: taken out")).toBeVisible();
    expect(valuesOf("Finish")).toEqual(["0:32", "0:27"]);
    expect(screen.getByText("The finish comes 5 min earlier.")).toBeVisible();
    expect(button("Enter the amendment")).toBeDisabled();
    await userEvent.type(screen.getByLabelText("Why"), " Short of light ");
    await waitFor(() => expect(button("Enter the amendment")).toBeEnabled());
    await userEvent.click(button("Enter the amendment"));
    expect(onAmend).toHaveBeenCalledExactlyOnceWith([{ drop: "tidy", list: "tasks" }], "Short of light");
    expect(onClose).toHaveBeenCalledOnce();
  });

  it("[AMD1] says why something cannot be entered, and enters nothing then", async () => {
    show({ wishes: [{ says: "b out", changes: [{ drop: "b" }] }], reason: "no" });
    expect(await screen.findByRole("alert")).toHaveTextContent(/^This cannot be entered: "b" has begun/);
    expect(screen.queryByRole("button", { name: "Enter the amendment" })).toBeNull();
    await userEvent.click(button("Leave it as it was: b out"));
    expect(screen.queryByRole("alert")).toBeNull();
  });

  it("[AMD3] takes a second tap for what is grave, after it was read", async () => {
    const { onAmend } = show({ reason: "slow" });
    await open("A step");
    const steps = section("A step");
    await userEvent.selectOptions(steps.getByLabelText("Step"), "2.1 Do d");
    const time = steps.getByLabelText("Takes, in minutes");
    await userEvent.clear(time);
    await userEvent.type(time, "40");
    await userEvent.click(button("Give it this time"));
    await waitFor(() => expect(button("Enter the amendment")).toBeEnabled());
    await userEvent.click(button("Enter the amendment"));
    expect(onAmend).not.toHaveBeenCalled();
    expect(screen.getByRole("alert")).toHaveTextContent(/limit/);
    await userEvent.click(button("Enter it all the same"));
    expect(onAmend).toHaveBeenCalledExactlyOnceWith(
      [{ change: "d", set: { time: expect.objectContaining({ likely: "PT40M" }) } }],
      "slow",
    );
  });

  it("[AMD1] gives a step to others, puts it elsewhere, adds one, shifts a window and swaps two people", async () => {
    const { onAmend } = show({ reason: "all at once" });
    await open("A step");
    const steps = section("A step");
    await userEvent.selectOptions(steps.getByLabelText("Step"), "1.3 Do c");
    await userEvent.click(steps.getByRole("checkbox", { name: "IV" }));
    await userEvent.click(button("Give it to them"));
    await open("A window");
    await userEvent.type(section("A window").getByLabelText(/^Minutes later/), "10");
    await userEvent.click(button("Shift it"));
    await open("A task");
    await userEvent.selectOptions(section("A task").getByLabelText("Task"), "Task tidy");
    await userEvent.click(button("Swap them in this task"));
    await open("A new step");
    const fresh = section("A new step");
    await userEvent.type(fresh.getByLabelText("What is to be done"), "Look at the seal");
    expect(button("Add the step")).toBeDisabled();
    await userEvent.click(fresh.getByRole("checkbox", { name: "EV2" }));
    await userEvent.click(button("Add the step"));
    await waitFor(() => expect(button(/^Enter/)).toBeEnabled());
    await userEvent.click(button("Enter the amendment"));
    if (screen.queryByRole("button", { name: "Enter it all the same" }))
      await userEvent.click(button("Enter it all the same"));
    expect(onAmend.mock.calls[0]?.[0]).toEqual([
      { change: "c", set: { by: ["ev2", "iv"] } },
      { change: "pass", list: "windows", set: { spans: [{ from: "PT15M", to: "PT40M" }] } },
      { change: "d", set: { by: ["ev2"] } },
      { change: "e", set: { by: ["ev1"] } },
      { add: { id: "added-900", by: ["ev2"], do: "Look at the seal", time: "PT5M" }, behind: "b" },
    ]);
  });

  it("[AMD3] goes on with the walk while it is open", async () => {
    const slow = { changes: [{ change: "d", set: { time: "PT11M" } }], says: "d longer" };
    // Nothing is entered meanwhile: the ledger is the same.
    const { ledger } = log;
    const at = (minutes: number) => (
      <AmendPanel
        state={walkStateAt(ledger, minute(minutes))}
        now={minute(minutes)}
        risk={null}
        first={{ ...NO_DRAFT, wishes: [slow], reason: "slow" }}
        onAmend={vi.fn()}
        onClose={vi.fn()}
      />
    );
    const { rerender } = render(at(15));
    await waitFor(() => expect(button("Enter the amendment")).toBeEnabled());
    expect(valuesOf("Finish")).toEqual(["0:32", "0:33"]);
    rerender(at(30));
    await waitFor(() => expect(valuesOf("Finish")).toEqual(["0:40", "0:41"]));
  });

  it("[AMD1] offers no step that is done or in work", async () => {
    show();
    await open("A step");
    const names = within(section("A step").getByLabelText("Step")).getAllByRole("option");
    expect(names.map(({ textContent }) => textContent)).toEqual([
      "1.3 Do c",
      "2.1 Do d",
      "2.2 Do e",
      "3.1 Do photos",
    ]);
  });

  it("[FIT4] makes a plan of what fits only when it is entered", async () => {
    const { outline } = log.ledger.inForce;
    const wishes = fitted(outline, { keep: ["spare" as TaskId], out: ["tidy" as TaskId] });
    const { onAmend } = show({ wishes, reason: "" });
    expect(screen.getByText("Task spare: counts as essential, so that it is done")).toBeVisible();
    expect(screen.getByText("Task tidy: taken out")).toBeVisible();
    expect(onAmend).not.toHaveBeenCalled();
  });
});

describe("a contingency", () => {
  it("[AMD1] is brought in by two taps, behind what is in hand", async () => {
    const [stuck] = log.ledger.inForce.outline.procedure.contingencies;
    const wish = stuck && bringing(log.ledger, stuck, minute(15));
    const { onAmend } = show({ wishes: wish ? [wish] : [], reason: "Bolt stuck" });
    expect(screen.getByText("Bolt stuck: brought in behind 1.2 Do b")).toBeVisible();
    expect(valuesOf("Finish")).toEqual(["0:32", "0:47"]);
    await waitFor(() => expect(button("Enter the amendment")).toBeEnabled());
    await userEvent.click(button("Enter the amendment"));
    expect(onAmend).toHaveBeenCalledOnce();
    expect(onAmend.mock.calls[0]?.[0]).toContainEqual({ bring: "stuck", behind: "b" });
  });

  it("[AMD1] is taken out again by one tap, with its effect", async () => {
    const [stuck] = log.ledger.inForce.outline.procedure.contingencies;
    const changes = (stuck && bringing(log.ledger, stuck, minute(15))?.changes) ?? [];
    const brought = LogWriter.started(FILE)
      .done(["a", 12])
      .enter("plan.amended", { changes, reason: "Bolt stuck", needs: 2 }, 14);
    show({}, brought);
    await open("A contingency");
    await userEvent.click(button("Back to the plan: Bolt stuck"));
    expect(screen.getByText("Bolt stuck: what is not begun of it is taken out again")).toBeVisible();
    expect(valuesOf("Finish")).toEqual(["0:47", "0:32"]);
  });
});
