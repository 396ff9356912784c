import { render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, expect, it } from "vitest";
import { Spoken, startUtc, UtcField } from "../../../src/app/language/index.ts";
import { chooseUtc, utcInForce } from "../../../src/app/language/utc-in-force.ts";
import { type Instant, parseInstant } from "../../../src/core/units/index.ts";
import { words } from "../../../src/words/index.ts";

const AT = parseInstant("2031-04-02T11:14:03Z") as Instant;
const Time = () => <p>{words("figures/utc", { at: AT })}</p>;

afterEach(() => {
  chooseUtc("plain");
  localStorage.clear();
});

it("[WRD6] a choice is in force at once, is kept on the device, and the field keeps the focus", async () => {
  render(
    <Spoken>
      <UtcField />
      <Time />
    </Spoken>,
  );
  expect(screen.getByText("2031-04-02 11:14:03")).toBeVisible();
  await userEvent.selectOptions(screen.getByLabelText("UTC"), "by day of the year");
  expect(await screen.findByText("2031-092 11:14:03")).toBeVisible();
  expect(localStorage.getItem("tetherline.utc")).toBe('"day"');
  await waitFor(() => expect(screen.getByLabelText("UTC")).toHaveFocus());
});

it("[WRD6] begins with what was kept, and with the date where that is no style", () => {
  localStorage.setItem("tetherline.utc", '"day"');
  startUtc();
  expect(utcInForce()).toBe("day");
  localStorage.setItem("tetherline.utc", '"sidereal"');
  startUtc();
  expect(utcInForce()).toBe("plain");
});
