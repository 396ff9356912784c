import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, describe, expect, it } from "vitest";
import {
  StepAlerts,
  TextInLanguage,
  TextsContext,
  TextsField,
  TextsTurn,
  useTexts,
} from "../../../src/app/texts/index.ts";
import { languageShown } from "../../../src/app/texts/text-choice.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { fileWith, procedureOf, step } from "../../core/procedure-builder.ts";

const outlineWith = (words: ProcedureFile["words"], more: Partial<ProcedureFile> = {}) =>
  outlineOf(
    procedureOf(
      fileWith(
        [
          step("open", "iv", 1, { do: "Open the door", alerts: [{ level: "caution", text: "It is heavy" }] }),
          step("go", "iv", 1, { do: "Go out" }),
        ],
        { format: "tetherline.procedure/2", language: "en", ...(words ? { words } : {}), ...more },
      ),
    ),
  );

const WORDS: ProcedureFile["words"] = {
  ar: { open: { do: "افتح الباب", of: { do: "Open the hatch" } } },
  fr: {
    open: { do: "Ouvrir la porte", alerts: ["Elle est lourde"], of: { do: "Open the door" } },
  },
};

function Shown({ outline }: { readonly outline: ReturnType<typeof outlineWith> }) {
  const texts = useTexts(outline);
  return (
    <TextsContext value={texts}>
      <TextsField />
      <TextsTurn />
      {texts?.outline.steps.map(({ step: one }) => (
        <div key={one.id} data-testid={one.id}>
          <StepAlerts step={one} />
          <TextInLanguage list="steps" id={one.id} field="do">
            {one.do}
          </TextInLanguage>
        </div>
      ))}
    </TextsContext>
  );
}

afterEach(() => localStorage.clear());

const choose = (name: string) =>
  userEvent.selectOptions(screen.getByLabelText("Texts of the procedure"), name);
const told = (text: string | RegExp) => screen.getByText(text);

describe("the texts of a procedure", () => {
  it("[WRD4] are as written where the screens speak the author's language, and in another one when it is chosen", async () => {
    render(<Shown outline={outlineWith(WORDS)} />);
    expect(told("Open the door")).toHaveAttribute("lang", "en");
    expect(screen.queryByRole("button")).toBeNull();
    await choose("français");
    expect(told("Ouvrir la porte")).toHaveAttribute("lang", "fr");
    expect(told("Elle est lourde")).toHaveAttribute("lang", "fr");
    expect(screen.getByTestId("open")).not.toHaveTextContent("as written");
  });

  it("[WRD4] say in words what is missing and what is older than its author's, each in its own language and direction", async () => {
    render(<Shown outline={outlineWith(WORDS)} />);
    await choose("العربية");
    expect(told(/افتح الباب/)).toHaveAttribute("dir", "rtl");
    expect(screen.getByTestId("open")).toHaveTextContent("\u2068افتح الباب\u2069older text");
    expect(screen.getByTestId("open")).toHaveTextContent("It is heavyas written");
    expect(told("Go out")).toHaveAttribute("lang", "en");
    expect(told("Go out")).toHaveAttribute("dir", "ltr");
    expect(screen.getByTestId("go")).toHaveTextContent("Go outas written");
    expect(told("One text is older than the author’s, and marked.")).toBeVisible();
    expect(screen.getByText(/texts have no words for العربية yet/)).toBeVisible();
  });

  it("[WRD4] are the author's by one tap, and the others by one more", async () => {
    render(<Shown outline={outlineWith(WORDS)} />);
    await choose("français");
    await userEvent.click(screen.getByRole("button", { name: "As written" }));
    expect(told("Open the door")).toBeVisible();
    expect(screen.getByTestId("go")).toHaveTextContent("Go out");
    await userEvent.click(screen.getByRole("button", { name: "français" }));
    expect(told("Ouvrir la porte")).toBeVisible();
  });

  it("[WRD4] keep the choice on the device, and offer none where there is one language alone", async () => {
    const { unmount } = render(<Shown outline={outlineWith(WORDS)} />);
    await choose("français");
    unmount();
    render(<Shown outline={outlineWith(WORDS)} />);
    expect(told("Ouvrir la porte")).toBeVisible();
    unmount();
    const alone = render(<Shown outline={outlineWith(undefined)} />);
    expect(alone.queryByLabelText("Texts of the procedure")).toBeInTheDocument();
    expect(alone.getAllByTestId("open").at(-1)).toHaveTextContent("It is heavyOpen the door");
  });

  it.each([
    ["the screens' language", null, "fr-FR", {}, "fr"],
    ["the author's where it answers to that of the screens", null, "en-GB", { words: { "en-US": {} } }, null],
    [
      "another where the author's language is not said",
      null,
      "en-GB",
      { language: undefined, words: { en: {} } },
      "en",
    ],
    ["the chosen one", "de", "fr", {}, "de"],
    ["that of the screens where the chosen one is not there", "ja", "fr", {}, "fr"],
    ["as written where that was chosen", "", "fr", {}, null],
    ["as written where there is no other", null, "ja", {}, null],
  ])("[WRD4] are shown in %s", (_what, chosen, spoken, more, shown) => {
    const procedure = { language: "en", words: { fr: {}, de: {} }, ...more };
    expect(languageShown(procedure as never, chosen, spoken)).toBe(shown);
  });
});
