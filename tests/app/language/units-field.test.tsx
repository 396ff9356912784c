import { render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, expect, it } from "vitest";
import { Spoken, startUnits, UnitsField } from "../../../src/app/language/index.ts";
import { chooseUnits, unitsInForce } from "../../../src/app/language/units-in-force.ts";
import { limitWords } from "../../../src/app/parts/index.ts";

const Limit = () => <p>{limitWords({ unit: "[psi]", min: 4.3 })}</p>;
const kept = () => localStorage.getItem("tetherline.units");

afterEach(async () => {
  await chooseUnits("written");
  localStorage.clear();
});

it("[WRD5] a choice is in force at once, is kept on the device, and the field keeps the focus", async () => {
  render(
    <Spoken>
      <UnitsField />
      <Limit />
    </Spoken>,
  );
  expect(screen.getByText("at least 4.3 psi")).toBeVisible();
  await userEvent.selectOptions(screen.getByLabelText("Units"), "with metric");
  expect(await screen.findByText("at least 4.3 psi (29.7 kPa)")).toBeVisible();
  expect(kept()).toBe('"si"');
  await waitFor(() => expect(screen.getByLabelText("Units")).toHaveFocus());
  expect(screen.getByLabelText("Units")).toHaveValue("si");
  await userEvent.selectOptions(screen.getByLabelText("Units"), "as written");
  expect(await screen.findByText("at least 4.3 psi")).toBeVisible();
  expect(kept()).toBeNull();
});

it("[WRD5] begins with the units that were kept, and with those as written where what was kept is none", async () => {
  localStorage.setItem("tetherline.units", '"us"');
  await startUnits();
  expect(unitsInForce()).toBe("us");
  expect(limitWords({ unit: "kPa", max: 29.6 })).toBe("at most 29.6 kPa (4.29 psi)");
  localStorage.setItem("tetherline.units", '"cubits"');
  await startUnits();
  expect(unitsInForce()).toBe("written");
  expect(limitWords({ unit: "kPa", max: 29.6 })).toBe("at most 29.6 kPa");
});

it("[WRD5] of two choices the later one holds", async () => {
  await Promise.all([chooseUnits("si"), chooseUnits("us"), chooseUnits("written")]);
  expect(unitsInForce()).toBe("written");
  expect(kept()).toBeNull();
});
