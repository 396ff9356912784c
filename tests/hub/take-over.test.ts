import { readFileSync } from "node:fs";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ROLES, type Role } from "../../src/core/log/index.ts";
import type { Instant } from "../../src/core/units/index.ts";
import { keySchema } from "../../src/hub/admission/index.ts";
import type { JournalEvent } from "../../src/hub/journal/index.ts";
import { NO_JOURNAL } from "../../src/hub/journal/index.ts";
import { challengeOf, HOST, type Joining, joinWith, newKey, proofOf } from "./keyed-device.ts";
import { NOON, TestHub, WALK } from "./test-hub.ts";
import { written } from "./written-entry.ts";

const DEVICE = "/devices/d";
const noted: JournalEvent[] = [];
let hub: TestHub;

beforeEach(async () => {
  noted.length = 0;
  hub = await TestHub.open({ journal: { ...NO_JOURNAL, note: (event) => noted.push(event) } });
});
afterEach(() => hub.close());

const session = async (token: string) =>
  (await hub.ask("GET", `/api/walks/${WALK}/session`, { token })).statusCode;
const outcomeOf = async (joining: Joining) => {
  const answer = await joinWith(hub, joining);
  return answer.statusCode === 201 ? "joined" : answer.json<{ error: string }>().error;
};
const tokenOf = async (joining: Joining) => (await joinWith(hub, joining)).json<{ token: string }>().token;
const withdraw = (device = DEVICE) =>
  hub.ask("DELETE", `/api/walks/${WALK}/followers/${encodeURIComponent(device)}`, { token: hub.owner });
const note = (number: number) => written(DEVICE, number);

/** A code of a role, or the owner's. */
const codeOf = async (who: Role | "owner") => (who === "owner" ? hub.owner : await hub.invite(who));
const byOwner = (who: Role | "owner") => (who === "owner" ? { walk: WALK } : {});
const WHO = [...ROLES, "owner"] as const;
const PAIRS = ROLES.flatMap((there) => WHO.map((comes) => [there, comes] as const));

