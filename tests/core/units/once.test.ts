import { expect, it, vi } from "vitest";
import { once } from "../../../src/core/units/index.ts";

it("what is made once is made when it is first asked for, and nothing is made twice, be it nothing at all", () => {
  const make = vi.fn(() => null);
  const made = once(make);
  expect(make).not.toHaveBeenCalled();
  expect([made(), made()]).toEqual([null, null]);
  expect(make).toHaveBeenCalledTimes(1);
});
