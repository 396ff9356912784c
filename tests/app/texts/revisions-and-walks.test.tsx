import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { CompareView, differenceOf, droppedPlaces, MergeView } from "../../../src/app/compare/index.ts";
import { LearnView } from "../../../src/app/learn/index.ts";
import { markedInText, TextsContext, TextsField, TextsTurn, useTexts } from "../../../src/app/texts/index.ts";
import { WalksView } from "../../../src/app/walks/index.ts";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { inLanguage, outlineOf } from "../../../src/core/procedure/index.ts";
import { flownIn, timeOf } from "../../core/learn/observed-walks.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";
import { toldBy } from "../learn/told-walks.ts";

/** Chances are not what is looked at here. */
class SilentWorker extends EventTarget {
  postMessage(): void {}
  terminate(): void {}
}
beforeEach(() => {
  vi.stubGlobal("Worker", SilentWorker);
});
afterEach(() => localStorage.clear());

const FILE: ProcedureFile = fileWith(
  [
    task("one", [
      step("turn", "ev1", null, { ...timeOf(2, 3, 6), do: "Turn it" }),
      step("stow", "ev1", null, { ...timeOf(5, 10, 20), do: "Stow it" }),
    ]),
    task("two", [step("look", "ev2", 4, { do: "Look at it" })]),
  ],
  {
    format: "tetherline.procedure/2",
    language: "en",
    revision: "C",
    words: {
      fr: {
        ".": { title: "Essai" },
        "tasks one": { title: "Première" },
        "steps turn": { do: "Tourner" },
        "steps stow": { do: "Ranger" },
        "crew ev1": { call: "SV1" },
      },
    },
  },
);

function changed(changes: readonly Change[], from = FILE): ProcedureFile {
  const { file } = applyChanges(from, changes);
  if (!file) throw new Error("the changes of the test cannot be applied");
  return file;
}

const readable = (name: string, file: ProcedureFile) => ({
  name,
  file,
  text: JSON.stringify(file),
  outline: outlineOf(procedureOf(file)),
});
type Readable = ReturnType<typeof readable>;

function Compared({ before, after, base }: Record<"before" | "after", Readable> & { base?: Readable }) {
  const texts = useTexts(after.outline, markedInText, before.outline);
  return (
    <TextsContext value={texts}>
      <TextsField />
      <TextsTurn />
      <CompareView before={before} after={after} options={{}} />
      {base && (
        <MergeView base={base} ours={after} theirs={before} options={{}} revision="E" onSave={() => {}} />
      )}
    </TextsContext>
  );
}

const inFrench = () => userEvent.selectOptions(screen.getByLabelText("Texts of the procedure"), "français");
const bars = (place: number) =>
  [...(document.querySelectorAll(".timeline-chart")[place]?.querySelectorAll("[data-bar]") ?? [])].map(
    (bar) => bar.getAttribute("aria-label") ?? "",
  );

const LATER: readonly Change[] = [
  { change: "turn", set: { do: "Turn it round", time: "PT9M" } },
  { change: "stow", set: { time: "PT12M" } },
];

