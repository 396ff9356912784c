import { randomBytes } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { connect, type Socket } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { connect as connectSecurely } from "node:tls";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { machineNames, selfMadeCertificate } from "../../src/hub/tls/index.ts";
import { EventStream } from "./event-stream.ts";
import { NOON, TestHub, WALK } from "./test-hub.ts";

let hub: TestHub;
let port: number;
const sockets: Socket[] = [];
const streams: EventStream[] = [];

const begin = async (options = {}) => {
  hub = await TestHub.open({ connections: 10, ...options });
  port = Number(new URL(await hub.listen()).port);
};
beforeEach(() => begin());
afterEach(async () => {
  for (const socket of sockets.splice(0)) socket.destroy();
  for (const stream of streams.splice(0)) stream.close();
  await hub.close();
});

/** A connection that sends something and then nothing more; resolves once it is there. */
async function half(text: string): Promise<Socket> {
  const socket = connect(port, "127.0.0.1");
  sockets.push(socket);
  socket.on("error", () => {});
  await new Promise((resolve) => socket.once("connect", resolve));
  socket.write(text);
  return socket;
}
const closed = (socket: Socket) =>
  new Promise<void>((resolve) =>
    socket.closed ? resolve() : socket.resume().once("close", () => resolve()),
  );
const health = async () => (await fetch(`http://127.0.0.1:${port}/api/health`)).status;

describe("[HUB] half a request", () => {
  it("does not keep others out, however many there are: the oldest make place, and the console hears of it once", async () => {
    const halves = [];
    for (let number = 0; number < 30; number += 1)
      halves.push(await half("GET /api/health HTTP/1.1\r\nHost: localhost\r\n"));
    expect(await health()).toBe(200);
    await Promise.all(halves.slice(0, 15).map(closed));
    expect(hub.told).toEqual([
      "The hub has 10 connections, as many as it can hold: idle ones are closed for new ones, and others are told to come again.",
    ]);
  });

  it("is answered that it took too long, and its connection closed, though the other side keeps it open", async () => {
    const socket = connect({ port, host: "127.0.0.1", allowHalfOpen: true });
    sockets.push(socket);
    let answer = "";
    socket.on("data", (chunk: Buffer) => {
      answer += chunk;
    });
    socket.on("error", () => {});
    socket.write("GET /api/health HTTP/1.1\r\nHost: localhost\r\n");
    await new Promise((resolve) => socket.once("end", resolve));
    expect(answer).toMatch(/^HTTP\/1\.1 408 [\s\S]*too long to come in/);
    await expect
      .poll(
        () => new Promise((resolve) => hub.hub.server.server.getConnections((_, count) => resolve(count))),
        { timeout: 10_000 },
      )
      .toBe(0);
  }, 60_000);
});

describe("[HUB] a hub that is full", () => {
  const fill = async (address = `http://127.0.0.1:${port}`) => {
    const token = await hub.join("/devices/one");
    for (let number = 0; number < 10; number += 1) {
      streams.push(await EventStream.open(`${address}/api/walks/${WALK}/entries`, token));
    }
    await Promise.all(streams.map((stream) => stream.until(() => stream.events.length > 0)));
  };

  it("tells a new client so in words, closes no stream, and serves again when there is room", async () => {
    await fill();
    const answer = await fetch(`http://127.0.0.1:${port}/api/health`);
    expect([answer.status, await answer.json()]).toEqual([
      503,
      { error: "full", words: "This hub has as many connections as it can hold: try again soon." },
    ]);
    expect(hub.told).toHaveLength(1);
    streams.pop()?.close();
    await expect.poll(health, { timeout: 10_000 }).toBe(200);
  });

  it("tells it over TLS too", async () => {
    await hub.close();
    const folder = mkdtempSync(join(tmpdir(), "tetherline-full-"));
    const tls = await selfMadeCertificate(folder, "x", machineNames(), { now: () => NOON, randomBytes });
    rmSync(folder, { recursive: true });
    await begin({ tls, connections: 1 });
    const open = async () => {
      const socket = connectSecurely({ port, host: "127.0.0.1", rejectUnauthorized: false });
      sockets.push(socket);
      socket.on("error", () => {});
      await new Promise((resolve) => socket.once("secureConnect", resolve));
      return socket;
    };
    const token = await hub.join("/devices/one");
    const first = await open();
    first.write(
      `GET /api/walks/${WALK}/entries HTTP/1.1\r\nHost: localhost\r\nAccept: text/event-stream\r\nAuthorization: Bearer ${token}\r\n\r\n`,
    );
    await new Promise((resolve) => first.once("data", resolve));
    let answer = "";
    const second = await open();
    second.on("data", (chunk: Buffer) => {
      answer += chunk;
    });
    await closed(second);
    expect(answer).toMatch(/^HTTP\/1\.1 503 [\s\S]*as many connections as it can hold/);
  });
});
