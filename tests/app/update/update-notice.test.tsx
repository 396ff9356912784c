import { act, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, expect, it, vi } from "vitest";
import { Updates } from "../../../src/app/update/index.ts";
import { UpdateNotice } from "../../../src/app/update/update-notice.tsx";
import { worker } from "./stand-in-worker.ts";

const drawAt = (path: string) => render(<UpdateNotice path={path} />);

beforeEach(() => {
  worker.isWaiting = true;
  worker.load.mockClear();
  worker.setWaiting.mockClear();
});

it("says politely that a newer version is there, and loads it only when asked", async () => {
  drawAt("/");
  expect(screen.getByRole("status")).toHaveTextContent("A newer version is stored on this device.");
  expect(worker.load).not.toHaveBeenCalled();
  await userEvent.click(screen.getByRole("button", { name: "Load it now" }));
  expect(worker.load).toHaveBeenCalledExactlyOnceWith(true);
});

it("can be put off", async () => {
  drawAt("/review/walk-1");
  await userEvent.click(screen.getByRole("button", { name: "Later" }));
  expect(worker.setWaiting).toHaveBeenCalledExactlyOnceWith(false);
  expect(worker.load).not.toHaveBeenCalled();
});

it("says nothing while a walk is followed", () => {
  const { container } = drawAt("/follow/walk-1");
  expect(container).toBeEmptyDOMElement();
});

it("says nothing while there is no newer version", () => {
  worker.isWaiting = false;
  const { container } = drawAt("/");
  expect(container).toBeEmptyDOMElement();
});

it("begins a second after the first screen, which has the device to itself until then", () => {
  vi.useFakeTimers();
  try {
    const { container } = render(<Updates path="/" />);
    act(() => void vi.advanceTimersByTime(999));
    expect(container).toBeEmptyDOMElement();
    act(() => void vi.advanceTimersByTime(1));
    expect(screen.getByRole("status")).toBeVisible();
  } finally {
    vi.useRealTimers();
  }
});
