import { act, render, screen } from "@testing-library/react";
import { expect, it } from "vitest";
import type { ShownPet } from "../../../src/app/worksite/index.ts";
import { MovingPet, useWrittenAt } from "../../../src/app/worksite/index.ts";
import type { Duration } from "../../../src/core/units/index.ts";

const seconds = (count: number) => (count * 1000) as Duration;

function Told({ shown, grain }: { readonly shown: ShownPet; readonly grain: Duration }) {
  const element = useWrittenAt<HTMLOutputElement>(
    shown,
    (written, pet) => {
      written.textContent = String(pet / 1000);
    },
    grain,
  );
  return <output ref={element} />;
}

it("[BRF1] what hangs on the PET is written when that is a grain from what stands there, either way, and whenever anything else changes", () => {
  const shown = new MovingPet(seconds(0));
  const { rerender } = render(<Told shown={shown} grain={seconds(10)} />);
  const stands = () => screen.getByRole("status").textContent;
  const toldAt = (count: number) => {
    act(() => shown.move(seconds(count)));
    return stands();
  };
  expect(stands()).toBe("0");
  expect(toldAt(9)).toBe("0");
  expect(toldAt(12)).toBe("12");
  expect(toldAt(3)).toBe("12");
  expect(toldAt(2)).toBe("2");
  expect(toldAt(7)).toBe("2");
  rerender(<Told shown={shown} grain={seconds(0)} />);
  expect(stands()).toBe("7");
  expect(toldAt(8)).toBe("8");
});
