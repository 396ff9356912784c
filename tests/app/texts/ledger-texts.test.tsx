import { render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { AmendPanel, NO_DRAFT } from "../../../src/app/amend/index.ts";
import { HandoverSheet } from "../../../src/app/print/index.ts";
import { markedInText, TextsContext, TextsField, useFoldedTexts } from "../../../src/app/texts/index.ts";
import type { Change } from "../../../src/core/procedure/index.ts";
import { handoverOf } from "../../../src/core/review/index.ts";
import { walkStateAt } from "../../../src/core/walk/index.ts";
import { LogWriter, minute } from "../../core/log-writer.ts";
import { fileWith, step } from "../../core/procedure-builder.ts";
import { SilentWorker } from "../silent-worker.ts";

const FILE = fileWith(
  [
    step("vent", "ev1", 10, { do: "Vent it", confirm: { by: "ev2", text: "It is vented" } }),
    step("look", "ev2", 5, { do: "Look at it" }),
    step("turn", ["ev1", "ev2"], 20, { do: "Turn it", confirm: { by: "ev1", text: "It turns" } }),
  ],
  {
    format: "tetherline.procedure/2",
    language: "en",
    words: {
      fr: {
        "steps vent": { do: "Purger", confirm: "Purgé" },
        "steps turn": { do: "Tourner", confirm: "Cela tourne" },
      },
    },
  },
);

const log = LogWriter.started(FILE).enter("note.made", { text: "Vent it sounds odd" }, 2).done(["look", 5]);

function Handed({ writer }: { readonly writer: LogWriter }) {
  const { folded, texts } = useFoldedTexts(writer.folded, markedInText);
  if (!folded.ledger) return null;
  const handover = handoverOf(walkStateAt(folded.ledger, minute(6)), folded);
  return (
    <TextsContext value={texts}>
      <TextsField />
      <HandoverSheet
        handover={handover}
        device="iv-tablet"
        onAgain={() => {}}
        onPaper={() => {}}
        onFollow={() => {}}
      />
    </TextsContext>
  );
}

function Amended({ onAmend }: { readonly onAmend: (changes: readonly Change[]) => Promise<void> }) {
  const { folded, texts } = useFoldedTexts(log.folded);
  return (
    <TextsContext value={texts}>
      <TextsField />
      {folded.ledger && (
        <AmendPanel
          state={walkStateAt(log.ledger, minute(6))}
          now={minute(6)}
          risk={null}
          first={NO_DRAFT}
          onAmend={onAmend}
          onClose={() => {}}
        />
      )}
    </TextsContext>
  );
}

const inFrench = () => userEvent.selectOptions(screen.getByLabelText("Texts of the procedure"), "français");

/** Samples are taken by a worker, which is not there under test. */
beforeEach(() => {
  vi.stubGlobal("Worker", SilentWorker);
  return () => vi.unstubAllGlobals();
});

afterEach(() => localStorage.clear());

describe("the texts of a walk", () => {
  it("[WRD4] are in the language that was chosen on its other screens too, and one that is missing says so", async () => {
    render(<Handed writer={log} />);
    expect(screen.getAllByText(/1\.1 Vent it/).length).toBeGreaterThan(0);
    await inFrench();
    expect(screen.getAllByText(/1\.1 Purger/).length).toBeGreaterThan(0);
    expect(screen.getAllByText(/1\.2 Look at it \(as written\)/).length).toBeGreaterThan(0);
    await userEvent.click(screen.getByRole("button", { name: /as written/i }));
    expect(screen.getAllByText(/1\.1 Vent it/).length).toBeGreaterThan(0);
  });

  it("[WRD4] [AMD1] are shown where a plan is amended, and what is entered has the author's", async () => {
    const onAmend = vi.fn(async (_changes: readonly Change[]) => {});
    render(<Amended onAmend={onAmend} />);
    await inFrench();
    await userEvent.click(screen.getByText("A step", { selector: "summary" }));
    expect(screen.getAllByRole("option", { name: /1\.3 Tourner/ }).length).toBeGreaterThan(0);
    await userEvent.click(screen.getByText("A task", { selector: "summary" }));
    await userEvent.click(screen.getByRole("button", { name: "Swap them in this task" }));
    await userEvent.type(screen.getByRole("textbox", { name: /why|reason/i }), "EV1 is tired");
    await waitFor(() => expect(screen.getByRole("button", { name: /^Enter/ })).toBeEnabled());
    await userEvent.click(screen.getByRole("button", { name: /^Enter/ }));
    const [changes] = onAmend.mock.calls[0] ?? [];
    expect(JSON.stringify(changes)).toContain("It turns");
    expect(JSON.stringify(changes)).not.toContain("Cela tourne");
  });
});
