import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { FragmentsPanel } from "../../../src/app/fragments/index.ts";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { FORMAT, outlineOf, parseProcedure } from "../../../src/core/procedure/index.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";

const FILE: ProcedureFile = fileWith(
  [task("one", [step("a", "ev1", 3)]), task("two", [step("c", "ev1", 3)])],
  {
    format: FORMAT,
    places: [{ id: "hatch", label: "Hatch" }],
    items: [{ id: "lamp", label: "Lamp", start: { crew: "ev1" } }],
  },
);

function show(file = FILE) {
  const onChanges = vi.fn<(changes: readonly Change[], about: string) => void>();
  render(
    <FragmentsPanel
      file={file}
      outline={outlineOf(procedureOf(file))}
      onChanges={onChanges}
      onClose={() => {}}
    />,
  );
  return onChanges;
}

const choose = (label: string, name: string) => userEvent.selectOptions(screen.getByLabelText(label), name);

async function fillHandOver() {
  await choose("Fragment", "Hand over, rev. A");
  await choose("Who gives", "EV1");
  await choose("Who takes", "EV2");
  await choose("What is handed over", "Lamp");
  await choose("Where", "Hatch");
}

describe("the panel of fragments", () => {
  it("[WRT9] puts a fragment in once every blank is filled, and says what is still empty", async () => {
    const onChanges = show();
    await choose("Fragment", "Hand over, rev. A");
    expect(screen.getByText("“Who gives” is still to be filled.")).toBeVisible();
    expect(screen.getByRole("button", { name: "Put it in" })).toBeDisabled();
    await fillHandOver();
    const minutes = screen.getByLabelText("Handing over, in minutes");
    expect(minutes).toHaveValue(2);
    await userEvent.clear(minutes);
    expect(screen.getByText("“Handing over” is still to be filled.")).toBeVisible();
    await userEvent.type(minutes, "3.5");
    await choose("It goes", "behind 1.1 Do a");
    await userEvent.click(screen.getByRole("button", { name: "Put it in" }));
    const [changes, about] = onChanges.mock.calls[0] ?? [];
    expect(about).toBe("Hand over put in");
    const { file } = applyChanges(FILE, changes ?? []);
    expect(file?.tasks[0]?.steps[1]).toMatchObject({
      do: "Hand Lamp to EV2",
      time: "PT3M30S",
      by: ["ev1", "ev2"],
    });
    expect(parseProcedure(file).findings).toEqual([]);
  });

  it("[WRT9] puts a fragment of tasks in behind a task", async () => {
    const onChanges = show();
    await choose("Fragment", "Come in through an airlock, rev. A");
    const goes = screen.getByLabelText("It goes");
    expect(within(goes).getAllByRole("option")).toHaveLength(2);
    expect(goes).toHaveDisplayValue("with its tasks behind “Task two”");
    await choose("Who comes in first", "EV1");
    await choose("Who comes in second and closes the hatch", "EV2");
    await choose("Who watches from the inside", "IV");
    await choose("The place at the hatch", "Hatch");
    await choose("It goes", "with its tasks behind “Task one”");
    await userEvent.click(screen.getByRole("button", { name: "Put it in" }));
    const { file } = applyChanges(FILE, onChanges.mock.calls[0]?.[0] ?? []);
    expect(file?.tasks.map(({ title }) => title)).toEqual([
      "Task one",
      "EV1 comes in",
      "EV2 comes in and closes the hatch",
      "Pressure back in",
      "Task two",
    ]);
    expect(parseProcedure(file).findings).toEqual([]);
  });

  it("[WRT9] offers what is here in another revision than was put in, and says when that one is not known", async () => {
    const onChanges = show();
    await fillHandOver();
    await userEvent.click(screen.getByRole("button", { name: "Put it in" }));
    const { file } = applyChanges(FILE, onChanges.mock.calls[0]?.[0] ?? []);
    const old = JSON.parse(
      JSON.stringify(file).replace(
        '"fragment":"hand-over","revision":"A"',
        '"fragment":"hand-over","revision":"0"',
      ),
    ) as ProcedureFile;
    document.body.replaceChildren();
    const onTaken = show(old);
    expect(screen.getByText(/revision 0 was put in as hand-over; revision A is here/)).toBeVisible();
    expect(screen.getByRole("note")).toHaveTextContent("undoes what was changed");
    expect(screen.getByText("Nothing would change but the revision.")).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: /^Take the changes/ }));
    expect(onTaken.mock.calls[0]?.[1]).toBe("Hand over as of revision A");
  });
});
