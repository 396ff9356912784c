import { fc, test } from "@fast-check/vitest";
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it } from "vitest";
import { piecesOf } from "../../../src/app/cards/card-rows.ts";
import { cardsOnSheet, lengthWithin } from "../../../src/app/cards/card-size.ts";
import { WristCards } from "../../../src/app/cards/index.ts";
import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { minute } from "../../core/log-writer.ts";
import { fileWith, procedureOf, step, task } from "../../core/procedure-builder.ts";

const FILE: ProcedureFile = fileWith(
  [
    task("fetch", [
      step("take", "ev1", 2, {
        alerts: [{ level: "caution", text: "Hot edge" }],
        check: ["Left clip", "Right clip"],
      }),
      step("ready", "ev2", 1),
      step("fit", ["ev1", "ev2"], 5, {
        records: [{ id: "turns", label: "Turns", min: 6 }],
        confirm: { by: "iv", text: "Fitted" },
        decide: { id: "bolt", ask: "Is it tight?", outcomes: ["tight", "loose"], expect: "tight" },
      }),
    ]),
    task("spare", [step("look", "ev1", 1, { when: { bolt: "loose" } })], { priority: "get-ahead" }),
  ],
  {
    format: "tetherline.procedure/2",
    revision: "B",
    crew: [
      { id: "ev1", call: "EV1", station: "outside" },
      { id: "ev2", call: "EV2", station: "outside" },
      { id: "iv", call: "IV", station: "inside" },
    ],
    contingencies: [
      {
        id: "silent",
        title: "No answer",
        when: "EV2 does not answer",
        tasks: [task("s", [step("s1", "iv", 1), step("s2", "ev1", 1)])],
      },
    ],
  },
);

function show(file: ProcedureFile = FILE) {
  const outline = outlineOf(procedureOf(file));
  const { timeline } = planOf(outline);
  render(<WristCards outline={outline} course={timeline?.course ?? null} printedAt={minute(0)} />);
}

const cardsOf = (crew: string) => screen.getAllByRole("article", { name: new RegExp(`^${crew}, card`) });
const textOf = (crew: string) =>
  cardsOf(crew)
    .map((card) => card.textContent)
    .join("\n");

describe("wrist cards", () => {
  beforeEach(() => localStorage.clear());

  it("[CRD1] have the steps of their own crew member alone, joint ones too, with the numbers of the screens", () => {
    show();
    expect(textOf("EV1")).toMatch(/1\.1 · plan 0:00.*Hot edge.*Do take.*Left clip.*Right clip/);
    expect(textOf("EV1")).toContain("1.3 · plan 0:02 · with EV2");
    expect(textOf("EV1")).toMatch(/Turns, at least 6.*IV confirms: Fitted.*Is it tight\?.*tight.*loose/);
    expect(textOf("EV1")).not.toContain("Do ready");
    expect(textOf("EV2")).toMatch(/1\.2 · plan 0:00.*Do ready.*1\.3 · plan 0:02 · with EV1/);
    expect(textOf("EV2")).not.toContain("Do take");
    expect(screen.queryByRole("article", { name: /^IV/ })).toBeNull();
  });

  it("[CRD1] have get-aheads that are not planned, branches, and contingencies with what they are for", () => {
    show();
    expect(textOf("EV1")).toContain("2 Task spare (get-ahead: only if time allows)");
    expect(textOf("EV1")).toContain("If bolt is loose:");
    expect(textOf("EV1")).toContain("C1 No answer (when: EV2 does not answer)");
    expect(textOf("EV1")).toMatch(/C1\.1\.2.*Do s2/);
    expect(textOf("EV2")).not.toContain("No answer");
  });

  it("[CRD1] say which card of how many it is, whose, and from which revision", () => {
    show();
    const [first] = cardsOf("EV1");
    expect(within(first as HTMLElement).getByText("1 of 1")).toBeVisible();
    expect(
      within(first as HTMLElement).getByText("trial, revision B, printed 2031-04-02 09:00 UTC"),
    ).toBeVisible();
  });

  it("[CRD1] are of the size that is chosen, which the device keeps; what is out of bounds is brought within them", async () => {
    show();
    await userEvent.selectOptions(screen.getByLabelText("Size"), "58 × 79 mm, 9 to a sheet");
    expect(cardsOf("EV1")[0]).toHaveStyle({ width: "58mm", height: "79mm" });
    const width = screen.getByLabelText("Width, mm");
    await userEvent.clear(width);
    await userEvent.type(width, "5000");
    await userEvent.tab();
    expect(cardsOf("EV1")[0]).toHaveStyle({ width: "186mm" });
    expect(screen.getByLabelText("Size")).toHaveDisplayValue("own size");
    expect(JSON.parse(localStorage.getItem("tetherline.card-size") ?? "")).toEqual({
      width: 186,
      height: 79,
    });
  });

  it("[CRD1] are made with a size that another version kept wrongly, and say when nobody is outside", () => {
    localStorage.setItem("tetherline.card-size", '{"width":"x"}');
    show({ ...FILE, crew: FILE.crew.map((one) => ({ ...one, station: "inside" as const })) });
    expect(screen.getByText("Nobody works outside in this procedure, so there are no cards.")).toBeVisible();
    expect(screen.getByLabelText("Height, mm")).toHaveValue(122);
  });

  it("[CRD1] stand as many to a sheet as have room", () => {
    expect(cardsOnSheet({ width: 90, height: 122 })).toEqual({ across: 2, down: 2 });
    expect(cardsOnSheet({ width: 58, height: 79 })).toEqual({ across: 3, down: 3 });
    expect(cardsOnSheet({ width: 186, height: 250 })).toEqual({ across: 1, down: 1 });
    expect(lengthWithin("", 50, 186)).toBeNull();
    expect(lengthWithin("12.4", 50, 186)).toBe(50);
    expect(lengthWithin("1e999", 50, 186)).toBeNull();
  });

  test.prop([fc.string({ unit: "grapheme", maxLength: 200 }), fc.integer({ min: 2, max: 40 })], {
    numRuns: 100,
  })("[CRD2] break a long text into rows without losing a letter", (text, letters) => {
    const pieces = piecesOf(text, letters);
    expect(pieces.join("")).toBe(text);
    for (const piece of pieces) {
      expect(piece.length).toBeLessThanOrEqual(letters);
      expect(piece).not.toMatch(/^[\uDC00-\uDFFF]/);
    }
  });
});
