import { once } from "node:events";
import { createServer as createHttpServer, type RequestListener, type Server } from "node:http";
import { createServer, type Server as NetServer, type Socket } from "node:net";
import { afterEach, describe, expect, test } from "vitest";
import type { WalkId } from "../../../src/core/units/index.ts";
import { askFar, farClient } from "../../../src/hub/upstream/index.ts";
import { PATIENT } from "./two-hubs.ts";

const WALK = "walk-1" as WalkId;
const servers: (Server | NetServer)[] = [];

async function listening<S extends Server | NetServer>(server: S): Promise<number> {
  servers.push(server);
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("no port");
  return address.port;
}

/** A client of something at an address that answers so. */
async function clientOf(answer: RequestListener) {
  const port = await listening(createHttpServer(answer));
  return farClient(askFar({ origin: `http://127.0.0.1:${port}`, fingerprint: null }));
}

afterEach(() => {
  for (const server of servers.splice(0)) {
    if ("closeAllConnections" in server) server.closeAllConnections();
    server.close();
  }
});

describe("[LINK] asking another hub", () => {
  test("what it says goes to the console as one short line, whatever is in it", async () => {
    const words = `No\u001b[2J\n\r\u0007 such ${"long ".repeat(1000)}\u202e`;
    const far = await clientOf((_request, response) => {
      response
        .writeHead(403, { "content-type": "application/json" })
        .end(JSON.stringify({ error: "x", words }));
    });
    const failure = await far.walks("code", AbortSignal.timeout(10_000)).catch((cause: unknown) => cause);
    const message = failure instanceof Error ? failure.message : "";
    expect(message).toMatch(/^No \[2J such long /);
    expect(message).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    expect(message.length).toBeLessThanOrEqual(300);
  });

  test("an answer without end, or an event without end, is given up", { timeout: 60_000 }, async () => {
    const far = await clientOf(({ headers }, response) => {
      const isStream = headers.accept === "text/event-stream";
      response.writeHead(200, { "content-type": isStream ? "text/event-stream" : "application/json" });
      const part = "x".repeat(1_000_000);
      const more = (): void => {
        while (!response.destroyed && response.write(isStream ? `data: ${part}` : part));
        if (!response.destroyed) response.once("drain", more);
      };
      more();
    });
    await expect(far.walks("code", AbortSignal.timeout(50_000))).rejects.toThrow(/connection .* was lost/);
    await expect(far.side(WALK, "token").follow(null, () => {}, AbortSignal.timeout(50_000))).rejects.toThrow(
      /connection .* was lost/,
    );
  });

  test("a connection with a pinned certificate that is given up before it is there is closed", async () => {
    const open = new Set<Socket>();
    const port = await listening(
      createServer((socket) => {
        open.add(socket);
        socket.on("error", () => {});
        socket.once("close", () => open.delete(socket));
        socket.resume();
      }),
    );
    const far = farClient(askFar({ origin: `https://127.0.0.1:${port}`, fingerprint: "AB".repeat(32) }));
    const over = new AbortController();
    const asked = far.walks("code", over.signal);
    const failed = expect(asked).rejects.toThrow(/cannot be reached/);
    await expect.poll(() => open.size, PATIENT).toBe(1);
    over.abort();
    await failed;
    await expect.poll(() => open.size, PATIENT).toBe(0);
    await expect(far.walks("code", AbortSignal.abort())).rejects.toThrow(/cannot be reached/);
    await expect.poll(() => open.size, PATIENT).toBe(0);
  });
});
