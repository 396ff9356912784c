import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { CompareView } from "../../../src/app/compare/index.ts";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { RiskModel } from "../../../src/core/plan/index.ts";
import { sampleRisk } from "../../../src/core/plan/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
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
  [task("one", [step("a", "ev1", 10), step("b", "ev2", 4)]), task("two", [step("c", ["ev1", "ev2"], 5)])],
  { limits: { elapsed: "PT20M" }, revision: "C" },
);

const compared = (name: string, file: ProcedureFile) => ({
  name,
  file,
  outline: outlineOf(procedureOf(file)),
});

function show(changes: readonly Change[], from = FILE) {
  const { file } = applyChanges(from, changes);
  if (!file) throw new Error("the changes of the test cannot be applied");
  render(<CompareView before={compared("rev. C", from)} after={compared("rev. D", file)} options={{}} />);
}

describe("two revisions compared", () => {
  it("[WRT8] names the changes by task, in the order of the later one", () => {
    show([
      { change: "c", set: { time: "PT9M" } },
      { drop: "b" },
      { head: { revision: "D" } },
      { add: step("x", "ev2", 2), behind: "a" },
    ]);
    const changes = within(screen.getByRole("region", { name: "What changed" }));
    expect(changes.getByText("4 changes.")).toBeVisible();
    expect(changes.getAllByRole("heading", { level: 3 }).map(({ textContent }) => textContent)).toEqual([
      "Outside of the tasks",
      "Task one",
      "Task two",
    ]);
    expect(changes.getByText("step c: time PT5M → PT9M")).toBeVisible();
    expect(changes.getByText("step b: dropped")).toBeVisible();
  });

  it("[WRT8] [CHG7] says what it comes to on both sides, each named", async () => {
    show([{ change: "c", set: { time: "PT12M" } }]);
    const effect = within(screen.getByRole("region", { name: "What it comes to" }));
    expect(effect.getByText("The finish comes 7 min later.")).toBeVisible();
    const rows = effect.getAllByRole("row").map(({ textContent }) => textContent);
    expect(rows[0]).toBe("rev. Crev. D");
    expect(rows.slice(1, 3)).toEqual(["FinishPET 0:15PET 0:22", "Margin5 min2 min over"]);
    expect(await effect.findByText("> 99 %")).toBeVisible();
    expect(effect.getByText("The plan runs 2 min over the elapsed limit.")).toBeVisible();
  });

  it("[WRT8] draws both timelines on one scale, with a mark on the changed steps alone", () => {
    show([{ change: "c", set: { time: "PT12M" } }, { drop: "b" }]);
    const charts = screen.getAllByRole("group", { name: /^Steps of each lane/ });
    expect(charts).toHaveLength(2);
    const ticks = charts.map((chart) => chart.querySelectorAll(".timeline-tick").length);
    expect(ticks[0]).toBe(ticks[1]);
    const marked = charts.map((chart) =>
      [...chart.querySelectorAll(".timeline-step:has(.timeline-mark)")].map((bar) =>
        bar.getAttribute("data-bar"),
      ),
    );
    expect(marked).toEqual([
      ["0 c", "1 b", "1 c"],
      ["0 c", "1 c"],
    ]);
    expect(charts[0]?.querySelector('[data-bar="1 b"]')?.getAttribute("aria-label")).toContain("taken out");
  });

  it("[WRT8] a step that is chosen in one timeline is chosen in the other", async () => {
    show([{ change: "c", set: { time: "PT12M" } }]);
    const [bar] = screen.getAllByRole("button", { name: /^1\.1, EV1: Do a/ });
    bar?.focus();
    await userEvent.keyboard("{Enter}");
    expect(screen.getAllByRole("region", { name: "Step 1.1" })).toHaveLength(2);
  });

  it("[WRT8] says that two are the same", () => {
    show([]);
    expect(screen.getByText("The two are the same.")).toBeVisible();
    expect(screen.queryByRole("table")).toBeNull();
  });

  it("[WRT8] [CHG7] says which side has no plan, and why", () => {
    show([{ change: "a", set: { after: ["c"] } }]);
    expect(screen.getByText(/There is no timeline/)).toBeVisible();
    expect(screen.getAllByText("no plan").length).toBeGreaterThan(0);
    expect(screen.getAllByRole("group", { name: /^Steps of each lane/ })).toHaveLength(1);
  });
});
