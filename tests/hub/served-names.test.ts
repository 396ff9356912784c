import { randomBytes } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { connect } from "node:tls";
import { afterEach, describe, expect, it } from "vitest";
import { isServedUnder } from "../../src/hub/routes/served-names.ts";
import { machineNames, selfMadeCertificate } from "../../src/hub/tls/index.ts";
import { NOON, TestHub, WALK } from "./test-hub.ts";
import { written } from "./written-entry.ts";

let hub: TestHub | null = null;
afterEach(async () => {
  await hub?.close();
  hub = null;
});

describe("[HUB] the names that a hub answers under", () => {
  const names = new Set(["localhost", "vehicle", "hub.example"]);

  it.each([
    ["localhost:4173", true],
    ["LOCALHOST", true],
    ["vehicle", true],
    ["vehicle.local:4173", true],
    ["vehicle.lan.", true],
    ["hub.example", true],
    ["127.0.0.1:4173", true],
    ["192.0.2.7", true],
    ["[::1]:4173", true],
    ["rebound.example", false],
    ["vehicle.rebound.example", false],
    ["localhost.rebound.example:4173", false],
    ["127.0.0.1.rebound.example", false],
    ["vehicle:4173:1", false],
    ["", false],
    [undefined, false],
  ])("%s: %s", (host, isServed) => {
    expect(isServedUnder(host, names)).toBe(isServed);
  });

  it("are insisted on before anything is done, a code tried or a page given", async () => {
    hub = await TestHub.open({ names });
    const body = { code: hub.owner, device: "/devices/d", walk: WALK };
    for (const [method, url] of [
      ["POST", "/api/join"],
      ["GET", "/api/health"],
      ["GET", "/metrics"],
      ["GET", "/"],
      ["GET", "/nothing"],
    ] as const) {
      const answer = await hub.ask(method, url, {
        headers: { host: "rebound.example" },
        ...(method === "POST" ? { body } : {}),
      });
      expect([url, answer.statusCode, answer.json().error]).toEqual([url, 421, "other-name"]);
    }
    expect((await hub.ask("POST", "/api/join", { headers: { host: "vehicle:1" }, body })).statusCode).toBe(
      201,
    );
  });
});

describe("[HUB] what a hub speaks over TLS", () => {
  it.each([
    ["ECDHE-ECDSA-AES128-SHA256", false],
    ["ECDHE-ECDSA-AES256-CCM8", false],
    ["ECDHE-ECDSA-AES128-GCM-SHA256", true],
  ])("with %s alone: %s", async (ciphers, isSpoken) => {
    const folder = mkdtempSync(join(tmpdir(), "tetherline-suites-"));
    const tls = await selfMadeCertificate(folder, "x", machineNames(), { now: () => NOON, randomBytes });
    rmSync(folder, { recursive: true });
    hub = await TestHub.open({ tls });
    const port = Number(new URL(await hub.listen()).port);
    const outcome = await new Promise((resolve) => {
      const options = { port, host: "127.0.0.1", rejectUnauthorized: false, maxVersion: "TLSv1.2" } as const;
      const socket = connect({ ...options, ciphers: `${ciphers}:@SECLEVEL=0` });
      socket.once("secureConnect", () => {
        resolve(true);
        socket.destroy();
      });
      socket.once("error", () => resolve(false));
    });
    expect(outcome).toBe(isSpoken);
  });
});

describe("[HUB] the time of an entry", () => {
  it("may be wrong by days, but is no year in which nobody walks; what is kept stays known", async () => {
    hub = await TestHub.open();
    const token = await hub.join("/devices/d");
    const at = (number: number, time: string) => written("/devices/d", number, { time });
    const entries = [
      at(1, "2032-04-02T11:00:00.000Z"),
      at(2, "9999-12-31T23:59:59.000Z"),
      at(3, "1999-01-01T00:00:00.000Z"),
    ];
    const { results } = (await hub.push(token, entries)).json<{
      results: { outcome: string; reason?: string; words?: string }[];
    }>();
    expect(results.map(({ outcome, reason }) => reason ?? outcome)).toEqual([
      "accepted",
      "ahead",
      "accepted",
    ]);
    expect(results[1]?.words).toMatch(
      /^Its time is \d+ days ahead of the hub's clock: set the device's clock/,
    );
    hub.now = (hub.now - 30 * 24 * 3_600_000) as typeof hub.now;
    const again = (await hub.push(token, entries.slice(0, 1))).json<{ results: { outcome: string }[] }>();
    expect(again.results[0]?.outcome).toBe("known");
  });
});
