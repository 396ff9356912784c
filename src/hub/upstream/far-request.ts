import { X509Certificate } from "node:crypto";
import { type IncomingMessage, request as plainRequest, type RequestOptions } from "node:http";
import { Agent, request as secureRequest } from "node:https";
import type { Duplex } from "node:stream";
import { connect, type DetailedPeerCertificate } from "node:tls";
import type { AskHub, HubAnswer } from "../../core/link/index.ts";
import { UnreachableError } from "../../core/link/index.ts";
import { message, SaidError, saidBy } from "../../words/index.ts";
import type { FarAddress } from "./far-address.ts";

/** Certificates that sign one another, at most. */
const LONGEST_CHAIN = 5;

/**
 * Asks by node's own client: it sets no limit to how long an answer takes, whereas `fetch` gives up after five minutes,
 * which is less than some links' delay.
 */
export function askFar({ origin, fingerprint }: FarAddress): AskHub {
  const agent = fingerprint === null ? {} : { agent: pinnedAgent(fingerprint) };
  const send = origin.startsWith("https:") ? secureRequest : plainRequest;
  return ({ method, path, headers, body, signal }) =>
    new Promise((resolve, reject) => {
      const fail = (cause: Error) => reject(unreachable(origin, cause));
      const length = body === undefined ? {} : { "content-length": String(Buffer.byteLength(body)) };
      const request = send(`${origin}${path}`, {
        method,
        ...(signal === undefined ? {} : { signal }),
        headers: { ...headers, ...length },
        ...agent,
        ...((signal === undefined ? {} : { givenUp: signal }) satisfies PinnedOptions),
      });
      request.once("response", (answer) => {
        // Without a listener, an answer that breaks off would end the process.
        answer.on("error", () => {});
        resolve(answerOf(answer));
      });
      request.on("error", fail);
      request.end(body);
    });
}

function answerOf(answer: IncomingMessage): HubAnswer {
  return {
    status: answer.statusCode ?? 0,
    header: (name) => answer.headers[name]?.toString() ?? null,
    text: answer.setEncoding("utf8"),
    drop: () => void answer.destroy(),
  };
}

function unreachable(origin: string, cause: Error): UnreachableError {
  const why = "code" in cause ? String(cause.code) : saidBy(cause);
  return new UnreachableError(message("far/not-reached", { origin, why }), { cause });
}

/** An extra option for the agent below, since node does not pass the request's own signal to agents. */
interface PinnedOptions {
  readonly givenUp?: AbortSignal;
}

/** Connections on which the other side has shown a certificate with this fingerprint, or one made by it. */
function pinnedAgent(fingerprint: string): Agent {
  const agent = new Agent({ keepAlive: true });
  agent.createConnection = (options: RequestOptions & PinnedOptions, callback): Duplex | null | undefined => {
    const socket = connect({
      host: options.host ?? options.hostname ?? "localhost",
      port: Number(options.port ?? 443),
      rejectUnauthorized: false,
    });
    const { givenUp } = options;
    // A request that is given up before it has its socket ends with the socket only.
    const abandon = () => socket.destroy(new Error("given up"));
    let isAnswered = false;
    const answer = (cause: Error | null): void => {
      if (isAnswered) return;
      isAnswered = true;
      givenUp?.removeEventListener("abort", abandon);
      callback?.(cause, socket);
    };
    givenUp?.addEventListener("abort", abandon, { once: true });
    if (givenUp?.aborted) abandon();
    // Stays, so that an error before the request has the socket ends nothing but the request.
    socket.on("error", answer);
    socket.once("secureConnect", () => {
      if (isPinned(socket.getPeerCertificate(true), fingerprint)) return answer(null);
      answer(new SaidError(message("far/other-certificate")));
      socket.destroy();
    });
    return undefined;
  };
  return agent;
}

/** Whether a certificate with this fingerprint is shown, or one that it has signed, itself or through others shown. */
function isPinned(shown: DetailedPeerCertificate, fingerprint: string): boolean {
  let one = shown;
  for (let length = 0; length < LONGEST_CHAIN && one?.raw; length += 1) {
    if (one.fingerprint256.replaceAll(":", "") === fingerprint) return true;
    const { issuerCertificate: issuer } = one;
    // Issuers are found by name: without their signature anybody could append the certificate that is looked for.
    if (!issuer?.raw || !new X509Certificate(one.raw).verify(new X509Certificate(issuer.raw).publicKey)) {
      return false;
    }
    one = issuer;
  }
  return false;
}
