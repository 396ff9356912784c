import { fireEvent, render, screen, waitFor } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { AddPictures } from "../../../src/app/write/add-pictures.tsx";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { Change } from "../../../src/core/procedure/index.ts";
import { pictureTypeOf, readProcedure } from "../../../src/core/procedure/index.ts";
import type { GivenBytes } from "../../../src/io/browser-files/index.ts";
import { message } from "../../../src/words/index.ts";
import { fileWith, step, task } from "../../core/procedure-builder.ts";

const FILE = fileWith([task("one", [step("a", "iv", 1)])]);
const SVG = btoa('<svg xmlns="http://www.w3.org/2000/svg"/>');
const PNG = btoa("\x89PNG\r\n\x1a\n...");

async function added(...given: readonly GivenBytes[]) {
  const onChanges = vi.fn<(name: string, changes: readonly Change[]) => void>();
  render(<AddPictures file={FILE} onChanges={onChanges} pick={async () => given} />);
  fireEvent.click(screen.getByRole("button"));
  await waitFor(() =>
    expect(onChanges.mock.calls.length + screen.getByRole("status").childElementCount).toBeGreaterThan(0),
  );
  return onChanges.mock.calls;
}

describe("pictures from files", () => {
  it("[WRT5] are put in as one gesture, and the procedure reads", async () => {
    const calls = await added(
      { name: "Hatch ring.svg", data: SVG, problem: null },
      { name: "Hatch ring.png", data: PNG, problem: null },
    );
    expect(calls).toHaveLength(1);
    const applied = applyChanges(FILE, calls[0]?.[1] ?? []);
    expect(applied.file?.pictures).toEqual([
      { id: "hatch-ring", label: "Hatch ring", type: "image/svg+xml", data: SVG },
      { id: "hatch-ring-2", label: "Hatch ring", type: "image/png", data: PNG },
    ]);
    expect(readProcedure(JSON.stringify(applied.file)).file).not.toBeNull();
  });

  it("[WRT5] are left out with the reason where they are too large or no pictures", async () => {
    const calls = await added(
      { name: "large.png", data: null, problem: message("given/too-large", { most: 0.4 }) },
      { name: "notes.txt", data: btoa("no picture"), problem: null },
    );
    expect(calls).toEqual([]);
    expect(screen.getByRole("status").textContent).toMatch(/large\.png.*notes\.txt.*This is no picture/);
  });

  it("[MAP3] tell their type by what they hold", () => {
    expect(
      [SVG, PNG, btoa("\xff\xd8\xff\xe0"), btoa("RIFF....WEBP"), btoa("GIF89a"), "%"].map(pictureTypeOf),
    ).toEqual(["image/svg+xml", "image/png", "image/jpeg", "image/webp", null, null]);
  });
});
