import { fc, test } from "@fast-check/vitest";
import { describe, expect, it, vi } from "vitest";
import { platformFits } from "../../../src/app/seal/platform-fits.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import type { PlatformFits } from "../../../src/core/seal/index.ts";
import { SealLooks, verifyLog, verifyLogBy } from "../../../src/core/seal/index.ts";
import { entriesOf, GROUND, HUB, HUB_KEY, IV, wires } from "./sealed-log.ts";

describe("[SEL7] a log verified by the platform", () => {
  it("is asked about each seal once, and told of as they are looked at", async () => {
    const log = entriesOf(wires());
    const asked = vi.fn(async () => true);
    const onProgress = vi.fn();
    const looks = new SealLooks(asked);
    await looks.add(log.slice(0, 7));
    const found = await verifyLogBy(looks, log, [HUB_KEY], { onProgress });
    expect(found).toEqual(verifyLog(log, [HUB_KEY]));
    expect(asked).toHaveBeenCalledTimes(log.filter(({ wire }) => wire["seal"] !== undefined).length);
    expect(onProgress).toHaveBeenLastCalledWith(asked.mock.calls.length, asked.mock.calls.length);
  });

  it("that finds nothing to fit is not believed: what it refuses is looked at here", async () => {
    const log = entriesOf(wires());
    const looks = new SealLooks(async () => false);
    expect(await verifyLogBy(looks, log, [HUB_KEY])).toEqual(verifyLog(log, [HUB_KEY]));
  });

  it("of no entries is nothing, and one whose platform fails fails", async () => {
    expect(await verifyLogBy(new SealLooks(async () => true), [], [])).toBeNull();
    const failing = new SealLooks(() => Promise.reject(new Error("gone")));
    await failing.add(entriesOf(wires()));
    await expect(verifyLogBy(failing, entriesOf(wires()), [])).rejects.toThrow("gone");
  });
});

/** What may have been done to one entry. */
const SPOILED = {
  seal: (wire: Record<string, unknown>) => ({ ...wire, seal: "A".repeat(86) }),
  half: (wire: Record<string, unknown>) => ({ ...wire, seal: "AAAA" }),
  key: (wire: Record<string, unknown>) => ({ ...wire, sealkey: HUB_KEY }),
  refused: (wire: Record<string, unknown>) => ({ ...wire, sealkey: "A".repeat(43) }),
  unnamed: ({ sealkey: _, ...wire }: Record<string, unknown>) => wire,
  unsealed: ({ seal: _, ...wire }: Record<string, unknown>) => wire,
  text: (wire: Record<string, unknown>) => ({ ...wire, actor: "somebody" }),
} as const;

const spoiling = fc.array(
  fc.record({
    at: fc.nat({ max: wires().length - 1 }),
    how: fc.constantFrom(...(Object.keys(SPOILED) as (keyof typeof SPOILED)[])),
  }),
  { maxLength: 4 },
);

describe("[SEL7] the verdict is the same however the looking is divided", () => {
  test.prop(
    [
      spoiling,
      fc.array(fc.nat({ max: 5 }), { maxLength: 8 }),
      fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], { minLength: 12 }),
      fc.boolean(),
      fc.constantFrom([HUB_KEY], []),
    ],
    { numRuns: 60 },
  )(
    "into pieces, in any order, whichever seals were looked at before",
    async (spoiled, sizes, order, isQuick, trust) => {
      const all = wires();
      for (const { at, how } of spoiled) all[at] = SPOILED[how](all[at] as Record<string, unknown>);
      const log = entriesOf(all);
      const shuffled = order.flatMap((at) => log[at] ?? []);
      const platform = (await platformFits(globalThis.crypto.subtle)) as PlatformFits;
      const looks = new SealLooks(platform);
      let from = 0;
      for (const size of sizes) {
        await looks.add(shuffled.slice(from, from + size));
        from += size;
      }
      expect(await verifyLogBy(looks, log, trust, { isQuick })).toEqual(verifyLog(log, trust, { isQuick }));
    },
  );

  it("when whoever is asked answers in another order than it was asked", async () => {
    const log: readonly Entry[] = entriesOf(wires());
    const waiting: (() => void)[] = [];
    const looks = new SealLooks(() => new Promise((answer) => waiting.push(() => answer(true))));
    void looks.add(log);
    const found = verifyLogBy(looks, log, [HUB_KEY]);
    for (const answer of waiting.toReversed()) answer();
    expect(await found).toEqual(verifyLog(log, [HUB_KEY]));
    expect(new Set(log.map(({ wire }) => wire.source))).toEqual(new Set([IV, GROUND, HUB]));
  });
});
