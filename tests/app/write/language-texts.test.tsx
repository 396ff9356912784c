import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useState } from "react";
import { describe, expect, it } from "vitest";
import { ListEditor } from "../../../src/app/write/list-editor.tsx";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";

const FILE = fileWith(
  [step("open", "iv", 1, { do: "Open the door" }), step("go", "iv", 1, { do: "Go out" })],
  {
    format: "tetherline.procedure/2",
    language: "en",
    words: { fr: { open: { do: "Ouvrir", of: { do: "Open the hatch" } } } },
  },
);

let now: ProcedureFile = FILE;

function Editor({ file: first }: { readonly file: ProcedureFile }) {
  const [file, setFile] = useState(first);
  now = file;
  return (
    <ListEditor
      file={file}
      onChanges={(_name, changes) => setFile(applyChanges(file, changes).file ?? file)}
    />
  );
}

async function show(file: ProcedureFile = FILE) {
  render(<Editor file={file} />);
  await userEvent.selectOptions(screen.getByLabelText("List"), "words");
  return screen.findByRole("button", { name: "Add the language" });
}
const row = (name: string) => screen.getByRole("textbox", { name });

describe("the texts in other languages in the editor", () => {
  it("[WRD4] [WRT5] are entered row by row with keys alone, each of the author's text as it is", async () => {
    await show();
    row("open · Do").focus();
    await userEvent.keyboard("{Control>}a{/Control}Ouvrir la porte{Enter}");
    expect(now.words?.["fr"]?.["open"]).toEqual({ do: "Ouvrir la porte", of: { do: "Open the door" } });
    expect(row("go · Do")).toHaveFocus();
    await userEvent.keyboard("Sortir{Escape}");
    expect(row("go · Do")).toHaveValue("");
    await userEvent.keyboard("Sortez{Tab}");
    expect(now.words?.["fr"]?.["go"]).toEqual({ do: "Sortez", of: { do: "Go out" } });
  });

  it("[WRD4] say which are older, of what, and take it that one still holds", async () => {
    await show();
    const older = row("open · Do").closest("li") as HTMLElement;
    expect(within(older).getByText("older text")).toBeVisible();
    expect(within(older).getByText("Translated from: Open the hatch")).toBeVisible();
    await userEvent.click(within(older).getByRole("button", { name: "It still holds" }));
    expect(now.words?.["fr"]?.["open"]).toEqual({ do: "Ouvrir", of: { do: "Open the door" } });
    expect(within(older).queryByText("older text")).toBeNull();
  });

  it("[WRD4] are filtered by what is open, and a row stays while it is worked on", async () => {
    await show();
    await userEvent.type(row("go · Do"), "Sortir{Enter}");
    await userEvent.selectOptions(screen.getByLabelText("Texts shown"), "open");
    expect(screen.queryByRole("textbox", { name: "go · Do" })).toBeNull();
    await userEvent.clear(row("open · Do"));
    await userEvent.type(row("open · Do"), "Ouvrir la porte{Enter}");
    expect(row("open · Do")).toHaveValue("Ouvrir la porte");
  });

  it("[WRD4] come in a language by its tag in its usual form, and go with it; what is no tag is told", async () => {
    const add = await show();
    const tag = screen.getByLabelText("Language tag, such as fr or pt-BR");
    await userEvent.type(tag, "not a tag");
    await userEvent.click(add);
    expect(screen.getByRole("alert")).toHaveTextContent('"not a tag" is no language tag');
    await userEvent.clear(tag);
    await userEvent.type(tag, "pt-br{Enter}");
    expect(Object.keys(now.words ?? {}).toSorted()).toEqual(["fr", "pt-BR"]);
    await userEvent.type(row("open · Do"), "Abrir{Enter}");
    expect(now.words?.["pt-BR"]).toEqual({ open: { do: "Abrir", of: { do: "Open the door" } } });
    await userEvent.click(screen.getByRole("button", { name: /^Take out: português/ }));
    expect(now.words).toEqual(FILE.words);
  });
});
