import { readFileSync } from "node:fs";
import type { IncomingMessage, Server, ServerResponse } from "node:http";
import type { Socket } from "node:net";
import type { Message } from "../../words/index.ts";
import { message, words } from "../../words/index.ts";
import { answerRaw } from "../answer/index.ts";

/** Descriptors that are kept for files, links and whatever else is no connection of a client. */
const KEPT_FREE = 100;
/** Connections when the system does not say how many files may be open. */
const USUAL = 4_000;
/** Connections beyond those that are served, which are told so; further ones are closed without a word. */
const TOLD = 32;
/** The console hears of it so often, in ms. */
const TOLD_EVERY = 60_000;

/** How many connections this process may hold. */
export function connectionLimit(): number {
  try {
    const [, soft] = /^Max open files\s+(\d+)/m.exec(readFileSync("/proc/self/limits", "utf8")) ?? [];
    if (soft !== undefined) return Math.max(TOLD, Number(soft) - KEPT_FREE - TOLD);
  } catch {
    // Only Linux says it so.
  }
  return USUAL;
}

interface Connection {
  readonly socket: Socket;
  /** Requests that are being answered: streams for as long as they last. */
  active: number;
}

const FULL: Message = message("answer/full");
const keyOf = ({ remoteAddress, remotePort }: Socket) => `${remoteAddress} ${remotePort}`;

/**
 * Keeps room for new clients: once there are `most` connections, one on which nothing is being answered (idle, or with half
 * a request) makes place for a new one, the oldest first. Where all are busy the new one is told that the hub is full, and
 * so is the console.
 */
export function keepRoom(server: Server, most: number, tell: (words: string) => void): void {
  const connections = new Map<string, Connection>();
  const refused = new Set<string>();
  let toldAt = Number.NEGATIVE_INFINITY;

  const tellFull = (): void => {
    const now = performance.now();
    if (now - toldAt < TOLD_EVERY) return;
    toldAt = now;
    tell(words("hub/full", { most }));
  };

  server.on("connection", (socket: Socket) => {
    const key = keyOf(socket);
    connections.set(key, { socket, active: 0 });
    socket.once("close", () => {
      connections.delete(key);
      refused.delete(key);
    });
    if (connections.size - refused.size <= most) return;
    tellFull();
    // A map keeps the order in which connections came.
    const idle = [...connections].find(
      ([other, { active }]) => active === 0 && other !== key && !refused.has(other),
    );
    if (idle) {
      connections.delete(idle[0]);
      idle[1].socket.destroy();
    } else if (refused.size >= TOLD) socket.destroy();
    else refused.add(key);
  });

  server.prependListener("request", (request: IncomingMessage, response: ServerResponse) => {
    const connection = connections.get(keyOf(request.socket));
    if (!connection) return;
    connection.active += 1;
    response.once("close", () => {
      connection.active -= 1;
    });
  });

  // Over TLS nothing can be said before the handshake.
  server.on("secureConnection", (socket: Socket) => {
    if (refused.has(keyOf(socket))) answerRaw(socket, "503 Service Unavailable", "full", FULL);
  });
  if (!("setSecureContext" in server)) {
    server.on("connection", (socket: Socket) => {
      if (refused.has(keyOf(socket))) answerRaw(socket, "503 Service Unavailable", "full", FULL);
    });
  }
}