describe("[SEL4] nobody takes the place of another device", () => {
  it.each(PAIRS)("a %s with a key keeps its name and token against a %s", async (there, comes) => {
    const key = newKey();
    const token = await tokenOf({ code: await codeOf(there), device: DEVICE, key });
    const code = await codeOf(comes);
    for (const [other, said] of [
      [newKey(), "other-key"],
      [null, "key-needed"],
    ] as const) {
      const asked = { code, device: DEVICE, key: other, ...byOwner(comes) };
      expect(await outcomeOf(asked)).toBe(said);
      expect(noted.at(-1)).toEqual({
        event: "name-refused",
        ...{ walk: WALK, device: DEVICE, why: said, address: "127.0.0.1" },
      });
    }
    expect(await session(token)).toBe(200);
    await withdraw();
    expect(await outcomeOf({ code, device: DEVICE, key: newKey(), ...byOwner(comes) })).toBe("other-key");
  });

  it.each(PAIRS.filter(([, comes]) => comes !== "owner"))(
    "a %s without a key keeps its name by its token against a %s",
    async (there, comes) => {
      const token = await tokenOf({ code: await codeOf(there), device: DEVICE });
      const code = await codeOf(comes);
      for (const key of [newKey(), null])
        expect(await outcomeOf({ code, device: DEVICE, key })).toBe("device-taken");
      expect(await session(token)).toBe(200);
      expect(await outcomeOf({ code, device: DEVICE, token })).toBe("joined");
    },
  );

  it("what was written without a key is nobody's to go on with once its device is out, save for the owner", async () => {
    const token = await tokenOf({ code: await hub.invite("marker"), device: DEVICE });
    await hub.push(token, [note(1)]);
    await withdraw();
    for (const key of [newKey(), null]) {
      expect(await outcomeOf({ code: await hub.invite("lead"), device: DEVICE, key })).toBe("device-left");
    }
    expect(await outcomeOf({ code: hub.owner, device: DEVICE, key: newKey(), walk: WALK })).toBe("joined");
  });

  it("a device without a key that wrote nothing comes in again once it is out, and by the same code at once", async () => {
    const code = await hub.invite("watcher");
    expect(await outcomeOf({ code, device: DEVICE })).toBe("joined");
    // The answer was lost on the way.
    expect(await outcomeOf({ code, device: DEVICE })).toBe("joined");
    await withdraw();
    expect(await outcomeOf({ code: await hub.invite("marker"), device: DEVICE })).toBe("joined");
  });

  it("a device that joined without a key ties its name to one with its token", async () => {
    const [code, key] = [await hub.invite("marker"), newKey()];
    const token = await tokenOf({ code, device: DEVICE });
    const tied = await joinWith(hub, { code, device: DEVICE, key, token });
    expect(tied.json()).toMatchObject({ role: "marker", key: key.publicKey });
    const again = tied.json<{ token: string }>().token;
    expect(await outcomeOf({ code, device: DEVICE, token: again })).toBe("key-needed");
  });

  it("the same key gets its name back when its token is lost, in another role, and on another hub of the engine", async () => {
    const key = newKey();
    const token = await tokenOf({ code: await hub.invite("lead"), device: DEVICE, key });
    const second = await TestHub.open({}, hub.engine);
    const back = await joinWith(second, { code: await hub.invite("marker"), device: DEVICE, key });
    expect(back.json()).toMatchObject({ device: DEVICE, role: "marker", key: key.publicKey });
    expect(await session(token)).toBe(401);
    const other = await joinWith(second, { code: hub.owner, device: DEVICE, walk: WALK, key: newKey() });
    expect(other.json()).toMatchObject({ error: "other-key" });
    await second.close();
  });

  it("names are of one walk: another key may have the same one elsewhere", async () => {
    await tokenOf({ code: await hub.invite("lead"), device: DEVICE, key: newKey() });
    const elsewhere = await hub.invite("lead", 15, "walk-2");
    expect(await outcomeOf({ code: elsewhere, device: DEVICE, key: newKey() })).toBe("joined");
  });

  it("only the owner makes codes for other hubs", async () => {
    const lead = await hub.join("/devices/lead");
    const asked = (token: string) =>
      hub.ask("POST", `/api/walks/${WALK}/invitations`, { token, body: { role: "relay" } });
    const refused = await asked(lead);
    expect([refused.statusCode, refused.json().error]).toEqual([403, "role"]);
    expect((await asked(hub.owner)).statusCode).toBe(201);
  });

  it("another hub brings no entries of a device that was let in here, and what it brings of one is kept aside", async () => {
    const token = await tokenOf({ code: await hub.invite("lead"), device: DEVICE, key: newKey() });
    const relay = await hub.join("/hubs/far", "relay");
    await hub.push(token, [note(1)]);
    const below = written(`${DEVICE}/memory-1`, 1);
    const { results } = (await hub.push(relay, [note(1), note(2), below, written("/devices/far", 1)])).json();
    expect(results.map((one: { outcome: string; reason?: string }) => one.reason ?? one.outcome)).toEqual([
      "known",
      "other-source",
      "other-source",
      "accepted",
    ]);
    const refused = (await hub.ask("GET", `/api/walks/${WALK}/refused`, { token: hub.owner })).json().refused;
    expect(refused.map(({ reason }: { reason: string }) => reason)).toEqual(["other-source", "other-source"]);
    expect(await hub.log()).not.toContain("note 2");
  });

  it("another hub brings back what a log lost that was brought back from a copy, until the device is heard itself", async () => {
    const key = newKey();
    const token = await tokenOf({ code: await hub.invite("lead"), device: DEVICE, key });
    const relay = await hub.join("/hubs/far", "relay");
    await hub.engine.beginEpoch();
    const outcomes = async (number: number) =>
      (await hub.push(relay, [note(number)])).json().results[0].outcome;
    expect(await outcomes(1)).toBe("accepted");
    await hub.push(token, [note(2)]);
    expect(await outcomes(3)).toBe("refused");
  });

  it("a code of this hub does not make a device of another one out of anybody, nor does the owner's", async () => {
    const relay = await hub.join("/hubs/far", "relay");
    await hub.push(relay, [note(1)]);
    for (const key of [newKey(), null]) {
      expect(await outcomeOf({ code: await hub.invite("lead"), device: DEVICE, key })).toBe(
        "device-elsewhere",
      );
      expect(await outcomeOf({ code: hub.owner, device: DEVICE, key, walk: WALK })).toBe("device-elsewhere");
    }
  });
});

