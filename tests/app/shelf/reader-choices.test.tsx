import { render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, expect, it } from "vitest";
import { Spoken } from "../../../src/app/language/index.ts";
import { chooseUnits, unitsInForce } from "../../../src/app/language/units-in-force.ts";
import { type ShelfActions, ShelfView } from "../../../src/app/shelf/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";

const shelf = { walks: [], procedures: [], problem: null };
const draw = () =>
  render(
    <Spoken>
      <ShelfView shelf={shelf} now={0 as Instant} actions={{} as ShelfActions} message={[]} storage={[]} />
    </Spoken>,
  );
const button = () => screen.getByRole("button", { name: "Language and display" });

afterEach(() => chooseUnits("written"));

it("[WRD3] [WRD5] [WRD6] what a reader may choose is behind one button, and stays open while it is chosen", async () => {
  draw();
  expect(button()).toHaveAttribute("aria-expanded", "false");
  expect(screen.queryByLabelText("Units")).toBeNull();
  await userEvent.click(button());
  await screen.findByLabelText("Units");
  for (const field of ["Language", "Colours", "Units", "UTC"])
    expect(screen.getByLabelText(field)).toBeVisible();
  for (const [name, units] of [
    ["with metric", "si"],
    ["as written", "written"],
  ] as const) {
    await userEvent.selectOptions(screen.getByLabelText("Units"), name);
    await waitFor(() => expect(unitsInForce()).toBe(units));
    await waitFor(() => expect(screen.getByLabelText("Units")).toHaveDisplayValue(name));
  }
  await userEvent.click(button());
  expect(screen.queryByLabelText("Units")).toBeNull();
});
