import rateLimit from "@fastify/rate-limit";
import type { FastifyInstance, FastifyRequest } from "fastify";
import { message } from "../../words/index.ts";
import type { Caller } from "../admission/index.ts";
import { AnswerError } from "../answer/index.ts";
import { addressPrefix } from "./address-prefix.ts";
import { knownCaller } from "./who-asks.ts";

const MINUTE = 60_000;

/** How many requests are answered in a minute. */
export interface RateLimits {
  /** To one token or the owner. */
  readonly perToken: number;
  /** To one address without a token; a whole site may be behind it. */
  readonly perAddress: number;
  /** To one address, of the app's files, the clock and signs of health. */
  readonly filesPerAddress: number;
  /** Wrong codes from one address before it has to wait. */
  readonly wrongCodes: number;
}

/**
 * A token may take about a tenth of what a small machine can do, so that a device gone wild does not stop the others, and
 * a link that catches up is not held up. An address may be five hundred followers who open the app together.
 */
export const RATE_LIMITS: RateLimits = {
  perToken: 30_000,
  perAddress: 1_200,
  filesPerAddress: 60_000,
  wrongCodes: 5,
};

const keyOf = (caller: Caller) => (caller.kind === "owner" ? "owner" : `token ${caller.member.token}`);

const isCheap = ({ url }: FastifyRequest) => !/^\/api\/(?!(clock|health)(\?|$))/.test(url);

/** Limits how often a token or an address is answered. `isOwners` tells the owner's code, which is answered as the owner's. */
export async function limitRates(
  app: FastifyInstance,
  limits: RateLimits,
  isOwners: (code: string) => boolean,
): Promise<void> {
  await app.register(rateLimit, {
    timeWindow: MINUTE,
    max: (request) => {
      if (knownCaller(request) || bringsCode(request, isOwners)) return limits.perToken;
      return isCheap(request) ? limits.filesPerAddress : limits.perAddress;
    },
    keyGenerator: (request) => {
      const caller = knownCaller(request);
      if (caller) return keyOf(caller);
      if (bringsCode(request, isOwners)) return "owner";
      return `${isCheap(request) ? "files" : "address"} ${addressPrefix(request.ip)}`;
    },
    errorResponseBuilder: (_request, { ttl }) =>
      new AnswerError(429, "too-many", message("answer/too-many"), Math.max(1, Math.ceil(ttl / 1000))),
  });
}

/** Whether the body, once it was read, has the code of the owner. */
function bringsCode({ body }: FastifyRequest, isOwners: (code: string) => boolean): boolean {
  const code = typeof body === "object" && body !== null && "code" in body ? body.code : null;
  return typeof code === "string" && isOwners(code);
}
