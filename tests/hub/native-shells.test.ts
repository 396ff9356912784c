import { afterEach, beforeEach, describe, expect, it } from "vitest";
import config from "../../capacitor.config.ts";
import { joinText } from "../../src/core/link/index.ts";
import { SHELL_ORIGINS } from "../../src/hub/routes/native-shells.ts";
import { newKey } from "./keyed-device.ts";
import { TestHub, WALK } from "./test-hub.ts";
import { writtenNotes } from "./written-entry.ts";

const DEVICE = "/devices/shell";
const entries = `/api/walks/${WALK}/entries`;

let hub: TestHub;
beforeEach(async () => {
  hub = await TestHub.open({ names: new Set(["hub", "localhost"]) });
});
afterEach(() => hub.close());

const from = (origin: string, more: Record<string, string> = {}) => ({
  headers: { host: "hub:4173", origin, "sec-fetch-site": "cross-site", ...more },
});
const preflight = (origin: string, url = entries) =>
  hub.hub.server.inject({
    method: "OPTIONS",
    url,
    ...from(origin, {
      "access-control-request-method": "POST",
      "access-control-request-headers": "authorization,content-type",
    }),
  });

describe("[HUB] a native shell of the app", () => {
  it("has the origins that its configuration gives it", () => {
    const { androidScheme, iosScheme, hostname } = config.server ?? {};
    expect([`${androidScheme}://${hostname}`, `${iosScheme}://${hostname}`]).toEqual(SHELL_ORIGINS);
  });

  it.each(SHELL_ORIGINS)("%s joins with a token, enters, follows and leaves", async (origin) => {
    const asked = { code: hub.owner, device: DEVICE, walk: WALK, name: "Tablet" };
    const joined = await hub.ask("POST", "/api/join", { body: { ...asked, use: "bearer" }, ...from(origin) });
    expect([joined.statusCode, joined.headers["access-control-allow-origin"]]).toEqual([201, origin]);
    expect(joined.headers).not.toHaveProperty("set-cookie");
    const { token } = joined.json();
    const answer = await preflight(origin);
    expect(answer.statusCode).toBe(204);
    expect(answer.headers["access-control-allow-origin"]).toBe(origin);
    expect(answer.headers["access-control-allow-headers"]).toContain("authorization");
    const pushed = await hub.ask("POST", entries, {
      body: writtenNotes(DEVICE, 1, 2),
      token,
      ...from(origin),
    });
    expect([pushed.statusCode, pushed.json().results[0].outcome]).toEqual([200, "accepted"]);
    const left = await hub.ask("POST", `/api/walks/${WALK}/leave`, { body: {}, token, ...from(origin) });
    expect(left.statusCode).toBe(204);
  });

  it.each(SHELL_ORIGINS)("%s is given the stream", async (origin) => {
    const token = await hub.join(DEVICE, "watcher");
    const address = await hub.listen();
    const abort = new AbortController();
    const stream = await fetch(`${address}${entries}`, {
      headers: { authorization: `Bearer ${token}`, accept: "text/event-stream", origin },
      signal: abort.signal,
    });
    expect([stream.status, stream.headers.get("access-control-allow-origin")]).toEqual([200, origin]);
    abort.abort();
  });

  it("may not use a cookie, and has nothing of the browser's", async () => {
    const [origin = ""] = SHELL_ORIGINS;
    const body = { code: hub.owner, device: DEVICE, walk: WALK, use: "cookie" };
    const joined = await hub.ask("POST", "/api/join", { body, ...from(origin) });
    expect([joined.statusCode, joined.headers["set-cookie"]]).toEqual([403, undefined]);
    const own = await hub.ask("POST", "/api/join", { body, headers: { host: "hub:4173" } });
    const cookie = String(own.headers["set-cookie"]).split(";")[0] ?? "";
    const answer = await hub.ask("POST", entries, { body: [], ...from(origin, { cookie }) });
    expect(answer.statusCode).toBe(403);
    expect(answer.headers).not.toHaveProperty("access-control-allow-credentials");
  });

  it("is nothing that another page can pass for", async () => {
    for (const origin of [
      "http://localhost",
      "https://localhost:4173",
      "https://localhost.example",
      "https://elsewhere.example",
      "capacitor://elsewhere",
      "null",
    ]) {
      const answer = await preflight(origin);
      expect([origin, answer.headers["access-control-allow-origin"]]).toEqual([origin, undefined]);
      const body = { code: hub.owner, device: DEVICE, walk: WALK, use: "bearer" };
      const joined = await hub.ask("POST", "/api/join", { body, ...from(origin) });
      expect([origin, joined.statusCode]).toEqual([origin, 403]);
      expect(joined.headers).not.toHaveProperty("access-control-allow-origin");
    }
  });

  it("proves its key as a browser does", async () => {
    const [origin = ""] = SHELL_ORIGINS;
    const opening = { code: hub.owner, device: DEVICE, walk: WALK };
    const asked = await hub.ask("POST", "/api/join/challenge", { body: opening, ...from(origin) });
    expect([asked.statusCode, asked.headers["access-control-allow-origin"]]).toEqual([200, origin]);
    const key = newKey();
    const { challenge } = asked.json();
    const host = "hub:4173";
    const signature = await key.sign(joinText({ challenge, walk: WALK, device: DEVICE, host }));
    const body = { ...opening, proof: { key: key.publicKey, challenge, host, signature } };
    const joined = await hub.ask("POST", "/api/join", { body, ...from(origin) });
    expect([joined.statusCode, joined.json().key]).toEqual([201, key.publicKey]);
  });
});
