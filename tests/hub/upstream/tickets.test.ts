import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { WalkId } from "../../../src/core/units/index.ts";
import { notes, WALK } from "../engine/written-notes.ts";
import { HERE, PATIENT, THERE, TwoHubs } from "./two-hubs.ts";

const SECOND = "walk-2" as WalkId;

describe("[LINK] what another hub gave this one to be let in again", { timeout: 60_000 }, () => {
  let hubs: TwoHubs;
  const invitation = async (walk: WalkId) =>
    (await hubs.ground.parts.admission.invite(walk, "relay", 15)).code;
  const ticketKey = (walk: WalkId) => `upstream.ticket ${hubs.proxy.address} ${walk}`;
  const writeBoth = async (from: number, to: number) => {
    await hubs.vehicle.write(notes(from, to, { source: HERE }));
    await hubs.vehicle.write(notes(from, to, { source: HERE, walk: SECOND }), SECOND);
  };

  beforeEach(async () => {
    hubs = await TwoHubs.open();
  });
  afterEach(() => hubs.end());

  test("an invitation to a second walk is taken besides the one of before", async () => {
    await writeBoth(1, 2);
    hubs.link({ code: await invitation(WALK) });
    await hubs.agree(2);
    expect(await hubs.ground.keys(SECOND)).toEqual([]);
    await hubs.unlink();
    hubs.link({ code: await invitation(SECOND) });
    await hubs.agree(2, SECOND);
    await writeBoth(3, 3);
    await hubs.agree(3);
    await hubs.agree(3, SECOND);
    expect(hubs.mistakes).toEqual([]);
  });

  test("a new invitation to a walk that is linked takes the place of the old ticket", async () => {
    await hubs.vehicle.write(notes(1, 1, { source: HERE }));
    hubs.link({ code: await invitation(WALK) });
    await hubs.agree(1);
    const ticket = await hubs.vehicle.parts.engine.keep.get(ticketKey(WALK));
    await hubs.unlink();
    hubs.link({ code: await invitation(WALK) });
    await expect.poll(() => hubs.vehicle.parts.engine.keep.get(ticketKey(WALK)), PATIENT).not.toBe(ticket);
    await hubs.vehicle.write(notes(2, 2, { source: HERE }));
    await hubs.ground.write(notes(1, 1, { source: THERE }));
    await hubs.agree(3);
    await expect.poll(() => hubs.vehicle.beyond()?.state, PATIENT).toBe("linked");
    expect(hubs.mistakes).toEqual([]);
  });

  test("an owner's code that is no longer good is told of, though the walks of before go on", async () => {
    await hubs.vehicle.write(notes(1, 1, { source: HERE }));
    hubs.link();
    await hubs.agree(1);
    await hubs.unlink();
    hubs.link({ code: "AAA-AAA-AAA" });
    await expect.poll(() => hubs.told.join(), PATIENT).toMatch(/code is not good/);
    await hubs.vehicle.write(notes(2, 2, { source: HERE }));
    await hubs.agree(2);
  });

  test("a ticket that cannot be read is asked for anew", async () => {
    await hubs.vehicle.write(notes(1, 1, { source: HERE }));
    await hubs.vehicle.parts.engine.keep.put(ticketKey(WALK), '{"token":7}');
    await hubs.vehicle.parts.engine.keep.put(ticketKey(SECOND), "torn");
    hubs.link();
    await hubs.agree(1);
  });

  test("an answer that lets it into another walk than it asked for is not taken", async () => {
    await writeBoth(1, 2);
    const { far } = hubs;
    hubs.link({
      far: {
        ...far,
        join: async (code, walk, who, signal) => ({
          ...(await far.join(code, walk, who, signal)),
          walk: SECOND,
        }),
      },
    });
    await expect.poll(() => hubs.told.join(), PATIENT).toMatch(/no hub that this one knows/);
    expect([await hubs.ground.keys(), await hubs.vehicle.parts.engine.keep.get(ticketKey(SECOND))]).toEqual([
      [],
      null,
    ]);
  });
});
