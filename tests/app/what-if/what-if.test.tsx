import { fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { WhatIf } from "../../../src/app/what-if/index.ts";
import { checkOutline } from "../../../src/core/check/index.ts";
import type { RiskModel } from "../../../src/core/plan/index.ts";
import { planOf, sampleRisk } from "../../../src/core/plan/index.ts";
import type { Outline, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { inLanguage, outlineOf, parseProcedure } from "../../../src/core/procedure/index.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";

/** Answers as the worker does, in this process. */
class WorkerInProcess extends EventTarget {
  postMessage({ model, seed }: { model: RiskModel; seed: number }): void {
    const data = sampleRisk(model, 200, seed);
    queueMicrotask(() => this.dispatchEvent(new MessageEvent("message", { data })));
  }
  terminate(): void {}
}
beforeEach(() => {
  vi.stubGlobal("Worker", WorkerInProcess);
});

const FILE: ProcedureFile = fileWith(
  [
    task("one", [step("long", "ev1", 10), step("short", "ev2", 4)]),
    task("two", [step("both", ["ev1", "ev2"], 5), step("last", "ev1", 3)]),
  ],
  { limits: { elapsed: "PT20M" }, revision: "C" },
);
const outline = outlineOf(procedureOf(FILE));
const plan = planOf(outline);
const findings = checkOutline(outline);
const options = {};
const asWritten = (one: Outline): Outline => one;

function show() {
  const onSave = vi.fn<(file: ProcedureFile) => void>();
  render(
    <WhatIf
      file={FILE}
      plan={plan}
      options={options}
      findings={findings}
      show={asWritten}
      revision="D"
      onSave={onSave}
    >
      <p>between</p>
    </WhatIf>,
  );
  return onSave;
}

const panel = () => within(screen.getByRole("region", { name: "What if" }));
const outcome = () => screen.getByText(/^In the file: finish/).closest("div");
const saveButton = () => panel().getByRole("button", { name: "Save as revision D" });
/** Chooses a step of EV1's lane, so many behind the first. */
const choose = (behind: number) => {
  const [bar] = screen.getAllByRole("button", { name: /^1\.1, EV1: Do long/ });
  bar?.focus();
  return userEvent.keyboard(behind === 0 ? "{Enter}" : "{ArrowRight}".repeat(behind));
};

describe("what if", () => {
  it("[PLN1] says the finish of the file, and offers nothing to save while nothing is tried", () => {
    show();
    expect(outcome()).toHaveTextContent("In the file: finish 0:18 · 2 min margin");
    expect(outcome()).not.toHaveTextContent("Tried");
    expect(saveButton()).toBeDisabled();
    expect(screen.getByText("between")).toBeVisible();
  });

  it("[PLN1] a task left out moves the finish at once; the file is not touched", async () => {
    const onSave = show();
    const before = structuredClone(FILE);
    await userEvent.click(panel().getByRole("checkbox", { name: /Task one/ }));
    expect(outcome()).toHaveTextContent("Tried: finish 0:08 (10 min earlier) · 12 min margin");
    expect(panel().getByText(/^Tried: “Task one” is left out\.$/)).toBeVisible();
    expect(onSave).not.toHaveBeenCalled();
    expect(FILE).toEqual(before);
    await userEvent.click(panel().getByRole("button", { name: "Back to the file" }));
    expect(outcome()).not.toHaveTextContent("Tried");
    expect(saveButton()).toBeDisabled();
  });

  it("[PLN1] [CHK1] a longer duration moves finish, margin and findings", async () => {
    show();
    await choose(0);
    fireEvent.change(panel().getByRole("slider", { name: /^Takes/ }), {
      target: { value: String(15 * 60_000) },
    });
    expect(panel().getByRole("slider", { name: /^Takes/ })).toHaveAttribute("aria-valuetext", "15 min");
    expect(outcome()).toHaveTextContent("Tried: finish 0:23 (5 min later) · 3 min over");
    expect(await panel().findByRole("heading", { name: "New findings" })).toBeVisible();
    expect(panel().getByText(/over the elapsed limit/)).toBeVisible();
  });

  it("[PLN1] somebody else does a step", async () => {
    show();
    await choose(2);
    await userEvent.click(panel().getByRole("radio", { name: "EV2" }));
    expect(outcome()).toHaveTextContent("Tried: finish 0:18 (the same)");
    expect(panel().getByText(/2\.2 is done by EV2/)).toBeVisible();
  });

  it("[PLN1] hands over the changed procedure, which can be read, to be saved as the revision that is free", async () => {
    const onSave = show();
    await choose(0);
    fireEvent.change(panel().getByRole("slider", { name: /^Takes/ }), {
      target: { value: String(12 * 60_000) },
    });
    await userEvent.click(saveButton());
    const saved: unknown = onSave.mock.calls[0]?.[0];
    const { procedure } = parseProcedure(saved);
    expect(procedure?.revision).toBe("C");
    expect(procedure?.tasks[0]?.steps[0]?.time?.likely).toBe(12 * 60_000);
    expect(FILE.revision).toBe("C");
  });

  it("[CHG1] [PLN1] a task is tried behind another, and two people the other way round in one", async () => {
    show();
    await userEvent.selectOptions(panel().getByRole("combobox", { name: "Move the task" }), "1 Task one");
    await userEvent.selectOptions(panel().getByRole("combobox", { name: "To stand" }), "2 Task two");
    await userEvent.click(panel().getByRole("button", { name: "Move it there" }));
    expect(panel().getByText(/^Tried: “Task one” stands behind “Task two”\.$/)).toBeVisible();
    await userEvent.selectOptions(panel().getByRole("combobox", { name: "In the task" }), "1 Task one");
    await userEvent.click(panel().getByRole("button", { name: "Swap them" }));
    expect(panel().getByText(/EV1 and EV2 change places in “Task one”/)).toBeVisible();
    await userEvent.click(panel().getByRole("button", { name: "Swap them" }));
    expect(panel().queryByText(/change places/)).toBeNull();
    await userEvent.selectOptions(panel().getByRole("combobox", { name: "The other one" }), "EV1");
    expect(panel().getByRole("button", { name: "Swap them" })).toBeDisabled();
    // This file has no windows.
    expect(panel().queryByText("Windows earlier or later")).toBeNull();
  });

  it("[CHG1] [PLN1] a window is tried so many minutes later", async () => {
    const file = fileWith([step("call", "ev1", 5, { within: ["pass"] })], {
      windows: [
        { id: "pass", label: "Pass", kind: "listed", spans: [{ from: "PT10M", to: "PT30M" }] },
        { id: "day", kind: "daylight" },
      ],
    });
    const own = outlineOf(procedureOf(file));
    render(
      <WhatIf
        file={file}
        plan={planOf(own)}
        options={{}}
        findings={checkOutline(own)}
        show={asWritten}
        revision="B"
        onSave={() => {}}
      >
        <p>between</p>
      </WhatIf>,
    );
    const field = panel().getByRole("spinbutton", { name: /^Pass, minutes later/ });
    fireEvent.change(field, { target: { value: "12" } });
    expect(outcome()).toHaveTextContent("Tried: finish 0:27 (12 min later)");
    expect(panel().getByText(/Pass comes 12 min later/)).toBeVisible();
    fireEvent.change(field, { target: { value: "-8" } });
    expect(outcome()).toHaveTextContent("Tried: finish 0:07 (8 min earlier)");
    fireEvent.change(field, { target: { value: "9999" } });
    expect(field).toHaveValue(-8);
    expect(panel().getByText(/move with the start/)).toBeVisible();
  });

  it("[WRD4] [CHG1] is shown in the reader's language, and saves the file as its author wrote it", async () => {
    const file: ProcedureFile = {
      ...FILE,
      format: "tetherline.procedure/2",
      language: "en",
      words: { fr: { "steps long": { do: "Faire long" }, one: { title: "Première tâche" } } },
    };
    const own = outlineOf(procedureOf(file));
    const inFrench = (one: Outline) => outlineOf(inLanguage(one.procedure, "fr").procedure);
    const french = inFrench(own);
    const onSave = vi.fn<(file: ProcedureFile) => void>();
    render(
      <WhatIf
        file={file}
        plan={planOf(own)}
        options={{}}
        findings={checkOutline(own)}
        show={(one) => (one === own ? french : inFrench(one))}
        revision="D"
        onSave={onSave}
      >
        <p>between</p>
      </WhatIf>,
    );
    expect(screen.getByRole("button", { name: /^1\.1, EV1: Faire long/ })).toBeVisible();
    await userEvent.click(panel().getByRole("checkbox", { name: "2 Task two" }));
    expect(screen.getByRole("button", { name: /^1\.1, EV1: Faire long/ })).toBeVisible();
    await userEvent.click(saveButton());
    expect(onSave.mock.calls[0]?.[0].tasks).toEqual([file.tasks[0]]);
    expect(onSave.mock.calls[0]?.[0].words).toEqual(file.words);
  });

  it("[CHK4] all tasks left out: no plan, and still the way back", async () => {
    show();
    for (const name of [/Task one/, /Task two/])
      await userEvent.click(panel().getByRole("checkbox", { name }));
    expect(outcome()).toHaveTextContent("Tried: finish none");
    expect(saveButton()).toBeDisabled();
    await userEvent.click(panel().getByRole("button", { name: "Back to the file" }));
    expect(outcome()).not.toHaveTextContent("Tried");
  });

  it("[PLN5] the probability of staying within the limit comes from the worker", async () => {
    show();
    const words = "In the file: finish 0:18 · 2 min margin · > 99 % within the limit";
    await waitFor(() => expect(outcome()).toHaveTextContent(words));
  });

  it("[PLN1] everybody slower is told with what it comes to", async () => {
    show();
    fireEvent.change(panel().getByRole("slider", { name: "Everything takes 100 % of its time" }), {
      target: { value: "150" },
    });
    expect(outcome()).toHaveTextContent("Tried: finish 0:27 (9 min later) · 7 min over");
    expect(panel().getByText(/^Tried: Everything takes 150 % of its time\.$/)).toBeVisible();
  });
});
