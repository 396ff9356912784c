import cookie from "@fastify/cookie";
import helmet from "@fastify/helmet";
import Fastify, { type FastifyInstance } from "fastify";
import { message } from "../../words/index.ts";
import { AnswerError, answerErrors, answerOf, answerUnreadable, sendAnswer } from "../answer/index.ts";
import { asksForPage, serveApp } from "../app-files/index.ts";
import type { Journal } from "../journal/index.ts";
import { connectionLimit, keepRoom } from "./connection-room.ts";
import { entryRoutes } from "./entry-routes.ts";
import { GuessBook } from "./guess-book.ts";
import { healthRoutes } from "./health-routes.ts";
import type { HubParts } from "./hub-parts.ts";
import { joinRoutes } from "./join-routes.ts";
import { LengthRate } from "./length-rate.ts";
import { letShellsAsk } from "./native-shells.ts";
import { noteForbidden } from "./note-forbidden.ts";
import { limitRates, type RateLimits } from "./rate-limits.ts";
import { readJsonBodies } from "./request-body.ts";
import { insistOnNames } from "./served-names.ts";
import { Tries } from "./tries.ts";
import { walkRoutes } from "./walk-routes.ts";
import { identifyCallers } from "./who-asks.ts";

/** The largest procedure with its entry, see the limits of entries. */
const LARGEST_BODY = 11 * 1024 * 1024;
/** Suites with forward secrecy and authenticated encryption alone, all with whole tags. */
const CIPHERS = [
  "TLS_AES_256_GCM_SHA384",
  "TLS_CHACHA20_POLY1305_SHA256",
  "TLS_AES_128_GCM_SHA256",
  "ECDHE-ECDSA-AES256-GCM-SHA384",
  "ECDHE-RSA-AES256-GCM-SHA384",
  "ECDHE-ECDSA-CHACHA20-POLY1305",
  "ECDHE-RSA-CHACHA20-POLY1305",
  "ECDHE-ECDSA-AES128-GCM-SHA256",
  "ECDHE-RSA-AES128-GCM-SHA256",
].join(":");
/** How long a request and its headers may take to come in, in ms, and how often it is looked who took longer. */
const REQUEST_WITHIN = 60_000;
const HEADERS_WITHIN = 15_000;
const LOOKED_EVERY = 5_000;
/** Bytes of a request that a token may send on average, of as many as it may make. */
const BYTES_A_REQUEST = 2_000;
/** The longest walk id or device, every character of it percent-encoded. */
const LONGEST_PARAMETER = 5000;

/** How a server is to be. */
export interface ServerOptions {
  /** Certificate and key in PEM; `null` for plain HTTP. */
  readonly tls: { readonly certificate: string; readonly key: string } | null;
  /** Browsers are told to insist on TLS for this host from now on: only where they trust the certificate anyway. */
  readonly insistsOnTls: boolean;
  /** The certificate that a tablet is to trust, in PEM; `null` when this hub made none. */
  readonly authority: string | null;
  /** Folder of the built app; `null` serves none. */
  readonly app: string | null;
  readonly limits: RateLimits;
  /** The names under which the hub is served, in lower case; addresses are always. `null` answers under every name. */
  readonly names: ReadonlySet<string> | null;
  /** How many connections are served at once; as many as the system allows this process unless said. */
  readonly connections?: number;
  /** Where this hub is reached from other machines, without a slash at the end; `null` when it is not. */
  readonly address: () => string | null;
  /** Addresses and networks of proxies in front, which are believed whom they speak for; none unless given. */
  readonly proxies?: readonly string[];
  /** Folder of the log, where it is on a disk of this machine; missing where it is not. */
  readonly data?: string;
  /** Where it is written down who came in and who did not; nowhere unless given. */
  readonly journal?: Journal;
  /** Hears of mistakes of ours. */
  readonly tell: (words: string) => void;
}

