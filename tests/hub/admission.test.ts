import { fc, test } from "@fast-check/vitest";
import { SignJWT } from "jose";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Instant } from "../../src/core/units/index.ts";
import { newCode } from "../../src/hub/admission/codes.ts";
import { readCode, shownCode } from "../../src/hub/admission/index.ts";
import { TestHub, WALK } from "./test-hub.ts";
import { written } from "./written-entry.ts";

const DEVICE = "/devices/d";
let hub: TestHub;

beforeEach(async () => {
  hub = await TestHub.open();
});
afterEach(() => hub.close());

const session = (token: string | undefined, walk = WALK as string, at = hub) =>
  at.ask("GET", `/api/walks/${walk}/session`, { token });
const statusOf = async (token: string | undefined, walk?: string, at = hub) =>
  (await session(token, walk, at)).statusCode;
const join = (code: string, device = DEVICE, token?: string, at = hub) =>
  at.ask("POST", "/api/join", { token, body: { code, device } });
const later = (minutes: number) => {
  hub.now = (hub.now + minutes * 60_000) as Instant;
};

describe("[HUB] codes", () => {
  test.prop([
    fc.uint8Array({ minLength: 9, maxLength: 9 }),
    fc.array(fc.constantFrom("-", " ", ""), { minLength: 9, maxLength: 9 }),
  ])("are read back however they are written", (bytes, between) => {
    const code = newCode(() => bytes);
    expect(code).toMatch(/^[abcdefghjkmnpqrstuvwxyz023456789]{9}$/);
    expect(shownCode(code)).toMatch(/^[A-Z0-9]{3}-[A-Z0-9]{3}-[A-Z0-9]{3}$/);
    const entered = [...code].map((letter, index) => letter + between[index]).join("");
    for (const text of [code, shownCode(code), entered, entered.toUpperCase()])
      expect(readCode(text)).toBe(code);
  });

  it("use each of their 32 letters equally", () => {
    const letters = Array.from({ length: 256 }, (_, byte) => newCode(() => new Uint8Array(9).fill(byte))[0]);
    const counts = new Map<string | undefined, number>();
    for (const letter of letters) counts.set(letter, (counts.get(letter) ?? 0) + 1);
    expect([...counts.values()]).toEqual(Array(32).fill(8));
  });

  it("of invitations are good until they expire", async () => {
    const code = await hub.invite("marker", 10);
    later(9.99);
    expect((await join(code)).statusCode).toBe(201);
    expect((await join(code)).statusCode).toBe(201);
    later(0.01);
    const answer = await join(code);
    expect([answer.statusCode, answer.json().error]).toEqual([403, "bad-code"]);
  });

  it("are not kept as they are, save the owner's", async () => {
    const code = await hub.invite("marker");
    const kept = JSON.stringify([...(await hub.engine.keep.list(""))]).toLowerCase();
    expect(kept).toContain("invitation.");
    expect(kept).not.toContain(code.toLowerCase());
  });
});

