import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Instant } from "../../src/core/units/index.ts";
import type { JournalEvent } from "../../src/hub/journal/index.ts";
import { NO_JOURNAL } from "../../src/hub/journal/index.ts";
import { addressPrefix } from "../../src/hub/routes/address-prefix.ts";
import type { ServerOptions } from "../../src/hub/routes/index.ts";
import { RATE_LIMITS } from "../../src/hub/routes/index.ts";
import { challengeOf } from "./keyed-device.ts";
import { TestHub, WALK } from "./test-hub.ts";

const noted: JournalEvent[] = [];
let hub: TestHub;
const begin = async (options: Partial<ServerOptions> = {}) => {
  noted.length = 0;
  hub = await TestHub.open({ journal: { ...NO_JOURNAL, note: (event) => noted.push(event) }, ...options });
};
beforeEach(() => begin());
afterEach(() => hub.close());

/** Codes that nobody gave out, each another one. */
const wrong = (number: number) =>
  `aaaaaa${[...String(number).padStart(3, "0")].map((digit) => "abcdefghjk"[Number(digit)]).join("")}`;
const from = (ip?: string) => (ip === undefined ? {} : { "x-forwarded-for": ip });
const join = (code: string, device = "/devices/d", ip?: string) =>
  hub.ask("POST", "/api/join", { body: { code, device, walk: WALK }, headers: from(ip) });
const guess = async (number: number, ip?: string) => (await join(wrong(number), "/devices/d", ip)).statusCode;
const later = (seconds: number) => {
  hub.now = (hub.now + seconds * 1000) as Instant;
};
const wrongOnes = () => noted.filter(({ event }) => event === "wrong-code").length;

describe("[HUB] guessing codes", () => {
  it("makes an address wait after five wrong ones, twice as long each time, and at most ten seconds", async () => {
    for (let number = 0; number < 5; number += 1) expect(await guess(number)).toBe(403);
    const waits: string[] = [];
    for (let number = 5; number < 12; number += 1) {
      expect(await guess(number)).toBe(403);
      const answer = await join(wrong(99));
      expect([answer.statusCode, answer.json().error]).toEqual([429, "too-many-tries"]);
      const seconds = String(answer.headers["retry-after"]);
      expect(answer.json().words).toContain(`in ${seconds} s`);
      waits.push(seconds);
      later(Number(seconds));
    }
    expect(waits).toEqual(["1", "2", "4", "8", "10", "10", "10"]);
    later(15 * 60);
    for (let number = 20; number < 25; number += 1) expect(await guess(number)).toBe(403);
    expect((await join(await hub.invite("marker"))).statusCode).toBe(201);
  });

  it("makes nobody wait who has the owner's code, for joining or as a bearer", async () => {
    for (let number = 0; number < 40; number += 1) await guess(number);
    expect(await guess(41)).toBe(429);
    expect((await challengeOf(hub, { code: hub.owner, device: "/devices/o", walk: WALK })).statusCode).toBe(
      200,
    );
    expect((await join(hub.owner)).statusCode).toBe(201);
    expect((await hub.ask("GET", "/api/walks", { token: hub.owner })).statusCode).toBe(200);
    const session = { token: (await join(hub.owner)).json<{ token: string }>().token };
    expect((await hub.ask("GET", `/api/walks/${WALK}/session`, session)).statusCode).toBe(200);
  });

  it("makes the owner wait no more when strangers used up the requests of the address", async () => {
    await hub.close();
    await begin({ limits: { ...RATE_LIMITS, perAddress: 10 } });
    for (let number = 0; number < 12; number += 1) await guess(0);
    const answer = await join(wrong(0));
    expect([answer.statusCode, answer.json().error]).toEqual([429, "too-many"]);
    expect((await join(hub.owner)).statusCode).toBe(201);
  });

  it("counts a code that is entered again once: who repeats one guesses nothing", async () => {
    for (let times = 0; times < 30; times += 1) expect(await guess(7)).toBe(403);
    for (let number = 0; number < 4; number += 1) expect(await guess(number)).toBe(403);
    expect(await guess(5)).toBe(403);
    expect(await guess(6)).toBe(429);
  });

  it("counts bearers and challenges like joining", async () => {
    for (let number = 0; number < 3; number += 1) {
      expect((await hub.ask("GET", "/api/walks", { token: wrong(number) })).statusCode).toBe(401);
      expect((await challengeOf(hub, { code: wrong(number + 10), device: "/devices/d" })).statusCode).toBe(
        403,
      );
    }
    const bearer = await hub.ask("GET", "/api/walks", { token: wrong(50) });
    expect([bearer.statusCode, await guess(51)]).toEqual([429, 429]);
    expect((await hub.ask("GET", "/api/health")).statusCode).toBe(200);
  });

  it("is judged one code at a time, however many come at once", async () => {
    const answers = await Promise.all(Array.from({ length: 1000 }, (_, number) => guess(number)));
    expect(answers.filter((status) => status === 403)).toHaveLength(6);
    expect(wrongOnes()).toBe(6);
  });

  it("goes by the address that a trusted proxy names, and by nobody else's word", async () => {
    for (let number = 0; number < 7; number += 1) await guess(number, "203.0.113.7");
    expect(await guess(8, "203.0.113.8")).toBe(429);
    await hub.close();
    await begin({ proxies: ["127.0.0.0/8"] });
    for (let number = 0; number < 6; number += 1) await guess(number, "203.0.113.7");
    expect([await guess(8, "203.0.113.7"), await guess(8, "203.0.113.8")]).toEqual([429, 403]);
    expect(noted.at(-1)).toEqual({ event: "wrong-code", address: "203.0.113.8" });
    for (let number = 0; number < 6; number += 1) await guess(number, `2001:db8:1:2::${number}`);
    expect([await guess(8, "2001:db8:1:2:3::4"), await guess(8, "2001:db8:1:3::4")]).toEqual([429, 403]);
  });

  it.each([
    ["127.0.0.1", "127.0.0.1"],
    ["::ffff:10.0.0.7", "10.0.0.7"],
    ["::1", "0:0:0:0::"],
    ["2001:DB8:0:1::2", "2001:db8:0:1::"],
    ["2001:db8::1", "2001:db8:0:0::"],
    ["fe80::1%eth0", "fe80:0:0:0::"],
    ["2001:0db8:0000:0001:0:0:0:1", "2001:db8:0:1::"],
  ])("of %s count with %s", (address, prefix) => {
    expect(addressPrefix(address)).toBe(prefix);
  });
});

