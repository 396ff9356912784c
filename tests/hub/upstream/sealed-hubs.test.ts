import { setTimeout as wait } from "node:timers/promises";
import { afterEach, describe, expect, test } from "vitest";
import type { Instant } from "../../../src/core/units/index.ts";
import { readAll } from "../engine/read-all.ts";
import { WALK } from "../engine/written-notes.ts";
import { newKey } from "../keyed-device.ts";
import { SealingDevice, verifiedLines } from "../sealed-notes.ts";
import type { LiveHub } from "./live-hub.ts";
import { HERE, PATIENT, THERE, TwoHubs } from "./two-hubs.ts";

const CLOSED = { type: "tetherline.walk.closed", data: { end: "complete" } } as const;

const keyOf = (hub: LiveHub) => hub.parts.key.publicKey;
const settle = (hub: LiveHub) => hub.parts.witness?.settle();
const verified = async (hub: LiveHub, trust: readonly string[]) =>
  verifiedLines((await readAll(hub.parts.engine, WALK)).map(({ text }) => text).join("\n"), trust);

/** A device of a key of its own that was let in; with what has it offer its entries. */
async function deviceOf(hub: LiveHub, source: string) {
  const device = new SealingDevice(source, newKey());
  const data = { source, key: device.key.publicKey, role: "lead", name: source };
  hub.parts.witness?.say(WALK, { name: "device.admitted", data });
  const offer = async (...parts: Parameters<SealingDevice["write"]>) => {
    const { results } = await hub.parts.intake.take(WALK, [await device.write(...parts)], null);
    for (const result of results) if ("reason" in result) throw new Error(result.words);
  };
  return { device, offer };
}

describe("two hubs that are linked", { timeout: 60_000 }, () => {
  let hubs: TwoHubs;
  afterEach(() => hubs.end());

  test("[SEL4] vouch for one another, so that a log is whole for whoever trusts either, and their checkpoints come to rest", async () => {
    hubs = await TwoHubs.open({ isWitness: true });
    const { ground, vehicle, proxy } = hubs;
    const [here, there] = [await deviceOf(vehicle, HERE), await deviceOf(ground, THERE)];
    const at = () => ({ at: Date.now() as Instant });
    await here.offer(at());
    hubs.link();
    await there.offer(at());
    await expect.poll(() => hubs.agreed(), PATIENT).toBeGreaterThan(6);
    // Both go on while they are apart.
    proxy.set("closed");
    await here.offer(at());
    await there.offer(at());
    await Promise.all([settle(vehicle), settle(ground)]);
    proxy.set("open");
    await here.offer({ ...at(), ...CLOSED });
    await expect
      .poll(
        async () => {
          await Promise.all([settle(vehicle), settle(ground)]);
          const of = await Promise.all(
            [vehicle, ground].flatMap((hub) =>
              [keyOf(vehicle), keyOf(ground)].map((key) => verified(hub, [key])),
            ),
          );
          return of.map(({ verdict, findings }) => [verdict, findings]);
        },
        { timeout: 30_000, interval: 200 },
      )
      .toEqual([1, 2, 3, 4].map(() => ["whole", []]));
    // What one of them still had to say is on its way; no checkpoint is the reason for another.
    const rest = async () => {
      await wait(1500);
      await Promise.all([settle(vehicle), settle(ground)]);
      return hubs.agreed();
    };
    const count = await rest();
    expect(count).toBeLessThan(20);
    expect(await rest()).toBe(count);
    expect((await verified(vehicle, [newKey().publicKey])).verdict).toBe("partly");
  });
});
