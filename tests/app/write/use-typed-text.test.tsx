import { act, renderHook } from "@testing-library/react";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { useTypedText } from "../../../src/app/write/use-typed-text.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

it("[WRT1] what is typed counts once it rests, within a second, and at once where the pane is left", () => {
  const told: string[] = [];
  const { result, unmount } = renderHook(() => useTypedText((text) => told.push(text)));
  act(() => result.current("a"));
  act(() => void vi.advanceTimersByTime(200));
  act(() => result.current("ab"));
  expect(told).toEqual([]);
  act(() => void vi.advanceTimersByTime(1000));
  expect(told).toEqual(["ab"]);
  act(() => result.current("abc"));
  unmount();
  expect(told).toEqual(["ab", "abc"]);
});
