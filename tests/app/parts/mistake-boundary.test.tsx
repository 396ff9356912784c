import { render, screen } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import { MistakeBoundary } from "../../../src/app/parts/index.ts";

afterEach(() => vi.restoreAllMocks());

function Broken(): never {
  throw new Error("no such lane");
}

it("[LOG5] a screen that fails to draw says that nothing confirmed is lost, and how to go on", () => {
  vi.spyOn(console, "error").mockImplementation(() => {});
  render(
    <MistakeBoundary>
      <Broken />
    </MistakeBoundary>,
  );
  expect(screen.getByRole("alert").textContent).toMatch(/confirmed is kept/);
  expect(screen.getByRole("button", { name: "Load again" })).toBeTruthy();
});
