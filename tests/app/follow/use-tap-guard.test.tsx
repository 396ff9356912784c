import { act, fireEvent, render, screen } from "@testing-library/react";
import { useRef } from "react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { useTapGuard } from "../../../src/app/follow/use-tap-guard.ts";

/** A screen with one control, whose place and taps are seen. */
function Screen({ onJudged }: { readonly onJudged: (counts: boolean) => void }) {
  const whole = useRef<HTMLDivElement>(null);
  const judge = useTapGuard(whole, () => {});
  return (
    <div ref={whole}>
      <button
        type="button"
        data-guarded
        onClick={(event) => onJudged(judge(event.currentTarget, { x: 10, y: 10 }))}
      >
        Done
      </button>
    </div>
  );
}

const box = (top: number) => ({ left: 0, right: 100, top, bottom: top + 50 }) as DOMRect;

describe("the guard of a screen", () => {
  afterEach(() => {
    vi.restoreAllMocks();
    vi.useRealTimers();
  });

  it("[OFF1] looks where the controls are once a picture, however often the screen is drawn, and refuses what it has not seen", () => {
    vi.useFakeTimers({ toFake: ["requestAnimationFrame", "cancelAnimationFrame", "performance"] });
    const measured = vi.spyOn(HTMLElement.prototype, "getBoundingClientRect").mockReturnValue(box(0));
    const judged: boolean[] = [];
    const drawn = <Screen onJudged={(counts) => judged.push(counts)} />;
    const { rerender, unmount } = render(drawn);
    const tap = () => fireEvent.click(screen.getByRole("button", { name: "Done" }));
    tap();
    expect(judged).toEqual([false]);
    const before = measured.mock.calls.length;
    for (let turn = 0; turn < 5; turn += 1)
      rerender(<Screen key="one" onJudged={(counts) => judged.push(counts)} />);
    expect(measured).toHaveBeenCalledTimes(before);
    act(() => vi.advanceTimersToNextFrame());
    expect(measured).toHaveBeenCalledTimes(before + 1);
    act(() => vi.advanceTimersByTime(1000));
    tap();
    expect(judged).toEqual([false, true]);
    // It has moved under the finger since the last picture: the tap itself finds that out.
    act(() => vi.advanceTimersByTime(1000));
    measured.mockReturnValue(box(-300));
    fireEvent.scroll(screen.getByRole("button", { name: "Done" }));
    act(() => vi.advanceTimersToNextFrame());
    act(() => vi.advanceTimersByTime(1000));
    measured.mockReturnValue(box(0));
    tap();
    expect(judged).toEqual([false, true, false]);
    rerender(<Screen key="one" onJudged={() => {}} />);
    const last = measured.mock.calls.length;
    unmount();
    act(() => vi.advanceTimersToNextFrame());
    expect(measured).toHaveBeenCalledTimes(last);
  });
});