describe("[HUB] how many devices a code lets in", () => {
  const invite = async (body: object) =>
    (await hub.ask("POST", `/api/walks/${WALK}/invitations`, { token: hub.owner, body })).json<{
      code: string;
      devices: number;
    }>();
  const left = async () =>
    (await hub.ask("GET", `/api/walks/${WALK}/invitations`, { token: hub.owner }))
      .json<{ invitations: { left: number }[] }>()
      .invitations.map((one) => one.left);
  const outcome = async (code: string, device: string) => {
    const answer = await join(code, device);
    return answer.statusCode === 201 ? "joined" : answer.json<{ error: string }>().error;
  };

  it("is one unless more are said, and the same device comes in again", async () => {
    const { code, devices } = await invite({ role: "marker" });
    expect([devices, await left()]).toEqual([1, [1]]);
    expect(await outcome(code, "/devices/one")).toBe("joined");
    expect(await outcome(code, "/devices/two")).toBe("code-used");
    expect(await outcome(code, "/devices/one")).toBe("joined");
    expect(await left()).toEqual([0]);
    expect(wrongOnes()).toBe(0);
  });

  it("is kept to by all hubs of the engine, also when devices come at once", async () => {
    const { code } = await invite({ role: "watcher", devices: 3 });
    const second = await TestHub.open({}, hub.engine);
    const asked = Array.from(
      { length: 8 },
      (_, number) => [number % 2 === 0 ? hub : second, number] as const,
    );
    const answers = await Promise.all(
      asked.map(([at, number]) =>
        at.ask("POST", "/api/join", { body: { code, device: `/devices/${number}` } }),
      ),
    );
    expect(answers.filter(({ statusCode }) => statusCode === 201)).toHaveLength(3);
    expect(await left()).toEqual([0]);
    await second.close();
  });

  it("does not count a device that gets no name, and nothing of it stays once the invitation is over", async () => {
    const { code } = await invite({ role: "marker" });
    await hub.join("/devices/there", "marker");
    expect(await outcome(code, "/devices/there")).toBe("device-taken");
    expect(await outcome(code, "/devices/one")).toBe("joined");
    later(16 * 60);
    await invite({ role: "marker" });
    expect([...(await hub.engine.keep.list("seat."))]).toEqual([]);
  });

  it.each([0, 501, 1.5, "two"])("is not %j", async (devices) => {
    const asked = { token: hub.owner, body: { role: "marker", devices } };
    expect((await hub.ask("POST", `/api/walks/${WALK}/invitations`, asked)).statusCode).toBe(400);
  });
});
