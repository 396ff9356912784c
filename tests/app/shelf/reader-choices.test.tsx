import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { expect, it } from "vitest";
import { Spoken } from "../../../src/app/language/index.ts";
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

it("[WRD3] [WRD5] what a reader may choose is behind one button, and stays open while it is chosen", async () => {
  draw();
  expect(button()).toHaveAttribute("aria-expanded", "false");
  expect(screen.queryByLabelText("Units")).toBeNull();
  await userEvent.click(button());
  for (const field of ["Language", "Colours", "Units"]) expect(screen.getByLabelText(field)).toBeVisible();
  await userEvent.selectOptions(screen.getByLabelText("Units"), "with metric");
  expect(await screen.findByDisplayValue("with metric")).toBeVisible();
  await userEvent.selectOptions(screen.getByLabelText("Units"), "as written");
  expect(await screen.findByDisplayValue("as written")).toBeVisible();
  await userEvent.click(button());
  expect(screen.queryByLabelText("Units")).toBeNull();
});