/** The server of a hub, ready to listen. */
export async function makeServer(parts: HubParts, options: ServerOptions): Promise<FastifyInstance> {
  const { tls, tell, limits, proxies = [] } = options;
  const app = Fastify({
    ...(tls
      ? {
          https: {
            cert: tls.certificate,
            key: tls.key,
            minVersion: "TLSv1.2",
            ciphers: CIPHERS,
            handshakeTimeout: HEADERS_WITHIN,
            headersTimeout: HEADERS_WITHIN,
            connectionsCheckingInterval: LOOKED_EVERY,
          },
        }
      : { http: { headersTimeout: HEADERS_WITHIN, connectionsCheckingInterval: LOOKED_EVERY } }),
    bodyLimit: LARGEST_BODY,
    trustProxy: [...proxies],
    routerOptions: { maxParamLength: LONGEST_PARAMETER },
    onProtoPoisoning: "error",
    onConstructorPoisoning: "error",
    requestTimeout: REQUEST_WITHIN,
    // Open streams would keep the hub from ending.
    forceCloseConnections: true,
    frameworkErrors: (cause, _request, reply) => void sendAnswer(reply, answerOf(cause, tell)),
    clientErrorHandler: answerUnreadable,
  }) as unknown as FastifyInstance;

  keepRoom(app.server, options.connections ?? connectionLimit(), tell);
  answerErrors(app, tell);
  readJsonBodies(app);
  if (options.names) insistOnNames(app, options.names, parts.journal);
  await app.register(helmet, headersOf(options));
  await letShellsAsk(app);
  await app.register(cookie);
  app.addHook("onSend", async (request, reply) => {
    if (request.url.startsWith("/api/")) reply.header("cache-control", "no-store");
  });
  const { admission, journal, metrics, surroundings } = parts;
  const guesses = new GuessBook({ free: limits.wrongCodes, now: surroundings.now });
  const tries = new Tries(guesses, admission, journal);
  identifyCallers(app, parts, tries);
  noteForbidden(app, journal, surroundings.now);
  app.addHook("onResponse", async (_request, { statusCode }) => {
    if (statusCode >= 400) metrics.refused(statusCode);
  });
  await limitRates(app, limits, (code) => admission.isOwners(code));

  healthRoutes(app, parts);
  joinRoutes(app, parts, { tries, names: options.names });
  walkRoutes(app, parts, options.address);
  entryRoutes(app, parts, new LengthRate(limits.perToken * BYTES_A_REQUEST));
  const { authority, app: folder } = options;
  if (authority !== null) {
    app.get("/tetherline-hub.crt", (_request, reply) =>
      reply.type("application/x-x509-ca-cert").header("cache-control", "no-cache").send(authority),
    );
  }
  if (folder !== null) await serveApp(app, folder);
  app.setNotFoundHandler({ preHandler: app.rateLimit() }, (request, reply) => {
    if (folder !== null && asksForPage(request)) return reply.sendFile("index.html");
    return sendAnswer(reply, new AnswerError(404, "not-found", message("answer/not-found")));
  });
  await app.ready();
  return app;
}

function headersOf({ tls, insistsOnTls }: ServerOptions) {
  return {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        scriptSrc: ["'self'"],
        workerSrc: ["'self'"],
        connectSrc: ["'self'"],
        imgSrc: ["'self'", "data:", "blob:"],
        // Ionic writes styles into the page.
        styleSrc: ["'self'", "'unsafe-inline'"],
        fontSrc: ["'self'"],
        manifestSrc: ["'self'"],
        objectSrc: ["'none'"],
        frameAncestors: ["'none'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
      },
    },
    // The default, no-referrer, makes browsers hide the origin that is checked here.
    referrerPolicy: { policy: "same-origin" as const },
    strictTransportSecurity: tls && insistsOnTls ? { maxAge: 31_536_000, includeSubDomains: false } : false,
  } as const;
}