describe("[HUB] tokens", () => {
  const claims = async () => {
    const token = await hub.join(DEVICE, "marker");
    const [, payload = ""] = token.split(".");
    return {
      token,
      claims: JSON.parse(Buffer.from(payload, "base64url").toString()) as Record<string, unknown>,
    };
  };
  const part = (value: unknown) => Buffer.from(JSON.stringify(value)).toString("base64url");

  it("are bound to walk, role and device, and are not for another walk, there or not", async () => {
    const { claims: said, token } = await claims();
    expect(said).toMatchObject({ walk: WALK, role: "marker", sub: DEVICE, jti: expect.any(String) });
    await hub.join("/devices/x", "lead", "walk-2");
    const answers = await Promise.all(["walk-2", "walk-never"].map((walk) => session(token, walk)));
    expect(answers.map(({ statusCode, body }) => [statusCode, body])).toEqual(
      Array(2).fill([403, '{"error":"other-walk","words":"This token is of another walk."}']),
    );
  });

  it("that are forged are refused", async () => {
    const { token, claims: said } = await claims();
    const [header = "", payload = "", signature = ""] = token.split(".");
    const stronger = part({ ...said, role: "lead" });
    const otherKey = await new SignJWT(said)
      .setProtectedHeader({ alg: "HS256" })
      .sign(new TextEncoder().encode("0".repeat(32)));
    const forged = [
      `${header}.${stronger}.${signature}`,
      `${part({ alg: "none" })}.${stronger}.`,
      `${part({ alg: "none" })}.${payload}.`,
      `${header}.${payload}.`,
      `${header}.${payload}`,
      `${header}.${payload}.${signature.startsWith("A") ? "B" : "A"}${signature.slice(1)}`,
      otherKey,
      "x.y.z",
      "",
    ];
    for (const one of forged) {
      const answer = await hub.ask("GET", `/api/walks/${WALK}/session`, {
        headers: { authorization: `Bearer ${one}` },
      });
      expect([one, answer.statusCode, answer.headers["www-authenticate"]]).toEqual([one, 401, "Bearer"]);
    }
    expect(await statusOf(token)).toBe(200);
  });

  test.prop([fc.nat(), fc.integer({ min: 1, max: 255 })], { numRuns: 50 })(
    "with any one byte of payload or signature changed are refused",
    async (place, change) => {
      const { token } = await claims();
      const [header = "", ...rest] = token.split(".");
      const parts = rest.map((one) => Buffer.from(one, "base64url"));
      const changed = parts[place % 2];
      if (!changed) throw new Error("a token has three parts");
      const at = place % changed.length;
      changed[at] = (changed[at] ?? 0) ^ change;
      const forged = [header, ...parts.map((one) => one.toString("base64url"))].join(".");
      expect(await statusOf(forged)).toBe(401);
    },
  );

  it("end after thirty days", async () => {
    const token = await hub.join(DEVICE);
    later(30 * 24 * 60 - 1);
    expect(await statusOf(token)).toBe(200);
    later(2);
    expect(await statusOf(token)).toBe(401);
  });

  it("are needed, and are bearers", async () => {
    const token = await hub.join(DEVICE);
    const answers = await Promise.all(
      [{}, { authorization: `Basic ${token}` }, { authorization: token }].map((headers) =>
        hub.ask("GET", `/api/walks/${WALK}/entries`, { headers: headers as Record<string, string> }),
      ),
    );
    expect(answers.map(({ statusCode }) => statusCode)).toEqual([401, 401, 401]);
  });

  it("die at once when withdrawn, on every hub of the engine, and the invitation they came by with them", async () => {
    const second = await TestHub.open({}, hub.engine);
    const code = await hub.invite("marker");
    const { token } = (await join(code)).json<{ token: string }>();
    expect([await statusOf(token), await statusOf(token, WALK, second)]).toEqual([200, 200]);
    const device = encodeURIComponent(DEVICE);
    await second.ask("DELETE", `/api/walks/${WALK}/followers/${device}`, { token: second.owner });
    expect([await statusOf(token), await statusOf(token, WALK, second)]).toEqual([401, 401]);
    expect((await hub.push(token, [written(DEVICE, 1)])).statusCode).toBe(401);
    expect((await join(code)).statusCode).toBe(403);
    expect((await join(await hub.invite("marker"))).statusCode).toBe(201);
    await second.close();
  });

  it("are replaced when the device joins again", async () => {
    const first = await hub.join(DEVICE, "marker");
    const second = await hub.join(DEVICE, "watcher");
    expect([await statusOf(first), await statusOf(second)]).toEqual([401, 200]);
  });

  it("are good again after the hub is started anew, as is the owner's code, until another is wished", async () => {
    const token = await hub.join(DEVICE);
    const again = await TestHub.open({}, hub.engine);
    expect([again.owner, await statusOf(token, WALK, again)]).toEqual([hub.owner, 200]);
    await again.close();
  });
});

describe("[HUB] an invitation gives what it says and no more", () => {
  it("does not put a device out, unless it is that device itself", async () => {
    const lead = await hub.join(DEVICE, "lead");
    const code = await hub.invite("marker");
    const taken = await join(code);
    expect([taken.statusCode, taken.json().error]).toEqual([403, "device-taken"]);
    expect(await statusOf(lead)).toBe(200);
    const itself = await join(code, DEVICE, lead);
    expect([itself.statusCode, itself.json().role]).toEqual([201, "marker"]);
    const { token } = itself.json<{ token: string }>();
    expect((await join(await hub.invite("lead"))).json().error).toBe("device-taken");
    expect((await join(await hub.invite("lead"), DEVICE, token)).json().role).toBe("lead");
  });

  it.each([
    ["", 400],
    ["/devices/a b", 400],
    ["/devices/a/below", 400],
    ["/devices/\u0007", 400],
    ["x".repeat(401), 400],
    [7, 400],
    ["urn:uuid:8f0b", 201],
  ])("takes %j for a device or not", async (device, status) => {
    const answer = await hub.ask("POST", "/api/join", { body: { code: hub.owner, device, walk: WALK } });
    expect(answer.statusCode).toBe(status);
  });
});

