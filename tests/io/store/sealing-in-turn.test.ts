import { describe, expect, it } from "vitest";
import type { Entry } from "../../../src/core/log/index.ts";
import type { WalkId } from "../../../src/core/units/index.ts";
import { SealingInTurn } from "../../../src/io/store/sealing-in-turn.ts";
import { entryFrom, source, until, walk } from "./stand-ins.ts";

const made = (number: number): Entry => {
  const entry = entryFrom(source, number);
  return { ...entry, wire: { ...entry.wire, prior: "AAAAAAAAAAAAAAAAAAAAAA" } };
};

/** Sealings that are noted, in a page that comes to rest when it is told to. */
function sealings() {
  const asked: (readonly [WalkId, number])[] = [];
  const resting: (() => void)[] = [];
  const sealing = new SealingInTurn(
    async (of, waiting) => {
      asked.push([of, waiting.length]);
      return waiting;
    },
    () => new Promise((resolve) => void resting.push(resolve)),
  );
  const rest = () => {
    for (const resolve of resting.splice(0)) resolve();
  };
  return { sealing, asked, rest };
}

describe("[SEL3] sealing in turn", () => {
  it("waits until the page is at rest, and takes then at once what was entered until then", async () => {
    const { sealing, asked, rest } = sealings();
    sealing.sealSoon(walk, [made(1)]);
    sealing.sealSoon(walk, [made(2)]);
    await Promise.resolve();
    expect(asked).toEqual([]);
    expect(sealing.unsealed.get(walk)).toHaveLength(2);
    rest();
    await until(() => sealing.unsealed.size === 0);
    expect(asked).toEqual([[walk, 2]]);
  });

  it("does not wait where somebody needs the seals, and does not seal again afterwards", async () => {
    const { sealing, asked, rest } = sealings();
    sealing.sealSoon(walk, [made(1)]);
    expect(await sealing.seal(walk)).toHaveLength(1);
    rest();
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect(asked).toEqual([[walk, 1]]);
  });
});
