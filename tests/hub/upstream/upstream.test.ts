import { setTimeout as wait } from "node:timers/promises";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import { type FarClient, machineTime } from "../../../src/hub/upstream/index.ts";
import { note, notes, WALK } from "../engine/written-notes.ts";
import { HERE, PATIENT, THERE, TwoHubs } from "./two-hubs.ts";

const SECOND = "walk-2" as WalkId;

describe("[LINK] of a hub with another one", { timeout: 60_000 }, () => {
  let hubs: TwoHubs;
  beforeEach(async () => {
    hubs = await TwoHubs.open();
  });
  afterEach(() => hubs.end());

  test("what either side has goes to the other, also of walks that begin later, and nothing comes back", async () => {
    const { ground, vehicle } = hubs;
    await vehicle.write(notes(1, 3, { source: HERE }));
    await ground.write(notes(1, 2, { source: THERE, walk: SECOND }), SECOND);
    hubs.link();
    await hubs.agree(3);
    await hubs.agree(2, SECOND);
    await ground.write(notes(1, 4, { source: THERE }));
    await vehicle.write(notes(4, 5, { source: HERE }));
    await hubs.agree(9);
    const third = "walk-3" as WalkId;
    await ground.write(notes(1, 1, { source: THERE, walk: third }), third);
    await hubs.agree(1, third);
    const fourth = "walk/4 ü" as WalkId;
    await vehicle.write(notes(1, 1, { source: HERE, walk: fourth }), fourth);
    await hubs.agree(1, fourth);
    const kept = await vehicle.parts.engine.read(WALK, 0, 100);
    expect(kept.map(({ source, via }) => [source, via])).toEqual(
      kept.map(({ source }) => [source, source === THERE ? ground.parts.id : null]),
    );
    expect(hubs.mistakes).toEqual([]);
  });

  test("says how it stands: what is unsent, and up to when the other side has everything", async () => {
    const { vehicle, proxy } = hubs;
    proxy.set("closed");
    await vehicle.write(notes(1, 2, { source: HERE }));
    hubs.link();
    const alone = { state: "linking", unsent: 2, sentUpTo: null, heardAt: null };
    await expect.poll(() => vehicle.beyond(), PATIENT).toMatchObject(alone);
    expect(hubs.told.join()).toMatch(/cannot be reached/);
    proxy.set("open");
    const linked = { name: "ground", state: "linked", unsent: 0, words: null };
    await expect.poll(() => vehicle.beyond(), PATIENT).toMatchObject(linked);
    expect(Math.abs((vehicle.beyond()?.sentUpTo ?? 0) - Date.now())).toBeLessThan(20_000);
    proxy.set("closed");
    await expect.poll(() => vehicle.beyond()?.state, PATIENT).toBe("linking");
    await vehicle.write(notes(3, 5, { source: HERE }));
    await expect.poll(() => vehicle.beyond()?.unsent, PATIENT).toBe(3);
    const [, , third] = await vehicle.parts.engine.read(WALK, 0, 10);
    expect(vehicle.beyond()?.sentUpTo).toBe((third?.received ?? 0) - 1);
    proxy.set("open");
    await hubs.agree(5);
    await expect.poll(() => vehicle.beyond(), PATIENT).toMatchObject(linked);
  });

  test("over a link that drops all the time, both writing meanwhile, both have everything once in the end", async () => {
    const { ground, vehicle, proxy } = hubs;
    hubs.link();
    let isOver = false;
    const dropping = (async () => {
      for (let turn = 0; !isOver; turn += 1) {
        await wait(30 + ((turn * 37) % 90));
        if (turn % 3 > 0) proxy.set(turn % 3 === 1 ? "closed" : "silent");
        await wait(turn % 3 > 0 ? 40 : 0);
        proxy.cut();
        proxy.set("open");
      }
    })();
    for (let turn = 0; turn < 40; turn += 1) {
      await vehicle.write(notes(turn * 5 + 1, turn * 5 + 5, { source: HERE }));
      await ground.write(notes(turn * 5 + 1, turn * 5 + 5, { source: THERE }));
      await wait(20);
    }
    isOver = true;
    await dropping;
    await hubs.agree(400);
  });

  test("with a second and a half of delay each way, both writing meanwhile, both agree", async () => {
    const { ground, vehicle, proxy } = hubs;
    proxy.delay = 1_500;
    hubs.link({ time: machineTime({ now: () => vehicle.now() }) });
    for (let turn = 0; turn < 10; turn += 1) {
      await vehicle.write(notes(turn * 2 + 1, turn * 2 + 2, { source: HERE }));
      await ground.write(notes(turn * 2 + 1, turn * 2 + 2, { source: THERE }));
      await wait(100);
    }
    await hubs.agree(40, WALK, 40_000);
  });

  test("either hub ended and began again in the midst of it, and both agree", async () => {
    const { ground, vehicle } = hubs;
    hubs.link();
    for (let turn = 0; turn < 6; turn += 1) {
      await vehicle.write(notes(turn * 50 + 1, turn * 50 + 50, { source: HERE }));
      await ground.write(notes(turn * 50 + 1, turn * 50 + 50, { source: THERE }));
      await wait(turn * 7);
      if (turn % 2 === 0) {
        await hubs.unlink();
        await vehicle.close();
        await vehicle.open();
        hubs.link();
      } else {
        await ground.close();
        await ground.open();
      }
    }
    await hubs.agree(600);
  });

  test("after a restart it goes on from where it was: nothing is sent or read again", async () => {
    const { ground, vehicle, far } = hubs;
    await vehicle.write(notes(1, 50, { source: HERE }));
    await ground.write(notes(1, 50, { source: THERE }));
    hubs.link();
    await hubs.agree(100);
    await expect.poll(() => vehicle.beyond()?.unsent, PATIENT).toBe(0);
    await hubs.unlink();
    let [pushed, heard] = [0, 0];
    const counting: FarClient = {
      ...far,
      side: (walk, token) => {
        const side = far.side(walk, token);
        return {
          push: (entries, signal) => {
            pushed += entries.length;
            return side.push(entries, signal);
          },
          follow: (after, hear, signal) => {
            const count: typeof hear = (message) => {
              if (message.kind === "entry") heard += 1;
              hear(message);
            };
            return side.follow(after, count, signal);
          },
        };
      },
    };
    hubs.link({ far: counting });
    await vehicle.write(notes(51, 51, { source: HERE }));
    await ground.write(notes(51, 51, { source: THERE }));
    await hubs.agree(102);
    await expect.poll(() => vehicle.beyond()?.unsent, PATIENT).toBe(0);
    expect([pushed, heard]).toEqual([1, 1]);
  });

  test("a hub that was brought back from a copy is given again what it lost, whosever it was", async () => {
    const { ground, vehicle } = hubs;
    await vehicle.write(notes(1, 3, { source: HERE }));
    hubs.link();
    await hubs.agree(3);
    await ground.close();
    ground.backUp();
    await ground.open();
    await vehicle.write(notes(4, 6, { source: HERE }));
    await ground.write(notes(1, 3, { source: THERE }));
    await hubs.agree(9);
    await ground.close();
    ground.bringBack();
    await ground.open();
    expect(await ground.keys()).not.toContain(`${THERE} 3`);
    await hubs.agree(9);
    await ground.write(notes(4, 4, { source: THERE }));
    await hubs.agree(10);
  });

  test("brought back from a copy itself, it gets again what it had sent since", async () => {
    const { ground, vehicle } = hubs;
    await vehicle.write(notes(1, 3, { source: HERE }));
    hubs.link();
    await hubs.agree(3);
    await hubs.unlink();
    await vehicle.close();
    vehicle.backUp();
    await vehicle.open();
    hubs.link();
    await vehicle.write(notes(4, 6, { source: HERE }));
    await ground.write(notes(1, 2, { source: THERE }));
    await hubs.agree(8);
    await hubs.unlink();
    await vehicle.close();
    vehicle.bringBack();
    await vehicle.open();
    expect(await vehicle.keys()).not.toContain(`${HERE} 4`);
    hubs.link();
    await hubs.agree(8);
  });

  test("another epoch of either hub while both run: everything is read and offered again, and nothing comes twice", async () => {
    const { ground, vehicle } = hubs;
    await vehicle.write(notes(1, 3, { source: HERE }));
    await ground.write(notes(1, 3, { source: THERE }));
    hubs.link();
    await hubs.agree(6);
    for (const hub of [vehicle, ground]) {
      await hub.parts.engine.beginEpoch();
      const { epoch } = hub.parts.engine;
      // The vehicle notes of which stores it has read and sent how much.
      await expect
        .poll(async () => {
          const kept = await vehicle.parts.engine.keep.list("upstream.");
          return [...kept].filter(([key, value]) => /^upstream\.(in|out) /.test(key) && value.includes(epoch))
            .length;
        }, PATIENT)
        .toBe(2);
    }
    await vehicle.write(notes(4, 4, { source: HERE }));
    await ground.write(notes(4, 4, { source: THERE }));
    await hubs.agree(8);
  });

  test("an entry ahead of the other hub's clock waits until its time has come, and holds nothing up", async () => {
    const { ground, vehicle } = hubs;
    let ahead = 100_000;
    vehicle.now = () => (Date.now() + ahead) as Instant;
    const early = note({ source: HERE, number: 1 });
    const hlc = `${String(Date.now() + 150_000).padStart(15, "0")}-0000`;
    await vehicle.write([{ ...early, wire: { ...early.wire, hlc } }]);
    await vehicle.write(notes(2, 3, { source: HERE }));
    ahead = 0;
    hubs.link();
    await expect.poll(() => ground.keys(), PATIENT).toEqual([`${HERE} 2`, `${HERE} 3`]);
    await expect.poll(() => vehicle.beyond()?.unsent, PATIENT).toBe(1);
    const [first] = await vehicle.parts.engine.read(WALK, 0, 1);
    expect(vehicle.beyond()).toMatchObject({ sentUpTo: (first?.received ?? 0) - 1, words: null });
    // It is remembered over a restart.
    await hubs.unlink();
    ahead = 95_000;
    ground.now = () => (Date.now() + 95_000) as Instant;
    hubs.link();
    await hubs.agree(3);
    await expect.poll(() => vehicle.beyond()?.unsent, PATIENT).toBe(0);
  });

  test("an entry that the other hub will not have is told of and holds nothing up", async () => {
    const { ground, vehicle } = hubs;
    await ground.write([note({ source: HERE, number: 2, text: "another" })]);
    await vehicle.write(notes(1, 3, { source: HERE }));
    hubs.link();
    await expect.poll(async () => (await ground.keys()).length, PATIENT).toBe(3);
    await expect.poll(() => vehicle.beyond(), PATIENT).toMatchObject({ state: "linked", unsent: 0 });
    await expect
      .poll(() => vehicle.beyond()?.words, PATIENT)
      .toMatch(/^1 entry was refused: Another entry with this source and id is here already/);
    const [refused] = await vehicle.parts.engine.refused(WALK, 10);
    expect(refused).toMatchObject({ reason: "conflict" });
    expect(refused?.text).toContain("another");
  });

  test("an invitation as relay links one walk, and lasts over restarts after it expired", async () => {
    const { ground, vehicle } = hubs;
    await ground.write(notes(1, 2, { source: THERE, walk: SECOND }), SECOND);
    await vehicle.write(notes(1, 2, { source: HERE }));
    const { code } = await ground.parts.admission.invite(WALK, "relay", 15);
    hubs.link({ code });
    await hubs.agree(2);
    expect(await vehicle.keys(SECOND)).toEqual([]);
    await hubs.unlink();
    ground.now = () => (Date.now() + 3_600_000) as Instant;
    hubs.link({ code });
    await vehicle.write(notes(3, 3, { source: HERE }));
    await hubs.agree(3);
    expect(await vehicle.keys(SECOND)).toEqual([]);
  });

  test("a wrong code is told in words, on the screen too, and the log waits for a good one", async () => {
    const { vehicle } = hubs;
    await vehicle.write(notes(1, 2, { source: HERE }));
    hubs.link({ code: "aaaaaaaaa" });
    await expect.poll(() => vehicle.beyond(), PATIENT).toMatchObject({ state: "refused", unsent: 2 });
    expect(vehicle.beyond()?.words).toMatch(/code is not good/);
    expect(hubs.told).toHaveLength(1);
    await hubs.unlink();
    hubs.link();
    await hubs.agree(2);
    await expect.poll(() => vehicle.beyond(), PATIENT).toMatchObject({ state: "linked", words: null });
  });

  test("an invitation in another role is not taken", async () => {
    const { ground, vehicle } = hubs;
    const { code } = await ground.parts.admission.invite(WALK, "marker", 15);
    await vehicle.write(notes(1, 1, { source: HERE }));
    hubs.link({ code });
    await expect.poll(() => vehicle.beyond()?.words, PATIENT).toMatch(/not one for a hub/);
    expect(await ground.keys()).toEqual([]);
  });

  test("withdrawn over there, it says so, and comes back by the owner's code a minute later", async () => {
    const { ground, vehicle } = hubs;
    await vehicle.write(notes(1, 2, { source: HERE }));
    hubs.link();
    await hubs.agree(2);
    await ground.parts.admission.withdraw(WALK, vehicle.parts.id);
    await vehicle.write(notes(3, 3, { source: HERE }));
    await expect.poll(() => vehicle.beyond()?.state, PATIENT).toBe("refused");
    expect(hubs.told.join()).toMatch(/token is not good/);
    vehicle.now = () => (Date.now() + 61_000) as Instant;
    await hubs.agree(3);
  });

  test("a clock that is set back meanwhile makes that minute no day", async () => {
    const { ground, vehicle } = hubs;
    vehicle.now = () => (Date.now() + 50_000) as Instant;
    await vehicle.write(notes(1, 1, { source: HERE }));
    hubs.link();
    await hubs.agree(1);
    await ground.parts.admission.withdraw(WALK, vehicle.parts.id);
    await vehicle.write(notes(2, 2, { source: HERE }));
    await expect.poll(() => vehicle.beyond()?.state, PATIENT).toBe("refused");
    vehicle.now = () => (Date.now() - 24 * 3_600_000) as Instant;
    await hubs.agree(2);
  });

  test("linked with itself, it says so", async () => {
    await hubs.vehicle.write(notes(1, 1, { source: HERE }));
    const far: FarClient = {
      ...hubs.far,
      join: async (code, walk, who, signal) => ({
        ...(await hubs.far.join(code, walk, who, signal)),
        hub: hubs.vehicle.parts.id,
      }),
    };
    hubs.link({ far });
    await expect.poll(() => hubs.told.join(), PATIENT).toMatch(/this hub itself/);
    expect(await hubs.ground.keys()).toEqual([]);
    const refused = { state: "refused", words: expect.stringMatching(/this hub itself/), unsent: 1 };
    await expect.poll(() => hubs.vehicle.beyond(), PATIENT).toMatchObject(refused);
  });

  test("the other hub shows how far this one has read", async () => {
    const { ground, vehicle } = hubs;
    hubs.link();
    await ground.write(notes(1, 3, { source: THERE }));
    await hubs.agree(3);
    const relay = { device: vehicle.parts.id, name: "vehicle", role: "relay", present: true };
    await expect
      .poll(async () => (await ground.parts.presence.of(WALK)).followers, PATIENT)
      .toMatchObject([{ ...relay, seenUpTo: expect.anything() }]);
  });

  test("that is said again when it was lost on the way", async () => {
    const { ground, vehicle, far } = hubs;
    let lost = 0;
    const seen: FarClient["seen"] = (...said) => {
      lost += 1;
      return lost > 2 ? far.seen(...said) : Promise.reject(new Error("lost"));
    };
    await ground.write(notes(1, 1, { source: THERE }));
    hubs.link({ far: { ...far, seen } });
    await hubs.agree(1);
    const read = async () =>
      (await ground.parts.presence.of(WALK)).followers.find(({ device }) => device === vehicle.parts.id)
        ?.seenUpTo;
    await expect.poll(read, PATIENT).toEqual(expect.any(String));
  });
});