describe("[HUB] the cookie of a browser", () => {
  const cookieOf = async (headers: Record<string, string> = {}) => {
    const answer = await hub.ask("POST", "/api/join", {
      body: { code: hub.owner, device: DEVICE, walk: "walk 1/ä", use: "cookie" },
      headers,
    });
    expect(answer.json()).not.toHaveProperty("token");
    return String(answer.headers["set-cookie"]);
  };
  const url = `/api/walks/${encodeURIComponent("walk 1/ä")}`;

  it("is out of scripts' and other sites' reach and goes to its walk only", async () => {
    const cookie = await cookieOf();
    expect(cookie).toMatch(/^tetherline=[\w.-]+; /);
    for (const attribute of ["HttpOnly", "SameSite=Strict", `Path=${url}`, "Max-Age=2592000"]) {
      expect(cookie.split("; ")).toContain(attribute);
    }
    expect(cookie).not.toMatch(/Secure|Domain/);
  });

  it("is one of TLS where a proxy says so that the owner named, and nobody else", async () => {
    const overTls = { "x-forwarded-proto": "https" };
    expect(await cookieOf(overTls)).not.toMatch(/Secure/);
    const behind = await TestHub.open({ proxies: ["127.0.0.1"] }, hub.engine);
    const answer = await behind.ask("POST", "/api/join", {
      body: { code: hub.owner, device: "/devices/behind", walk: WALK, use: "cookie" },
      headers: overTls,
    });
    const secure = String(answer.headers["set-cookie"]);
    expect(secure).toMatch(/^__Secure-tetherline=.*; Secure/);
    const status = async (cookie = "") =>
      (
        await behind.ask("GET", `/api/walks/${WALK}/session`, {
          headers: { ...overTls, cookie: cookie.split(";")[0] ?? "" },
        })
      ).statusCode;
    expect([await status(secure), await status(secure.replace("__Secure-", ""))]).toEqual([200, 401]);
    await behind.hub.server.close();
  });

  it("does what a bearer does, and is cleared on leaving", async () => {
    const [cookie = ""] = (await cookieOf()).split(";");
    const asked = (headers: Record<string, string>) =>
      hub.ask("POST", `${url}/entries`, {
        body: [written(DEVICE, 1, { subject: "walk 1/ä" })],
        headers: { cookie, ...headers },
      });
    expect((await asked({})).json().results[0].outcome).toBe("accepted");
    expect((await asked({ authorization: "Bearer x.y.z" })).statusCode).toBe(401);
    const left = await hub.ask("POST", `${url}/leave`, { headers: { cookie } });
    expect([left.statusCode, String(left.headers["set-cookie"])]).toEqual([
      204,
      expect.stringMatching(/^tetherline=; .*Path=.*Expires=Thu, 01 Jan 1970/),
    ]);
    expect((await asked({})).statusCode).toBe(401);
  });

  it("is refused for changes that a page of another origin asks for, and let pass from our own", async () => {
    const [cookie = ""] = (await cookieOf()).split(";");
    const statusFor = async (headers: Record<string, string>) =>
      (
        await hub.ask("POST", `${url}/entries`, {
          body: [],
          headers: { host: "hub:4173", cookie, ...headers },
        })
      ).statusCode;
    const foreign: Record<string, string>[] = [
      { "sec-fetch-site": "cross-site" },
      { "sec-fetch-site": "same-site" },
      { "sec-fetch-site": "same-site", origin: "http://hub:4173" },
      { origin: "http://hub:9999" },
      { origin: "http://elsewhere" },
      { origin: "null" },
    ];
    for (const headers of foreign) expect([headers, await statusFor(headers)]).toEqual([headers, 403]);
    for (const headers of [{}, { "sec-fetch-site": "same-origin" }, { origin: "http://hub:4173" }]) {
      expect([headers, await statusFor(headers as Record<string, string>)]).toEqual([headers, 200]);
    }
    const joining = await hub.ask("POST", "/api/join", {
      body: { code: hub.owner, device: DEVICE, walk: WALK, use: "cookie" },
      headers: { "sec-fetch-site": "cross-site" },
    });
    expect([joining.statusCode, joining.headers["set-cookie"]]).toEqual([403, undefined]);
  });
});
