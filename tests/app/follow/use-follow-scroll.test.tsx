import { act, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { useFollowScroll } from "../../../src/app/follow/use-follow-scroll.ts";

const LIST_HEIGHT = 400;
const ROW_TOP = 2000;

/** A list with one row far down, and what the hook says of it. */
function List() {
  const { scroller, following, toNow } = useFollowScroll("row");
  return (
    <>
      <div ref={scroller} data-testid="list">
        <div data-row="row" />
      </div>
      <button type="button" onClick={toNow}>
        {following ? "following" : "away"}
      </button>
    </>
  );
}

/** The list as a browser lays it out: the row lies where it lies, less what was scrolled. */
function laidOut(): HTMLElement {
  render(<List />);
  const list = screen.getByTestId("list");
  Object.defineProperty(list, "clientHeight", { value: LIST_HEIGHT });
  const row = list.firstElementChild as HTMLElement;
  list.getBoundingClientRect = () => ({ top: 0, bottom: LIST_HEIGHT }) as DOMRect;
  row.getBoundingClientRect = () =>
    ({ top: ROW_TOP - list.scrollTop, bottom: ROW_TOP + 50 - list.scrollTop }) as DOMRect;
  return list;
}

/** The list is at a place, and an event says so. */
function scrolledTo(list: HTMLElement, top: number): void {
  list.scrollTop = top;
  fireEvent.scroll(list);
}

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["performance", "setTimeout", "clearTimeout"] });
  // The place is set by the test, as a browser that scrolls smoothly sets it later.
  Element.prototype.scrollTo = () => {};
});
afterEach(() => vi.useRealTimers());

const state = () => screen.getByRole("button").textContent;

it("takes a scroll towards now as the program's own, however late a busy device shows it", () => {
  const list = laidOut();
  fireEvent.wheel(list);
  expect(state()).toBe("away");
  act(() => screen.getByRole("button").click());
  for (const top of [400, 1200, 1972]) {
    vi.advanceTimersByTime(2000);
    scrolledTo(list, top);
    expect(state(), `at ${top}`).toBe("following");
  }
});

it("lets a reader go who scrolls away from now", () => {
  const list = laidOut();
  fireEvent.wheel(list);
  act(() => screen.getByRole("button").click());
  scrolledTo(list, 1972);
  vi.advanceTimersByTime(2000);
  scrolledTo(list, 900);
  expect(state()).toBe("away");
});

it("offers the way back to a reader who scrolled while the program's own scroll was taken to go on", () => {
  const list = laidOut();
  fireEvent.wheel(list);
  act(() => screen.getByRole("button").click());
  scrolledTo(list, 1972);
  scrolledTo(list, 0);
  expect(state()).toBe("following");
  act(() => vi.advanceTimersByTime(2000));
  expect(state()).toBe("away");
});
