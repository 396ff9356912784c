import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join as joinPath } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { jetstreamManager } from "@nats-io/jetstream";
import { connect } from "@nats-io/transport-node";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type NatsServer, type NatsServers, startNats, whyNoNats } from "../../machine/nats-server.ts";
import { sized } from "../../machine/test-size.ts";
import { startFollowing } from "./following-device.ts";
import { buildHubProgram, type HubProcess, type HubProgram, startHubProcess } from "./hub-process.ts";
import { doubledIn, keptLog, missingFrom, ofDevices, verifiedLog } from "./kept-log.ts";
import { join, startWriting } from "./writing-device.ts";

// Servers that wait for the processor take each other for dead.
const KILLS = sized({ daily: 2, soak: 5, alone: true });
const skipped = whyNoNats();

describe.skipIf(skipped !== null)(`[HUB] JetStream of three, two hubs ${skipped ?? ""}`, () => {
  let program: HubProgram;
  let nats: NatsServers;
  let data: string;
  beforeAll(async () => {
    data = mkdtempSync(joinPath(tmpdir(), "tetherline-leader-"));
    [program, nats] = await Promise.all([buildHubProgram(), startNats({ count: 3 })]);
  }, 60_000);
  afterAll(async () => {
    program?.remove();
    await nats?.stop();
    rmSync(data, { recursive: true, force: true });
  });

  /** The server that leads the stream of entries. */
  const leader = async (): Promise<NatsServer> => {
    const connection = await connect({
      servers: nats.servers.map(({ port }) => `127.0.0.1:${port}`),
      timeout: 2_000,
    });
    try {
      const manager = await jetstreamManager(connection, { timeout: 2_000 });
      const { cluster } = await manager.streams.info("tetherline-entries");
      const found = nats.servers.find(({ name }) => name === cluster?.leader);
      if (!found) throw new Error("nobody leads");
      return found;
    } finally {
      await connection.close();
    }
  };
  /** Servers agree on a leader after a while. */
  const leaderAtLast = async (): Promise<NatsServer> => {
    for (let attempt = 0; ; attempt += 1) {
      try {
        return await leader();
      } catch (cause) {
        if (attempt > 60) throw cause;
        await wait(500);
      }
    }
  };

  test(`its leader killed ${KILLS} times under load: nothing confirmed is lost, nothing is there or told twice, and the log is whole when it is closed`, {
    timeout: 300_000,
  }, async () => {
    const engine = `${nats.url}?replicas=3`;
    const hubs: HubProcess[] = [];
    for (const name of ["a", "b"]) {
      hubs.push(await startHubProcess({ program, data: joinPath(data, name), port: 0, engine }));
    }
    const [first, second] = hubs as [HubProcess, HubProcess];
    const devices = ["/devices/one", "/devices/two"];
    const joined = await Promise.all(devices.map((device) => join(first.address, first.ownerCode, device)));
    const { token: readerToken } = await join(first.address, first.ownerCode, "/devices/reader");
    let turn = 0;
    // Each request may go to the other hub: a token and a cursor are good at both.
    const anyHub = () => hubs[turn++ % 2]?.address ?? "";
    const writers = joined.map((one) => startWriting(anyHub, one));
    const readers = hubs.map(({ address }) => startFollowing(() => address, readerToken));
    try {
      for (let kill = 0; kill < KILLS; kill += 1) {
        await wait(1_000);
        const server = await leaderAtLast();
        const before = writers.map(({ confirmed }) => confirmed.size);
        await server.kill();
        // The two that are left choose another leader and go on.
        await expect
          .poll(() => writers.every(({ confirmed }, index) => confirmed.size > (before[index] ?? 0) + 5), {
            timeout: 60_000,
            interval: 100,
          })
          .toBe(true);
        await server.start();
      }
      for (const writer of writers) await writer.stop();
      await writers[0]?.close();
      const verdict = async () => {
        const { verdict, findings } = await verifiedLog(first.address, readerToken);
        return [verdict, findings];
      };
      await expect.poll(verdict, { timeout: 30_000, interval: 500 }).toEqual(["whole", []]);
      const log = await keptLog(first.address, readerToken);
      expect(await keptLog(second.address, readerToken)).toEqual(log);
      expect(doubledIn(log)).toEqual([]);
      for (const { confirmed, offered } of writers) {
        expect(missingFrom(log, confirmed)).toEqual([]);
        expect(missingFrom([...confirmed], offered)).toEqual([]);
      }
      expect(ofDevices(log)).toHaveLength(writers.reduce((sum, { offered }) => sum + offered.size, 0));
      for (const reader of readers) {
        await expect.poll(() => reader.heard.length, { timeout: 30_000 }).toBe(log.length);
        expect(reader.heard).toEqual(log);
      }
    } finally {
      for (const reader of readers) await reader.stop();
      for (const hub of hubs) await hub.kill();
    }
  });
});