describe("two revisions compared in the reader's language", () => {
  it("[WRD4] [WRT8] tell tasks and steps in it, and what changed as it was written", async () => {
    render(<Compared before={readable("C", FILE)} after={readable("D", changed(LATER))} />);
    await inFrench();
    const changes = within(screen.getByRole("region", { name: "What changed" }));
    expect(changes.getByRole("heading", { name: "Première" })).toBeVisible();
    expect(changes.getByText(/^step turn: .*do Turn it → Turn it round/)).toBeVisible();
    await userEvent.click(screen.getByText("2 steps start otherwise or have another slack"));
    const effect = screen.getByRole("region", { name: "What it comes to" });
    expect(within(effect).getByRole("rowheader", { name: "1.2 Ranger" })).toBeInTheDocument();
    expect(
      within(effect).getByRole("rowheader", { name: "2.1 Look at it (as written)" }),
    ).toBeInTheDocument();
  });

  it("[WRD4] [WRT8] draw both timelines in it, with what differs as written on both sides", async () => {
    render(<Compared before={readable("C", FILE)} after={readable("D", changed(LATER))} />);
    await inFrench();
    expect(bars(0).filter((label) => label.startsWith("1.1"))[0]).toContain("Turn it (as written)");
    expect(bars(1).filter((label) => label.startsWith("1.1"))[0]).toContain("Turn it round (as written)");
    for (const side of [0, 1]) {
      expect(bars(side).filter((label) => label.startsWith("1.2"))[0]).toMatch(/SV1.*Ranger/);
      expect(bars(side).filter((label) => label.startsWith("2.1"))[0]).toContain("Look at it (as written)");
    }
  });

  it("[WRD4] are the author's by one tap, both of them", async () => {
    render(<Compared before={readable("C", FILE)} after={readable("D", changed(LATER))} />);
    await inFrench();
    await userEvent.click(screen.getByRole("button", { name: "As written" }));
    for (const side of [0, 1]) {
      expect(bars(side).join()).not.toMatch(/Ranger|as written/);
      expect(bars(side).join()).toContain("Stow it");
    }
  });

  it("[WRD4] are offered the language that only the earlier one carries, and mark the later", async () => {
    const { words: _, ...bare } = changed(LATER);
    render(<Compared before={readable("C", FILE)} after={readable("D", bare)} />);
    await inFrench();
    expect(bars(0).join()).toContain("Ranger");
    expect(bars(1).join()).toContain("Stow it (as written)");
  });

  it("[WRD4] [CHG7] find the same things new and gone in every language", async () => {
    const tight = { ...FILE, limits: { elapsed: "PT20M" } };
    render(<Compared before={readable("C", tight)} after={readable("D", changed(LATER, tight))} />);
    const findings = () =>
      [...document.querySelectorAll(".effect-findings li")].map(({ textContent }) => textContent);
    const asWritten = findings();
    expect(asWritten.length).toBeGreaterThan(0);
    await inFrench();
    expect(findings()).toEqual(asWritten);
  });

  it("[WRD4] [CHG5] merged, tell conflicts as written and the steps of what it comes to in it", async () => {
    const [ours, theirs] = [
      changed([{ change: "turn", set: { time: "PT12M", do: "Turn it round" } }]),
      changed([
        { change: "turn", set: { do: "Turn it slowly" } },
        { change: "stow", set: { time: "PT30M" } },
      ]),
    ];
    render(
      <Compared before={readable("D", theirs)} after={readable("C", ours)} base={readable("B", FILE)} />,
    );
    await inFrench();
    const conflict = within(screen.getByRole("group", { name: "step turn: do" }));
    expect(conflict.getByText("Turn it round")).toBeVisible();
    await userEvent.click(conflict.getByRole("radio", { name: /Turn it slowly/ }));
    expect(screen.getByRole("heading", { name: "What it comes to against C" })).toBeVisible();
    const shifted = screen.getByText("One step starts otherwise or has another slack").closest("details");
    expect(shifted).toHaveTextContent("2.1 Look at it (as written)");
  });

  it("[WRD4] [WRT8] strike through what was taken out in it", () => {
    const after = changed([{ drop: "stow" }]);
    const { procedure } = inLanguage(procedureOf(FILE), "fr", markedInText, procedureOf(after));
    expect(droppedPlaces(differenceOf(FILE, after), procedure).get("turn")).toEqual([
      { id: "stow", action: "Ranger", calls: ["SV1"] },
    ]);
  });
});

const WALKS = [0, 1, 2].map((at) => flownIn(`w${at}`, [4.5 + at / 10, 10, 4], { file: FILE }));
const REHEARSED = [0, 1, 2].map((at) =>
  flownIn(`r${at}`, [1.5 + at / 10, 10, 4], { file: FILE, mode: "rehearsal" }),
);

function OfWalks({ as, file = FILE }: { readonly as: "walks" | "learn"; readonly file?: ProcedureFile }) {
  const outline = outlineOf(procedureOf(file));
  const texts = useTexts(outline, markedInText);
  const told = toldBy(file, [...WALKS, ...REHEARSED]);
  const shown = { outline: texts?.outline ?? outline, told, onOpen: () => {} };
  return (
    <TextsContext value={texts}>
      <TextsField />
      {as === "walks" ? (
        <WalksView {...shown} />
      ) : (
        <LearnView {...shown} revision="D" renamed={{}} onRenamed={() => {}} onSave={() => {}} />
      )}
    </TextsContext>
  );
}

describe("walks in the reader's language", () => {
  it("[WRD4] [CMP1] name steps and crew in it, in its own tongue, and mark what is missing", async () => {
    render(<OfWalks as="walks" />);
    await inFrench();
    expect(screen.getByRole("heading", { name: "1.1 Tourner" }).querySelector("[lang=fr]")).not.toBeNull();
    expect(screen.getByRole("heading", { name: "2.1 Look at it (as written)" })).toBeVisible();
    expect(screen.getByRole("region", { name: "Two groups" })).toHaveTextContent(/1\.1 Tourner: /);
    expect(screen.queryByText(/Turn it|Stow it/)).toBeNull();
  });

  it("[WRD4] [LRN4] tell of each step in it", async () => {
    render(<OfWalks as="learn" />);
    await inFrench();
    await userEvent.click(screen.getByRole("button", { name: /^All steps/ }));
    const row = screen.getByRole("heading", { name: "1.2 Ranger" }).closest("li");
    expect(row).toHaveTextContent("SV1");
    expect(screen.queryByText(/Turn it|Stow it/)).toBeNull();
  });

  it("[WRD4] [LRN6] name a step of an earlier revision as it was written, and those of this one in it", async () => {
    const renamed = changed([{ rename: "stow", to: "stow-away" }]);
    render(<OfWalks as="learn" file={renamed} />);
    await inFrench();
    const field = screen.getByRole("combobox", { name: /Stow it \(as written\)/ });
    expect(within(field).getByRole("option", { name: /Ranger/ })).toBeInTheDocument();
  });
});
