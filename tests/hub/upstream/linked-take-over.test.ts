import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { ROLES, type Role } from "../../../src/core/log/index.ts";
import { notes, WALK } from "../engine/written-notes.ts";
import type { LiveHub } from "./live-hub.ts";
import { HERE, PATIENT, THERE, TwoHubs } from "./two-hubs.ts";

const LEAD = "/devices/lead";

/** Joins by an invitation of a role, or with the owner's code, without a key; what came of it. */
async function join({ parts: { admission } }: LiveHub, device: string, role: Role | "owner") {
  const isOwner = role === "owner";
  const code = isOwner ? admission.ownerCode : (await admission.invite(WALK, role, 15)).code;
  const asked = { code, device, name: null, proof: null, caller: null };
  return admission.join({ ...asked, walk: isOwner ? WALK : null, role: isOwner ? "lead" : role });
}

/** Notes that a device brings to its hub, as its role lets it. */
async function bring({ parts: { intake } }: LiveHub, device: string, from: number, to: number) {
  const offered = notes(from, to, { source: device, text: `by ${device}` }).map(({ wire }) => wire);
  const { results } = await intake.take(WALK, offered, { role: "lead", device });
  for (const result of results) if ("reason" in result) throw new Error(result.words);
}

describe("[SEL4] over two linked hubs nobody becomes a device of the other", { timeout: 60_000 }, () => {
  let hubs: TwoHubs;
  const refusedAt = async ({ parts }: LiveHub) =>
    (await parts.engine.refused(WALK, 10)).map(({ reason }) => reason);

  beforeEach(async () => {
    hubs = await TwoHubs.open();
  });
  afterEach(() => hubs.end());

  test("by whatever code, once something of that device is here, in either direction", async () => {
    await join(hubs.ground, LEAD, "lead");
    await bring(hubs.ground, LEAD, 1, 1);
    await join(hubs.vehicle, HERE, "marker");
    await bring(hubs.vehicle, HERE, 1, 1);
    hubs.link();
    await hubs.agree(2);
    for (const role of [...ROLES, "owner"] as const) {
      expect([role, (await join(hubs.vehicle, LEAD, role)).kind]).toEqual([role, "device-elsewhere"]);
      expect([role, (await join(hubs.ground, HERE, role)).kind]).toEqual([role, "device-elsewhere"]);
    }
  });

  test("what was written under its name while apart stays where it was written, and is kept aside at its own hub", async () => {
    await join(hubs.ground, LEAD, "lead");
    await join(hubs.vehicle, LEAD, "marker");
    await bring(hubs.vehicle, LEAD, 1, 2);
    await hubs.ground.write(notes(1, 1, { source: THERE }));
    hubs.link();
    await expect.poll(() => hubs.vehicle.keys(), PATIENT).toContain(`${THERE} 1`);
    await expect.poll(() => refusedAt(hubs.ground), PATIENT).toEqual(["other-source", "other-source"]);
    expect(await hubs.ground.keys()).toEqual([`${THERE} 1`]);
    await expect.poll(() => hubs.vehicle.beyond()?.words, PATIENT).toMatch(/let in itself/);
    // The lead's own entries go on at its hub, and are not taken for the forger's at the other one.
    await bring(hubs.ground, LEAD, 3, 3);
    await expect.poll(() => refusedAt(hubs.vehicle), PATIENT).toEqual(["other-source"]);
    expect(await hubs.ground.keys()).toContain(`${LEAD} 3`);
  });

  test("a hub whose ticket is lost comes in again by its key, and another one does not get its name", async () => {
    await hubs.vehicle.write(notes(1, 1, { source: HERE }));
    hubs.link();
    await hubs.agree(1);
    await hubs.unlink();
    const { keep } = hubs.vehicle.parts.engine;
    for (const [key] of await keep.list("upstream.ticket ")) await keep.remove(key);
    for (const role of [...ROLES, "owner"] as const) {
      expect([role, (await join(hubs.ground, hubs.vehicle.parts.id, role)).kind]).toEqual([
        role,
        "key-needed",
      ]);
    }
    hubs.link();
    await hubs.vehicle.write(notes(2, 2, { source: HERE }));
    await hubs.agree(2);
    expect(hubs.mistakes).toEqual([]);
  });
});
