import { fireEvent, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { expect, it, vi } from "vitest";
import { useTap } from "../../../src/app/follow/use-tap.ts";

function Button({ onTap }: { readonly onTap: () => void }) {
  return (
    <button type="button" {...useTap(onTap)}>
      Done
    </button>
  );
}

function draw(onBlur = () => {}) {
  const onTap = vi.fn();
  render(
    <>
      <input aria-label="Value" onBlur={onBlur} />
      <Button onTap={onTap} />
    </>,
  );
  return { onTap, button: screen.getByRole("button") };
}

const touch = (x: number, y = 10) => ({ clientX: x, clientY: y });

it("answers when the finger is lifted and spares the page the click that would follow", () => {
  const { onTap, button } = draw();
  fireEvent.touchStart(button, { touches: [touch(10)] });
  const goesOn = fireEvent.touchEnd(button, { changedTouches: [touch(12)] });
  expect(onTap).toHaveBeenCalledOnce();
  expect(goesOn).toBe(false);
});

it("answers a mouse, a key and a screen reader's click", async () => {
  const { onTap, button } = draw();
  await userEvent.click(button);
  button.focus();
  await userEvent.keyboard("{Enter} ");
  expect(onTap).toHaveBeenCalledTimes(3);
});

it("takes a finger that moved, a second finger and a list scrolled under it for no tap", () => {
  const { onTap, button } = draw();
  fireEvent.touchStart(button, { touches: [touch(10)] });
  fireEvent.touchEnd(button, { changedTouches: [touch(60)] });
  fireEvent.touchStart(button, { touches: [touch(10), touch(40)] });
  fireEvent.touchEnd(button, { changedTouches: [touch(10)] });
  fireEvent.touchStart(button, { touches: [touch(10)] });
  fireEvent.touchEnd(button, { changedTouches: [touch(10)], cancelable: false });
  fireEvent.touchEnd(button, { changedTouches: [touch(10)] });
  expect(onTap).not.toHaveBeenCalled();
});

it("leaves the field being typed into first, so that its value is entered before", () => {
  const order: string[] = [];
  const { onTap, button } = draw(() => order.push("left"));
  onTap.mockImplementation(() => order.push("tapped"));
  screen.getByLabelText("Value").focus();
  fireEvent.touchStart(button, { touches: [touch(10)] });
  fireEvent.touchEnd(button, { changedTouches: [touch(10)] });
  expect(order).toEqual(["left", "tapped"]);
});
