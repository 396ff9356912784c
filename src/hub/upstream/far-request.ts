import { type IncomingMessage, request as plainRequest, type RequestOptions } from "node:http";
import { Agent, request as secureRequest } from "node:https";
import type { Duplex } from "node:stream";
import { connect, type DetailedPeerCertificate } from "node:tls";
import { UnreachableError } from "../../core/log/index.ts";
import type { FarAddress } from "./far-address.ts";

/** A request to another hub. */
export interface FarRequest {
  readonly method: "GET" | "POST";
  /** With a slash in front. */
  readonly path: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
  readonly signal: AbortSignal;
}

/** Asks another hub; resolves once the head of its answer is there. Rejects with `UnreachableError`. */
export type AskFar = (request: FarRequest) => Promise<IncomingMessage>;

/**
 * Asks by node's own client: it sets no limit to how long an answer takes, whereas `fetch` gives up after five minutes,
 * which is less than some links' delay.
 */
export function askFar({ origin, fingerprint }: FarAddress): AskFar {
  const agent = fingerprint === null ? {} : { agent: pinnedAgent(fingerprint) };
  const send = origin.startsWith("https:") ? secureRequest : plainRequest;
  return ({ method, path, headers = {}, body, signal }) =>
    new Promise((resolve, reject) => {
      const fail = (cause: Error) => reject(unreachable(origin, cause));
      const length = body === undefined ? {} : { "content-length": String(Buffer.byteLength(body)) };
      const request = send(`${origin}${path}`, {
        method,
        signal,
        headers: { ...headers, ...length },
        ...agent,
      });
      request.once("response", (answer) => {
        // Without a listener, an answer that breaks off would end the process.
        answer.on("error", () => {});
        resolve(answer);
      });
      request.on("error", fail);
      request.end(body);
    });
}

function unreachable(origin: string, cause: Error): UnreachableError {
  const code = "code" in cause ? String(cause.code) : cause.message;
  return new UnreachableError(`The hub at ${origin} cannot be reached (${code}).`, { cause });
}

/** Connections on which the other side has shown a certificate with this fingerprint, or one made by it. */
function pinnedAgent(fingerprint: string): Agent {
  const agent = new Agent({ keepAlive: true });
  agent.createConnection = (options: RequestOptions, callback): Duplex | null | undefined => {
    const socket = connect({
      host: options.host ?? options.hostname ?? "localhost",
      port: Number(options.port ?? 443),
      rejectUnauthorized: false,
    });
    const fail = (cause: Error) => callback?.(cause, socket);
    socket.once("error", fail);
    socket.once("secureConnect", () => {
      socket.off("error", fail);
      if (isPinned(socket.getPeerCertificate(true), fingerprint)) callback?.(null, socket);
      else socket.destroy(new Error("it shows another certificate than the one named in --upstream"));
    });
    return undefined;
  };
  return agent;
}

function isPinned(shown: DetailedPeerCertificate, fingerprint: string): boolean {
  const seen = new Set<DetailedPeerCertificate>();
  for (let one = shown; one?.fingerprint256 && !seen.has(one); one = one.issuerCertificate) {
    if (one.fingerprint256.replaceAll(":", "") === fingerprint) return true;
    seen.add(one);
  }
  return false;
}
