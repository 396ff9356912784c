import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { expect, it, vi } from "vitest";
import type { FollowActions } from "../../../src/app/follow/follow-actions.ts";
import { RecordField } from "../../../src/app/follow/record-field.tsx";
import type { StepRecord } from "../../../src/core/procedure/index.ts";
import type { Instant, RecordId, StepId } from "../../../src/core/units/index.ts";
import type { TakenRecord } from "../../../src/core/walk/index.ts";

const record = {
  id: "pressure" as RecordId,
  label: "Suit pressure",
  unit: "kPa",
  min: 28,
  max: 31,
} as StepRecord;
const taken = (value: number, outOfRange = false): TakenRecord => ({
  record: record.id,
  value,
  at: 0 as Instant,
  actor: "iv",
  outOfRange,
});

function draw(before: readonly TakenRecord[] = []) {
  const enter = vi.fn(async () => {});
  const note = vi.fn(async () => {});
  const actions = { record: enter, note } as unknown as FollowActions;
  const { unmount } = render(
    <RecordField step={"check" as StepId} record={record} taken={before} actions={actions} />,
  );
  return { enter, note, unmount, field: screen.getByRole("textbox", { name: /Suit pressure/ }) };
}

it.each([
  ["29.5", 29.5],
  ["29,5", 29.5],
  [" 30 ", 30],
  ["-0,5", -0.5],
])("takes %j as a number when Enter is pressed", async (text, value) => {
  const { enter, field } = draw();
  await userEvent.type(field, `${text}{Enter}`);
  expect(enter).toHaveBeenCalledExactlyOnceWith("check", "pressure", value);
});

it.each(["much", "1.2.3", "1,000.5", "--4", "1e3", "NaN"])(
  "takes %j for no number and says so",
  async (text) => {
    const { enter, field } = draw();
    await userEvent.type(field, text);
    expect(screen.getByText(/a number, please/)).toBeVisible();
    expect(field).toHaveAttribute("aria-invalid", "true");
    await userEvent.tab();
    expect(enter).not.toHaveBeenCalled();
  },
);

it("is entered when the field is left, and not again when nothing changed", async () => {
  const { enter, field } = draw();
  await userEvent.type(field, "29");
  await userEvent.tab();
  expect(enter).toHaveBeenCalledOnce();
});

it("shows what was recorded and does not enter it twice", async () => {
  const { enter, field } = draw([taken(29)]);
  expect(field).toHaveValue("29");
  expect(screen.getByText(/✓ recorded/)).toBeVisible();
  await userEvent.click(field);
  await userEvent.tab();
  expect(enter).not.toHaveBeenCalled();
});

it("[WLK7] says that a value lies outside the limits", () => {
  const { field } = draw([taken(40, true)]);
  expect(screen.getByText(/outside the limits/)).toBeVisible();
  expect(field).toHaveAttribute("aria-invalid", "true");
});

it("[OFF2] keeps what is no number as a note when its step is marked and the field goes", async () => {
  const { note, unmount, field } = draw();
  await userEvent.type(field, "abc");
  expect(note).not.toHaveBeenCalled();
  unmount();
  expect(note).toHaveBeenCalledExactlyOnceWith("Suit pressure: abc", "check");
});

it("makes no note of a number, or of nothing", async () => {
  const { note, unmount, field } = draw();
  await userEvent.type(field, "29");
  await userEvent.clear(field);
  unmount();
  expect(note).not.toHaveBeenCalled();
});
