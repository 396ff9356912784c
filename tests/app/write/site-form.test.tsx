import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { ListEditor } from "../../../src/app/write/list-editor.tsx";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { readProcedure } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

const SVG = btoa('<svg xmlns="http://www.w3.org/2000/svg"/>');
const PICTURES = ["ring", "deck"].map((id) => ({
  id,
  label: id,
  type: "image/svg+xml" as const,
  data: SVG,
}));
const fileOf = (more: Partial<ProcedureFile> = {}) =>
  fileWith([task("one", [step("a", "iv", 1)])], {
    format: "tetherline.procedure/2",
    places: [
      { id: "hatch", label: "Hatch", x: 0, y: 2 },
      { id: "boom", label: "Boom", x: 12, y: -3 },
    ],
    routes: [{ between: ["hatch", "boom"], length: 14, time: "PT8M" }],
    ...more,
  });

async function show(file: ProcedureFile) {
  const onChanges = vi.fn<(name: string, changes: readonly Change[]) => void>();
  render(<ListEditor file={file} onChanges={onChanges} />);
  await userEvent.selectOptions(screen.getByLabelText("List"), "pictures");
  return () => applyChanges(file, onChanges.mock.lastCall?.[1] ?? []).file;
}

describe("the picture under the map", () => {
  it("[WRT5] is laid around the places, and the procedure reads", async () => {
    const changed = await show(fileOf({ pictures: PICTURES }));
    await userEvent.click(screen.getByRole("button", { name: "Lay a picture under the map" }));
    expect(changed()?.site).toEqual({ picture: "ring", left: -1, top: 3, width: 14, height: 7 });
    expect(readProcedure(JSON.stringify(changed())).file).not.toBeNull();
  });

  it("[WRT5] is moved, exchanged and taken away, each by one gesture", async () => {
    const site = { picture: "ring", left: -1, top: 3, width: 14, height: 7 };
    const changed = await show(fileOf({ pictures: PICTURES, site }));
    await userEvent.selectOptions(screen.getByLabelText("Picture"), "deck");
    expect(changed()?.site).toEqual({ ...site, picture: "deck" });
    const width = screen.getByLabelText("Its width (m)");
    await userEvent.clear(width);
    await userEvent.type(width, "20.5");
    await userEvent.tab();
    expect(changed()?.site).toEqual({ ...site, width: 20.5 });
    await userEvent.click(screen.getByRole("button", { name: "Take out: Picture under the map" }));
    expect(changed()?.site).toBeUndefined();
  });

  it("[WRT5] is not offered where there is no picture", async () => {
    await show(fileOf());
    expect(screen.queryByText("Under the map")).toBeNull();
  });
});
