import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join as joinPath } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { freePort } from "../../machine/free-port.ts";
import { sized } from "../../machine/test-size.ts";
import { startFollowing } from "./following-device.ts";
import { buildHubProgram, type HubProgram, killNow, spawnHub, startHubProcess } from "./hub-process.ts";
import { doubledIn, keptLog, missingFrom, ofDevices, verifiedLog } from "./kept-log.ts";
import { join, startWriting } from "./writing-device.ts";

const KILLS = sized({ daily: 20, soak: 200 });
/** Every so many kills the hub is killed while it starts. */
const EARLY = 5;
/** Every so many kills the whole log is looked through. */
const LOOK = 40;

describe("[HUB] killed under load, SQLite", () => {
  let program: HubProgram;
  let data: string;
  beforeAll(async () => {
    data = mkdtempSync(joinPath(tmpdir(), "tetherline-killed-"));
    program = await buildHubProgram();
  }, 60_000);
  afterAll(() => {
    program?.remove();
    rmSync(data, { recursive: true, force: true });
  });

  test(`${KILLS} times, the whole hub: nothing confirmed is lost, nothing is there or told twice, and the log is whole when it is closed`, {
    timeout: 600_000,
  }, async () => {
    const port = await freePort(20_000 + (process.pid % 20_000));
    let hub = await startHubProcess({ program, data, port });
    const { address, ownerCode } = hub;
    const devices = ["/devices/one", "/devices/two", "/devices/three"];
    const joined = await Promise.all(devices.map((device) => join(address, ownerCode, device)));
    const { token: readerToken } = await join(address, ownerCode, "/devices/reader");
    const writers = joined.map((one) => startWriting(() => address, one));
    const reader = startFollowing(() => address, readerToken);
    try {
      for (let kill = 1; kill <= KILLS; kill += 1) {
        // However slow the machine is, each has something to lose each time.
        const before = writers.map((writer) => writer.confirmed.size);
        await expect
          .poll(() => writers.every(({ confirmed: { size } }, index) => size > (before[index] ?? 0)), {
            timeout: 30_000,
            interval: 5,
          })
          .toBe(true);
        await wait((kill * 37) % 120);
        const confirmed = writers.flatMap((writer) => [...writer.confirmed]);
        await hub.kill();
        if (kill % EARLY === 0) {
          const starting = spawnHub({ program, data, port });
          await wait((kill * 53) % 300);
          await killNow(starting);
        }
        hub = await startHubProcess({ program, data, port });
        if (kill % LOOK === 0)
          expect(missingFrom(await keptLog(address, readerToken), confirmed)).toEqual([]);
      }
      for (const writer of writers) await writer.stop();
      const log = await keptLog(address, readerToken);
      expect(doubledIn(log)).toEqual([]);
      for (const writer of writers) {
        expect(missingFrom(log, writer.confirmed)).toEqual([]);
        // Otherwise the hub was not killed while it had something to lose.
        expect(writer.failures()).toBeGreaterThan(KILLS / 4);
        expect(writer.confirmed.size).toBeGreaterThan(KILLS);
      }
      expect(new Set(ofDevices(log))).toEqual(new Set(writers.flatMap((writer) => [...writer.offered])));
      await writers[0]?.close();
      const verdict = async () => {
        const { verdict, findings } = await verifiedLog(address, readerToken);
        return [verdict, findings];
      };
      await expect.poll(verdict, { timeout: 10_000, interval: 500 }).toEqual(["whole", []]);
      const closed = await keptLog(address, readerToken);
      await expect.poll(() => reader.heard.length, { timeout: 10_000 }).toBe(closed.length);
      expect(reader.heard).toEqual(closed);
    } finally {
      await reader.stop();
      await hub.kill();
    }
  });
});
