import { describe, expect, it, vi } from "vitest";
import type { FitsAsked, FitsHelper } from "../../../src/app/seal/shared-fits.ts";
import { sharedFits } from "../../../src/app/seal/shared-fits.ts";

/** A look whose answer is known: it fits when its number is even. */
const asked = (number: number): FitsAsked => [
  Uint8Array.of(number % 256),
  Uint8Array.of(0),
  Uint8Array.of(0),
];
const fits = ([signature]: FitsAsked): boolean => (signature[0] ?? 0) % 2 === 0;
const own = () => vi.fn(async (...of: FitsAsked) => fits(of));

const numbers = (count: number) => Array.from({ length: count }, (_, index) => index);

describe("[SEL7] looks at signatures that are shared out", () => {
  it("come back each to whoever asked, whichever helper is done first", async () => {
    const sizes: number[] = [];
    const call = (): FitsHelper => ({
      look: async (all) => {
        sizes.push(all.length);
        await new Promise((done) => setTimeout(done, sizes.length === 1 ? 20 : 0));
        return all.map(fits);
      },
    });
    const here = own();
    const look = sharedFits(here, call, 2);
    const found = await Promise.all(numbers(1000).map((number) => look(...asked(number))));
    expect(found).toEqual(numbers(1000).map((number) => number % 2 === 0));
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(1000);
    expect(here).not.toHaveBeenCalled();
  });

  it("that are few, or that nobody helps with, are taken here", async () => {
    const [call, here] = [vi.fn(), own()];
    expect(
      await Promise.all(numbers(20).map((number) => sharedFits(here, call, 2)(...asked(number)))),
    ).toEqual(numbers(20).map((number) => number % 2 === 0));
    const alone = sharedFits(here, call, 0);
    await Promise.all(numbers(600).map((number) => alone(...asked(number))));
    expect(call).not.toHaveBeenCalled();
    expect(here).toHaveBeenCalledTimes(620);
  });

  it("are taken here when a helper is gone, and it is not asked again", async () => {
    const gone = vi.fn(() => Promise.reject(new Error("gone")));
    const look = sharedFits(own(), () => ({ look: gone }), 1);
    const first = await Promise.all(numbers(300).map((number) => look(...asked(number))));
    const second = await Promise.all(numbers(300).map((number) => look(...asked(number))));
    expect([...first, ...second].filter(Boolean)).toHaveLength(300);
    expect(gone).toHaveBeenCalledTimes(2);
  });

  it("fail where nobody can look", async () => {
    const look = sharedFits(() => Promise.reject(new Error("no such signatures")), vi.fn(), 0);
    await expect(look(...asked(1))).rejects.toThrow("no such signatures");
  });
});
