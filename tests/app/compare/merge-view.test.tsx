import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { MergeView } from "../../../src/app/compare/index.ts";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { RevisionNote } from "../../../src/io/store/index.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";
import { SilentWorker } from "../silent-worker.ts";

/** The chance is not what is looked at here. */
beforeEach(() => {
  vi.stubGlobal("Worker", SilentWorker);
});

const BASE = fileWith([task("one", [step("a", "ev1", 10), step("b", "ev2", 4), step("c", "ev1", 3)])], {
  revision: "A",
});

function changed(changes: readonly Change[]): ProcedureFile {
  const { file } = applyChanges(BASE, changes);
  if (!file) throw new Error("the changes of the test cannot be applied");
  return file;
}

const side = (name: string, file: ProcedureFile) => ({
  name,
  file,
  text: `${JSON.stringify(file, null, 2)}\n`,
  outline: outlineOf(procedureOf(file)),
});

function show(ours: readonly Change[], theirs: readonly Change[]) {
  const onSave = vi.fn<(text: string, note: RevisionNote) => void>();
  render(
    <MergeView
      base={side("rev. A", BASE)}
      ours={side("rev. B", changed([{ head: { revision: "B" } }, ...ours]))}
      theirs={side("rev. C", changed([{ head: { revision: "C" } }, ...theirs]))}
      options={{}}
      revision="D"
      onSave={onSave}
    />,
  );
  return onSave;
}

const timesIn = (text: string | undefined) =>
  (JSON.parse(text ?? "{}") as ProcedureFile).tasks[0]?.steps.map(({ id, time }) => `${id} ${time}`);

describe("three revisions merged", () => {
  it("[WRT8] what fits together is saved as a revision of its own, with who and why", async () => {
    const onSave = show([{ change: "a", set: { time: "PT12M" } }], [{ change: "b", set: { time: "PT6M" } }]);
    expect(screen.getByText("Both fit together: nothing has to be decided.")).toBeVisible();
    const save = screen.getByRole("button", { name: "Save as revision D" });
    expect(save).toBeDisabled();
    await userEvent.type(screen.getByRole("textbox", { name: "Who saves it" }), "Ground, K. Lind");
    await userEvent.click(save);
    const [text, note] = onSave.mock.calls[0] ?? [];
    expect(timesIn(text)).toEqual(["a PT12M", "b PT6M", "c PT3M"]);
    expect(JSON.parse(text ?? "").revision).toBe("D");
    expect(note).toEqual({ by: "Ground, K. Lind", why: "rev. B and rev. C merged" });
  });

  it("[WRT8] [CHG5] a conflict stands with all three, each named, and nothing is chosen", async () => {
    show([{ change: "a", set: { time: "PT12M" } }], [{ change: "a", set: { time: "PT15M" } }]);
    expect(screen.getByRole("status")).toHaveTextContent("One thing is left to be decided.");
    const conflict = within(screen.getByRole("group", { name: "step a: time" }));
    expect(conflict.getByText("Not decided yet")).toBeVisible();
    const choices = conflict.getAllByRole<HTMLInputElement>("radio");
    expect(choices.map(({ checked }) => checked)).toEqual([false, false, false]);
    expect(choices.map(({ labels }) => labels?.[0]?.textContent)).toEqual([
      "rev. BPT12M",
      "rev. CPT15M",
      "As before: rev. APT10M",
    ]);
    expect(screen.queryByRole("button", { name: /^Save/ })).toBeNull();
  });

  it("[WRT8] what was chosen can be chosen otherwise until it is saved", async () => {
    const onSave = show([{ change: "a", set: { time: "PT12M" } }], [{ change: "a", set: { time: "PT15M" } }]);
    await userEvent.click(screen.getByRole("radio", { name: /rev\. B/ }));
    expect(screen.getByRole("status")).toHaveTextContent("Everything is decided.");
    await userEvent.click(screen.getByRole("radio", { name: /rev\. C/ }));
    await userEvent.type(screen.getByRole("textbox", { name: "Who saves it" }), "Ground");
    await userEvent.click(screen.getByRole("button", { name: "Save as revision D" }));
    expect(timesIn(onSave.mock.calls[0]?.[0])?.[0]).toBe("a PT15M");
  });

  it("[WRT8] [CHG5] a merged procedure that cannot be read says why and is not saved", () => {
    show([{ drop: "a" }], [{ change: "c", set: { after: ["a"] } }]);
    expect(screen.getByRole("alert")).toHaveTextContent("cannot be read as it stands");
    expect(screen.getByRole("alert")).toHaveTextContent('There is no step "a"');
    expect(screen.queryByRole("button", { name: /^Save/ })).toBeNull();
  });

  it("[WRT8] the checker looks at the merged procedure again", () => {
    show([{ change: "b", set: { after: ["c"] } }], [{ change: "c", set: { after: ["b"] } }]);
    expect(screen.getByText(/Error/)).toBeVisible();
  });
});