describe("[SEL4] proving a key", () => {
  const LEFT = { code: "", device: DEVICE, key: newKey() };
  const joining = async () => ({ ...LEFT, code: await hub.invite("marker") });
  const badly = async (asked: Joining, change: object) => {
    const proof = await proofOf(hub, asked);
    if (!proof) throw new Error("no challenge");
    const answer = await joinWith(hub, asked, { ...proof, ...change });
    return answer.statusCode === 201 ? "joined" : answer.json<{ error: string }>().error;
  };

  it("takes the signature of that key over challenge, walk, device and host, and no other", async () => {
    const asked = await joining();
    const [one, other] = [await proofOf(hub, asked), await proofOf(hub, asked)];
    if (!one || !other) throw new Error("no challenge");
    for (const change of [
      { signature: other.signature },
      { challenge: other.challenge },
      { key: newKey().publicKey },
      { signature: "" },
      { signature: `${one.signature.slice(0, -1)}B` },
      { challenge: "x" },
      { challenge: `${one.challenge.slice(0, -1)}A` },
      { host: "elsewhere:4173" },
    ]) {
      expect([change, await badly(asked, change)]).toEqual([change, "bad-proof"]);
    }
    const elsewhere = { ...asked, device: "/devices/e" };
    expect((await joinWith(hub, elsewhere, one)).json().error).toBe("bad-proof");
    const otherWalk = { ...asked, code: await hub.invite("marker", 15, "walk-2") };
    expect((await joinWith(hub, otherWalk, one)).json().error).toBe("bad-proof");
    expect((await joinWith(hub, asked, one)).statusCode).toBe(201);
  });

  it("takes a challenge once, also when two come at the same time and on another hub of the engine", async () => {
    const asked = await joining();
    const second = await TestHub.open({}, hub.engine);
    const proof = await proofOf(hub, asked);
    const answers = await Promise.all([joinWith(hub, asked, proof), joinWith(second, asked, proof)]);
    expect(answers.map(({ statusCode }) => statusCode).sort()).toEqual([201, 403]);
    expect((await joinWith(hub, asked, proof)).json().error).toBe("bad-proof");
    await second.close();
  });

  it("takes a challenge for five minutes, forgets those that are over, and gives another hub two hours", async () => {
    const asked = { ...LEFT, code: hub.owner, walk: WALK };
    const far = { ...asked, device: "/hubs/far", role: "relay" as const };
    const proofs = [await proofOf(hub, asked), await proofOf(hub, far)];
    await joinWith(hub, asked);
    hub.now = (NOON + 5 * 60_000) as Instant;
    expect((await joinWith(hub, asked, proofs[0])).json().error).toBe("bad-proof");
    expect((await joinWith(hub, far, proofs[1])).statusCode).toBe(201);
    expect([...(await hub.engine.keep.list("challenge."))]).toHaveLength(1);
  });

  it("gives challenges to those with a good code alone", async () => {
    const answer = await challengeOf(hub, { code: "AAA-AAA-AAA", device: DEVICE });
    expect([answer.statusCode, answer.json().error]).toEqual([403, "bad-code"]);
  });

  it("says for which walk the owner's code is to be used", async () => {
    expect((await challengeOf(hub, { code: hub.owner, device: DEVICE })).json().error).toBe("walk-needed");
  });

  it("takes a name of the hub behind a proxy that asks by another one, and no address", async () => {
    const named = await TestHub.open({ names: new Set(["localhost", "ground.example"]) }, hub.engine);
    const asked = await joining();
    const at = async (host: string) => {
      const challenge = (await challengeOf(named, asked)).json<{ challenge: string }>().challenge;
      const text = ["tetherline join 1", challenge, WALK, DEVICE, host].join("\n");
      const proof = { key: asked.key.publicKey, challenge, host, signature: await asked.key.sign(text) };
      return (await joinWith(named, asked, proof)).statusCode;
    };
    expect([await at("ground.example"), await at("10.0.0.7:4173"), await at("evil.example")]).toEqual([
      201, 403, 403,
    ]);
    expect(await at(HOST)).toBe(201);
    await named.close();
  });
});

describe("[SEL4] keys", () => {
  it("are 32 raw bytes in base64url", () => {
    const { publicKey } = newKey();
    expect(keySchema.safeParse(publicKey).success).toBe(true);
    const [bytes, hex] = [
      Buffer.from(publicKey, "base64url"),
      Buffer.from(publicKey, "base64url").toString("hex"),
    ];
    for (const wrong of [
      hex,
      `${publicKey}=`,
      publicKey.slice(1),
      "",
      bytes.subarray(1).toString("base64url"),
    ]) {
      expect([wrong, keySchema.safeParse(wrong).success]).toEqual([wrong, false]);
    }
  });

  it("of low order are refused, however they are written", () => {
    const { publicKeys } = JSON.parse(readFileSync("tests/truth/fixtures/low-order-keys.json", "utf8")) as {
      publicKeys: string[];
    };
    for (const hex of publicKeys) {
      expect([hex, keySchema.safeParse(Buffer.from(hex, "hex").toString("base64url")).success]).toEqual([
        hex,
        false,
      ]);
    }
    expect(publicKeys).toHaveLength(14);
  });
});
